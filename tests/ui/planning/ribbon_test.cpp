#include "ui/planning/ribbon.h"

#include <gmock/gmock.h>

using namespace ui;
using testing::AllOf;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

const QDate kMonday(2026, 3, 2);

core::Block block(QDate start, int weeks)
{
    core::Block b;
    b.id = {1};
    b.lifter = {1};
    b.name = QStringLiteral("Strength");
    b.start = start;
    b.weeks = weeks;
    b.deloadWeeks = {weeks};
    return b;
}

core::Card card(QDate day, const QString &setLine)
{
    return {{1}, {1}, day, 0, {1}, setLine, {}};
}

} // namespace

TEST(Ribbon, CountsWhatEachWeekHolds)
{
    const std::vector<core::Card> cards = {card(kMonday, QStringLiteral("4x3 @8")),
        card(kMonday.addDays(6), QStringLiteral("2x5 @7")),
        card(kMonday.addDays(7), QStringLiteral("half writ")),
        card(kMonday.addDays(-1), QStringLiteral("9x9 @7"))};
    const Ribbon ribbon = ribbonOf(kMonday, 3, cards, {}, kMonday.addDays(15), kMonday.addDays(8));
    ASSERT_EQ(ribbon.weeks.size(), 3u);
    EXPECT_EQ(ribbon.weeks[0].lifts, 22);
    EXPECT_EQ(ribbon.weeks[0].cards, 2);
    EXPECT_EQ(ribbon.weeks[1].cards, 1);
    EXPECT_EQ(ribbon.weeks[1].lifts, 0);
    EXPECT_TRUE(ribbon.weeks[1].now);
    EXPECT_TRUE(ribbon.weeks[2].meet);
    EXPECT_FALSE(ribbon.weeks[0].meet);
    EXPECT_THAT(ribbon.blocks, IsEmpty());
}

TEST(Ribbon, AWeekThatIsOverSaysWhatWasDoneOfIt)
{
    const auto week = [](core::WeekOutcome outcome) {
        const Ribbon ribbon =
            ribbonOf(kMonday, 2, {}, {}, {}, kMonday.addDays(8), {{kMonday, outcome}});
        EXPECT_EQ(ribbon.weeks[1].outcome, std::nullopt) << "this week carries no verdict";
        EXPECT_EQ(markOf(ribbon.weeks[1]), WeekMark::none);
        return ribbon.weeks[0];
    };
    const auto words = [](const RibbonWeek &of) { return weekWords(of).toStdString(); };
    EXPECT_EQ(markOf(week({{8, 8, 0}, 0, false})), WeekMark::done);
    EXPECT_THAT(words(week({{8, 8, 0}, 0, false})), HasSubstr("all sets done: 8"));
    EXPECT_EQ(markOf(week({{8, 3, 0}, 0, false})), WeekMark::partly);
    EXPECT_THAT(words(week({{8, 3, 0}, 0, false})), HasSubstr("sets done: 3 of 8"));
    EXPECT_EQ(markOf(week({{8, 0, 0}, 0, false})), WeekMark::leftOut);
    EXPECT_THAT(words(week({{8, 0, 0}, 0, false})), HasSubstr("left out, sets: 8"));
    EXPECT_EQ(markOf(week({{0, 0, 2}, 0, false})), WeekMark::none) << "nothing was planned";
    EXPECT_THAT(words(week({{8, 3, 2}, 1, true})),
        AllOf(HasSubstr("with a rep missed: 1"), HasSubstr("beside the plan: 2"),
            HasSubstr("pain said")));
}

TEST(Ribbon, BlocksAreCutOffWhereItEnds)
{
    const std::vector<core::Block> blocks = {block(kMonday.addDays(-7), 3),
        block(kMonday.addDays(21), 8), block(kMonday.addDays(-70), 2)};
    const Ribbon ribbon = ribbonOf(kMonday, 5, {}, blocks, {}, kMonday);
    ASSERT_EQ(ribbon.blocks.size(), 2u);
    EXPECT_EQ(ribbon.blocks[0].first, 0);
    EXPECT_EQ(ribbon.blocks[0].last, 1);
    EXPECT_EQ(ribbon.blocks[1].first, 3);
    EXPECT_EQ(ribbon.blocks[1].last, 4);
    EXPECT_TRUE(ribbon.weeks[1].deload) << "the third week of the first block";
    EXPECT_FALSE(ribbon.weeks[0].deload);
}

TEST(Ribbon, ABlockMayBeginWithinAWeek)
{
    const std::vector<core::Block> blocks = {block(kMonday.addDays(2), 2)};
    const Ribbon ribbon = ribbonOf(kMonday, 4, {}, blocks, {}, kMonday);
    EXPECT_EQ(ribbon.blocks[0].first, 0);
    EXPECT_EQ(ribbon.blocks[0].last, 2);
    EXPECT_TRUE(ribbon.weeks[1].deload) << "most of its days are in the second week";
    EXPECT_FALSE(ribbon.weeks[2].deload);
}

TEST(Ribbon, StaysWhereItIsWhileTheWeekHasNeighbours)
{
    const QDate first = ribbonStart({}, 10, kMonday);
    EXPECT_EQ(first, kMonday.addDays(-21));
    EXPECT_EQ(ribbonStart(first, 10, kMonday.addDays(7)), first);
    EXPECT_EQ(ribbonStart(first, 10, first.addDays(7)), first);
    EXPECT_NE(ribbonStart(first, 10, first), first);
    EXPECT_NE(ribbonStart(first, 10, first.addDays(63)), first);
}
