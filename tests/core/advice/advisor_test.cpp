#include "core/advice/advisor.h"

#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>
#include <numeric>
#include <rapidcheck/gtest.h>

using namespace core;
using namespace tests;
using testing::Contains;
using testing::IsEmpty;
using testing::Not;

namespace {

/// A grown lifter with a year of log, and what the tests change about them.
struct AdvisorDesk
{
    Lifter lifter;
    std::vector<Variation> catalogue = builtInCatalogue();
    std::vector<Card> cards;
    std::vector<LoggedSession> sessions;
    std::optional<CheckIn> checkIn;
    std::optional<LiftEstimate> estimate;

    explicit AdvisorDesk(TouchStyle style)
    {
        lifter.touchStyle = style;
        lifter.birthYear = 1995;
        for (int back = 365; back > 3; back -= 3) // rotating, so that nothing was done yesterday
            sessions.push_back(sessionOf(kDay.addDays(-back),
                {setOf(id("comp"), 100, 3, 8.0), setOf(id("close_grip"), 90, 5, 8.0),
                    setOf(id("off_chest_pause"), 95, 2, 8.0), setOf(id("feet_up"), 85, 6, 7.0)}));
    }

    VariationId id(const char *code) const { return idOf(code); }

    Ranking rank(int reps, std::optional<double> rpe = std::nullopt, Lift lift = Lift::bench) const
    {
        return core::rankVariations({lift, reps, rpe},
            {lifter, catalogue, kDay, cards, sessions, said(), estimate ? &*estimate : nullptr});
    }

    const std::vector<CheckIn> &said() const
    {
        m_said.clear();
        if (checkIn)
            m_said = {*checkIn};
        return m_said;
    }
    mutable std::vector<CheckIn> m_said;

    void feel(std::map<BodyArea, int> soreness)
    {
        checkIn.emplace();
        checkIn->day = kDay;
        checkIn->soreness = std::move(soreness);
    }
    void hurts(std::optional<BodyArea> area)
    {
        if (!checkIn)
            feel({});
        checkIn->pain = PainFlag{area, QStringLiteral("wrist")};
    }

    const Variation &of(const Advice &advice) const
    {
        return catalogue[size_t(advice.variation.value - 1)];
    }
    std::vector<std::string> order(const Ranking &ranking) const
    {
        std::vector<std::string> codes;
        for (const Advice &advice : ranking.advice)
            codes.push_back(of(advice).code.toStdString());
        return codes;
    }
    std::vector<std::string> top(const Ranking &ranking, size_t count) const
    {
        std::vector<std::string> codes = order(ranking);
        codes.resize(std::min(count, codes.size()));
        return codes;
    }
};

const Advice &adviceOn(const AdvisorDesk &desk, const Ranking &ranking, const char *code)
{
    for (const Advice &advice : ranking.advice)
        if (advice.variation == desk.id(code))
            return advice;
    throw std::invalid_argument(code);
}

double pointsFor(const Advice &advice, AdviceTerm::About about)
{
    double points = 0.0;
    for (const AdviceTerm &term : advice.terms)
        points += term.about == about ? term.points : 0.0;
    return points;
}

rc::Gen<AdvisorDesk> anyDesk()
{
    return rc::gen::exec([] {
        AdvisorDesk desk(
            *rc::gen::element(TouchStyle::undecided, TouchStyle::soft, TouchStyle::sinking));
        if (*rc::gen::arbitrary<bool>())
            desk.sessions.clear();
        desk.lifter.birthYear = *rc::gen::inRange(1960, 2012);
        if (*rc::gen::arbitrary<bool>())
            desk.lifter.meetDate = kDay.addDays(*rc::gen::inRange(-10, 60));
        std::map<BodyArea, int> soreness;
        for (const BodyArea area : kBodyAreas)
            if (*rc::gen::arbitrary<bool>())
                soreness[area] = *rc::gen::inRange(1, 6);
        desk.feel(soreness);
        return desk;
    });
}

} // namespace

// Facts of the trade, common practice, no source.

