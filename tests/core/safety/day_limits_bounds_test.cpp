#include "core/safety/day_limits.h"

#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const QDate kLimitedDay(2026, 3, 4);

CheckIn saidBy(qint64 lifter, int daysAgo)
{
    CheckIn checkIn;
    checkIn.lifter = {lifter};
    checkIn.day = kLimitedDay.addDays(-daysAgo);
    return checkIn;
}

CheckIn hurtsElsewhere(int daysAgo, const QString &where)
{
    CheckIn checkIn = saidBy(1, daysAgo);
    checkIn.pain = PainFlag{{}, where};
    return checkIn;
}

DayLimits limitsBy(const std::vector<CheckIn> &checkIns)
{
    Lifter lifter;
    lifter.id = {1};
    lifter.birthYear = 1990;
    return limitsOn(lifter, kLimitedDay, checkIns);
}

SetEffort setAt(std::optional<double> rpe, std::optional<double> share, int reps)
{
    SetEffort set;
    set.rpe = rpe;
    set.shareOfMax = share;
    set.reps = reps;
    return set;
}

} // namespace

TEST(DayLimitsBounds, ACheckInThatAsksNothingOfReadinessIsNoLowOne)
{
    CheckIn answer = saidBy(1, 0);
    answer.isPainFree = true;
    EXPECT_THAT(limitsBy({answer}).noMaximal, IsEmpty());
    answer.sleep = 2;
    EXPECT_THAT(limitsBy({answer}).noMaximal, ElementsAre(NoMaximal::lowReadiness));
}

TEST(DayLimitsBounds, LowReadinessOfOthersOrOfYesterdayIsNotThatOfTheDay)
{
    CheckIn other = saidBy(2, 0), yesterday = saidBy(1, 1);
    other.sleep = yesterday.sleep = 1;
    EXPECT_TRUE(limitsBy({other}).mayGoMaximal());
    EXPECT_TRUE(limitsBy({yesterday}).mayGoMaximal());
    EXPECT_TRUE(limitsBy({other, yesterday}).mayGoMaximal());
}

TEST(DayLimitsBounds, PainsElsewhereAreToldApartByTheirWords)
{
    const DayLimits two = limitsBy({hurtsElsewhere(3, QStringLiteral("rib")),
        hurtsElsewhere(2, QStringLiteral("neck")), hurtsElsewhere(1, QStringLiteral("rib"))});
    ASSERT_EQ(two.pains.size(), 2u);
    EXPECT_EQ(two.pains[0].flag.words, QStringLiteral("rib"));
    EXPECT_EQ(two.pains[0].said, kLimitedDay.addDays(-1));
    EXPECT_EQ(two.pains[1].flag.words, QStringLiteral("neck"));
}

TEST(DayLimitsBounds, APainInAnAreaIsOneWhateverItsWords)
{
    CheckIn first = saidBy(1, 2), second = saidBy(1, 1);
    first.pain = PainFlag{BodyArea::chest, QStringLiteral("left")};
    second.pain = PainFlag{BodyArea::chest, QStringLiteral("right")};
    const DayLimits one = limitsBy({first, second, hurtsElsewhere(3, QStringLiteral("right"))});
    ASSERT_EQ(one.pains.size(), 2u);
    EXPECT_EQ(one.pains[0].flag.words, QStringLiteral("right"));
    EXPECT_EQ(one.pains[1].flag.area, std::nullopt) << "the same words, but elsewhere";
}

TEST(DayLimitsBounds, FewRepsAreAnAttemptOnlyWhereNeitherEffortNorShareIsKnown)
{
    EXPECT_TRUE(isMaximal(setAt({}, {}, 2)));
    EXPECT_FALSE(isMaximal(setAt(8.0, {}, 1)));
    EXPECT_FALSE(isMaximal(setAt({}, 0.8, 1)));
    EXPECT_FALSE(isMaximal(setAt(9.0, 0.9499, 1)));
    EXPECT_TRUE(isMaximal(setAt(9.0, 0.95, 5)));
    EXPECT_TRUE(isMaximal(setAt(9.5, 0.5, 5)));
}

TEST(DayLimitsBounds, TheMostUrgentReasonIsTheFirst)
{
    Lifter lifter;
    lifter.id = {1};
    lifter.birthYear = kLimitedDay.year() - 15;
    lifter.trainingSince = kLimitedDay.addDays(-10);
    CheckIn all = hurtsElsewhere(0, QStringLiteral("rib"));
    all.sleep = 1;
    EXPECT_THAT(limitsOn(lifter, kLimitedDay, std::vector{all}).noMaximal,
        ElementsAre(NoMaximal::pain, NoMaximal::minor, NoMaximal::novice, NoMaximal::lowReadiness));
}
