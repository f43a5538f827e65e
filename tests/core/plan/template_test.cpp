#include "core/plan/template.h"

#include "core/plan/plan_edits.h"
#include "core/plan/touch_swap.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <algorithm>
#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const QDate kLater(2026, 4, 6);

/// A lifter's plan as the roster file would keep it.
struct TemplateDesk
{
    Lifter lifter;
    std::vector<Card> cards;
    std::optional<BlockTemplate> laid;
    QStringList remarks;
    qint64 lastId = 0;

    explicit TemplateDesk(TouchStyle style)
    {
        lifter.id = {1};
        lifter.touchStyle = style;
        lifter.isAdult = true;
    }

    Edit lay(const BlockTemplate &block, QDate start = kLater)
    {
        const TemplateResult result = applyTemplate(block,
            {lifter, start, builtInCatalogue(), cards, laid ? &*laid : nullptr},
            [this] { return CardId{++lastId}; });
        for (const Card &old : result.edit.cards.before)
            EXPECT_EQ(std::erase(cards, old), 1u);
        cards.insert(cards.end(), result.edit.cards.after.begin(), result.edit.cards.after.end());
        laid = block;
        remarks = result.remarks;
        return result.edit;
    }

    std::vector<std::string> on(int day) const
    {
        std::vector<std::string> rows;
        for (int position = 0; const Card &card : cardsOn(cards, kLater.addDays(day))) {
            EXPECT_EQ(card.position, position++);
            rows.push_back((find(builtInCatalogue(), card.variation)->code + u' ' + card.setLine)
                               .toStdString());
        }
        return rows;
    }

    Card &card(int day, int position)
    {
        const Card found = cardsOn(cards, kLater.addDays(day)).at(size_t(position));
        return *std::find(cards.begin(), cards.end(), found);
    }

    static const Variation *find(const std::vector<Variation> &catalogue, VariationId id)
    {
        return &*std::find_if(
            catalogue.begin(), catalogue.end(), [id](const Variation &v) { return v.id == id; });
    }
};

Block heavyBlock()
{
    Block block;
    block.start = kMonday;
    block.weeks = 1;
    return block;
}

/// Monday off-chest pause and feet-up, Thursday competition.
BlockTemplate block()
{
    return templateOf(u"Heavy"_qs, heavyBlock(),
        std::vector<Card>{cardOf(3, kMonday.addDays(3), 0, idOf("comp"), u"4x3 @8"_qs),
            cardOf(1, kMonday, 0, idOf("off_chest_pause"), u"3x2 @8"_qs),
            cardOf(2, kMonday, 1, idOf("feet_up"), u"3x6 @7"_qs)},
        builtInCatalogue(), usualTouchSwaps(builtInCatalogue()));
}

} // namespace

TEST(Template, IsMadeOfAnyBlock)
{
    const BlockTemplate made = block();
    ASSERT_EQ(made.cards.size(), 3u);
    EXPECT_EQ(made.cards[0], (TemplateCard{1, 0, 0, u"off_chest_pause"_qs, u"3x2 @8"_qs, {}}));
    EXPECT_EQ(made.cards[2], (TemplateCard{3, 3, 0, u"comp"_qs, u"4x3 @8"_qs, {}}));
}

TEST(Template, LaysNoMaximalWorkBeforeTheAgeIsKnown)
{
    const BlockTemplate heavy = templateOf(u"Peak"_qs, heavyBlock(),
        std::vector<Card>{cardOf(1, kMonday, 0, idOf("comp"), u"1x1 @9.5"_qs)}, builtInCatalogue(),
        {});
    TemplateDesk known(TouchStyle::soft);
    known.lay(heavy);
    EXPECT_THAT(known.on(0), ElementsAre("comp 1x1 @9.5"));
    TemplateDesk unknown(TouchStyle::soft);
    unknown.lifter.isAdult = false;
    unknown.lay(heavy);
    EXPECT_THAT(unknown.on(0), ElementsAre("comp 1x1 @8"));
    EXPECT_THAT(unknown.remarks.join(u' ').toStdString(),
        testing::HasSubstr("No maximal work is suggested before the lifter's age is known."));
}

TEST(Template, IsLaidOnALifterFromAnyDay)
{
    TemplateDesk desk(TouchStyle::soft);
    desk.lay(block());
    EXPECT_THAT(desk.on(0), ElementsAre("off_chest_pause 3x2 @8", "feet_up 3x6 @7"));
    EXPECT_THAT(desk.on(3), ElementsAre("comp 4x3 @8"));
    EXPECT_THAT(desk.remarks, IsEmpty());
    for (const Card &card : desk.cards)
        EXPECT_EQ(card.lifter, desk.lifter.id);
}

