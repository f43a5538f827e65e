#include "core/advice/readiness_advice.h"

#include <QLocale>
#include <cmath>
#include <gtest/gtest.h>

using namespace core;

namespace {

struct ReadinessAdvised : testing::Test
{
    ReadinessAdvised()
    {
        lifter.id = {1};
        comp.id = {1};
        comp.name = QStringLiteral("Competition bench");
        comp.competition = true;
        feetUp.id = {2};
        feetUp.name = QStringLiteral("Feet-up bench");
        feetUp.ratio = 0.95;
        for (Variation *v : {&comp, &feetUp, &incline})
            v->work = usualWork(Lift::bench);
        feetUp.work[BodyArea::back] = feetUp.work[BodyArea::legs] = Work::none;
        incline.id = {3};
        incline.name = QStringLiteral("Incline bench");
        incline.ratio = 0.8;
        incline.work[BodyArea::back] = incline.work[BodyArea::legs] = Work::none;
        card.id = {7};
        card.variation = comp.id;
        checkIn.lifter = lifter.id;
        checkIn.day = QDate(2026, 3, 2);
        effect.sessions = 40;
        effect.lowest = 1.0;
        effect.highest = 5.0;
        effect.usual = {0.0, 0.5};
        effect.slope = {0.01, 0.01};
        effect.covariance = Eigen::Matrix2d::Identity() * 0.002 * 0.002;
    }

    [[nodiscard]] ReadinessAdvice advise() const
    {
        const Variation catalogue[] = {comp, incline, feetUp};
        const DayLimits limits = limitsOn(lifter, checkIn.day, {&checkIn, 1});
        return adviseOnReadiness(checkIn, limits, &effect, lifter, {&card, 1}, catalogue);
    }
    void sayAll(int answer) { checkIn.sleep = checkIn.stress = checkIn.motivation = answer; }

    Lifter lifter;
    Variation comp, feetUp, incline;
    Card card;
    CheckIn checkIn;
    strength::ReadinessEffect effect;
};

} // namespace

TEST_F(ReadinessAdvised, LowReadinessTakesOffWhatTheModelSupports)
{
    sayAll(2);
    const ReadinessAdvice advice = advise();
    EXPECT_NEAR(advice.loadFactor, std::exp(0.01 * (2 - 3.5)), 1e-12);
    EXPECT_LT(advice.measured->low90, advice.loadFactor);
}

TEST_F(ReadinessAdvised, HighReadinessAddsNoMoreThanTheIntervalsNearEnd)
{
    sayAll(5);
    const ReadinessAdvice advice = advise();
    EXPECT_GT(advice.loadFactor, 1.0);
    EXPECT_DOUBLE_EQ(advice.loadFactor, advice.measured->low90);
    effect.slope = {0.05, 0.05};
    EXPECT_DOUBLE_EQ(advise().loadFactor, kMostIncrease) << "whatever was measured";
    EXPECT_TRUE(advise().words.first().contains(QStringLiteral("switch")));
}

TEST_F(ReadinessAdvised, MinorsAndNovicesGetNothingHeavier)
{
    sayAll(5);
    lifter.birthYear = checkIn.day.year() - 17;
    EXPECT_DOUBLE_EQ(advise().loadFactor, 1.0);
    lifter.birthYear = 1990;
    EXPECT_GT(advise().loadFactor, 1.0);
    lifter.trainingSince = checkIn.day.addYears(-1).addDays(1);
    EXPECT_DOUBLE_EQ(advise().loadFactor, 1.0);
    lifter.trainingSince = checkIn.day.addYears(-1);
    EXPECT_GT(advise().loadFactor, 1.0);
    sayAll(1);
    lifter.birthYear = checkIn.day.year() - 17;
    EXPECT_LT(advise().loadFactor, 1.0) << "lighter is for all";
}

