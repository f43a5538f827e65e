#include "core/advice/open_stops.h"

#include "core/plan/plan_edits.h"
#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>
#include <set>

using namespace core;
using namespace tests;
using testing::IsEmpty;

namespace {

/// A grown lifter with eight weeks of log: three bench days of 4 x 3 at 85 kg and one squat day a
/// week, max 100 kg.
struct ChecksDesk
{
    Lifter lifter;
    std::vector<LoggedSession> sessions;
    std::vector<Card> cards;
    std::vector<CheckIn> checkIns;
    LiftEstimate bench = plainEstimate(kMonday);

    ChecksDesk()
    {
        lifter.id = {1};
        lifter.birthYear = 1995;
        lifter.gear = usualGear(Unit::kilogram);
        for (int week = 1; week <= 8; ++week)
            for (const int day : {0, 2, 4}) {
                const QDate date = kMonday.addDays(day - 7 * week);
                sessions.push_back(sessionOf(date,
                    std::vector<SetEntry>(4, setOf(idOf("comp"), day == 0 ? 95 : 85, 3, 8.0))));
                if (day == 2)
                    sessions.back().sets.push_back(setOf(idOf("squat"), 140, 5, 8.0));
            }
    }

    void plan(int day, const char *code, const QString &setLine)
    {
        const int position = int(cardsOn(cards, kMonday.addDays(day)).size());
        cards.push_back(
            cardOf(qint64(cards.size()) + 1, kMonday.addDays(day), position, idOf(code), setLine));
    }

    CheckIn &feels(int day)
    {
        CheckIn checkIn;
        checkIn.lifter = lifter.id;
        checkIn.day = kMonday.addDays(day);
        checkIns.push_back(checkIn);
        return checkIns.back();
    }

    std::vector<Finding> check(std::span<const Waiver> waivers = {}) const
    {
        const auto estimateOf = [this](
                                    Lift lift) { return lift == Lift::bench ? &bench : nullptr; };
        const auto resolved =
            resolveCards(cards, {lifter, builtInCatalogue(), estimateOf, checkIns, {}, {}});
        return core::checkPlan(
            {lifter, builtInCatalogue(), sessions, resolved, estimateOf, checkIns, waivers});
    }

    std::vector<CheckRule> rules() const
    {
        std::vector<CheckRule> rules;
        for (const Finding &finding : check())
            rules.push_back(finding.key.rule);
        return rules;
    }
};

const Finding &findingOf(const std::vector<Finding> &findings, CheckRule rule)
{
    for (const Finding &finding : findings)
        if (finding.key.rule == rule)
            return finding;
    throw std::invalid_argument("no such finding");
}

} // namespace

using testing::Contains;
using testing::ElementsAre;
using testing::Not;

TEST(PlanChecks, AnOrdinaryWeekPasses)
{
    ChecksDesk desk;
    desk.plan(0, "comp", u"4x3 @8"_qs);
    desk.plan(2, "feet_up", u"4x5 70%"_qs);
    desk.plan(2, "squat", u"1x5 140kg"_qs);
    desk.plan(4, "comp", u"3x3 85kg"_qs);
    for (const Finding &finding : desk.check())
        ADD_FAILURE() << finding.words.toStdString();
}

TEST(PlanChecks, EveryFindingSaysWhatAndWhatToDo)
{
    ChecksDesk desk;
    desk.lifter.birthYear = 2010;
    desk.lifter.meetDate = kMonday.addDays(5);
    CheckIn &said = desk.feels(-1);
    said.soreness[BodyArea::legs] = 1;
    said.pain = PainFlag{BodyArea::chest, {}};
    desk.plan(0, "tempo_4_2_0", u"8x8 @8"_qs);
    desk.plan(1, "off_chest_pause", u"4x1 102.5kg"_qs);
    desk.plan(2, "close_grip", u"20x5 95%"_qs);
    desk.plan(3, "comp", u"3x1 @9.5"_qs);
    std::set<CheckRule> seen;
    for (const Finding &finding : desk.check()) {
        EXPECT_TRUE(finding.words.endsWith(u'.')) << finding.words.toStdString();
        EXPECT_TRUE(finding.remedy.endsWith(u'.')) << finding.remedy.toStdString();
        EXPECT_EQ(finding.key.lifter, desk.lifter.id);
        EXPECT_EQ(finding.key.monday, kMonday);
        seen.insert(finding.key.rule);
    }
    EXPECT_GE(seen.size(), 8u);
}

