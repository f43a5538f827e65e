#include "ui/review/review_words.h"

#include "core/domain/language.h"
#include "core/loads/lift_estimate.h"
#include "ui/look/text.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace ui {

namespace {

QString dayWords(double day)
{
    return core::dateWords(core::fromEngineDay(int(day)), QStringLiteral("ddd d MMM yyyy"));
}

/// A value that is in the unit already, to a tenth.
QString amount(double value, core::Unit unit)
{
    return core::formatLoad(core::toKg(value, unit), unit, 1);
}
QString number(double value, core::Unit unit)
{
    return core::formatLoadNumber(core::toKg(value, unit), unit, 1);
}

} // namespace

QString words(ReadingKind kind, core::Lift lift)
{
    const QString inOrder[] = {Text::tr("Competition lift"), Text::tr("Variation, soft touch"),
        Text::tr("Variation, sinking touch"),
        lift == core::Lift::bench ? Text::tr("Variation, both touches") : Text::tr("Variation"),
        Text::tr("Set without RPE: at least this"), Text::tr("Missed rep: at most this")};
    static_assert(std::size(inOrder) == kReadingKinds);
    return inOrder[size_t(kind)];
}

QString words(Knowledge knowledge)
{
    return knowledge == Knowledge::now ? Text::tr("Known now") : Text::tr("Known then");
}

QString explanation(Knowledge knowledge)
{
    return knowledge == Knowledge::now
        ? Text::tr("Every set logged since speaks too. Best for looking back.")
        : Text::tr("Only what was logged up to that week. Loads were chosen from this.");
}

QString valueWords(const WeekPoint &week, Knowledge knowledge, core::Unit unit)
{
    const QString sets = week.sets == 0 ? Text::tr("No set that week: carried over")
                                        : Text::tr("Sets that week: %1").arg(week.sets);
    return Text::tr("Week to %1\nEstimated max %2\n90 % interval %3 to %4\n%5, %6")
        .arg(dayWords(week.day), amount(week.value, unit), number(week.low90, unit),
            amount(week.high90, unit), sets, words(knowledge).toLower());
}

QString setWords(const core::SetEntry &set, core::Unit unit)
{
    const QString load = core::formatLoad(set.loadKg, unit);
    if (set.failed)
        return set.repsDone == 0
            ? Text::tr("%1, first rep missed").arg(load)
            : Text::tr("%1 x %2, rep %3 missed").arg(set.repsDone).arg(load).arg(set.repsDone + 1);
    const QString done = Text::tr("%1 x %2").arg(set.repsDone).arg(load);
    return set.rpe ? Text::tr("%1 @%2").arg(done, QLocale().toString(*set.rpe)) : done;
}

QString valueWords(const ReadingPoint &reading, const core::LoggedSession &session,
    const core::Variation &variation, core::Unit unit)
{
    const QString speaks = reading.kind == ReadingKind::missed
        ? Text::tr("Implies a max of at most %1")
        : reading.kind == ReadingKind::unrated ? Text::tr("Implies a max of at least %1")
                                               : Text::tr("Implies a max of %1");
    return QStringList{dayWords(reading.day), variation.name,
        setWords(session.sets[size_t(reading.set)], unit), speaks.arg(amount(reading.value, unit))}
        .join(u'\n');
}

QString valueWords(const core::WeekLoad &week, core::Unit unit)
{
    const QLocale locale;
    QString said =
        Text::tr("Week from %1\nTonnage %2 %3\nNumber of lifts %4 in %5 sets")
            .arg(dayWords(core::engineDay(week.monday)),
                locale.toString(axisTonnage(week.tonnageKg, unit), 'f', 2), tonnageUnit(unit),
                locale.toString(week.lifts), locale.toString(week.sets));
    if (week.missed > 0)
        said += u'\n' + Text::tr("Sets with a missed rep: %1").arg(week.missed);
    return said;
}

QString trendWords(
    const std::vector<WeekPoint> &weeks, double fromDay, double toDay, core::Unit unit)
{
    if (weeks.empty())
        return {};
    const WeekPoint &last = weeks.back();
    QString said = Text::tr("Estimated max %1, 90 % interval %2 to %3, in the week to %4.")
                       .arg(amount(last.value, unit), number(last.low90, unit),
                           amount(last.high90, unit), dayWords(last.day));
    const auto shown = [=](const WeekPoint &w) { return w.day >= fromDay && w.day <= toDay; };
    const auto first = std::find_if(weeks.begin(), weeks.end(), shown);
    const auto end = std::find_if(weeks.rbegin(), weeks.rend(), shown);
    if (first == weeks.end() || &*first == &*end)
        return said;
    const double change = end->value - first->value;
    const QString by = number(std::abs(change), unit) + u' ' + core::symbol(unit);
    const QString since = dayWords(first->day);
    const QString until = dayWords(end->day);
    return said + u'\n'
        + (std::abs(change) < 0.05 ? Text::tr("No change from %1 to %2.").arg(since, until)
                : change > 0       ? Text::tr("Up %1 from %2 to %3.").arg(by, since, until)
                                   : Text::tr("Down %1 from %2 to %3.").arg(by, since, until));
}

QString noSetsWords(core::Lift lift)
{
    switch (lift) {
    case core::Lift::squat:
        return Text::tr("No squat sets logged yet. Import a training log with File > Import, "
                        "and the trend appears here.");
    case core::Lift::deadlift:
        return Text::tr("No deadlift sets logged yet. Import a training log with File > Import, "
                        "and the trend appears here.");
    case core::Lift::bench:
        break;
    }
    return Text::tr("No bench sets logged yet. Import a training log with File > Import, and the "
                    "trend appears here.");
}

QString tonnageUnit(core::Unit unit)
{
    return unit == core::Unit::pound ? Text::tr("1000 lb") : Text::tr("t");
}

} // namespace ui
