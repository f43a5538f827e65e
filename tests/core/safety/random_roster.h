#pragma once

#include "core/advice/advisor.h"
#include "core/loads/effort.h"
#include "core/log/day_plan.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/core/plan/set_line_values.h"
#include "tests/support/days.h"

#include <rapidcheck.h>
#include <set>

/// A random lifter with check-ins, catalogue, week and log, and the law that no suggestion to them
/// may break: what hurts and who gets no maximal work is worked out here once more, in other words
/// than core/safety's.
namespace tests {

using namespace core;

inline constexpr double kGram = 1e-3;

struct Roster
{
    Lifter lifter;
    std::vector<Variation> catalogue;
    std::vector<CheckIn> checkIns;
    std::vector<Card> cards; ///< of the week
    std::vector<LoggedSession> sessions;
    std::vector<SetEntry> done; ///< on the day
    LiftEstimate bench;
    bool isKnown = true; ///< there is an estimate
    strength::ReadinessEffect readiness;
    QDate day;

    [[nodiscard]] EstimateOf estimateOf() const
    {
        return [this](Lift lift) { return isKnown && lift == Lift::bench ? &bench : nullptr; };
    }
    [[nodiscard]] PlanSources sources() const
    {
        return {lifter, catalogue, estimateOf(), checkIns, {}, day};
    }
    [[nodiscard]] std::vector<ResolvedCard> resolved() const
    {
        return resolveCards(cards, sources());
    }
    [[nodiscard]] std::vector<Card> cardsOfDay() const { return cardsOn(cards, day); }
    [[nodiscard]] DayInputs inputs(const std::vector<Card> &ofDay) const
    {
        return {lifter, day, catalogue, ofDay, {}, day, done, checkIns, estimateOf(), &readiness};
    }
    [[nodiscard]] AdviceContext advice() const
    {
        return {lifter, catalogue, day, cards, sessions, checkIns, isKnown ? &bench : nullptr};
    }

    // The law, in words of its own

    [[nodiscard]] std::set<BodyArea> painful(QDate on) const
    {
        std::set<BodyArea> areas;
        for (QDate d = kMonday.addDays(-60); d <= on; d = d.addDays(1))
            for (const CheckIn &said : checkIns)
                if (said.day == d && said.isPainFree)
                    areas.clear();
                else if (said.day == d && said.pain && said.pain->area)
                    areas.insert(*said.pain->area);
        return areas;
    }
    /// A pain stands of which nobody said the area.
    [[nodiscard]] bool hurtsAnywhere(QDate on) const
    {
        bool hurts = false;
        for (QDate d = kMonday.addDays(-60); d <= on; d = d.addDays(1))
            for (const CheckIn &said : checkIns)
                if (said.day == d && said.isPainFree)
                    hurts = false;
                else if (said.day == d && said.pain && !said.pain->area)
                    hurts = true;
        return hurts;
    }
    [[nodiscard]] bool hurts(QDate on) const
    {
        bool hurts = false;
        for (QDate d = kMonday.addDays(-60); d <= on; d = d.addDays(1))
            for (const CheckIn &said : checkIns)
                if (said.day == d && (said.isPainFree || said.pain))
                    hurts = !said.isPainFree;
        return hurts;
    }
    [[nodiscard]] bool isBeginner(QDate on) const
    {
        return (lifter.birthYear && on.year() - *lifter.birthYear < 19)
            || (lifter.trainingSince && lifter.trainingSince->addYears(1) > on);
    }
    [[nodiscard]] bool isTired(QDate on) const
    {
        for (const CheckIn &said : checkIns)
            if (said.day == on && core::readiness(said).value_or(5.0) < 2.5)
                return true;
        return false;
    }
    [[nodiscard]] bool mayGoMaximal(QDate on) const
    {
        return !hurts(on) && !isBeginner(on) && !isTired(on);
    }
    /// What the program may write by itself: the coach is asked for the age first.
    [[nodiscard]] bool mayWriteMaximal(QDate on) const { return mayGoMaximal(on) && isGrownUp(); }
    [[nodiscard]] bool isGrownUp() const { return lifter.birthYear || lifter.isAdult; }
    /// Whether any set of a swap would have to be as careful as the law says of swaps.
    [[nodiscard]] bool isSore(QDate on) const
    {
        for (const CheckIn &said : checkIns)
            for (const auto &[area, answer] : said.soreness)
                if (said.day == on && answer <= 2)
                    return true;
        return false;
    }

