#include "core/log/session_rows.h"

#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

enum : qint64 { comp = 1, feetUp, squat };

std::vector<Variation> catalogue()
{
    std::vector<Variation> all(3);
    all[0].id = {comp};
    all[0].code = QStringLiteral("comp");
    all[0].name = QStringLiteral("Bench press");
    all[0].competition = true;
    all[1].id = {feetUp};
    all[1].code = QStringLiteral("feet_up");
    all[1].name = QStringLiteral("Feet-up bench");
    for (Variation &v : all)
        v.work = usualWork(Lift::bench);
    all[1].work[BodyArea::back] = all[1].work[BodyArea::legs] = Work::none;
    all[2].id = {squat};
    all[2].code = QStringLiteral("squat");
    all[2].lift = Lift::squat;
    all[2].competition = true;
    return all;
}

DaySet asked(qint64 variation, int reps, double loadKg, std::optional<double> rpe = {})
{
    DaySet set;
    set.variation = {variation};
    set.reps = reps;
    set.planKg = set.loadKg = loadKg;
    set.rpe = rpe;
    return set;
}

SetEntry did(qint64 variation, std::optional<int> repsPlanned, double loadKg = 100.0)
{
    SetEntry entry;
    entry.variation = {variation};
    entry.repsPlanned = repsPlanned;
    entry.repsDone = repsPlanned.value_or(5);
    entry.loadKg = loadKg;
    return entry;
}

const std::vector<DaySet> kThreeFives(3, asked(comp, 5, 100.0));

std::vector<SessionRow> rows(const std::vector<DaySet> &planned, const std::vector<SetEntry> &done)
{
    return sessionRows(planned, done, catalogue());
}

constexpr std::nullopt_t none = std::nullopt;

} // namespace

TEST(SessionRows, BeforeTrainingEveryPlannedSetIsOpen)
{
    EXPECT_THAT(rows(kThreeFives, {}),
        ElementsAre(SessionRow{0, none}, SessionRow{1, none}, SessionRow{2, none}));
    EXPECT_THAT(rows({}, {}), IsEmpty());
}

TEST(SessionRows, LoggedSetsAnswerFromTheTop)
{
    EXPECT_THAT(rows(kThreeFives, {did(comp, 5), did(comp, 5, 90.0)}),
        ElementsAre(SessionRow{0, 0}, SessionRow{1, 1}, SessionRow{2, none}));
}

TEST(SessionRows, ASetThatWasLeftOutStaysOpenBetweenOthers)
{
    const std::vector<DaySet> planned{
        asked(comp, 1, 110), asked(comp, 5, 100), asked(feetUp, 8, 80)};
    EXPECT_THAT(rows(planned, {did(comp, 1), did(feetUp, 8)}),
        ElementsAre(SessionRow{0, 0}, SessionRow{1, none}, SessionRow{2, 1}));
}

TEST(SessionRows, AnExtraSetStandsWhereItWasDone)
{
    EXPECT_THAT(rows(kThreeFives, {did(comp, 5), did(comp, none), did(comp, 5)}),
        ElementsAre(SessionRow{0, 0}, SessionRow{none, 1}, SessionRow{1, 2}, SessionRow{2, none}));
}

TEST(SessionRows, ASwapAnswersThePlannedSetOfAsManyRepsOfItsLift)
{
    EXPECT_THAT(rows(kThreeFives, {did(comp, 5), did(feetUp, 5)}),
        ElementsAre(SessionRow{0, 0}, SessionRow{1, 1}, SessionRow{2, none}));
    EXPECT_THAT(rows({asked(comp, 5, 100)}, {did(squat, 5)}),
        ElementsAre(SessionRow{none, 0}, SessionRow{0, none}));
}

TEST(SessionRows, ALogWithoutPlannedRepsAnswersByVariationAndLoad)
{
    EXPECT_THAT(rows(kThreeFives, {did(comp, none, 60.0), did(comp, none, 100.0)}),
        ElementsAre(
            SessionRow{none, 0}, SessionRow{0, 1}, SessionRow{1, none}, SessionRow{2, none}))
        << "a warm-up at 60 kg is not the planned set at 100 kg";
}

TEST(SessionRows, NoSetIsLostWhateverWasDone)
{
    const std::vector<SetEntry> done{did(squat, none), did(comp, 5), did(feetUp, 3),
        did(comp, none), did(comp, 5), did(comp, 5), did(comp, 5)};
    std::vector<size_t> seen;
    std::vector<size_t> planned;
    for (const SessionRow &row : rows(kThreeFives, done)) {
        if (row.done)
            seen.push_back(*row.done);
        if (row.planned)
            planned.push_back(*row.planned);
    }
    EXPECT_THAT(seen, ElementsAre(0, 1, 2, 3, 4, 5, 6));
    EXPECT_THAT(planned, ElementsAre(0, 1, 2));
}

