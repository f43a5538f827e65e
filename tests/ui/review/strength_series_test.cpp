#include "ui/review/strength_series.h"

#include "core/loads/implied_max.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace ui;
using core::SetEntry;
using testing::ElementsAre;

namespace {

constexpr core::VariationId kCompetition{1};
constexpr core::VariationId kPaused{2};

/// Curve, habit and ratios with round numbers; one week; no readings.
core::LiftEstimate lift()
{
    core::LiftEstimate lift;
    lift.rows = {kCompetition, kPaused};
    lift.priors = {{1.0, 0.0, 1.0}, {0.9, 0.05, 2.0}};
    lift.estimate.curve = {0.03, 1.0};
    lift.estimate.variations.resize(2);
    lift.estimate.variations[0].ratio = {1.0, 1.0, 1.0};
    lift.estimate.variations[1].ratio = {0.8, 0.7, 0.9};
    lift.estimate.weeks = {{20000, {100, 95, 105}, {102, 99, 105}, 12}};
    return lift;
}

SetEntry set(double loadKg, int reps, std::optional<double> rpe, bool failed = false,
    core::VariationId variation = kCompetition)
{
    SetEntry entry;
    entry.variation = variation;
    entry.loadKg = loadKg;
    entry.repsDone = reps;
    entry.rpe = rpe;
    entry.failed = failed;
    return entry;
}

std::vector<core::Variation> catalogue()
{
    core::Variation competition;
    competition.id = kCompetition;
    competition.competition = true;
    core::Variation paused;
    paused.id = kPaused;
    paused.serves = core::Serves::soft;
    return {competition, paused};
}

} // namespace

TEST(ImpliedMax, OfARatedSetCountsRepsAndReserve)
{
    // 3 reps at RPE 8: five were possible, four steps down the curve.
    EXPECT_NEAR(core::impliedMaxKg(lift(), set(100, 3, 8.0), 0, 0), 100 * std::exp(0.12), 1e-9);
    EXPECT_NEAR(core::impliedMaxKg(lift(), set(100, 1, 10.0), 0, 0), 100.0, 1e-9);
}

TEST(ImpliedMax, OfAVariationUsesItsOwnRatioAndRepCost)
{
    EXPECT_NEAR(core::impliedMaxKg(lift(), set(80, 2, 9.0, false, kPaused), 1, 0),
        80 / 0.8 * std::exp(0.03 * 2.0 * 2.0), 1e-9);
}

TEST(ImpliedMax, OfAMissIsTheMostAndOfAnUnratedSetTheLeast)
{
    // Two done and the third missed: three were too many.
    EXPECT_NEAR(
        core::impliedMaxKg(lift(), set(100, 2, 10.0, true), 0, 0), 100 * std::exp(0.06), 1e-9);
    EXPECT_NEAR(core::impliedMaxKg(lift(), set(140, 0, std::nullopt, true), 0, 0), 140.0, 1e-9);
    EXPECT_NEAR(
        core::impliedMaxKg(lift(), set(100, 3, std::nullopt), 0, 0), 100 * std::exp(0.06), 1e-9);
}

TEST(ImpliedMax, TakesHabitAndFatigueOut)
{
    core::LiftEstimate tired = lift();
    tired.estimate.rating.bias = {1.0, 0.5, 1.5}; // says one rep too many
    tired.estimate.setFatigue = 0.01;
    EXPECT_NEAR(
        core::impliedMaxKg(tired, set(100, 3, 8.0), 0, 2), 100 * std::exp(0.09 + 0.02), 1e-9);
}

TEST(StrengthSeries, ShowsWhatWasKnownThenOrNowInTheLiftersUnit)
{
    const auto now = strengthSeries(lift(), catalogue(), Knowledge::now, core::Unit::kilogram);
    EXPECT_THAT(now.weeks, ElementsAre(WeekPoint{20000, 102, 99, 105, 12}));
    const auto then = strengthSeries(lift(), catalogue(), Knowledge::then, core::Unit::kilogram);
    EXPECT_THAT(then.weeks, ElementsAre(WeekPoint{20000, 100, 95, 105, 12}));
    const auto pounds = strengthSeries(lift(), catalogue(), Knowledge::then, core::Unit::pound);
    EXPECT_NEAR(pounds.weeks.front().value, 220.46226, 1e-4); // 100 / 0.45359237
}

TEST(StrengthSeries, SortsReadingsByDayAndNamesTheirKind)
{
    core::LiftEstimate trained = lift();
    core::LoggedSession late, early;
    late.day = QDate(2026, 3, 10);
    late.sets = {set(100, 3, 8.0), set(120, 0, std::nullopt, true)};
    early.day = QDate(2026, 3, 3);
    early.sets = {set(80, 3, 8.0, false, kPaused), set(90, 3, std::nullopt)};
    trained.readings = {late, early};
    const auto series = strengthSeries(trained, catalogue(), Knowledge::now, core::Unit::kilogram);
    std::vector<ReadingKind> kinds;
    for (const ReadingPoint &reading : series.readings)
        kinds.push_back(reading.kind);
    EXPECT_THAT(kinds,
        ElementsAre(ReadingKind::soft, ReadingKind::unrated, ReadingKind::competition,
            ReadingKind::missed));
    EXPECT_EQ(series.readings.front().session, 1);
    EXPECT_EQ(series.readings.back().set, 1);
    EXPECT_EQ(series.readings.front().day, double(core::engineDay(QDate(2026, 3, 3))));
}

TEST(StrengthSeries, IsEmptyWithoutDataAndSkipsUnknownVariations)
{
    EXPECT_TRUE(strengthSeries({}, {}, Knowledge::now, core::Unit::kilogram).weeks.empty());
    core::LiftEstimate trained = lift();
    core::LoggedSession session;
    session.day = QDate(2026, 3, 10);
    session.sets = {set(100, 3, 8.0, false, core::VariationId{99})};
    trained.readings = {session};
    EXPECT_TRUE(strengthSeries(trained, catalogue(), Knowledge::now, core::Unit::kilogram)
                    .readings.empty());
}
