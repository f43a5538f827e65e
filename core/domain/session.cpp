#include "core/domain/session.h"

#include "core/domain/text.h"

#include <cmath>

namespace core {

QStringList problems(const SetEntry &entry)
{
    QStringList wrong;
    if (!(entry.loadKg > 0.0 && entry.loadKg <= 700.0))
        wrong << Text::tr("The load is more than 0 and at most 700 kg.");
    if (entry.repsDone < 0 || entry.repsDone > 100)
        wrong << Text::tr("Reps done are 0 to 100.");
    else if (entry.repsDone == 0 && !entry.failed)
        wrong << Text::tr("A set without a rep done is a missed one: mark it as failed.");
    if (entry.repsPlanned && (*entry.repsPlanned < 1 || *entry.repsPlanned > 100))
        wrong << Text::tr("Reps planned are 1 to 100.");
    if (entry.rpe
        && !(*entry.rpe >= 1.0 && *entry.rpe <= 10.0
            && std::abs(*entry.rpe * 2.0 - std::round(*entry.rpe * 2.0)) < 1e-9))
        wrong << Text::tr("RPE is 1 to 10 in halves.");
    if (entry.velocityMs && !(*entry.velocityMs > 0.0 && *entry.velocityMs <= 3.0))
        wrong << Text::tr("Bar velocity is more than 0 and at most 3 m/s.");
    if (entry.touch && (*entry.touch < 1 || *entry.touch > 5))
        wrong << Text::tr("The touch score is 1 to 5.");
    if (entry.lead && (entry.lead->reps < 1 || entry.lead->reps > 100))
        wrong << Text::tr("The lead reps are 1 to 100.");
    if (entry.answers && (!entry.answers->card.isValid() || entry.answers->set < 0))
        wrong << Text::tr("A set answers a set of a card, counted from 0.");
    return wrong;
}

double tonnageKg(const SetEntry &entry)
{
    return entry.loadKg * entry.repsDone;
}

QStringList problems(const LoggedSession &session)
{
    QStringList wrong;
    if (!session.lifter.isValid())
        wrong << Text::tr("A session belongs to a lifter.");
    if (!session.day.isValid())
        wrong << Text::tr("A session needs a day.");
    if (session.number < 1)
        wrong << Text::tr("Sessions of a day are numbered from 1.");
    if (session.readiness && (*session.readiness < 1 || *session.readiness > 5))
        wrong << Text::tr("Readiness is 1 to 5.");
    for (int number = 1; const SetEntry &entry : session.sets) {
        QStringList ofSet = problems(entry);
        if (!entry.variation.isValid() || (entry.lead && !entry.lead->variation.isValid()))
            ofSet << Text::tr("A set needs a variation.");
        for (const QString &words : ofSet)
            wrong << Text::tr("Set %1: %2").arg(QString::number(number), words);
        ++number;
    }
    return wrong;
}

QDate lastDayOf(std::span<const LoggedSession> sessions)
{
    QDate last;
    for (const LoggedSession &session : sessions)
        if (!session.sets.empty() && (!last.isValid() || session.day > last))
            last = session.day;
    return last;
}

} // namespace core