TEST(DaySets, CardsBecomeSetsWithTheirLoads)
{
    Lifter lifter;
    lifter.gear = usualGear(Unit::kilogram);
    const std::vector<Variation> all = catalogue();
    Card lead;
    lead.id = {7};
    lead.variation = {feetUp};
    lead.setLine = QStringLiteral("1+2 80kg");
    Card many;
    many.id = {8};
    many.position = 1;
    many.variation = {comp};
    many.setLine = QStringLiteral("2x5+ 90kg\nnonsense");
    Card fives = many;
    fives.id = {9};
    fives.position = 2;
    fives.setLine = QStringLiteral("2x5+ 90kg");
    lead.setLine = QStringLiteral("1x1+2 80kg");
    const auto sets =
        daySets(resolveCards({lead, many, fives},
                    {lifter, all, [](Lift) { return nullptr; }, noCheckIns(), {}, {}}),
            all, Unit::kilogram);
    ASSERT_THAT(sets, SizeIs(3)) << "a card that cannot be read has none";
    EXPECT_EQ(sets[0].variation, VariationId{comp});
    EXPECT_EQ(sets[0].lead, (LeadReps{{feetUp}, 1}));
    EXPECT_EQ(sets[0].reps, 3);
    EXPECT_EQ(sets[1].card, CardId{9});
    EXPECT_EQ(sets[1].repsText, QStringLiteral("5+"));
    EXPECT_FALSE(sets[1].isExact);
    EXPECT_EQ(asPlanned(sets[1]).repsDone, 0) << "how many went up is for the coach to say";
    EXPECT_EQ(asPlanned(sets[0]).rpe, none);
}

TEST(Shifted, OnlyTheBenchIsRoundedToThePlates)
{
    ReadinessAdvice advice;
    advice.loadFactor = 0.97;
    const PlateTable plates(usualGear(Unit::kilogram));
    const std::vector<DaySet> plan{asked(comp, 5, 100.0), asked(squat, 5, 140.0)};
    const auto lighter = shifted(plan, advice, catalogue(), plates);
    EXPECT_EQ(lighter[0].loadKg, plates.round(97.0).loadKg);
    EXPECT_EQ(lighter[0].planKg, 100.0);
    advice.loadFactor = 1.015;
    EXPECT_LE(*shifted(plan, advice, catalogue(), plates)[0].loadKg, 101.5)
        << "heavier by no more than that";
    EXPECT_EQ(lighter[1].loadKg, 140.0) << "the effect was measured on the bench press";
}

TEST(Shifted, ALighterLoadGoesToTheNearestPlatesAHeavierOneNeverAbove)
{
    ReadinessAdvice advice;
    const PlateTable plates(usualGear(Unit::kilogram));
    const auto by = [&](double factor) {
        advice.loadFactor = factor;
        return *shifted({asked(comp, 5, 100.0)}, advice, catalogue(), plates)[0].loadKg;
    };
    EXPECT_EQ(by(0.964), 97.5) << "96.4 is nearer to 97.5 than to 95";
    EXPECT_EQ(by(0.962), 95.0);
    EXPECT_EQ(by(1.024), 100.0);
    EXPECT_EQ(by(1.026), 102.5);
}

TEST(Shifted, NoSingleMaximalSetOrLoadByHandGoesUp)
{
    ReadinessAdvice advice;
    const PlateTable plates(usualGear(Unit::kilogram));
    DaySet byHand = asked(comp, 5, 100.0);
    byHand.isByHand = true;
    DaySet maximal = asked(comp, 3, 100.0);
    maximal.isMaximal = true;
    const std::vector<DaySet> plan{asked(comp, 2, 100.0), asked(comp, 1, 100.0), byHand, maximal};
    advice.loadFactor = 1.03;
    const auto up = shifted(plan, advice, catalogue(), plates);
    EXPECT_EQ(up[0].loadKg, 102.5);
    for (size_t i = 1; i < up.size(); ++i)
        EXPECT_EQ(up[i].loadKg, 100.0) << i;
    advice.loadFactor = 0.97;
    for (const DaySet &set : shifted(plan, advice, catalogue(), plates))
        EXPECT_EQ(set.loadKg, 97.5) << "down they all go";
}

TEST(SessionRows, ALogWithoutPlannedRepsMayDifferByATenthInLoad)
{
    const std::vector<DaySet> one{asked(comp, 5, 100.0)};
    EXPECT_THAT(rows(one, {did(comp, none, 109.9)}), ElementsAre(SessionRow{0, 0}));
    EXPECT_THAT(rows(one, {did(comp, none, 90.1)}), ElementsAre(SessionRow{0, 0}));
    EXPECT_THAT(
        rows(one, {did(comp, none, 111.0)}), ElementsAre(SessionRow{none, 0}, SessionRow{0, none}));
    EXPECT_THAT(
        rows(one, {did(comp, none, 89.0)}), ElementsAre(SessionRow{none, 0}, SessionRow{0, none}));
}