TEST(Advisor, SoftTouchFreshAndHeavyCallsForOffChestPauseAndATempoLeadRep)
{
    const AdvisorDesk desk(TouchStyle::soft);
    for (const int reps : {2, 3}) {
        const Ranking ranking = desk.rank(reps);
        EXPECT_THAT(
            desk.top(ranking, 2), testing::UnorderedElementsAre("off_chest_pause", "tempo_4_2_0"));
        EXPECT_EQ(adviceOn(desk, ranking, "tempo_4_2_0").leadReps, 1);
        EXPECT_EQ(adviceOn(desk, ranking, "off_chest_pause").leadReps, 0);
    }
    EXPECT_THAT(desk.top(desk.rank(1), 1), testing::ElementsAre("off_chest_pause"));
}

TEST(Advisor, SoreBackOrLegsCallForFeetUp)
{
    for (const TouchStyle style : {TouchStyle::soft, TouchStyle::sinking, TouchStyle::undecided})
        for (const BodyArea area : {BodyArea::back, BodyArea::legs})
            for (const int reps : {1, 2, 3, 5, 8}) {
                AdvisorDesk desk(style);
                desk.feel({{area, 2}});
                EXPECT_THAT(desk.top(desk.rank(reps), 1), testing::ElementsAre("feet_up"))
                    << "reps " << reps << ", sore " << words(area).toStdString();
            }
}

TEST(Advisor, FiveRepsPutNeitherTempoNorOffChestOnTop)
{
    for (const TouchStyle style : {TouchStyle::soft, TouchStyle::sinking, TouchStyle::undecided}) {
        const AdvisorDesk desk(style);
        const Ranking ranking = desk.rank(5);
        EXPECT_THAT(desk.top(ranking, 3), Not(Contains("off_chest_pause")));
        EXPECT_THAT(desk.top(ranking, 3), Not(Contains("tempo_4_2_0")));
        EXPECT_LT(pointsFor(adviceOn(desk, ranking, "tempo_4_2_0"), AdviceTerm::About::reps), 0.0);
    }
}

TEST(Advisor, ASinkingTouchGetsTheLongPauseWhenHeavy)
{
    EXPECT_THAT(AdvisorDesk(TouchStyle::sinking).top(AdvisorDesk(TouchStyle::sinking).rank(3), 1),
        testing::ElementsAre("long_pause"));
}

TEST(Advisor, FreshAndHeavyKeepsFeetUpDown)
{
    const AdvisorDesk desk(TouchStyle::undecided);
    EXPECT_LT(
        pointsFor(adviceOn(desk, desk.rank(2), "feet_up"), AdviceTerm::About::freshness), 0.0);
    EXPECT_EQ(
        pointsFor(adviceOn(desk, desk.rank(6), "feet_up"), AdviceTerm::About::freshness), 0.0);
}

TEST(Advisor, YesterdaysSquatsAndDeadliftsCountUntilTheLifterSaysOtherwise)
{
    AdvisorDesk desk(TouchStyle::soft);
    const QDate yesterday = kDay.addDays(-1);
    const double before = adviceOn(desk, desk.rank(5), "feet_up").score;
    desk.cards = {cardOf(1, yesterday, 0, desk.id("squat"), QStringLiteral("5x5 @8"))};
    const double planned = adviceOn(desk, desk.rank(5), "feet_up").score;
    EXPECT_GT(planned, before);

    // Planned, but another session was logged in its place: it was not done.
    AdvisorDesk missed = desk;
    missed.sessions.push_back(sessionOf(yesterday, {setOf(desk.id("board_5cm"), 90, 5, 6.0)}));
    EXPECT_EQ(adviceOn(missed, missed.rank(5), "feet_up").score, before);

    AdvisorDesk done = missed;
    done.sessions.back().sets.push_back(setOf(desk.id("deadlift"), 200, 3, 9.0));
    EXPECT_GT(adviceOn(done, done.rank(5), "feet_up").score, before);

    done.feel({{BodyArea::back, 5}, {BodyArea::legs, 4}});
    EXPECT_EQ(adviceOn(done, done.rank(5), "feet_up").score, before);
}

TEST(Advisor, NearTheMeetCompetitionBenchLeadsAndNothingNewComesIn)
{
    AdvisorDesk desk(TouchStyle::soft);
    desk.lifter.meetDate = kDay.addDays(6);
    const Ranking ranking = desk.rank(1);
    EXPECT_THAT(desk.top(ranking, 1), testing::ElementsAre("comp"));
    EXPECT_LT(pointsFor(adviceOn(desk, ranking, "board_5cm"), AdviceTerm::About::meet), 0.0);

    desk.lifter.meetDate = kDay.addDays(-1); // over
    EXPECT_EQ(pointsFor(adviceOn(desk, desk.rank(1), "comp"), AdviceTerm::About::meet), 0.0);
}

