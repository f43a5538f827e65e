#include "ui/planning/ribbon.h"

#include "core/domain/week.h"
#include "core/loads/resolve.h"
#include "core/plan/block_edits.h"
#include "ui/look/text.h"

#include <QLocale>
#include <algorithm>

namespace ui {

namespace {

constexpr int kWeeksBefore = 3;

/// Whether most days of the week lie in a deload week of the block.
bool isDeload(const core::Block &block, QDate monday)
{
    const QDate middle = monday.addDays(core::kWeekDays / 2);
    if (!block.contains(middle))
        return false;
    const int week = int(block.start.daysTo(middle)) / core::kWeekDays + 1;
    return std::find(block.deloadWeeks.begin(), block.deloadWeeks.end(), week)
        != block.deloadWeeks.end();
}

QStringList outcomeWords(const core::WeekOutcome &outcome)
{
    QStringList words;
    if (const core::Adherence &sets = outcome.adherence; sets.sets > 0)
        words << (sets.done == sets.sets ? Text::tr("all sets done: %1").arg(sets.sets)
                : sets.done == 0         ? Text::tr("left out, sets: %1").arg(sets.sets)
                                 : Text::tr("sets done: %1 of %2").arg(sets.done).arg(sets.sets));
    if (outcome.missed > 0)
        words << Text::tr("sets with a rep missed: %1").arg(outcome.missed);
    if (outcome.adherence.extra > 0)
        words << Text::tr("sets beside the plan: %1").arg(outcome.adherence.extra);
    if (outcome.hasPain)
        words << Text::tr("pain said");
    return words;
}

} // namespace

Ribbon ribbonOf(QDate firstMonday, int weeks, std::span<const core::Card> cards,
    std::span<const core::Block> blocks, std::optional<QDate> meet, QDate today,
    const std::map<QDate, core::WeekOutcome> &outcomes)
{
    Ribbon ribbon;
    const auto isIn = [](QDate day, QDate monday) {
        return day >= monday && day < monday.addDays(core::kWeekDays);
    };
    for (int i = 0; i < weeks; ++i) {
        RibbonWeek week;
        week.monday = firstMonday.addDays(core::kWeekDays * i);
        week.meet = meet && isIn(*meet, week.monday);
        week.now = isIn(today, week.monday);
        for (const core::Block &block : blocks)
            week.deload = week.deload || isDeload(block, week.monday);
        if (const auto outcome = outcomes.find(week.monday); outcome != outcomes.end())
            week.outcome = outcome->second;
        ribbon.weeks.push_back(week);
    }
    for (const core::Card &card : cards) {
        const qint64 days = firstMonday.daysTo(card.day);
        if (days < 0 || days >= core::kWeekDays * weeks)
            continue;
        RibbonWeek &week = ribbon.weeks[size_t(days / core::kWeekDays)];
        ++week.cards;
        week.lifts += core::liftCount(core::parseSetLines(card.setLine).lines);
    }
    for (const core::Block &block : blocks) {
        const qint64 first = firstMonday.daysTo(block.start);
        const qint64 last = firstMonday.daysTo(block.end());
        if (last < 0 || first >= core::kWeekDays * weeks)
            continue;
        ribbon.blocks.push_back({block, int(std::max<qint64>(first, 0) / core::kWeekDays),
            int(std::min<qint64>(last / core::kWeekDays, weeks - 1))});
    }
    std::sort(ribbon.blocks.begin(), ribbon.blocks.end(),
        [](const RibbonBlock &a, const RibbonBlock &b) { return a.block.start < b.block.start; });
    return ribbon;
}

WeekMark markOf(const RibbonWeek &week)
{
    if (!week.outcome || week.outcome->adherence.sets == 0)
        return WeekMark::none;
    const core::Adherence &sets = week.outcome->adherence;
    return sets.done == sets.sets ? WeekMark::done
        : sets.done > 0           ? WeekMark::partly
                                  : WeekMark::leftOut;
}

QDate ribbonStart(QDate before, int weeks, QDate shownMonday)
{
    if (before.isValid() && shownMonday >= before.addDays(core::kWeekDays)
        && shownMonday <= before.addDays(core::kWeekDays * (weeks - 2)))
        return before;
    return shownMonday.addDays(-core::kWeekDays * kWeeksBefore);
}

QString blockWords(const core::Block &block)
{
    const QLocale locale;
    const QString words = Text::tr("%1, %2 to %3, weeks: %4")
                              .arg(block.name, locale.toString(block.start, QLocale::ShortFormat),
                                  locale.toString(block.end(), QLocale::ShortFormat))
                              .arg(block.weeks);
    return block.purpose.isEmpty() ? words : Text::tr("%1. %2").arg(words, block.purpose);
}

QString weekWords(const RibbonWeek &week)
{
    QStringList words{
        Text::tr("Week from %1").arg(QLocale().toString(week.monday, QLocale::ShortFormat))};
    if (week.now)
        words << Text::tr("this week");
    words << (week.cards == 0 ? Text::tr("nothing planned")
                              : Text::tr("cards: %1, lifts: %2").arg(week.cards).arg(week.lifts));
    if (week.deload)
        words << Text::tr("deload");
    if (week.meet)
        words << Text::tr("meet");
    if (week.outcome)
        words << outcomeWords(*week.outcome);
    return words.join(QStringLiteral(", "));
}

} // namespace ui