TEST(SessionRows, TheSamePlannedRepsAnswerBeforeOtherRepsAndOtherRepsBeforeASwap)
{
    const std::vector<DaySet> planned{asked(comp, 3, 110), asked(comp, 5, 100)};
    EXPECT_THAT(rows(planned, {did(comp, 5)}), ElementsAre(SessionRow{0, none}, SessionRow{1, 0}));
    EXPECT_THAT(rows(planned, {did(comp, 8)}), ElementsAre(SessionRow{0, 0}, SessionRow{1, none}));
    EXPECT_THAT(rows({asked(feetUp, 5, 90), asked(comp, 3, 100)}, {did(comp, 5)}),
        ElementsAre(SessionRow{0, none}, SessionRow{1, 0}));
    EXPECT_THAT(rows({asked(feetUp, 3, 90)}, {did(comp, 5)}),
        ElementsAre(SessionRow{none, 0}, SessionRow{0, none}))
        << "another variation with other reps is another set";
}

TEST(AsPlanned, WhatIsWithheldOrOpenIsNotFilledIn)
{
    DaySet set = asked(comp, 5, 100.0);
    set.isExact = false;
    EXPECT_EQ(asPlanned(set).repsDone, 0);
    set.isExact = true;
    EXPECT_EQ(asPlanned(set).repsDone, 5);
    EXPECT_EQ(asPlanned(set).repsPlanned, 5);
    EXPECT_EQ(askedOf(set, catalogue()).reps, 5);
    set.withheld = QStringLiteral("pain");
    set.loadKg.reset();
    EXPECT_EQ(asPlanned(set).repsDone, 0);
    EXPECT_EQ(asPlanned(set).loadKg, 0.0);
}

// Which planned set a logged one answers, where it says so

namespace {

/// Three fives on card 7.
std::vector<DaySet> numbered()
{
    std::vector<DaySet> sets = kThreeFives;
    for (size_t i = 0; i < sets.size(); ++i) {
        sets[i].card = {7};
        sets[i].set = int(i);
    }
    return sets;
}

SetEntry answering(int set, double loadKg = 100.0)
{
    SetEntry entry = did(comp, 5, loadKg);
    entry.answers = {{7}, set};
    return entry;
}

} // namespace

TEST(SessionRows, ASetThatSaysWhatItAnswersGoesWithThat)
{
    EXPECT_THAT(rows(numbered(), {answering(1)}),
        ElementsAre(SessionRow{0, none}, SessionRow{1, 0}, SessionRow{2, none}));
    EXPECT_THAT(rows(numbered(), {answering(0), answering(2)}),
        ElementsAre(SessionRow{0, 0}, SessionRow{1, none}, SessionRow{2, 1}));
}

TEST(SessionRows, WhatItAnswersHoldsThoughTheRepsOrTheVariationAreOthers)
{
    SetEntry other = answering(2);
    other.variation = {feetUp};
    other.repsPlanned = 3;
    EXPECT_THAT(rows(numbered(), {other}),
        ElementsAre(SessionRow{0, none}, SessionRow{1, none}, SessionRow{2, 0}));
}

TEST(SessionRows, WhereTheCardIsGoneItAnswersAsAnyOtherSet)
{
    SetEntry orphan = answering(1);
    orphan.answers->card = {99};
    EXPECT_THAT(rows(numbered(), {orphan}),
        ElementsAre(SessionRow{0, 0}, SessionRow{1, none}, SessionRow{2, none}));
}

TEST(SessionRows, DoneAsPlannedSaysWhatItAnswers)
{
    const SetEntry entry = asPlanned(numbered()[2]);
    EXPECT_EQ(entry.answers, (PlannedSetRef{{7}, 2}));
}

TEST(SessionRows, TheSetsOfACardAreCountedThroughItsLines)
{
    Lifter lifter;
    lifter.gear = usualGear(Unit::kilogram);
    const auto all = catalogue();
    Card card;
    card.id = {7};
    card.variation = {comp};
    card.setLine = QStringLiteral("2x5 100kg\n1x3 80kg");
    const auto sets = daySets(
        resolveCards({card}, {lifter, all, [](Lift) { return nullptr; }, noCheckIns(), {}, {}}),
        all, Unit::kilogram);
    ASSERT_THAT(sets, SizeIs(3));
    EXPECT_EQ(sets[1].set, 1);
    EXPECT_EQ(sets[2].set, 2);
    EXPECT_EQ(sets[2].line, 1u);
}