TEST(Template, SwapsByTouchStyleAndSaysSo)
{
    TemplateDesk desk(TouchStyle::sinking);
    desk.lay(block());
    EXPECT_THAT(desk.on(0), ElementsAre("long_pause 3x2 @8", "feet_up 3x6 @7"));
    ASSERT_EQ(desk.remarks.size(), 1);
    EXPECT_TRUE(desk.remarks.front().contains(u"in place of"));

    TemplateDesk without(TouchStyle::sinking);
    BlockTemplate plain = block();
    plain.swaps.clear();
    without.lay(plain);
    EXPECT_THAT(without.on(0), ElementsAre("off_chest_pause 3x2 @8", "feet_up 3x6 @7"));
    EXPECT_EQ(without.remarks.size(), 1); // made for the other style

    TemplateDesk undecided(TouchStyle::undecided);
    undecided.lay(block());
    EXPECT_THAT(undecided.on(0), ElementsAre("off_chest_pause 3x2 @8", "feet_up 3x6 @7"));
}

TEST(Template, TheFirstTimeItGoesBelowWhatIsThere)
{
    TemplateDesk desk(TouchStyle::soft);
    desk.lastId = 50;
    desk.cards = {cardOf(7, kLater, 0, idOf("squat"), u"3x5 @7"_qs)};
    desk.lay(block());
    EXPECT_THAT(
        desk.on(0), ElementsAre("squat 3x5 @7", "off_chest_pause 3x2 @8", "feet_up 3x6 @7"));
}

TEST(Template, LaidAgainUnchangedIsNoEdit)
{
    TemplateDesk desk(TouchStyle::sinking);
    desk.lay(block());
    EXPECT_TRUE(desk.lay(block()).isEmpty());
}

TEST(Template, ANewVersionReachesWhatTheCoachLeftAlone)
{
    TemplateDesk desk(TouchStyle::soft);
    desk.lay(block());
    BlockTemplate next = block();
    next.cards[0].setLine = u"4x2 @8"_qs;
    next.cards[2].dayOffset = 4;
    next.cards.push_back({4, 0, 1, u"close_grip"_qs, u"3x8 @7"_qs, {}});
    desk.lay(next);
    EXPECT_THAT(
        desk.on(0), ElementsAre("off_chest_pause 4x2 @8", "close_grip 3x8 @7", "feet_up 3x6 @7"));
    EXPECT_THAT(desk.on(3), IsEmpty());
    EXPECT_THAT(desk.on(4), ElementsAre("comp 4x3 @8"));
    next.cards.erase(next.cards.begin());
    desk.lay(next);
    EXPECT_THAT(desk.on(0), ElementsAre("close_grip 3x8 @7", "feet_up 3x6 @7"));
}

TEST(Template, DifferencesOfALifterAreKept)
{
    TemplateDesk desk(TouchStyle::soft);
    desk.lay(block());
    desk.card(0, 0).setLine = u"2x1 @7"_qs;                                              // changed
    desk.card(0, 1).variation = idOf("close_grip");                                      // swapped
    desk.card(3, 0).day = kLater.addDays(5);                                             // moved
    desk.cards.push_back(cardOf(99, kLater.addDays(1), 0, idOf("squat"), u"3x5 @7"_qs)); // added

    BlockTemplate next = block();
    next.cards[0].setLine = u"5x2 @8"_qs;
    next.cards[0].note = u"soft"_qs;
    next.cards[1].setLine = u"4x6 @7"_qs;
    next.cards[2].setLine = u"5x3 @8"_qs;
    desk.lay(next);
    EXPECT_THAT(desk.on(0), ElementsAre("off_chest_pause 2x1 @7", "close_grip 4x6 @7"));
    EXPECT_EQ(desk.card(0, 0).note, u"soft"_qs); // the field that was not touched follows
    EXPECT_THAT(desk.on(1), ElementsAre("squat 3x5 @7"));
    EXPECT_THAT(desk.on(3), IsEmpty());
    EXPECT_THAT(desk.on(5), ElementsAre("comp 5x3 @8"));
    EXPECT_EQ(desk.remarks.size(), 1);
}

TEST(Template, WhatTheCoachTookOutStaysOut)
{
    TemplateDesk desk(TouchStyle::soft);
    desk.lay(block());
    std::erase(desk.cards, Card(desk.card(3, 0)));
    BlockTemplate next = block();
    next.cards[2].setLine = u"6x3 @8"_qs;
    desk.lay(next);
    EXPECT_THAT(desk.on(3), IsEmpty());
}

TEST(Template, WhatTheTemplateDropsGoesUnlessItWasChanged)
{
    TemplateDesk desk(TouchStyle::soft);
    desk.lay(block());
    desk.card(0, 1).note = u"slow"_qs;
    BlockTemplate empty = block();
    empty.cards.clear();
    desk.lay(empty);
    EXPECT_THAT(desk.on(0), ElementsAre("feet_up 3x6 @7"));
    EXPECT_THAT(desk.on(3), IsEmpty());
}

