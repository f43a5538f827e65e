#include "core/advice/advisor.h"
#include "core/exchange/calendar.h"
#include "core/exchange/hand_out.h"
#include "core/loads/effort.h"
#include "core/loads/limited_lines.h"
#include "core/log/day_plan.h"
#include "core/log/eased_lines.h"
#include "core/plan/block_edits.h"
#include "core/plan/paste_cards.h"
#include "core/plan/progression.h"
#include "core/plan/template.h"
#include "core/plan/what_if.h"
#include "tests/core/safety/path_checks.h"
#include "tests/core/safety/path_names.h"
#include "tests/core/safety/random_roster.h"

#include <QJsonArray>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <set>

// Over random lifters, check-ins, catalogues and plans: no path gives a load above what was
// planned, or work for what hurts, or maximal work to those who get none. What hurts and who gets
// none is worked out here once more, in other words than core/safety's.

using namespace core;
using namespace tests;

namespace {

using Check = void (*)(const Roster &);

void pathResolveCards(const Roster &roster)
{
    checkLines(roster, roster.resolved());
}

void pathSetsInValues(const Roster &roster)
{
    for (const ResolvedCard &card : roster.resolved())
        for (const SetInValues &values : valuesOf(roster, card))
            checkValues(roster, card.card.day, values);
}

void pathWithheldWords(const Roster &roster)
{
    for (const ResolvedCard &card : roster.resolved()) {
        const bool isAny = std::ranges::any_of(
            card.lines, [](const ResolvedLine &line) { return !line.withheld.isEmpty(); });
        RC_ASSERT(withheldWords(card, Unit::kilogram).isEmpty() == !isAny);
        for (const ResolvedLine &line : card.lines)
            RC_ASSERT(withheldWords(line, Unit::kilogram).startsWith(line.withheld));
    }
}

void pathEaseToday(const Roster &roster)
{
    const std::vector<ResolvedCard> planned = roster.resolved();
    const std::vector<ResolvedCard> eased = easedWeek(roster);
    for (size_t i = 0; i < eased.size(); ++i)
        for (size_t j = 0; j < eased[i].lines.size(); ++j) {
            const ResolvedLine &line = eased[i].lines[j];
            RC_ASSERT(line.load == planned[i].lines[j].load);
            RC_ASSERT(line.withheld == planned[i].lines[j].withheld);
            if (line.eased.isEmpty()) {
                RC_ASSERT(line.lighter == planned[i].lines[j].lighter);
                continue;
            }
            RC_ASSERT(eased[i].card.day == roster.day);
            RC_ASSERT(line.withheld.isEmpty());
            RC_ASSERT(line.lighter->loadKg < line.load->loadKg);
            roster.mayBeOnTheBar(roster.day, line.lighter->loadKg, eased[i].card.variation);
        }
}

void pathEasedWords(const Roster &roster)
{
    for (const ResolvedCard &card : easedWeek(roster)) {
        const bool isAny = std::ranges::any_of(
            card.lines, [](const ResolvedLine &line) { return !line.eased.isEmpty(); });
        RC_ASSERT(easedWords(card, Unit::kilogram).isEmpty() == !isAny);
    }
}

void pathWeekSheet(const Roster &roster)
{
    for (const SheetDay &day : sheetOf(roster).days)
        for (const SheetCard &card : day.cards) {
            bool isAny = false;
            for (const SheetSet &set : card.sets) {
                checkValues(roster, day.date, set.values);
                isAny = isAny || !set.values.withheld.isEmpty();
            }
            RC_ASSERT(card.withheld.isEmpty() == !isAny);
            RC_ASSERT((card.lighter.isEmpty() || day.date == roster.day));
        }
}

void pathHandOutData(const Roster &roster)
{
    const QJsonObject data =
        handOutData(roster.lifter, sheetOf(roster), roster.cards, roster.catalogue);
    for (const QJsonValue &day : data[QStringLiteral("days")].toArray()) {
        const QDate on = QDate::fromString(day[QStringLiteral("date")].toString(), Qt::ISODate);
        for (const QJsonValue &card : day[QStringLiteral("cards")].toArray())
            for (const QJsonValue &set : card[QStringLiteral("sets")].toArray()) {
                if (set[QStringLiteral("isWithheld")].toBool()) {
                    RC_ASSERT(!card[QStringLiteral("withheld")].toArray().isEmpty());
                    continue;
                }
                RC_ASSERT(!roster.hurtsAnywhere(on));
                for (const QJsonValue &area : set[QStringLiteral("works")].toArray())
                    RC_ASSERT(
                        !roster.painful(on).contains(*fromFileWord<BodyArea>(area.toString())));
                RC_ASSERT((roster.mayGoMaximal(on) || !set[QStringLiteral("isMaximal")].toBool()));
            }
    }
}

void pathWriteCalendar(const Roster &roster)
{
    // Folded lines (RFC 5545, section 3.1) are put together again.
    const QByteArray text =
        writeCalendar(roster.lifter, sheetOf(roster), QDateTime(kMonday, QTime(8, 0), Qt::UTC))
            .replace("\r\n ", "");
    for (const SheetDay &day : sheetOf(roster).days)
        for (const SheetCard &card : day.cards)
            for (const QString &held : card.withheld)
                RC_ASSERT(text.contains(held.section(u' ', 0, 0).toUtf8()));
}

void pathDaySets(const Roster &roster)
{
    for (const DaySet &set : daySets(
             resolveCards(roster.cardsOfDay(), roster.sources()), roster.catalogue, Unit::kilogram))
        checkDaySet(roster, set);
}

void pathDayPlan(const Roster &roster)
{
    const std::vector<Card> ofDay = roster.cardsOfDay();
    const DayPlan plan = dayPlan(roster.inputs(ofDay));
    for (const DaySet &set : plan.planned)
        checkDaySet(roster, set);
    // Sets of a lift that are still to come after its miss have come down.
    std::set<VariationId> missed;
    for (const SessionRow &row : plan.rows) {
        if (row.done && roster.done[*row.done].failed)
            missed.insert(roster.done[*row.done].variation);
        if (row.done || !plan.planned[*row.planned].loadKg)
            continue;
        const DaySet &set = plan.planned[*row.planned];
        if (missed.contains(set.variation) && *set.planKg > 21.5)
            RC_ASSERT(*set.loadKg < *set.planKg);
    }
}

void pathShifted(const Roster &roster)
{
    const std::vector<Card> ofDay = roster.cardsOfDay();
    DayInputs inputs = roster.inputs(ofDay);
    inputs.shiftLoads = true;
    for (const DaySet &set : dayPlan(inputs).planned) {
        if (!set.loadKg)
            continue;
        const bool mayRise = !roster.isBeginner(roster.day) && !roster.hurts(roster.day)
            && set.reps > 1 && !set.isByHand && !set.isMaximal;
        RC_ASSERT(*set.loadKg <= *set.planKg * (mayRise ? 1.025 : 1.0) + kGram);
    }
}

void pathSwapped(const Roster &roster)
{
    const std::vector<Card> ofDay = roster.cardsOfDay();
    const DayInputs inputs = roster.inputs(ofDay);
    const DayPlan plan = dayPlan(inputs);
    const bool isCareful = !roster.mayGoMaximal(roster.day) || roster.isSore(roster.day);
    for (size_t i = 0; i < plan.planned.size(); ++i)
        for (const char *code : {"touch_and_go", "board_5cm", "incline"}) {
            const DaySet set = swapped(inputs, plan, i, tests::idOf(code));
            if (!set.withheld.isEmpty() || !set.loadKg)
                continue;
            roster.mayWork(roster.day, *find(roster.catalogue, set.variation));
            if (isCareful && plan.planned[i].planKg)
                RC_ASSERT(*set.loadKg <= *plan.planned[i].planKg + kGram);
        }
}

void pathEasedKg(const Roster &roster)
{
    const std::vector<Card> none;
    const double eased = easedKg(roster.inputs(none), roster.cards.front().variation, 100.0);
    RC_ASSERT(eased <= 100.0);
    for (const SetEntry &set : roster.done)
        if (set.failed)
            RC_ASSERT(eased <= std::max(0.95 * set.loadKg, 20.0) + kGram);
}

void pathWhyWithheld(const Roster &roster)
{
    const std::vector<Card> none;
    const DayInputs inputs = roster.inputs(none);
    const DayPlan plan = dayPlan(inputs);
    SetEntry extra;
    extra.variation = roster.cards.front().variation;
    extra.loadKg = *rc::gen::inRange(40, 120);
    extra.repsDone = *rc::gen::inRange(1, 6);
    extra.rpe = *tests::halves(6.0, 10.0);
    if (!whyWithheld(inputs, plan, extra).isEmpty())
        return;
    roster.mayWork(roster.day, *find(roster.catalogue, extra.variation));
    RC_ASSERT((roster.mayGoMaximal(roster.day) || *extra.rpe <= 9.0));
    roster.mayBeOnTheBar(roster.day, extra.loadKg, extra.variation);
}

void pathAdviseOnReadiness(const Roster &roster)
{
    const std::vector<Card> ofDay = roster.cardsOfDay();
    const DayPlan plan = dayPlan(roster.inputs(ofDay));
    if (roster.hurts(roster.day) || roster.isBeginner(roster.day))
        RC_ASSERT(plan.advice.loadFactor <= 1.0);
    RC_ASSERT(plan.advice.loadFactor <= 1.025);
    for (const SoreSwap &swap : plan.advice.swaps) {
        Card card = *std::ranges::find(ofDay, swap.card, &Card::id);
        const auto before = resolveCards({card}, roster.sources()).front().lines;
        const double ratio = variationOf(roster, card).ratio;
        card.variation = swap.spares;
        roster.mayWork(roster.day, variationOf(roster, card));
        RC_ASSERT(variationOf(roster, card).ratio <= ratio);
        const auto after = resolveCards({card}, roster.sources()).front().lines;
        for (size_t i = 0; i < before.size(); ++i)
            if (before[i].load && after[i].load)
                RC_ASSERT(after[i].load->loadKg <= before[i].load->loadKg + kGram);
    }
}

void pathRankVariations(const Roster &roster)
{
    const Slot slot{Lift::bench, *rc::gen::inRange(1, 9), *tests::halves(6.0, 10.0)};
    const Ranking ranking = rankVariations(slot, roster.advice());
    for (const Advice &advice : ranking.advice) {
        const Variation &variation = *find(roster.catalogue, advice.variation);
        roster.mayWork(roster.day, variation);
        if (roster.hurts(roster.day))
            RC_ASSERT(variation.ratio <= 1.0);
        if (variation.ratio > 1.0)
            for (const AdviceTerm &term : advice.terms)
                RC_ASSERT((term.about != AdviceTerm::About::freshness || term.points < 0.0));
    }
}

void pathAdviceSetLine(const Roster &roster)
{
    const Slot slot{Lift::bench, *rc::gen::inRange(1, 9), *tests::halves(6.0, 10.0)};
    const Ranking ranking = rankVariations(slot, roster.advice());
    for (const Advice &advice : ranking.advice) {
        const SetLine line = parseSetLines(adviceSetLine(advice, slot, ranking)).lines.front();
        roster.mayBeGiven(roster.day, line, *find(roster.catalogue, advice.variation));
        const auto *rpe = std::get_if<RpeTarget>(&line.target);
        RC_ASSERT((rpe || std::get<ShareTarget>(line.target).percent <= 67.0)); // speed
        if (roster.isBeginner(roster.day))
            RC_ASSERT((line.reps >= 3 && (!rpe || rpe->rpe <= 8.0)));
        if (rpe)
            RC_ASSERT(rpe->rpe <= slot.rpe.value());
        if (rpe && !roster.isGrownUp())
            RC_ASSERT(rpe->rpe <= 9.0);
    }
}

void pathSuggestedSetLine(const Roster &roster)
{
    const QString text = suggestedSetLine(variationOf(roster, roster.cards.front()), roster.cards,
        roster.day, limitsOn(roster.lifter, roster.day, roster.checkIns));
    if (!roster.mayWriteMaximal(roster.day))
        for (const SetLine &line : parseSetLines(text).lines)
            Roster::mayBeAsked(line);
}

void pathProgress(const Roster &roster)
{
    const ProgressionRule rule = *rc::gen::element<ProgressionRule>(AddLoad{5.0, LoadIn::percent},
        AddLoad{2.5, LoadIn::kilogram}, AddReps{}, RaiseRpe{0.5, 10.0}, DropSets{},
        Wave{{0.0, 10.0, 20.0}, 5.0, LoadIn::percent});
    qint64 id = 100;
    const Progression progression =
        progress(roster.cards, rule, 4, roster.lifter, [&id] { return CardId{++id}; });
    for (size_t i = 0; i < progression.rows.size(); ++i) {
        const Card &row = progression.rows[i];
        if (!roster.isBeginner(row.day) && roster.isGrownUp())
            continue;
        const double most = roster.isBeginner(row.day) ? 8.0 : 9.0;
        const std::vector<SetLine> lines = parseSetLines(row.setLine).lines;
        const std::vector<SetLine> before =
            parseSetLines(roster.cards[i % roster.cards.size()].setLine).lines;
        for (size_t line = 0; line < lines.size(); ++line) {
            Roster::mayBeAsked(lines[line]);
            const auto *now = std::get_if<RpeTarget>(&lines[line].target);
            const auto *then = std::get_if<RpeTarget>(&before[line].target);
            if (now && then)
                RC_ASSERT(now->rpe <= std::max(most, then->rpe));
        }
    }
    checkLines(roster, resolveCards(progression.rows, roster.sources()));
}

BlockTemplate templateOfWeek(const Roster &roster)
{
    Block block;
    block.lifter = roster.lifter.id;
    block.name = QStringLiteral("Base");
    block.start = kMonday;
    block.weeks = 1;
    return templateOf(QStringLiteral("Base"), block, roster.cards, roster.catalogue, {});
}

void checkCards(const Roster &roster, const std::vector<Card> &cards)
{
    for (const Card &card : cards)
        if (roster.isBeginner(card.day) || !roster.isGrownUp())
            for (const SetLine &line : parseSetLines(card.setLine).lines)
                Roster::mayBeAsked(line);
    checkLines(roster, resolveCards(cards, roster.sources()));
}

void pathApplyTemplate(const Roster &roster)
{
    qint64 id = 100;
    const std::vector<Card> none;
    checkCards(roster,
        applyTemplate(templateOfWeek(roster), {roster.lifter, kMonday, roster.catalogue, none},
            [&id] { return CardId{++id}; })
            .edit.cards.after);
}

void pathLayTemplate(const Roster &roster)
{
    qint64 id = 100;
    Block block;
    block.id = {1};
    block.lifter = roster.lifter.id;
    block.name = QStringLiteral("Base");
    block.start = kMonday;
    const std::vector<Card> none;
    const std::vector<Block> blocks;
    checkCards(roster,
        layTemplate(templateOfWeek(roster), block, roster.lifter, {none, blocks}, {},
            roster.catalogue, [&id] { return CardId{++id}; })
            .edit.cards.after);
}

void pathPasteCards(const Roster &roster)
{
    std::vector<CardRow> rows;
    for (const Card &card : roster.cards)
        rows.push_back({int(kMonday.daysTo(card.day)), card.variation, card.setLine, card.note});
    const LifterId from = *rc::gen::element(roster.lifter.id, LifterId{99}, LifterId{});
    qint64 id = 100;
    const PasteTarget target{roster.lifter, kMonday, {}, roster.checkIns};
    const std::vector<Card> pasted = pasteCards(rows, from, {&target, 1}, OnOccupiedDays::keep,
        roster.catalogue,
        [&id] { return CardId{++id}; }).edit.cards.after;
    for (const Card &card : pasted)
        for (const SetLine &line : parseSetLines(card.setLine).lines) {
            roster.mayBeGiven(card.day, line, variationOf(roster, card));
            RC_ASSERT(
                (from == roster.lifter.id || !std::holds_alternative<LoadTarget>(line.target)));
        }
    checkLines(roster, resolveCards(pasted, roster.sources()));
}

void pathWhatIf(const Roster &roster)
{
    if (*rc::gen::inRange(0, 10) != 0) // it simulates
        return;
    std::vector<LoggedSession> sessions;
    for (int week = 1; week <= 12; ++week)
        sessions.push_back(tests::sessionOf(kMonday.addDays(-7 * week),
            std::vector<SetEntry>(4, tests::setOf(tests::idOf("comp"), 80, 5, 7.5))));
    const std::vector<ResolvedCard> cards = roster.resolved();
    double given = 0.0;
    for (const ResolvedCard &card : cards)
        if (countsFor(variationOf(roster, card.card), Lift::bench)) // rows are no bench sets
            for (const ResolvedLine &line : card.lines)
                if (line.withheld.isEmpty())
                    given += tonnageKg({&line, 1});
    const WhatIfComparison comparison =
        whatIf({roster.catalogue, sessions, roster.bench, Lift::bench, kMonday, 1}, cards, cards);
    RC_ASSERT(std::abs(comparison.changed.weeks.at(0).tonnageKg - given) < 1.0);
}

constexpr std::pair<std::string_view, Check> kPaths[] = {
    {"resolveCards", pathResolveCards},
    {"setsInValues", pathSetsInValues},
    {"withheldWords", pathWithheldWords},
    {"easeToday", pathEaseToday},
    {"easedWords", pathEasedWords},
    {"weekSheet", pathWeekSheet},
    {"handOutData", pathHandOutData},
    {"writeCalendar", pathWriteCalendar},
    {"daySets", pathDaySets},
    {"dayPlan", pathDayPlan},
    {"shifted", pathShifted},
    {"swapped", pathSwapped},
    {"easedKg", pathEasedKg},
    {"whyWithheld", pathWhyWithheld},
    {"adviseOnReadiness", pathAdviseOnReadiness},
    {"rankVariations", pathRankVariations},
    {"adviceSetLine", pathAdviceSetLine},
    {"suggestedSetLine", pathSuggestedSetLine},
    {"progress", pathProgress},
    {"applyTemplate", pathApplyTemplate},
    {"layTemplate", pathLayTemplate},
    {"pasteCards", pathPasteCards},
    {"whatIf", pathWhatIf},
};

} // namespace

TEST(SafetyPaths, EveryNamedPathIsWalked)
{
    ASSERT_EQ(std::size(kPaths), tests::kPathNames.size());
    for (size_t i = 0; i < std::size(kPaths); ++i)
        EXPECT_EQ(kPaths[i].first, tests::kPathNames[i]);
}

class SafetyPath : public testing::TestWithParam<size_t>
{
};

TEST_P(SafetyPath, GivesNothingHeavierNothingThatHurtsAndNoMaximalWorkToWhoGetsNone)
{
    const auto &[name, check] = kPaths[GetParam()];
    EXPECT_TRUE(rc::check(std::string(name), [check = check] { check(*anyRoster()); }));
}

INSTANTIATE_TEST_SUITE_P(All, SafetyPath, testing::Range(size_t(0), std::size(kPaths)),
    [](const testing::TestParamInfo<size_t> &path) {
        return std::string(kPaths[path.param].first);
    });