TEST(PlanChecks, RepsBeyondTheRangeOfAVariation)
{
    ChecksDesk desk;
    desk.plan(0, "off_chest_pause", u"2x3 @7\n1x5 @7"_qs); // 1 to 3
    ASSERT_THAT(desk.rules(), ElementsAre(CheckRule::repsOutOfRange));
    const Finding finding = desk.check().front();
    EXPECT_EQ(finding.severity, Severity::warning);
    EXPECT_EQ(finding.key.card, CardId{1});
    EXPECT_EQ(finding.measure, 2.0);

    ChecksDesk lead; // one tempo rep leads, four competition reps follow: both in their range
    lead.plan(0, "tempo_4_2_0", u"3x1+4 @7"_qs);
    EXPECT_THAT(lead.rules(), IsEmpty());

    ChecksDesk few; // 3 to 12
    few.plan(0, "close_grip", u"3x2 @7"_qs);
    EXPECT_EQ(findingOf(few.check(), CheckRule::repsOutOfRange).severity, Severity::hint);
}

TEST(PlanChecks, AJumpAgainstTheLiftersOwnWeeks)
{
    ChecksDesk desk; // usual: 36 lifts a week, so up to 43 pass
    desk.plan(0, "comp", u"14x3 60kg"_qs);
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::weeklyLifts)));
    desk.plan(2, "comp", u"1x3 60kg"_qs); // 45
    const Finding lifts = findingOf(desk.check(), CheckRule::weeklyLifts);
    EXPECT_FALSE(lifts.key.card.isValid());
    EXPECT_THAT(lifts.words.toStdString(), testing::HasSubstr("45 lifts"));
    EXPECT_THAT(lifts.words.toStdString(), testing::HasSubstr("36 to 36"));
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::weeklyTonnage))); // light

    ChecksDesk heavy; // usual tonnage: 12 x 95 + 24 x 85 = 3180 kg
    heavy.plan(0, "feet_up", u"13x3 100kg"_qs);
    EXPECT_THAT(heavy.rules(), Contains(CheckRule::weeklyTonnage));

    ChecksDesk unknown;
    unknown.sessions.clear();
    unknown.plan(0, "comp", u"20x3 60kg"_qs);
    EXPECT_THAT(unknown.rules(), IsEmpty()); // no habit to be measured against
}

TEST(PlanChecks, LaterWeeksAreMeasuredAgainstTheWeeksPlannedBefore)
{
    ChecksDesk desk;
    for (int week = 0; week < 4; ++week)
        desk.plan(7 * week, "comp", QStringLiteral("%1x3 60kg").arg(13 + 2 * week));
    // 39, 45, 51, 57 lifts after 36: never more than a fifth above the fullest before.
    desk.cards.erase(desk.cards.begin()); // without the first step up the second is a jump
    EXPECT_THAT(desk.rules(), Contains(CheckRule::weeklyLifts));
    ChecksDesk steady;
    for (int week = 0; week < 4; ++week)
        steady.plan(7 * week, "comp", QStringLiteral("%1x3 60kg").arg(13 + 2 * week));
    EXPECT_THAT(steady.rules(), Not(Contains(CheckRule::weeklyLifts)));
}

TEST(PlanChecks, WhatWasPlannedOnLoggedDaysDoesNotCountTwice)
{
    ChecksDesk desk;
    for (const int day : {0, 2, 4}) {
        desk.plan(day, "comp", u"4x3 85kg"_qs);
        desk.sessions.push_back(sessionOf(
            kMonday.addDays(day), std::vector<SetEntry>(4, setOf(idOf("comp"), 85, 3, 8.0))));
    }
    EXPECT_THAT(desk.rules(), IsEmpty());
}

TEST(PlanChecks, TooManyDaysNearMaximum)
{
    ChecksDesk desk;
    desk.plan(0, "comp", u"1x1 90kg"_qs);
    desk.plan(2, "feet_up", u"1x1 87.5kg"_qs); // 95 kg max
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::daysNearMaximum)));
    desk.plan(4, "comp", u"2x2 92.5kg"_qs);
    EXPECT_EQ(findingOf(desk.check(), CheckRule::daysNearMaximum).measure, 3.0);
}