TEST(Advisor, AFullWeekTurnsAwayWhatCostsMuch)
{
    AdvisorDesk desk(TouchStyle::soft);
    const double before = adviceOn(desk, desk.rank(1), "tempo_4_2_0").score;
    desk.cards = {cardOf(1, kDay.addDays(2), 0, desk.id("comp"), QStringLiteral("30x2 @7"))};
    EXPECT_LT(adviceOn(desk, desk.rank(1), "tempo_4_2_0").score, before);
}

TEST(Advisor, AWeakOwnRatioSpeaksForAVariationOnceItIsSure)
{
    AdvisorDesk desk(TouchStyle::undecided);
    LiftEstimate estimate;
    estimate.rows = {desk.id("comp"), desk.id("close_grip")};
    estimate.estimate.variations = {{{1.0, 1.0, 1.0}, {}, 50}, {{0.90, 0.88, 0.92}, {}, 20}};
    desk.estimate = estimate;
    const auto about = AdviceTerm::About::ownRatio;
    EXPECT_GT(pointsFor(adviceOn(desk, desk.rank(5), "close_grip"), about), 0.0); // usual: 0.95
    desk.estimate->estimate.variations[1].ratio = {0.90, 0.80, 1.0};
    EXPECT_LT(pointsFor(adviceOn(desk, desk.rank(5), "close_grip"), about), 0.0);
}

TEST(Advisor, PainAsksToStopAndToRefer)
{
    AdvisorDesk desk(TouchStyle::soft);
    desk.hurts(BodyArea::shoulders);
    const Ranking shoulders = desk.rank(3);
    ASSERT_THAT(shoulders.cautions, Not(IsEmpty()));
    EXPECT_TRUE(shoulders.cautions.front().contains(QStringLiteral("Stop")));
    EXPECT_TRUE(shoulders.cautions.front().contains(QStringLiteral("physician")));
    // The board works the shoulders less, and close grip too; less is no way round pain.
    EXPECT_THAT(shoulders.advice, IsEmpty());
    desk.hurts(BodyArea::elbows); // dumbbells are easier on elbows, but they are no way round pain
    EXPECT_THAT(desk.rank(8).advice, IsEmpty());

    desk.hurts(BodyArea::legs);
    EXPECT_THAT(desk.order(desk.rank(3)), testing::UnorderedElementsAre("feet_up", "floor_press"));
    desk.hurts(std::nullopt);
    EXPECT_THAT(desk.rank(3).advice, IsEmpty());
    desk.hurts(BodyArea::elbows);
    for (const Lift lift : {Lift::squat, Lift::deadlift})
        EXPECT_THAT(desk.rank(3, {}, lift).advice, IsEmpty()) << "the arms hold the bar";
}

TEST(Advisor, APainOfTheWeekBeforeStandsUntilItIsAnswered)
{
    AdvisorDesk desk(TouchStyle::soft);
    desk.hurts(BodyArea::chest);
    desk.checkIn->day = kDay.addDays(-40);
    EXPECT_THAT(desk.rank(3).advice, IsEmpty());
    desk.checkIn->pain.reset();
    desk.checkIn->isPainFree = true;
    EXPECT_THAT(desk.rank(3).advice, Not(IsEmpty()));
}

TEST(Advisor, SorenessNeverSpeaksForAHeavierBar)
{
    for (const BodyArea area : kBodyAreas) {
        AdvisorDesk desk(TouchStyle::undecided);
        const double board = adviceOn(desk, desk.rank(3), "board_5cm").score;
        const double boxSquat =
            adviceOn(desk, desk.rank(5, {}, Lift::squat), "box_squat_high").score;
        desk.feel({{area, 1}});
        EXPECT_LE(adviceOn(desk, desk.rank(3), "board_5cm").score, board);
        EXPECT_LE(adviceOn(desk, desk.rank(5, {}, Lift::squat), "box_squat_high").score, boxSquat);
    }
    AdvisorDesk desk(TouchStyle::undecided);
    desk.feel({{BodyArea::shoulders, 1}});
    EXPECT_GT(pointsFor(adviceOn(desk, desk.rank(5), "close_grip"), AdviceTerm::About::freshness),
        pointsFor(adviceOn(desk, desk.rank(5), "wide_grip"), AdviceTerm::About::freshness))
        << "sore shoulders: narrower first (common practice, no source)";
}