TEST_F(ReadinessAdvised, ASwapWorksTheSoreAreaLessNothingThatHurtsAndIsNeverHeavier)
{
    card.variation = feetUp.id; // 0.95
    checkIn.soreness[BodyArea::shoulders] = 1;
    comp.work[BodyArea::shoulders] = Work::some; // 1.0: less for the shoulders, but heavier
    EXPECT_TRUE(advise().swaps.empty());
    incline.work[BodyArea::shoulders] = Work::some; // 0.8
    ASSERT_EQ(advise().swaps.size(), 1u);
    EXPECT_EQ(advise().swaps[0].spares, incline.id) << "though the other is nearer";
    comp.ratio = feetUp.ratio;
    EXPECT_EQ(advise().swaps[0].spares, comp.id) << "as heavy is not heavier";
    checkIn.pain = PainFlag{BodyArea::back, {}};
    ASSERT_EQ(advise().swaps.size(), 1u);
    EXPECT_EQ(advise().swaps[0].spares, incline.id) << "the other works the back, which hurts";
    incline.work[BodyArea::back] = Work::some;
    EXPECT_TRUE(advise().swaps.empty()) << "some is too much for what hurts";
}

TEST_F(ReadinessAdvised, WhatNoPlateCanShowIsNoShift)
{
    effect.slope = {0.002, 0.002};
    effect.covariance = Eigen::Matrix2d::Identity() * 0.0002 * 0.0002;
    for (const int answer : {2, 5}) {
        sayAll(answer);
        const ReadinessAdvice advice = advise();
        EXPECT_DOUBLE_EQ(advice.loadFactor, 1.0);
        EXPECT_TRUE(advice.words.first().contains(QStringLiteral("less than half a percent")));
    }
}

TEST_F(ReadinessAdvised, WithoutSupportTheLoadsStay)
{
    sayAll(2);
    effect.covariance = Eigen::Matrix2d::Identity() * 0.02 * 0.02;
    EXPECT_DOUBLE_EQ(advise().loadFactor, 1.0);
    effect.covariance = Eigen::Matrix2d::Identity() * 0.002 * 0.002;
    effect.sessions = 3;
    EXPECT_DOUBLE_EQ(advise().loadFactor, 1.0);
    EXPECT_EQ(advise().measured, std::nullopt);
    EXPECT_TRUE(advise().words.first().contains(QStringLiteral("Not enough to say")));
}

TEST_F(ReadinessAdvised, PainIsNeverHeavierNorMaximalAndAsksToStopAndRefer)
{
    for (const int answer : {1, 3, 5}) {
        sayAll(answer);
        checkIn.pain = PainFlag{BodyArea::shoulders, {}};
        const ReadinessAdvice advice = advise();
        EXPECT_TRUE(advice.stop);
        EXPECT_LE(advice.loadFactor, 1.0) << answer;
        EXPECT_TRUE(advice.words.first().contains(QStringLiteral("refer")));
        EXPECT_FALSE(advice.words.join(u' ').contains(QStringLiteral("loads heavier")));
    }
}

TEST_F(ReadinessAdvised, ASoreBackGetsTheNearestVariationThatSparesIt)
{
    checkIn.soreness = {{BodyArea::back, 1}, {BodyArea::legs, 4}};
    const ReadinessAdvice advice = advise();
    ASSERT_EQ(advice.swaps.size(), 1u);
    EXPECT_EQ(advice.swaps[0].card, card.id);
    EXPECT_EQ(advice.swaps[0].spares, feetUp.id);
    // Sore shoulders: every bench works them, so there is no swap to offer.
    checkIn.soreness = {{BodyArea::shoulders, 1}};
    EXPECT_TRUE(advise().swaps.empty());
    // The back hurts: that is not a matter of swapping.
    checkIn.soreness = {{BodyArea::back, 1}};
    checkIn.pain = PainFlag{BodyArea::back, {}};
    EXPECT_TRUE(advise().swaps.empty());
}

TEST_F(ReadinessAdvised, ACheckInGoesBeforeTheSessionsOwnWord)
{
    LoggedSession session;
    session.lifter = lifter.id;
    session.day = checkIn.day;
    session.readiness = 4;
    EXPECT_EQ(readinessOf(session, {}), 4.0);
    sayAll(2);
    EXPECT_EQ(readinessOf(session, {&checkIn, 1}), 2.0);
    EXPECT_EQ(readinessByDay({&session, 1}, {&checkIn, 1}),
        (std::map<QDate, double>{{session.day, 2.0}}));
    checkIn.day = checkIn.day.addDays(1);
    EXPECT_EQ(readinessOf(session, {&checkIn, 1}), 4.0);
    EXPECT_EQ(readinessByDay({&session, 1}, {&checkIn, 1}),
        (std::map<QDate, double>{{session.day, 4.0}, {checkIn.day, 2.0}}));
}

