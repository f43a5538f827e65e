#include "core/plan/block_edits.h"

#include "core/plan/plan_edits.h"
#include "core/plan/template.h"
#include "core/plan/touch_swap.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

Block block(qint64 id, QDate start, int weeks = 2)
{
    Block b;
    b.id = {id};
    b.lifter = {1};
    b.name = QStringLiteral("Block %1").arg(id);
    b.start = start;
    b.weeks = weeks;
    return b;
}

/// A lifter's plan that edits are carried out on.
struct Desk
{
    std::vector<Card> cards;
    std::vector<Block> blocks;
    qint64 lastCard = 100;

    [[nodiscard]] PlanOfLifter plan() const { return {cards, blocks}; }
    NewCardId newId()
    {
        return [this] { return CardId{++lastCard}; };
    }

    void carryOut(const BlockEdit &done)
    {
        EXPECT_TRUE(done.refused.isEmpty()) << done.refused.toStdString();
        carryOut(done.edit);
    }
    void carryOut(const Edit &edit)
    {
        for (const Card &card : edit.cards.before)
            EXPECT_EQ(std::erase(cards, card), 1u);
        cards.insert(cards.end(), edit.cards.after.begin(), edit.cards.after.end());
        for (const Block &gone : edit.blocks.before)
            EXPECT_EQ(std::erase(blocks, gone), 1u);
        blocks.insert(blocks.end(), edit.blocks.after.begin(), edit.blocks.after.end());
    }
    [[nodiscard]] std::vector<std::string> on(int day) const
    {
        std::vector<std::string> lines;
        for (int position = 0; const Card &card : cardsOn(cards, kMonday.addDays(day))) {
            EXPECT_EQ(card.position, position++);
            lines.push_back(card.setLine.toStdString());
        }
        return lines;
    }
};

Desk twoWeeks()
{
    Desk desk;
    desk.blocks = {block(1, kMonday)};
    desk.cards = {cardOf(1, kMonday, 0, idOf("comp"), u"1x1 @8"_qs),
        cardOf(2, kMonday, 1, idOf("feet_up"), u"3x8 @7"_qs),
        cardOf(3, kMonday.addDays(9), 0, idOf("comp"), u"4x3 @8"_qs)};
    return desk;
}

} // namespace

TEST(BlockEdits, BlocksOfALifterDoNotOverlap)
{
    Desk desk = twoWeeks();
    EXPECT_FALSE(putBlock(block(2, kMonday.addDays(13)), desk.plan()).refused.isEmpty());
    EXPECT_FALSE(putBlock(block(2, kMonday.addDays(-13)), desk.plan()).refused.isEmpty());
    desk.carryOut(putBlock(block(2, kMonday.addDays(14)), desk.plan()));
    EXPECT_EQ(desk.blocks.size(), 2u);
    EXPECT_EQ(blockOn(desk.blocks, kMonday.addDays(13))->id, BlockId{1});
    EXPECT_EQ(blockOn(desk.blocks, kMonday.addDays(14))->id, BlockId{2});
    EXPECT_EQ(blockOn(desk.blocks, kMonday.addDays(28)), nullptr);
}

TEST(BlockEdits, AnUnchangedBlockIsNoStep)
{
    const Desk desk = twoWeeks();
    EXPECT_TRUE(putBlock(desk.blocks.front(), desk.plan()).edit.isEmpty());
    Block unsound = desk.blocks.front();
    unsound.deloadWeeks = {3};
    EXPECT_FALSE(putBlock(unsound, desk.plan()).refused.isEmpty());
}

TEST(BlockEdits, ABlockIsShiftedWithItsCards)
{
    Desk desk = twoWeeks();
    desk.carryOut(shiftBlock(desk.blocks.front(), desk.plan(), 2));
    EXPECT_THAT(desk.on(0), IsEmpty());
    EXPECT_THAT(desk.on(2), ElementsAre("1x1 @8", "3x8 @7"));
    EXPECT_THAT(desk.on(11), ElementsAre("4x3 @8"));
    EXPECT_EQ(desk.blocks.front().start, kMonday.addDays(2));
    EXPECT_EQ(desk.cards.size(), 3u);
    desk.carryOut(shiftBlock(desk.blocks.front(), desk.plan(), -9)); // onto its own days too
    EXPECT_THAT(desk.on(2), ElementsAre("4x3 @8"));
    EXPECT_THAT(desk.on(-7), ElementsAre("1x1 @8", "3x8 @7"));
}

