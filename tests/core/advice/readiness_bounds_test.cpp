#include "core/advice/readiness_advice.h"
#include "tests/core/plan/plan_rows.h"

#include <QLocale>
#include <gmock/gmock.h>

using namespace core;
using namespace tests;

namespace {

const QDate kAdvisedDay(2026, 3, 4);

struct ReadinessBounds : testing::Test
{
    ReadinessBounds()
    {
        QLocale::setDefault(QLocale::c());
        lifter.id = {1};
        lifter.birthYear = 1990;
        checkIn.lifter = lifter.id;
        checkIn.day = kAdvisedDay;
        effect.sessions = 40;
        effect.lowest = 1.0;
        effect.highest = 5.0;
        effect.usual = {0.0, 0.0};
        effect.covariance = Eigen::Matrix2d::Identity() * 1e-14;
    }

    void sayAll(int answer) { checkIn.sleep = checkIn.stress = checkIn.motivation = answer; }
    [[nodiscard]] ReadinessAdvice advise(const strength::ReadinessEffect *by) const
    {
        return adviseOnReadiness(checkIn, limitsOn(lifter, kAdvisedDay, {&checkIn, 1}), by, lifter,
            cards, builtInCatalogue());
    }
    [[nodiscard]] std::string words() const
    {
        return advise(&effect).words.join(u' ').toStdString();
    }

    Lifter lifter;
    CheckIn checkIn;
    std::vector<Card> cards{cardOf(1, kAdvisedDay, 0, idOf("comp"), u"3x3 @8"_qs)};
    strength::ReadinessEffect effect;
};

using testing::HasSubstr;
using testing::Not;

} // namespace

TEST_F(ReadinessBounds, SaysWhichOfItsReasonsKeepsTheLoads)
{
    sayAll(2); // one point below the middle
    EXPECT_THAT(advise(nullptr).words.join(u' ').toStdString(), HasSubstr("so far: 0."));
    effect.slope = {0.004, 0.004}; // sure, but less than half a per cent
    EXPECT_THAT(words(), HasSubstr("less than half a percent"));
    effect.covariance = Eigen::Matrix2d::Identity() * 0.02 * 0.02;
    EXPECT_THAT(words(), HasSubstr("told from chance"));
    sayAll(4);
    EXPECT_THAT(words(), HasSubstr("told from chance"));
    effect.covariance = Eigen::Matrix2d::Identity() * 1e-14;
    EXPECT_THAT(words(), HasSubstr("less than half a percent"));
    effect.slope = {0.02, 0.02};
    EXPECT_THAT(words(), HasSubstr("stronger than usual, by 2.0 % at least"));
    sayAll(2);
    EXPECT_THAT(words(), HasSubstr("2.0 % weaker than usual"));
}

TEST_F(ReadinessBounds, LowReadinessSpeaksOfTheAttemptWhereNothingElseForbidsIt)
{
    sayAll(2);
    EXPECT_THAT(words(), HasSubstr("leave the maximal attempt"));
    sayAll(3);
    EXPECT_THAT(words(), Not(HasSubstr("leave the maximal attempt")));
    sayAll(2);
    lifter.birthYear = 2011;
    EXPECT_THAT(words(), Not(HasSubstr("leave the maximal attempt"))) << "there is none to leave";
}

TEST_F(ReadinessBounds, SoreAreasAreListedWithAnAndBeforeTheLast)
{
    // Feet-up spares back and legs; nothing spares the wrists of those who press.
    checkIn.soreness = {{BodyArea::legs, 1}};
    EXPECT_THAT(words(), HasSubstr("Sore: legs."));
    checkIn.soreness[BodyArea::back] = 2;
    EXPECT_THAT(words(), HasSubstr("Sore: back and legs."));
    checkIn.soreness[BodyArea::back] = 3;
    EXPECT_THAT(words(), HasSubstr("Sore: legs."));
}

TEST_F(ReadinessBounds, OfTwoThatServeAlikeTheFirstOfTheCatalogueStandsIn)
{
    std::vector<Variation> catalogue = builtInCatalogue();
    Variation second = *find(catalogue, idOf("feet_up"));
    second.id = {999};
    catalogue.push_back(second);
    checkIn.soreness = {{BodyArea::legs, 1}};
    const auto swaps = [&](const std::function<bool(const Card &, VariationId)> &isHeavier) {
        return adviseOnReadiness(checkIn, {}, nullptr, lifter, cards, catalogue, isHeavier).swaps;
    };
    ASSERT_EQ(swaps({}).size(), 1u);
    EXPECT_EQ(swaps({})[0].spares, idOf("feet_up"));
    const auto firstIsHeavier = [](const Card &, VariationId id) { return id == idOf("feet_up"); };
    ASSERT_EQ(swaps(firstIsHeavier).size(), 1u);
    EXPECT_EQ(swaps(firstIsHeavier)[0].spares, VariationId{999});
    cards[0].variation = {998};
    EXPECT_TRUE(swaps({}).empty()) << "who knows what it works";
}

TEST_F(ReadinessBounds, WhatOthersSaidOfTheDayIsNotTheLifters)
{
    LoggedSession session = sessionOf(kAdvisedDay, {});
    sayAll(2);
    checkIn.lifter = {2};
    EXPECT_EQ(readinessOf(session, {&checkIn, 1}), std::nullopt);
    checkIn.lifter = {1};
    EXPECT_EQ(readinessOf(session, {&checkIn, 1}), 2.0);
    checkIn.day = kAdvisedDay.addDays(-1);
    EXPECT_EQ(readinessOf(session, {&checkIn, 1}), std::nullopt);
    session.readiness = 4;
    checkIn = {};
    checkIn.lifter = {1};
    checkIn.day = kAdvisedDay;
    EXPECT_EQ(readinessOf(session, {&checkIn, 1}), 4.0) << "nothing was asked";
}