TEST(Advisor, TheSetLineKeepsWithinTheBoundsOfTheRanking)
{
    AdvisorDesk desk(TouchStyle::undecided);
    const auto line = [&desk](int reps, std::optional<double> rpe) {
        const Ranking ranking = desk.rank(reps, rpe);
        return adviceSetLine(ranking.advice.front(), {Lift::bench, reps, rpe}, ranking);
    };
    EXPECT_EQ(line(5, {}), QStringLiteral("3x5 @8"));
    EXPECT_EQ(line(1, 9.5), QStringLiteral("3x1 @9.5"));
    desk.lifter.birthYear = kDay.year() - 16;
    EXPECT_EQ(line(1, 9.5), QStringLiteral("3x3 @8")) << "neither singles nor RPE 9.5";
    desk.lifter.birthYear.reset();
    desk.lifter.isAdult = true;
    desk.lifter.trainingSince = kDay.addDays(-100);
    EXPECT_EQ(line(2, 7.0), QStringLiteral("3x3 @7"));
}

TEST(Advisor, SpeedGoesByAShareOfTheMaxAndAssistanceIsNoAnswerToASlotOfTheLift)
{
    AdvisorDesk desk(TouchStyle::undecided);
    const Ranking ranking = desk.rank(3, 8.0);
    bool sawSpeed = false;
    for (const Advice &advice : ranking.advice) {
        const Variation &variation = *find(builtInCatalogue(), advice.variation);
        EXPECT_FALSE(variation.assistance) << variation.code.toStdString();
        const QString line = adviceSetLine(advice, {Lift::bench, 3, 8.0}, ranking);
        EXPECT_EQ(line.endsWith(u'%'), variation.code == u"speed") << line.toStdString();
        if (variation.code == u"speed") {
            sawSpeed = true;
            EXPECT_EQ(line, QStringLiteral("3x3 60%"));
        }
    }
    EXPECT_TRUE(sawSpeed);
}

TEST(Advisor, MinorsAndNovicesGetNoMaximalAttempts)
{
    AdvisorDesk minor(TouchStyle::soft);
    minor.lifter.birthYear = kDay.year() - 16;
    EXPECT_EQ(minor.rank(1, 10.0).mostRpe, 8.0) << "two in reserve, as the caution says";
    EXPECT_THAT(minor.rank(1, 10.0).cautions, Not(IsEmpty()));

    AdvisorDesk novice(TouchStyle::soft);
    novice.lifter.trainingSince = kDay.addDays(-364);
    EXPECT_LE(novice.rank(1, 10.0).mostRpe.value(), 8.0);
    novice.lifter.trainingSince = kDay.addYears(-1);
    EXPECT_FALSE(novice.rank(1, 10.0).mostRpe);

    AdvisorDesk fresh(TouchStyle::soft);
    fresh.sessions.erase(fresh.sessions.begin(), fresh.sessions.end() - 10);
    EXPECT_FALSE(fresh.rank(1, 10.0).mostRpe) << "new to the file is no novice";

    AdvisorDesk tired(TouchStyle::soft);
    tired.feel({});
    tired.checkIn->sleep = tired.checkIn->stress = 1;
    EXPECT_EQ(tired.rank(1, 10.0).mostRpe, 9.0);

    EXPECT_FALSE(AdvisorDesk(TouchStyle::soft).rank(1, 10.0).mostRpe);
}

TEST(Advisor, RetiredVariationsAndOtherLiftsStayOut)
{
    AdvisorDesk desk(TouchStyle::soft);
    for (Variation &v : desk.catalogue)
        v.retired = v.id == desk.id("off_chest_pause");
    EXPECT_THAT(desk.order(desk.rank(2)), Not(Contains("off_chest_pause")));
    EXPECT_THAT(desk.order(desk.rank(3, {}, Lift::squat)), Contains("squat"));
}

TEST(Advisor, ASlotWithoutRepsIsTheCallersBug)
{
    EXPECT_THROW((void)AdvisorDesk(TouchStyle::soft).rank(0), std::invalid_argument);
}

