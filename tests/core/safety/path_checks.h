#pragma once

#include "core/loads/effort.h"
#include "core/loads/limited_lines.h"
#include "core/loads/week_sheet.h"
#include "core/log/day_plan.h"
#include "core/log/eased_lines.h"
#include "tests/core/safety/random_roster.h"

#include <rapidcheck/gtest.h>

/// What every path of planned work is held against.
namespace tests {

using namespace core;

inline const Variation &variationOf(const Roster &roster, const Card &card)
{
    return *find(roster.catalogue, card.variation);
}

inline void checkLines(const Roster &roster, const std::vector<ResolvedCard> &cards)
{
    for (const ResolvedCard &card : cards)
        for (const ResolvedLine &line : card.lines) {
            const Variation &variation = variationOf(roster, card.card);
            const QDate on = card.card.day;
            if (line.withheld.isEmpty()) {
                roster.mayBeGiven(on, line.line, variation);
                if (line.load)
                    roster.mayBeOnTheBar(on, line.load->loadKg, variation.id);
                RC_ASSERT(!line.lighter.has_value());
            } else if (line.lighter) {
                RC_ASSERT(line.load.has_value());
                RC_ASSERT(line.lighter->loadKg < line.load->loadKg);
                RC_ASSERT(!roster.hurts(on));
                roster.mayBeOnTheBar(on, line.lighter->loadKg, variation.id);
            }
        }
}

inline void checkDaySet(const Roster &roster, const DaySet &set)
{
    if (!set.withheld.isEmpty()) {
        RC_ASSERT(!set.loadKg.has_value());
        return;
    }
    roster.mayWork(roster.day, *find(roster.catalogue, set.variation));
    if (set.lead)
        roster.mayWork(roster.day, *find(roster.catalogue, set.lead->variation));
    RC_ASSERT((roster.mayGoMaximal(roster.day) || !set.isMaximal));
    if (set.loadKg) {
        RC_ASSERT(set.planKg.has_value());
        RC_ASSERT(*set.loadKg <= *set.planKg + kGram);
        roster.mayBeOnTheBar(roster.day, *set.loadKg, set.variation);
    }
}

inline std::vector<SetInValues> valuesOf(const Roster &roster, const ResolvedCard &card)
{
    std::vector<SetInValues> all;
    for (const ResolvedLine &line : card.lines)
        for (const SetInValues &values :
            setsInValues(line, variationOf(roster, card.card), roster.catalogue))
            all.push_back(values);
    return all;
}

inline void checkValues(const Roster &roster, QDate on, const SetInValues &values)
{
    if (!values.withheld.isEmpty())
        return;
    for (const QString &code : {values.code, values.leadCode})
        if (const Variation *variation = withCode(roster.catalogue, code))
            roster.mayWork(on, *variation);
    RC_ASSERT((roster.mayGoMaximal(on) || !values.isMaximal));
    RC_ASSERT((roster.mayGoMaximal(on) || values.rpe.value_or(0.0) <= 9.0));
}

/// The week with what today says of it: its sets are in the estimate, as after a fit.
inline std::vector<ResolvedCard> easedWeek(const Roster &roster)
{
    Roster now = roster;
    LoggedSession session = tests::sessionOf(roster.day, {});
    for (const SetEntry &set : roster.done)
        if (find(roster.catalogue, set.variation)->lift == Lift::bench)
            session.sets.push_back(set);
    now.bench.readings.push_back(session);
    std::vector<ResolvedCard> cards = now.resolved();
    easeToday(cards, now.sources(), &roster.readiness);
    return cards;
}

inline WeekSheet sheetOf(const Roster &roster)
{
    return weekSheet(roster.lifter, kMonday, easedWeek(roster), roster.catalogue, {});
}

// Paths, under their names in path_names.h

} // namespace tests
