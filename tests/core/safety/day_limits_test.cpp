#include "core/safety/day_limits.h"

#include "core/safety/pain_place.h"
#include "core/safety/unknown_age.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

// The rule is common practice without a published source: its bounds are held here, one by one.

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

struct Limits : testing::Test
{
    Limits() { lifter.id = {1}; }

    CheckIn &said(int daysAgo)
    {
        CheckIn checkIn;
        checkIn.lifter = lifter.id;
        checkIn.day = kDay.addDays(-daysAgo);
        checkIns.push_back(checkIn);
        return checkIns.back();
    }
    void hurt(int daysAgo, std::optional<BodyArea> area, const QString &words = {})
    {
        said(daysAgo).pain = PainFlag{area, words};
    }
    [[nodiscard]] DayLimits limits() const { return limitsOn(lifter, kDay, checkIns); }

    Lifter lifter;
    std::vector<CheckIn> checkIns;
};

SetEffort effort(std::optional<double> rpe, std::optional<double> share = {}, int reps = 3)
{
    static const Variation kBench = [] {
        Variation bench;
        bench.work = usualWork(Lift::bench);
        return bench;
    }();
    SetEffort set;
    set.variation = &kBench;
    set.reps = reps;
    set.rpe = rpe;
    set.shareOfMax = share;
    return set;
}

} // namespace

TEST_F(Limits, WithoutAnythingSaidAnAdultMayGoMaximal)
{
    EXPECT_TRUE(limits().mayGoMaximal());
    EXPECT_TRUE(limits().pains.empty());
    EXPECT_TRUE(whyWithheld(limits(), effort(10.0)).isEmpty());
    EXPECT_TRUE(whyNoMaximal(limits()).isEmpty());
}

TEST_F(Limits, PainStandsUntilALaterCheckInSaysNo)
{
    hurt(400, BodyArea::chest);
    EXPECT_THAT(limits().noMaximal, ElementsAre(NoMaximal::pain));
    EXPECT_EQ(limits().pains.front().said, kDay.addDays(-400));
    said(3).sleep = 4; // not asked about pain
    EXPECT_EQ(limits().pains.size(), 1u);
    said(2).isPainFree = true;
    EXPECT_TRUE(limits().pains.empty());
    EXPECT_TRUE(limits().mayGoMaximal());
    hurt(1, BodyArea::elbows);
    ASSERT_EQ(limits().pains.size(), 1u) << "the answer was about the one before";
    EXPECT_EQ(limits().pains.front().flag.area, BodyArea::elbows);
}

TEST_F(Limits, AnotherPainDoesNotTakeTheFirstOneAway)
{
    hurt(5, BodyArea::chest);
    hurt(3, BodyArea::elbows);
    hurt(1, BodyArea::chest);
    ASSERT_EQ(limits().pains.size(), 2u);
    EXPECT_EQ(limits().pains[0].flag.area, BodyArea::chest) << "the latest first, one a place";
    EXPECT_EQ(limits().pains[0].said, kDay.addDays(-1));
    EXPECT_EQ(limits().pains[1].flag.area, BodyArea::elbows);
}

TEST_F(Limits, WhatIsSaidLaterOrByOthersDoesNotCount)
{
    hurt(-1, BodyArea::chest);
    said(0).lifter = {2};
    checkIns.back().pain = PainFlag{BodyArea::back, {}};
    EXPECT_TRUE(limits().pains.empty());
    checkIns.front().day = kDay;
    EXPECT_EQ(limits().pains.size(), 1u) << "the day itself counts";
    said(-1).isPainFree = true;
    EXPECT_EQ(limits().pains.size(), 1u) << "tomorrow's answer does not";
}

TEST_F(Limits, LowReadinessIsOfTheDayAlone)
{
    said(0).sleep = 2;
    EXPECT_THAT(limits().noMaximal, ElementsAre(NoMaximal::lowReadiness));
    checkIns[0].stress = 3; // 2.5 is usual
    EXPECT_THAT(limits().noMaximal, IsEmpty());
    checkIns[0].stress = 1;
    checkIns[0].day = kDay.addDays(-1);
    EXPECT_THAT(limits().noMaximal, IsEmpty());
}

TEST_F(Limits, MinorsAndNovicesGetNoneOnWhateverDay)
{
    lifter.birthYear = kDay.year() - 18; // the whole year of the 18th birthday
    EXPECT_THAT(limits().noMaximal, ElementsAre(NoMaximal::minor));
    EXPECT_TRUE(limits().isBeginner());
    lifter.birthYear = kDay.year() - 19;
    EXPECT_TRUE(limits().mayGoMaximal());
    lifter.trainingSince = kDay.addYears(-1).addDays(1);
    EXPECT_THAT(limits().noMaximal, ElementsAre(NoMaximal::novice));
    EXPECT_TRUE(limits().isBeginner());
    lifter.trainingSince = kDay.addYears(-1);
    EXPECT_TRUE(limits().mayGoMaximal());
    hurt(0, BodyArea::legs);
    EXPECT_FALSE(limits().isBeginner()) << "pain is of the day";
}