TEST(PlanChecks, NearTheMeetCompetitionBenchIsInThePlan)
{
    ChecksDesk desk;
    desk.lifter.meetDate = kMonday.addDays(12);
    desk.plan(0, "feet_up", u"3x3 @7"_qs);
    EXPECT_THAT(desk.rules(), Contains(CheckRule::noCompetitionLift));
    ChecksDesk lead = desk; // competition reps after a lead rep count
    lead.plan(2, "tempo_4_2_0", u"2x1+2 @7"_qs);
    EXPECT_THAT(lead.rules(), Not(Contains(CheckRule::noCompetitionLift)));
    desk.lifter.meetDate = kMonday.addDays(60);
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::noCompetitionLift)));
    desk.lifter.meetDate = kMonday.addDays(-1); // over
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::noCompetitionLift)));
}

TEST(PlanChecks, NothingUntrainedInTheWeekOfTheMeet)
{
    ChecksDesk desk;
    desk.lifter.meetDate = kMonday.addDays(11);
    desk.plan(7, "incline", u"3x6 60kg"_qs);
    EXPECT_THAT(desk.rules(), Contains(CheckRule::untrainedOnMeetWeek));
    desk.plan(1, "incline", u"3x6 60kg"_qs); // planned before that week
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::untrainedOnMeetWeek)));
    ChecksDesk before = desk;
    before.cards = {before.cards[1]};
    EXPECT_THAT(before.rules(), Not(Contains(CheckRule::untrainedOnMeetWeek)));
}

TEST(PlanChecks, LoadsAboveAnythingDoneLately)
{
    ChecksDesk desk; // the heaviest was 95 kg
    desk.plan(0, "comp", u"1x1 95kg"_qs);
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::aboveLately)));
    desk.plan(2, "comp", u"1x1 97.5kg"_qs);
    EXPECT_EQ(findingOf(desk.check(), CheckRule::aboveLately).severity, Severity::hint);
    ChecksDesk far;
    far.plan(0, "comp", u"1x1 102.5kg"_qs);
    EXPECT_EQ(findingOf(far.check(), CheckRule::aboveLately).severity, Severity::warning);
    EXPECT_THAT(far.rules(), Contains(CheckRule::likelyMiss));
}

TEST(PlanChecks, SoreAreasGetADayBetween)
{
    ChecksDesk desk;
    desk.feels(0).soreness[BodyArea::legs] = 2;
    desk.plan(1, "comp", u"3x3 @7"_qs);
    desk.plan(2, "comp", u"3x3 @7"_qs);
    EXPECT_EQ(findingOf(desk.check(), CheckRule::noRestForSoreArea).key.card, CardId{2});
    desk.cards[1].variation = idOf("feet_up"); // spares the legs
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::noRestForSoreArea)));
}

TEST(PlanChecks, PainStopsWhateverWorksTheArea)
{
    ChecksDesk desk;
    desk.feels(-1).pain = PainFlag{BodyArea::legs, {}};
    desk.plan(0, "comp", u"3x3 @6"_qs);
    desk.plan(0, "feet_up", u"3x3 @6"_qs);
    const auto findings = desk.check();
    EXPECT_EQ(findings.size(), 1u);
    EXPECT_EQ(findingOf(findings, CheckRule::pain).severity, Severity::stop);
    EXPECT_EQ(findingOf(findings, CheckRule::pain).key.card, CardId{1});
    desk.feels(0).sleep = 4; // nothing is said of pain
    EXPECT_EQ(desk.check().size(), 1u);
    desk.checkIns.back().isPainFree = true;
    EXPECT_THAT(desk.rules(), IsEmpty());
}

TEST(PlanChecks, PainStopsTheRepsAfterALeadToo)
{
    ChecksDesk desk;
    desk.feels(0).pain = PainFlag{BodyArea::legs, {}};
    desk.plan(0, "feet_up", u"3x1+2 @6"_qs); // competition reps follow
    EXPECT_EQ(findingOf(desk.check(), CheckRule::pain).severity, Severity::stop);
}

