#include "tests/benchmarks/chances.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <tuple>

using namespace benchmarks;

// Guards the chances on few lifters of the train seeds; what is reported comes from more of them
// and the held-out seeds, by the program `chance_report`. The bounds leave room for the luck of
// few.

namespace {

struct ChancesOf : testing::TestWithParam<simulators::Truth>
{
    static core::GivenTenth sum(const core::GivenScore &score, size_t from, size_t to)
    {
        core::GivenScore all{};
        for (size_t tenth = from; tenth < to; ++tenth) {
            all[0].sets += score[tenth].sets;
            all[0].made += score[tenth].made;
            all[0].chance += score[tenth].chance;
        }
        return all[0];
    }

    core::GivenScore first = chancesGiven(GetParam(), kChanceTrain[0], 10).first;
};

} // namespace

TEST_P(ChancesOf, FirstSetsComeAboutAsOftenAsTheyWereTold)
{
    // Unlikely sets, even ones, likely ones and nearly sure ones, each apart.
    for (const auto &[from, to, points] :
        {std::tuple{0, 3, 14.0}, {3, 6, 12.0}, {6, 9, 8.0}, {9, 10, 2.0}}) {
        const core::GivenTenth part = sum(first, size_t(from), size_t(to));
        ASSERT_GE(part.sets, 30) << from;
        EXPECT_NEAR(100.0 * part.made / part.sets, 100.0 * part.chance / part.sets, points)
            << "from " << 10 * from << " to " << 10 * to << " %, sets: " << part.sets;
    }
}

INSTANTIATE_TEST_SUITE_P(Truths, ChancesOf,
    testing::Values(simulators::truths()[0], simulators::truths()[2]),
    [](const auto &truth) { return std::string(truth.param.name); });

TEST(Chances, ATenthIsJudgedFromAHundredSetsOn)
{
    core::GivenScore score{};
    score[4] = {99, 0, 44.55};
    score[7] = {100, 70, 75.0};
    score[8] = {200, 180, 172.0};
    EXPECT_DOUBLE_EQ(worstTenth(score), 5.0);
}

TEST(Chances, SeedsToTuneOnAndToReportOnAreApart)
{
    for (const std::uint64_t seed : kChanceTrain)
        EXPECT_EQ(std::ranges::count(kChanceHeldOut, seed), 0);
}