TEST_F(ReadinessAdvised, ASessionsReadingIsItsFormWithWhatWasSaidBeforeIt)
{
    LiftEstimate lift;
    const auto trained = [&](int day, std::optional<int> said) {
        LoggedSession session;
        session.lifter = lifter.id;
        session.day = checkIn.day.addDays(day);
        session.readiness = said;
        lift.readings.push_back(session);
        lift.estimate.form.push_back({engineDay(session.day), {1.0 + 0.01 * day, 0.9, 1.1}});
    };
    trained(0, 4);
    trained(2, std::nullopt);
    trained(4, 1);
    lift.estimate.formSd = 0.02;
    sayAll(2); // on the first day, and goes before the session's own word
    const auto readings = readinessReadings(lift, {&checkIn, 1});
    ASSERT_EQ(readings.size(), 2u) << "of one day nothing is known";
    EXPECT_EQ(readings[0].readiness, 2.0);
    EXPECT_EQ(readings[0].factor.value, 1.0);
    EXPECT_EQ(readings[0].formSd, 0.02);
    EXPECT_EQ(readings[1].readiness, 1.0);
    EXPECT_EQ(readings[1].factor.value, 1.04);
    checkIn.lifter = {9};
    EXPECT_EQ(readinessReadings(lift, {&checkIn, 1})[0].readiness, 4.0) << "somebody else's";
    lift.estimate.formSd = 0.0;
    EXPECT_TRUE(readinessReadings(lift, {}).empty()) << "without an estimate";
}

TEST_F(ReadinessAdvised, TenSessionsAreTheLeastThatLoadsAreMovedBy)
{
    sayAll(2);
    effect.sessions = 10;
    EXPECT_LT(advise().loadFactor, 1.0);
    effect.sessions = 9;
    EXPECT_EQ(advise().loadFactor, 1.0);
    EXPECT_TRUE(advise().words.first().contains(QStringLiteral("so far: 9.")));
}

TEST_F(ReadinessAdvised, AShiftIsHalfAPerCentOrMore)
{
    effect.usual = {0.0, 0.0};
    effect.covariance = Eigen::Matrix2d::Identity() * 1e-14;
    const auto factor = [this](int said, double share) {
        sayAll(said); // one point off the middle
        effect.slope = Eigen::Vector2d::Constant(std::abs(std::log(share)));
        return advise().loadFactor;
    };
    EXPECT_NEAR(factor(2, 0.9949), 0.9949, 1e-6);
    EXPECT_EQ(factor(2, 0.9951), 1.0);
    EXPECT_NEAR(factor(4, 1.0051), 1.0051, 1e-6);
    EXPECT_EQ(factor(4, 1.0049), 1.0);
}

TEST_F(ReadinessAdvised, TheShiftIsSaidWithItsInterval)
{
    QLocale::setDefault(QLocale::c());
    sayAll(2);
    const QString words = advise().words.first();
    const strength::Interval factor = *advise().measured;
    const auto percent = [](double f) { return QString::number(100.0 * (1.0 - f), 'f', 1); };
    EXPECT_TRUE(words.contains(
        QStringLiteral("%1 % weaker than usual (%2 to %3 %)")
            .arg(percent(factor.value), percent(factor.high90), percent(factor.low90))))
        << words.toStdString();
}

TEST_F(ReadinessAdvised, OfWhatSparesAnAreaTheLiftersTouchComesFirstThenTheNearest)
{
    checkIn.soreness = {{BodyArea::back, 1}, {BodyArea::legs, 2}};
    lifter.touchStyle = TouchStyle::soft;
    feetUp.serves = Serves::sinking;
    EXPECT_EQ(advise().swaps.at(0).spares, incline.id) << "farther, but for this touch";
    EXPECT_TRUE(advise().swaps[0].words.contains(QStringLiteral("back and legs")));
    incline.serves = Serves::sinking;
    EXPECT_EQ(advise().swaps.at(0).spares, feetUp.id);
    feetUp.retired = true;
    EXPECT_EQ(advise().swaps.at(0).spares, incline.id);
    incline.lift = Lift::squat;
    EXPECT_TRUE(advise().swaps.empty());
}
