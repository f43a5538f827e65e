#include "core/domain/roster_change.h"

#include "tests/support/days.h"

#include <gtest/gtest.h>

using namespace core;
using namespace tests;

namespace {

const LifterId kAda{1}, kBea{2};

Card cardOn(LifterId lifter, QDate day)
{
    Card card;
    card.id = {7};
    card.lifter = lifter;
    card.day = day;
    return card;
}

} // namespace

TEST(RosterChange, HoldsTheFirstAndTheLastDayOfTheRowsBeforeAndAfter)
{
    Edit edit;
    edit.cards = {
        {cardOn(kAda, kMonday.addDays(3))}, {cardOn(kAda, kMonday), cardOn(kBea, kMonday)}};
    const RosterChange change = changeBy(edit);
    EXPECT_EQ(change.firstDay, kMonday);
    EXPECT_EQ(change.lastDay, kMonday.addDays(3));
    EXPECT_EQ(change.lifters, (QSet<LifterId>{kAda, kBea}));
    EXPECT_TRUE(change.has<Card>());
    EXPECT_FALSE(change.has<Block>());
    EXPECT_TRUE((change.has<Block, Card>(kBea)));
    EXPECT_FALSE(change.has<Card>(LifterId{3}));
    EXPECT_FALSE(change.has<Block>(kBea)) << "rows of the lifter, but none of that kind";
    EXPECT_EQ(change.rows<Card>(), edit.cards);
}

TEST(RosterChange, LiesWithinSpansThatTouchItsFirstOrItsLastDay)
{
    Edit edit;
    edit.cards.after = {cardOn(kAda, kMonday), cardOn(kAda, kMonday.addDays(3))};
    const RosterChange change = changeBy(edit);
    EXPECT_TRUE(change.isWithin(kMonday.addDays(-5), kMonday));
    EXPECT_FALSE(change.isWithin(kMonday.addDays(-5), kMonday.addDays(-1)));
    EXPECT_TRUE(change.isWithin(kMonday.addDays(3), kMonday.addDays(9)));
    EXPECT_FALSE(change.isWithin(kMonday.addDays(4), kMonday.addDays(9)));
    EXPECT_TRUE(change.isWithin(kMonday.addDays(1), kMonday.addDays(2)));
}

TEST(RosterChange, ABlockReachesOverItsWeeksAndANoteOnAFindingOverItsWeek)
{
    Edit edit;
    Block block;
    block.lifter = kAda;
    block.start = kMonday;
    block.weeks = 2;
    edit.blocks.after = {block};
    EXPECT_EQ(changeBy(edit).firstDay, kMonday);
    EXPECT_EQ(changeBy(edit).lastDay, kMonday.addDays(13));
    edit = {};
    Waiver waiver;
    waiver.key.lifter = kBea;
    waiver.key.monday = kMonday;
    edit.waivers.before = {waiver};
    EXPECT_EQ(changeBy(edit).firstDay, kMonday);
    EXPECT_EQ(changeBy(edit).lastDay, kMonday.addDays(6));
    EXPECT_TRUE(changeBy(edit).lifters.contains(kBea));
}

TEST(RosterChange, VariationsAndTemplatesAreNobodysAndOfNoDay)
{
    Edit edit;
    edit.variations.after.resize(1);
    edit.templates.after.resize(1);
    const RosterChange change = changeBy(edit);
    EXPECT_TRUE(change.lifters.isEmpty());
    EXPECT_FALSE(change.firstDay.isValid());
    EXPECT_FALSE(change.isWithin(kMonday, kMonday.addDays(6)));
    EXPECT_TRUE(change.has<Variation>());
    edit.cards.after = {cardOn(kAda, kMonday)};
    EXPECT_EQ(changeBy(edit).firstDay, kMonday) << "a row of no day takes no day away";
    EXPECT_EQ(changeBy(edit).lastDay, kMonday);
    Lifter ada;
    ada.id = kAda;
    edit = {};
    edit.lifters.after = {ada};
    EXPECT_TRUE(changeBy(edit).has<Lifter>(kAda));
    EXPECT_FALSE(changeBy(edit).lastDay.isValid());
}