TEST(BlockEdits, WhatStandsWhereABlockComesToStaysAboveIt)
{
    Desk desk = twoWeeks();
    desk.cards.push_back(cardOf(9, kMonday.addDays(16), 0, idOf("comp"), u"5x5 70%"_qs));
    const BlockEdit shifted = shiftBlock(desk.blocks.front(), desk.plan(), 7);
    EXPECT_EQ(shifted.remarks.size(), 1);
    desk.carryOut(shifted);
    EXPECT_THAT(desk.on(16), ElementsAre("5x5 70%", "4x3 @8"));
}

TEST(BlockEdits, ABlockIsCopiedAndRemoved)
{
    Desk desk = twoWeeks();
    desk.blocks.front().templateId = {5};
    Block copy = copyOf(desk.blocks.front(), desk.blocks, {2});
    EXPECT_EQ(copy.start, kMonday.addDays(14));
    EXPECT_FALSE(copy.templateId.isValid());
    desk.carryOut(copyBlock(desk.blocks.front(), copy, desk.plan(), desk.newId()));
    EXPECT_THAT(desk.on(14), ElementsAre("1x1 @8", "3x8 @7"));
    EXPECT_THAT(desk.on(23), ElementsAre("4x3 @8"));
    desk.carryOut(removeBlock(desk.blocks.back(), desk.plan(), true));
    EXPECT_EQ(desk.cards.size(), 3u);
    desk.carryOut(removeBlock(desk.blocks.front(), desk.plan(), false));
    EXPECT_EQ(desk.cards.size(), 3u);
    EXPECT_TRUE(desk.blocks.empty());
}

TEST(BlockEdits, AShorterCopyHasTheCardsOfItsWeeks)
{
    Desk desk = twoWeeks();
    Block copy = copyOf(desk.blocks.front(), desk.blocks, {2});
    copy.weeks = 1;
    desk.carryOut(copyBlock(desk.blocks.front(), copy, desk.plan(), desk.newId()));
    EXPECT_THAT(desk.on(14), ElementsAre("1x1 @8", "3x8 @7"));
    EXPECT_THAT(desk.on(23), IsEmpty());
    copy.start = kMonday; // on the block itself
    EXPECT_FALSE(copyBlock(desk.blocks.front(), copy, desk.plan(), desk.newId()).refused.isEmpty());
}

TEST(BlockEdits, ABlockIsWhatTheTemplateMadeOfItSays)
{
    BlockTemplate made;
    made.id = {5};
    const Edit edit = keepTemplate(made, block(1, kMonday));
    EXPECT_EQ(edit.templates, (RowChange<BlockTemplate>{{}, {made}}));
    EXPECT_EQ(edit.blocks.before, std::vector{block(1, kMonday)});
    EXPECT_EQ(edit.blocks.after.at(0).templateId, made.id);
}

TEST(BlockEdits, DaysAreCopiedToAnotherLifter)
{
    Desk desk = twoWeeks();
    std::vector<Card> target = {cardOf(50, kMonday.addDays(7), 0, idOf("comp"), u"2x2 @9"_qs)};
    target.front().lifter = {2};
    const Edit copied = copyDays(desk.cards, kMonday, 7, target, {2}, kMonday.addDays(7),
        OnOccupiedDays::replace, desk.newId());
    ASSERT_EQ(copied.cards.after.size(), 2u);
    EXPECT_EQ(copied.cards.before, target);
    for (const Card &card : copied.cards.after)
        EXPECT_EQ(card.lifter, LifterId{2});
}