    void mayWork(QDate on, const Variation &variation) const
    {
        RC_ASSERT(!hurtsAnywhere(on));
        for (const BodyArea area : painful(on))
            RC_ASSERT(variation.work[area] == Work::none);
    }
    /// A line of a card of the variation, given out on the day.
    void mayBeGiven(QDate on, const SetLine &line, const Variation &variation) const
    {
        mayWork(on, variation);
        if (const Variation *rest = restVariation(line, variation, catalogue))
            mayWork(on, *rest);
        if (mayGoMaximal(on))
            return;
        RC_ASSERT(!(line.asManyAsPossible && !line.mostReps));
        mayBeAsked(line);
    }
    static void mayBeAsked(const SetLine &line)
    {
        if (const auto *rpe = std::get_if<RpeTarget>(&line.target))
            RC_ASSERT(rpe->to.value_or(rpe->rpe) <= 9.0);
        if (const auto *rir = std::get_if<ReserveTarget>(&line.target))
            RC_ASSERT(rir->rir >= 1.0);
        if (const auto *share = std::get_if<ShareTarget>(&line.target))
            RC_ASSERT(share->percent < 95.0);
        RC_ASSERT(!(line.asManyAsPossible && !line.mostReps));
    }
    void mayBeOnTheBar(QDate on, double loadKg, VariationId id) const
    {
        if (mayGoMaximal(on) || !isKnown)
            return;
        const int row = bench.rowOf(id);
        if (row >= 0)
            RC_ASSERT(loadKg < 95.0 * bench.priors[size_t(row)].ratio + kGram);
    }
};

inline Variation shuffled(Variation v)
{
    for (const BodyArea area : kBodyAreas)
        if (*rc::gen::inRange(0, 4) == 0)
            v.work[area] = *rc::gen::element(Work::none, Work::some, Work::much);
    return v;
}

inline SetLine anyLine()
{
    SetLine line;
    line.sets = *rc::gen::inRange(1, 5);
    line.reps = *rc::gen::inRange(1, 9);
    switch (*rc::gen::inRange(0, 5)) {
    case 0:
        line.asManyAsPossible = true;
        if (*rc::gen::arbitrary<bool>())
            line.mostReps = *rc::gen::inRange(line.reps, 20);
        break;
    case 1:
        if (line.reps > 1)
            line.leadReps = *rc::gen::inRange(1, line.reps);
        break;
    case 2:
        line.mostReps = line.reps + *rc::gen::inRange(1, 4);
        break;
    default:
        break;
    }
    line.target = *anyTarget();
    if (auto *share = std::get_if<ShareTarget>(&line.target))
        share->percent = *rc::gen::inRange(40, 112);
    if (auto *load = std::get_if<LoadTarget>(&line.target))
        load->loadKg = *rc::gen::inRange(40, 130);
    return line;
}

inline QDate anyDay()
{
    return kMonday.addDays(*rc::gen::inRange(0, 7));
}

inline rc::Gen<Roster> anyRoster()
{
    return rc::gen::exec([] {
        Roster roster;
        roster.lifter.id = {1};
        roster.lifter.gear = usualGear(Unit::kilogram);
        roster.lifter.touchStyle =
            *rc::gen::element(TouchStyle::undecided, TouchStyle::soft, TouchStyle::sinking);
        switch (*rc::gen::inRange(0, 5)) {
        case 0:
            roster.lifter.birthYear = *rc::gen::inRange(2006, 2013);
            break;
        case 2: // nobody has said
            break;
        case 1:
            roster.lifter.trainingSince = kMonday.addDays(-*rc::gen::inRange(300, 400));
            break;
        default:
            roster.lifter.birthYear = 1990;
        }
        for (const Variation &v : builtInCatalogue())
            roster.catalogue.push_back(shuffled(v));
        std::set<int> daysSaid;
        for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
            daysSaid.insert(*rc::gen::inRange(-30, 7));
        for (const int day : daysSaid) {
            CheckIn said;
            said.id = {day + 100};
            said.lifter = roster.lifter.id;
            said.day = kMonday.addDays(day);
            said.sleep = *rc::gen::inRange(1, 6);
            said.stress = *rc::gen::inRange(1, 6);
            for (const BodyArea area : kBodyAreas)
                if (*rc::gen::inRange(0, 4) == 0)
                    said.soreness[area] = *rc::gen::inRange(1, 6);
            switch (*rc::gen::inRange(0, 4)) {
            case 0:
                said.pain = PainFlag{*rc::gen::elementOf(std::vector<BodyArea>(
                                         std::begin(kBodyAreas), std::end(kBodyAreas))),
                    {}};
                break;
            case 1:
                said.pain = PainFlag{{}, QStringLiteral("rib")};
                break;
            case 2:
                said.isPainFree = true;
                break;
            default:
                break;
            }
            roster.checkIns.push_back(said);
        }
        roster.day = anyDay();
        for (int i = *rc::gen::inRange(1, 5); i > 0; --i) {
            Card card;
            card.id = {i};
            card.lifter = roster.lifter.id;
            card.day = *rc::gen::arbitrary<bool>() ? roster.day : anyDay();
            card.position = i;
            card.variation = {*rc::gen::inRange<qint64>(1, qint64(roster.catalogue.size()) + 1)};
            std::vector<SetLine> lines{anyLine()};
            if (*rc::gen::arbitrary<bool>())
                lines.push_back(anyLine());
            card.setLine = setLineText(lines);
            roster.cards.push_back(card);
        }
        for (int i = *rc::gen::inRange(0, 3); i > 0; --i) {
            SetEntry set;
            set.variation = roster.cards.front().variation;
            set.loadKg = *rc::gen::inRange(40, 120);
            set.repsDone = *rc::gen::inRange(0, 6);
            set.failed = set.repsDone == 0 || *rc::gen::arbitrary<bool>();
            roster.done.push_back(set);
        }
        roster.bench = plainEstimate(kMonday);
        roster.isKnown = *rc::gen::inRange(0, 4) != 0;
        roster.readiness.sessions = 40;
        roster.readiness.lowest = 1.0;
        roster.readiness.highest = 5.0;
        roster.readiness.slope = {0.03, 0.03};
        roster.readiness.covariance = Eigen::Matrix2d::Identity() * 1e-6;
        return roster;
    });
}

} // namespace tests