TEST(Template, AVersionMadeFromTheBoardKeepsItsKeys)
{
    const BlockTemplate before = block();
    std::vector<Card> cards = {cardOf(1, kMonday, 0, idOf("off_chest_pause"), u"4x2 @8"_qs),
        cardOf(3, kMonday.addDays(3), 0, idOf("comp"), u"4x3 @8"_qs),
        cardOf(4, kMonday.addDays(3), 1, idOf("comp"), u"2x5 @7"_qs)};
    const BlockTemplate next = nextVersion(before, heavyBlock(), cards, builtInCatalogue());
    EXPECT_EQ(next.version, before.version + 1);
    ASSERT_EQ(next.cards.size(), 3u);
    EXPECT_EQ(next.cards[0].key, before.cards[0].key);
    EXPECT_EQ(next.cards[1].key, before.cards[2].key);
    EXPECT_EQ(next.cards[2].key, 4);
}

TEST(Template, VariationsThatTheRosterLacksAreNamed)
{
    TemplateDesk desk(TouchStyle::soft);
    BlockTemplate other = block();
    other.cards[0].code = u"moon_press"_qs;
    desk.lay(other);
    EXPECT_THAT(desk.on(0), ElementsAre("feet_up 3x6 @7"));
    ASSERT_EQ(desk.remarks.size(), 1);
    EXPECT_TRUE(desk.remarks.front().contains(u"moon_press"));
}

TEST(TouchSwap, TheRuleIsASentence)
{
    const auto swaps = usualTouchSwaps(builtInCatalogue());
    ASSERT_FALSE(swaps.empty());
    const QString said = words(swaps.front(), builtInCatalogue());
    EXPECT_TRUE(said.contains(u"Off-chest pause bench"));
    EXPECT_TRUE(said.endsWith(u'.'));
    for (const TouchSwap &swap : swaps) {
        EXPECT_EQ(swapped(swapped(swap.soft, TouchStyle::sinking, swaps), TouchStyle::soft, swaps),
            swap.soft);
        EXPECT_EQ(swapped(swap.soft, TouchStyle::soft, swaps), swap.soft);
    }
    EXPECT_THAT(usualTouchSwaps({}), IsEmpty());
}

TEST(Template, TheLatestOfEachNameComesInTheOrderOfTheNames)
{
    const auto version = [](qint64 id, const char *name, int number) {
        BlockTemplate one;
        one.id = {id};
        one.name = QLatin1String(name);
        one.version = number;
        return one;
    };
    std::vector<qint64> ids;
    for (const BlockTemplate &one : latestVersions({version(1, "Peak", 2), version(2, "Base", 1),
             version(3, "Peak", 3), version(4, "Peak", 1), version(5, "Base", 2)}))
        ids.push_back(one.id.value);
    EXPECT_THAT(ids, ElementsAre(5, 3));
}

TEST(Template, TwoCardsOfAVariationOnADayKeepTheirOwnKeys)
{
    const std::vector<Card> cards{cardOf(1, kMonday, 0, idOf("comp"), u"1x1 @8"_qs),
        cardOf(2, kMonday, 1, idOf("comp"), u"3x3 @7"_qs)};
    const BlockTemplate before =
        templateOf(u"Twice"_qs, heavyBlock(), cards, builtInCatalogue(), {});
    EXPECT_EQ(before.version, 1);
    const BlockTemplate next = nextVersion(before, heavyBlock(), cards, builtInCatalogue());
    ASSERT_EQ(next.cards.size(), 2u);
    EXPECT_EQ(next.cards, before.cards);
    EXPECT_EQ(next.cards[0].key, 1);
    EXPECT_EQ(next.cards[1].key, 2);
    EXPECT_FALSE(next.id.isValid());
}

TEST(Template, CardsOutsideTheBlockStayOut)
{
    const std::vector<Card> cards{cardOf(1, kMonday.addDays(-1), 0, idOf("comp"), u"1x1"_qs),
        cardOf(2, kMonday.addDays(6), 0, idOf("comp"), u"2x2"_qs),
        cardOf(3, kMonday.addDays(7), 0, idOf("comp"), u"3x3"_qs)};
    const BlockTemplate made = templateOf(u"Week"_qs, heavyBlock(), cards, builtInCatalogue(), {});
    ASSERT_EQ(made.cards.size(), 1u);
    EXPECT_EQ(made.cards[0].dayOffset, 6);
}

TEST(Template, SaysHowManyDifferencesOfALifterWereKept)
{
    TemplateDesk desk(TouchStyle::soft);
    desk.lay(block());
    std::erase(desk.cards, Card(desk.card(3, 0)));
    desk.card(0, 0).setLine = u"2x1 @7"_qs;
    desk.card(0, 1).note = u"slow"_qs;
    BlockTemplate next = block();
    next.cards[0].setLine = u"5x2 @8"_qs;
    next.cards.erase(next.cards.begin() + 1);
    desk.lay(next);
    ASSERT_EQ(desk.remarks.size(), 1);
    EXPECT_TRUE(desk.remarks[0].endsWith(u"were kept: 3."_qs)) << desk.remarks[0].toStdString();
}
