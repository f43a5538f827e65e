#include "ui/board/drop_target.h"

#include "tests/ui/board/board_roster.h"

#include <gmock/gmock.h>

using namespace ui;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

class DropTargetTest : public testing::Test
{
protected:
    core::CardId put(const char *code, BoardPlace place, const QString &setLine)
    {
        return plan.add(roster.variation(code), place, setLine);
    }
    std::vector<std::string> cards() const
    {
        std::vector<std::string> all;
        for (const QString &card : roster.cards())
            all.push_back(card.toStdString());
        return all;
    }
    std::string landingAt(BoardPlace gap)
    {
        target.moveTo(gap);
        return target.landing().toStdString();
    }

    /// Whether the plan shows what it would if it read and resolved the whole week now.
    bool isAsResolvedAnew()
    {
        const WeekPlan anew(
            roster.session, roster.estimates, roster.insights, roster.history, roster.selection);
        for (size_t day = 0; day < core::kWeekDays; ++day)
            if (plan.view().days[day].cards != anew.view().days[day].cards)
                return false;
        return plan.view().tonnage == anew.view().tonnage
            && plan.resolved().size() == anew.resolved().size();
    }

    BoardRoster roster;
    WeekPlan plan{
        roster.session, roster.estimates, roster.insights, roster.history, roster.selection};
    ui::DropTarget target{plan};
};

} // namespace

TEST_F(DropTargetTest, AVariationLandsAsItWasTold)
{
    put("comp", {2, 0}, QStringLiteral("5x5 100kg"));
    ASSERT_TRUE(target.enter(mimeOf(roster.variation("feet_up")).get()));
    const std::string told = landingAt({2, 1});
    EXPECT_THAT(told, HasSubstr(" kg"));
    const core::CardId landed = target.drop(ui::DropTarget::Drop::move);
    EXPECT_EQ(plan.places().placeOf(landed), (BoardPlace{2, 1}));
    const LineView line = plan.view().days[2].cards[1].lines[0];
    EXPECT_EQ(told, (line.sets + QStringLiteral(": ") + line.load).toStdString());
    EXPECT_FALSE(target.gap());
}

TEST_F(DropTargetTest, EachDaySaysWhatTheLifterLastHadByThen)
{
    put("close_grip", {2, 0}, QStringLiteral("5x4 @7.5"));
    ASSERT_TRUE(target.enter(mimeOf(roster.variation("close_grip")).get()));
    EXPECT_THAT(landingAt({0, 0}), HasSubstr("3x5 @8"));
    EXPECT_THAT(landingAt({4, 0}), HasSubstr("5x4 @7.5"));
    target.drop(ui::DropTarget::Drop::move);
    EXPECT_THAT(cards(), ElementsAre("close_grip 2:0 5x4 @7.5", "close_grip 4:0 5x4 @7.5"));
}

TEST_F(DropTargetTest, OnlyAnotherGapIsNews)
{
    ASSERT_TRUE(target.enter(mimeOf(roster.variation("comp")).get()));
    EXPECT_TRUE(target.moveTo({0, 0}));
    EXPECT_FALSE(target.moveTo({0, 0}));
    EXPECT_TRUE(target.moveTo({0, 1}));
    target.leave();
    EXPECT_FALSE(target.gap());
    EXPECT_TRUE(target.landing().isEmpty());
    EXPECT_FALSE(target.drop(ui::DropTarget::Drop::move).isValid());
    EXPECT_THAT(cards(), IsEmpty());
}

TEST_F(DropTargetTest, ACardIsMovedOrCopied)
{
    const core::CardId first = put("comp", {0, 0}, QStringLiteral("1x1 @8"));
    put("feet_up", {0, 1}, QStringLiteral("3x8 @7"));
    ASSERT_TRUE(target.enter(mimeOf(first).get()));
    target.moveTo({0, 2});
    EXPECT_EQ(target.drop(ui::DropTarget::Drop::move), first);
    EXPECT_THAT(cards(), ElementsAre("feet_up 0:0 3x8 @7", "comp 0:1 1x1 @8"));
    ASSERT_TRUE(target.enter(mimeOf(first).get()));
    target.moveTo({3, 0});
    EXPECT_NE(target.drop(ui::DropTarget::Drop::copy), first);
    EXPECT_THAT(cards(), ElementsAre("feet_up 0:0 3x8 @7", "comp 0:1 1x1 @8", "comp 3:0 1x1 @8"));
}

TEST_F(DropTargetTest, TheWeekIsResolvedAsIfNothingHadBeenDraggedOverIt)
{
    // Sets above on the day tire: each card's loads depend on what stands there with it.
    const core::CardId first = put("comp", {2, 0}, QStringLiteral("5x5 @9"));
    put("feet_up", {2, 1}, QStringLiteral("3x5 @8"));
    ASSERT_TRUE(target.enter(mimeOf(roster.variation("close_grip")).get()));
    for (const BoardPlace gap : {BoardPlace{2, 0}, BoardPlace{2, 1}, BoardPlace{4, 0}})
        EXPECT_NE(landingAt(gap), "");
    target.leave();
    put("comp", {0, 0}, QStringLiteral("1x1 @8"));
    EXPECT_TRUE(isAsResolvedAnew()) << "after a drag that went away";

    ASSERT_TRUE(target.enter(mimeOf(roster.variation("close_grip")).get()));
    landingAt({2, 0});
    ASSERT_TRUE(target.drop(ui::DropTarget::Drop::move).isValid());
    EXPECT_TRUE(isAsResolvedAnew()) << "after a drop above others";

    ASSERT_TRUE(target.enter(mimeOf(first).get()));
    landingAt({4, 0});
    EXPECT_EQ(target.drop(ui::DropTarget::Drop::move), first);
    EXPECT_TRUE(isAsResolvedAnew()) << "after a move to another day";

    ASSERT_TRUE(target.enter(mimeOf(first).get()));
    landingAt({2, 1});
    ASSERT_TRUE(roster.session.undo());
    EXPECT_TRUE(isAsResolvedAnew()) << "after an undo under a drag";
    target.leave();

    core::Lifter lighter = *plan.lifter();
    core::Edit edit;
    edit.lifters.before = {lighter};
    lighter.unit = core::Unit::pound;
    lighter.gear = core::usualGear(lighter.unit);
    edit.lifters.after = {lighter};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Other plates"), edit));
    EXPECT_TRUE(isAsResolvedAnew()) << "after a change of what the loads depend on";
}

TEST_F(DropTargetTest, ACardOfAnotherWeekAndForeignDataLandNowhere)
{
    const core::CardId card = put("comp", {0, 0}, QStringLiteral("1x1 @8"));
    roster.selection.setWeekOf(roster.monday.addDays(7));
    ASSERT_TRUE(target.enter(mimeOf(card).get()));
    EXPECT_EQ(landingAt({0, 0}), "");
    EXPECT_FALSE(target.drop(ui::DropTarget::Drop::move).isValid());
    EXPECT_THAT(cards(), ElementsAre("comp 0:0 1x1 @8"));

    QMimeData text;
    text.setText(QStringLiteral("4x3 @8"));
    EXPECT_FALSE(target.enter(&text));
    roster.selection.setLifter({});
    EXPECT_FALSE(target.enter(mimeOf(roster.variation("comp")).get()));
}