RC_GTEST_PROP(AdvisorProperty, TheScoreIsTheSumOfItsReasonsAndOrdersTheList, ())
{
    const AdvisorDesk desk = *anyDesk();
    const Ranking ranking = desk.rank(*rc::gen::inRange(1, 13));
    RC_ASSERT(!ranking.advice.empty());
    for (size_t i = 0; i < ranking.advice.size(); ++i) {
        const Advice &advice = ranking.advice[i];
        double sum = 0.0;
        for (const AdviceTerm &term : advice.terms) {
            RC_ASSERT(term.points != 0.0);
            RC_ASSERT(term.words.endsWith(u'.'));
            sum += term.points;
        }
        RC_ASSERT(std::abs(sum - advice.score) < 1e-9);
        RC_ASSERT(!advice.terms.empty());
        // In brackets: RapidCheck looks at both sides of a bare ||.
        RC_ASSERT((i == 0 || ranking.advice[i - 1].score >= advice.score));
    }
}

RC_GTEST_PROP(AdvisorProperty, PainNeverYieldsAnythingHeavier, ())
{
    AdvisorDesk desk = *anyDesk();
    const int reps = *rc::gen::inRange(1, 13);
    const Ranking well = desk.rank(reps);
    desk.hurts(*rc::gen::element(std::optional<BodyArea>(), std::optional(BodyArea::back),
        std::optional(BodyArea::legs), std::optional(BodyArea::chest),
        std::optional(BodyArea::shoulders), std::optional(BodyArea::elbows)));
    const Ranking inPain = desk.rank(reps);

    const auto heaviest = [&desk](const Ranking &ranking) {
        return std::accumulate(ranking.advice.begin(), ranking.advice.end(), 0.0,
            [&desk](double most, const Advice &a) { return std::max(most, desk.of(a).ratio); });
    };
    RC_ASSERT(heaviest(inPain) <= std::min(heaviest(well), 1.0));
    RC_ASSERT(inPain.mostRpe.has_value());
    RC_ASSERT(*inPain.mostRpe <= well.mostRpe.value_or(10.0));
    for (const Advice &advice : inPain.advice)
        RC_ASSERT(core::works(desk.of(advice), desk.checkIn->pain->area.value()) == false);
}

TEST(Advisor, InPainNothingAboveCompetitionLoadsIsBearable)
{
    AdvisorDesk desk(TouchStyle::soft);
    desk.hurts(BodyArea::legs);
    Variation &feetUp = desk.catalogue[size_t(desk.id("feet_up").value - 1)];
    desk.catalogue[size_t(desk.id("floor_press").value - 1)].retired = true;
    feetUp.ratio = 1.0;
    EXPECT_THAT(desk.order(desk.rank(3)), testing::ElementsAre("feet_up"));
    feetUp.ratio = 1.01;
    EXPECT_THAT(desk.rank(3).advice, IsEmpty());
}

TEST(Advisor, ALeadRepNeedsARepToFollowAndACompetitionLift)
{
    AdvisorDesk desk(TouchStyle::soft);
    EXPECT_EQ(adviceOn(desk, desk.rank(1), "tempo_4_2_0").leadReps, 0);
    EXPECT_EQ(adviceOn(desk, desk.rank(2), "tempo_4_2_0").leadReps, 1);
    for (Variation &v : desk.catalogue)
        v.competition = false;
    EXPECT_EQ(adviceOn(desk, desk.rank(2), "tempo_4_2_0").leadReps, 0);
}

TEST(Advisor, WithoutAVariationOfTheLiftItSaysSo)
{
    AdvisorDesk desk(TouchStyle::soft);
    std::erase_if(desk.catalogue, [](const Variation &v) { return v.lift == Lift::squat; });
    const Ranking none = desk.rank(3, {}, Lift::squat);
    EXPECT_THAT(none.advice, IsEmpty());
    ASSERT_EQ(none.cautions.size(), 1);
    EXPECT_TRUE(none.cautions[0].contains(QStringLiteral("no variation of this lift")));
}

TEST(Advisor, VariationsOfTheSameScoreStandInTheOrderOfTheCatalogue)
{
    AdvisorDesk desk(TouchStyle::soft);
    for (Variation &v : desk.catalogue) // all alike but for their names
        v = [&v] {
            Variation plain;
            plain.id = v.id;
            plain.code = v.code;
            plain.name = v.name;
            return plain;
        }();
    desk.sessions.clear();
    std::vector<std::string> codes;
    for (const Variation &v : desk.catalogue)
        codes.push_back(v.code.toStdString());
    EXPECT_EQ(desk.order(desk.rank(5)), codes);
}
