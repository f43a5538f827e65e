#include "core/notation/set_words.h"

#include "core/domain/text.h"

#include <QLocale>
#include <cmath>

namespace core {

namespace {

constexpr double kSameLoadKg = 0.005;
constexpr double kNotableRpe = 1.0; ///< less lies within the coarseness of a rating

QString number(double value)
{
    return QLocale().toString(value, 'g', 4);
}

QString loadDifference(double moreKg, Unit unit)
{
    const QString by = formatLoad(std::abs(moreKg), unit);
    if (moreKg > kSameLoadKg)
        return Text::tr("%1 heavier").arg(by);
    return moreKg < -kSameLoadKg ? Text::tr("%1 lighter").arg(by) : QString();
}

QString ratingDifference(double asked, double said)
{
    const QString against = Text::tr("RPE %1 against %2").arg(number(said), number(asked));
    if (said - asked >= kNotableRpe)
        return Text::tr("harder than expected (%1)").arg(against);
    return asked - said >= kNotableRpe ? Text::tr("easier than expected (%1)").arg(against)
                                       : QString();
}

} // namespace

QString repsWords(int reps)
{
    return reps == 1 ? Text::tr("1 rep") : Text::tr("%1 reps").arg(reps);
}

QString workWords(int reps, double loadKg, Unit unit)
{
    // A load in kg reads in lb as far as plates in lb go.
    const int decimals = unit == Unit::pound ? 1 : 2;
    return Text::tr("%1 x %2").arg(reps).arg(formatLoad(loadKg, unit, decimals));
}

QString doneWords(const SetEntry &done, Unit unit, const QString &leadName, int leadReps)
{
    QStringList said{workWords(done.repsDone, done.loadKg, unit)};
    if (!leadName.isEmpty())
        said << Text::tr("the first %1 as %2").arg(leadReps).arg(leadName);
    if (done.rpe)
        said << Text::tr("RPE %1").arg(number(*done.rpe));
    if (done.touch)
        said << Text::tr("touch %1").arg(*done.touch);
    return said.join(QStringLiteral(", "));
}

QStringList differenceWords(
    const SetAsked &asked, const QString &variation, const SetEntry &done, Unit unit)
{
    QStringList said;
    if (done.failed)
        said << Text::tr("missed a rep");
    if (asked.variation.isEmpty())
        return said << Text::tr("extra set");
    if (variation != asked.variation)
        said << Text::tr("%1 in place of %2").arg(variation, asked.variation);
    if (asked.loadKg)
        said << loadDifference(done.loadKg - *asked.loadKg, unit);
    if (asked.reps && done.repsDone > *asked.reps)
        said << Text::tr("%1 more").arg(repsWords(done.repsDone - *asked.reps));
    else if (asked.reps && done.repsDone < *asked.reps)
        said << Text::tr("%1 fewer").arg(repsWords(*asked.reps - done.repsDone));
    const int leadReps = done.lead ? done.lead->reps : 0;
    if (asked.leadReps && *asked.leadReps != leadReps && done.repsDone > *asked.leadReps)
        said << Text::tr("lead reps %1, not %2").arg(leadReps).arg(*asked.leadReps);
    if (asked.rpe && done.rpe)
        said << ratingDifference(*asked.rpe, *done.rpe);
    said.removeAll(QString());
    return said;
}

} // namespace core