TEST(PlanChecks, PainWithoutAnAreaStopsAllWorkAndAsksWhere)
{
    ChecksDesk desk;
    desk.feels(0).pain = PainFlag{{}, u"neck"_qs};
    desk.plan(0, "comp", u"3x3 @6"_qs);
    for (const QString &sets : {u"3x3 @6"_qs, u"1xAMRAP 70%"_qs}) {
        desk.cards[0].setLine = sets;
        const Finding found = findingOf(desk.check(), CheckRule::pain);
        EXPECT_EQ(found.severity, Severity::stop);
        EXPECT_TRUE(found.remedy.contains(u"Ask where it hurts"_qs));
    }
}

TEST(PlanChecks, AStopWavedThroughByWhatCannotBeSeenStillStands)
{
    ChecksDesk desk;
    desk.feels(-1).pain = PainFlag{BodyArea::chest, {}};
    desk.plan(0, "comp", u"3x3 @6"_qs);
    const Finding stop = findingOf(desk.check(), CheckRule::pain);
    Waiver waiver{WaiverId{1}, stop.key, stop.measure, u"\u200B\u2060"_qs};
    EXPECT_FALSE(findingOf(desk.check({&waiver, 1}), CheckRule::pain).wavedThrough);
    waiver.note = u"cleared"_qs;
    EXPECT_TRUE(findingOf(desk.check({&waiver, 1}), CheckRule::pain).wavedThrough);
}

TEST(PlanChecks, MinorsGetNoMaximalAttempts)
{
    for (const QString &line : {u"1x1 @9.5"_qs, u"1x1 95kg"_qs, u"3x3 @10"_qs, u"1xAMRAP 60%"_qs,
             u"1x1 0RIR"_qs, u"1x5+ 60%"_qs}) {
        ChecksDesk desk;
        desk.plan(0, "comp", line);
        EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::maximalAttempt)));
        desk.lifter.birthYear = 2009;
        EXPECT_EQ(findingOf(desk.check(), CheckRule::maximalAttempt).severity, Severity::stop);
    }
}

TEST(PlanChecks, WithoutAnEstimateMinorsGetNoMaximalAttemptsEither)
{
    for (const QString &line :
        {u"3x3 @10"_qs, u"1xAMRAP 80%"_qs, u"1x1 0RIR"_qs, u"1x1 95%"_qs, u"1x1 60kg"_qs}) {
        ChecksDesk desk;
        desk.lifter.birthYear = 2011;
        desk.bench.estimate.standing = strength::Standing::noData;
        desk.plan(0, "comp", line);
        EXPECT_EQ(findingOf(desk.check(), CheckRule::maximalAttempt).severity, Severity::stop)
            << line.toStdString();
    }
}

TEST(PlanChecks, NovicesGetNoMaximalAttempts)
{
    ChecksDesk desk;
    desk.plan(0, "comp", u"1x1 @9.5"_qs);
    desk.lifter.trainingSince = kMonday.addDays(-300);
    EXPECT_EQ(findingOf(desk.check(), CheckRule::maximalAttempt).severity, Severity::stop);
    desk.lifter.trainingSince = kMonday.addYears(-1);
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::maximalAttempt)));
}

TEST(PlanChecks, AMinorsHardWeekIsPointedOut)
{
    ChecksDesk desk;
    desk.plan(0, "comp", u"3x5 @9"_qs);
    EXPECT_THAT(desk.rules(), Not(Contains(CheckRule::hardForBeginner)));
    desk.lifter.birthYear = 2011;
    EXPECT_EQ(findingOf(desk.check(), CheckRule::hardForBeginner).severity, Severity::warning);
    EXPECT_EQ(findingOf(desk.check(), CheckRule::hardForBeginner).measure, 9.0);
}