TEST(BlockEdits, ATemplateBecomesABlockAndIsLaidAnew)
{
    Desk desk = twoWeeks();
    BlockTemplate first = templateOf(u"Heavy"_qs, desk.blocks.front(), desk.cards,
        builtInCatalogue(), usualTouchSwaps(builtInCatalogue()));
    first.id = {7};
    EXPECT_EQ(first.weeks, 2);

    Lifter lifter;
    lifter.id = {1};
    Block later = block(3, kMonday.addDays(28));
    desk.carryOut(
        layTemplate(first, later, lifter, desk.plan(), {}, builtInCatalogue(), desk.newId()));
    EXPECT_THAT(desk.on(28), ElementsAre("1x1 @8", "3x8 @7"));
    EXPECT_EQ(desk.blocks.back().templateId, first.id);

    // The coach changes one card; the next version changes another.
    for (Card &card : desk.cards)
        if (card.day == kMonday.addDays(28) && card.position == 1)
            card.setLine = u"2x8 @7"_qs;
    BlockTemplate second = first;
    second.id = {8};
    second.version = 2;
    second.cards[0].setLine = u"1x1 @9"_qs;
    const std::vector<BlockTemplate> templates = {first, second};
    desk.carryOut(layTemplate(second, desk.blocks.back(), lifter, desk.plan(), templates,
        builtInCatalogue(), desk.newId()));
    EXPECT_THAT(desk.on(28), ElementsAre("1x1 @9", "2x8 @7"));
    EXPECT_EQ(desk.blocks.back().templateId, second.id);
    EXPECT_EQ(latestVersions(templates).size(), 1u);
    EXPECT_EQ(latestVersions(templates).front().version, 2);
}

TEST(BlockEdits, ATemplateIsLaidOnTheBlockThatCarriesItOrOnANewOne)
{
    BlockTemplate layout, earlier;
    layout.id = {8};
    layout.name = earlier.name = QStringLiteral("Heavy");
    earlier.id = {7};
    const std::vector<BlockTemplate> templates{earlier, layout};
    std::vector<Block> blocks{block(1, kMonday)};
    const auto blockAt = [&](QDate start) {
        return blockFor(layout, blocks, templates, start, [] { return BlockId{9}; });
    };
    EXPECT_EQ(blockAt(kMonday).id, BlockId{9}) << "another block, which was not laid by it";
    blocks[0].templateId = earlier.id;
    EXPECT_EQ(blockAt(kMonday.addDays(13)), blocks[0]) << "an earlier version lies there";
    const Block fresh = blockAt(kMonday.addDays(14));
    EXPECT_EQ(fresh.id, BlockId{9});
    EXPECT_EQ(fresh.name, layout.name);
    EXPECT_EQ(fresh.start, kMonday.addDays(14));
    layout.name = QStringLiteral("Light");
    EXPECT_EQ(blockAt(kMonday).id, BlockId{9}) << "that one goes by another name";
}

TEST(BlockEdits, AShiftByNothingIsNoStepAndOneOntoAnotherBlockIsRefused)
{
    Desk desk = twoWeeks();
    const BlockEdit none = shiftBlock(desk.blocks.front(), desk.plan(), 0);
    EXPECT_TRUE(none.edit.isEmpty());
    EXPECT_TRUE(none.refused.isEmpty());
    desk.blocks.push_back(block(2, kMonday.addDays(14)));
    const BlockEdit refused = shiftBlock(desk.blocks.front(), desk.plan(), 1);
    EXPECT_TRUE(refused.edit.isEmpty());
    EXPECT_TRUE(refused.refused.contains(QStringLiteral("Block 2")));
}

TEST(BlockEdits, ATemplateThatDoesNotFitIsNotLaid)
{
    Desk desk = twoWeeks();
    BlockTemplate layout;
    layout.id = {7};
    layout.weeks = 3;
    layout.purpose = QStringLiteral("build");
    layout.deloadWeeks = {3};
    Lifter lifter;
    lifter.id = {1};
    const BlockEdit refused = layTemplate(layout, block(2, kMonday.addDays(-20)), lifter,
        desk.plan(), {}, builtInCatalogue(), desk.newId());
    EXPECT_FALSE(refused.refused.isEmpty());
    EXPECT_TRUE(refused.edit.isEmpty());
    const BlockEdit laid = layTemplate(layout, block(2, kMonday.addDays(-21)), lifter, desk.plan(),
        {}, builtInCatalogue(), desk.newId());
    ASSERT_EQ(laid.edit.blocks.after.size(), 1u);
    EXPECT_EQ(laid.edit.blocks.after[0].weeks, 3);
    EXPECT_EQ(laid.edit.blocks.after[0].purpose, layout.purpose);
    EXPECT_EQ(laid.edit.blocks.after[0].deloadWeeks, layout.deloadWeeks);
}