TEST_F(Limits, AnUnknownAgeCountsAsAdultAndIsReported)
{
    EXPECT_TRUE(limits().isAgeUnknown);
    EXPECT_TRUE(limits().mayGoMaximal());
    lifter.isAdult = true;
    EXPECT_FALSE(limits().isAgeUnknown);
    lifter.isAdult = false;
    lifter.birthYear = 2012;
    EXPECT_FALSE(limits().isAgeUnknown);
    lifter.isAdult = true;
    EXPECT_FALSE(limits().mayGoMaximal()) << "the year goes before the word";
}

TEST(Maximal, IsAnEffortAboveNineAShareFrom95PercentOrASetWithoutAnEnd)
{
    EXPECT_FALSE(isMaximal(effort(9.0)));
    EXPECT_TRUE(isMaximal(effort(9.5)));
    EXPECT_TRUE(isMaximal(effort(9.5, {}, 8))) << "whatever the reps";
    EXPECT_FALSE(isMaximal(effort({}, 0.9499)));
    EXPECT_TRUE(isMaximal(effort({}, 0.95)));
    EXPECT_TRUE(isMaximal(effort(6.0, 0.96))) << "the harder of the two";
    SetEffort open = effort(6.0, 0.6);
    open.isOpenEnded = true;
    EXPECT_TRUE(isMaximal(open));
}

TEST(Maximal, OneOrTwoRepsOfWhichNobodyKnowsHowHardMayBe)
{
    EXPECT_TRUE(isMaximal(effort({}, {}, 1)));
    EXPECT_TRUE(isMaximal(effort({}, {}, 2)));
    EXPECT_FALSE(isMaximal(effort({}, {}, 3)));
}

TEST_F(Limits, PainWithholdsWhatWorksTheAreaInItsLeadOrAfterIt)
{
    Variation feetUp;
    feetUp.work = usualWork(Lift::bench);
    feetUp.work[BodyArea::legs] = Work::none;
    SetEffort set = effort(6.0);
    hurt(0, BodyArea::legs);
    EXPECT_TRUE(whyWithheld(limits(), set).contains(QStringLiteral("refer")));
    set.variation = &feetUp;
    EXPECT_TRUE(whyWithheld(limits(), set).isEmpty());
    set.lead = effort({}).variation;
    EXPECT_FALSE(whyWithheld(limits(), set).isEmpty()) << "the lead works the legs";
    set.lead = nullptr;
    set.variation = nullptr;
    EXPECT_FALSE(whyWithheld(limits(), set).isEmpty()) << "who knows what it works";
}

TEST_F(Limits, PainWithoutAnAreaMayBeAnywhereAndWithholdsAllUntilItIsNamed)
{
    hurt(3, {}, QStringLiteral("left rib"));
    for (const double rpe : {5.0, 8.0, 9.5}) {
        const QString why = whyWithheld(limits(), effort(rpe));
        EXPECT_TRUE(why.contains(QStringLiteral("left rib")));
        EXPECT_TRUE(why.contains(QStringLiteral("Ask where it hurts")));
        EXPECT_TRUE(why.contains(QLocale().toString(kDay.addDays(-3), QLocale::ShortFormat)));
    }
    Variation sparing;
    for (const BodyArea area : kBodyAreas)
        sparing.work[area] = Work::none;
    EXPECT_TRUE(mayHurt(checkIns[0].pain.value(), sparing));
    checkIns[0].pain->area = BodyArea::legs;
    EXPECT_FALSE(mayHurt(checkIns[0].pain.value(), sparing));
    checkIns[0].pain->area = BodyArea::back;
    EXPECT_FALSE(whyWithheld(limits(), effort(8.0)).contains(QStringLiteral("Ask where")));
}

TEST_F(Limits, APainThatIsWorkedForSureIsNamedBeforeOneWithoutAnArea)
{
    hurt(2, BodyArea::chest);
    hurt(0, {}, QStringLiteral("not said where"));
    EXPECT_FALSE(whyWithheld(limits(), effort(8.0)).contains(QStringLiteral("not said where")));
}

TEST_F(Limits, AnUnknownAgeIsTheReasonUntilItIsSaid)
{
    EXPECT_TRUE(whyNoMaximalYet(limits()).contains(QStringLiteral("age is known")));
    lifter.isAdult = true;
    EXPECT_TRUE(whyNoMaximalYet(limits()).isEmpty());
}

TEST_F(Limits, EachReasonHasItsWords)
{
    QSet<QString> said;
    lifter.birthYear = kDay.year() - 15;
    said << whyNoMaximal(limits());
    lifter.birthYear = 1990;
    lifter.trainingSince = kDay;
    said << whyNoMaximal(limits());
    lifter.trainingSince.reset();
    this->said(0).sleep = 1;
    said << whyNoMaximal(limits());
    hurt(1, BodyArea::back);
    said << whyNoMaximal(limits());
    EXPECT_EQ(said.size(), 4);
    EXPECT_FALSE(said.contains(QString()));
}