TEST(PlanChecks, AFindingWavedThroughComesBackWhenItGetsWorse)
{
    ChecksDesk desk;
    desk.plan(0, "off_chest_pause", u"1x5 @7"_qs);
    const auto newId = [] { return WaiverId{7}; };
    const Edit waived = waive(desk.check().front(), u"technique day"_qs, {}, newId);
    EXPECT_THAT(waived.waivers.before, IsEmpty());
    const Waiver waiver = waived.waivers.after.at(0);
    EXPECT_EQ(waiver.id, WaiverId{7});
    EXPECT_EQ(desk.check({&waiver, 1}).front().wavedThrough, u"technique day"_qs);
    desk.cards[0].day = kMonday.addDays(1); // moved within the week: still the same
    EXPECT_TRUE(desk.check({&waiver, 1}).front().wavedThrough);
    desk.cards[0].setLine = u"1x6 @7"_qs;
    const Finding worse = desk.check({&waiver, 1}).front();
    EXPECT_FALSE(worse.wavedThrough);
    const Edit again = waive(worse, u"still"_qs, {&waiver, 1}, [] { return WaiverId{8}; });
    EXPECT_EQ(again.waivers.before, std::vector{waiver});
    EXPECT_EQ(again.waivers.after.at(0).id, waiver.id);
    EXPECT_GT(again.waivers.after.at(0).measure, waiver.measure);
    EXPECT_EQ(takeUp(worse, {&waiver, 1}).waivers, (RowChange<Waiver>{{waiver}, {}}));
    EXPECT_TRUE(takeUp(worse, {}).isEmpty());
}

TEST(PlanChecks, AStopIsAcceptedWithWordsOnly)
{
    ChecksDesk desk;
    desk.lifter.birthYear = 2011;
    desk.plan(0, "comp", u"1x1 @10"_qs);
    const auto newId = [] { return WaiverId{7}; };
    const Finding stop = findingOf(desk.check(), CheckRule::maximalAttempt);
    EXPECT_TRUE(needsNote(stop));
    Waiver waiver =
        waive(stop, u"attempts under the trainer's eyes"_qs, {}, newId).waivers.after[0];
    EXPECT_TRUE(
        findingOf(desk.check({&waiver, 1}), CheckRule::maximalAttempt).wavedThrough.has_value());
    waiver.note = u"  "_qs; // as an older roster may hold
    EXPECT_FALSE(
        findingOf(desk.check({&waiver, 1}), CheckRule::maximalAttempt).wavedThrough.has_value());
    Finding warning = stop;
    warning.severity = Severity::warning;
    EXPECT_FALSE(needsNote(warning));
}

TEST(OpenStops, AreThoseThatNobodyHasAcceptedWithTheirDayAndWords)
{
    ChecksDesk desk;
    desk.lifter.name = u"Ada"_qs;
    desk.feels(-1).pain = PainFlag{BodyArea::shoulders, {}};
    desk.plan(0, "comp", u"3x3 80kg"_qs);
    desk.plan(2, "comp", u"3x3 80kg"_qs);
    const auto found = desk.check();
    const auto estimateOf = [](Lift) -> const LiftEstimate * { return nullptr; };
    const auto resolved = resolveCards(
        desk.cards, {desk.lifter, builtInCatalogue(), estimateOf, desk.checkIns, {}, {}});
    const std::vector<OpenStop> stops = openStops(found, desk.lifter, resolved);
    ASSERT_EQ(stops.size(), 2u);
    EXPECT_EQ(stops[0].day, kMonday);
    EXPECT_EQ(stops[1].day, kMonday.addDays(2));
    EXPECT_TRUE(words(stops[0]).startsWith(u"Ada, "_qs)) << words(stops[0]).toStdString();
    EXPECT_TRUE(words(stops[0]).endsWith(stops[0].finding.words));
    EXPECT_EQ(stopNotes(stops)[1].day, kMonday.addDays(2));
    EXPECT_TRUE(stopNotes(stops)[1].words.endsWith(stops[1].finding.words));

    qint64 id = 0;
    const Edit edit =
        accept(stops, u"seen by the physician"_qs, {}, [&id] { return WaiverId{++id}; });
    ASSERT_EQ(edit.waivers.after.size(), 2u);
    EXPECT_EQ(edit.waivers.after[1].note, u"seen by the physician"_qs);
    EXPECT_THAT(openStops(desk.check(edit.waivers.after), desk.lifter, resolved), IsEmpty());
}

TEST(PlanChecks, CardsThatCannotBeReadAreLeftToTheBoard)
{
    ChecksDesk desk;
    desk.plan(0, "comp", u"heavy"_qs);
    EXPECT_THAT(desk.rules(), IsEmpty());
}

TEST(PlanChecks, RulesHaveWordsForFiles)
{
    for (int rule = 0; rule <= int(CheckRule::noCompetitionLift); ++rule)
        EXPECT_EQ(fromFileWord<CheckRule>(fileWord(CheckRule(rule))), CheckRule(rule));
    EXPECT_FALSE(fromFileWord<CheckRule>(u"other"_qs));
}
