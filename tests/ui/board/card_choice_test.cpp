#include "ui/board/card_choice.h"

#include <gmock/gmock.h>

using namespace ui;
using core::CardId;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

constexpr CardId kOne{1}, kTwo{2}, kThree{3};

/// Monday one and two, Wednesday three.
WeekCards week()
{
    WeekCards cards;
    cards.days[0] = {kOne, kTwo};
    cards.days[2] = {kThree};
    return cards;
}

class CardChoiceTest : public testing::Test
{
protected:
    CardChoiceTest() { choice.follow(week()); }
    CardChoice choice;
};

} // namespace

TEST(WeekCards, KnowWhichCardLiesWhere)
{
    EXPECT_EQ(week().counts(), (CardCounts{2, 0, 1}));
    EXPECT_EQ(week().at({0, 1}), kTwo);
    EXPECT_FALSE(week().at({0, 2}).isValid());
    EXPECT_EQ(week().placeOf(kThree), (BoardPlace{2, 0}));
    EXPECT_FALSE(week().placeOf(CardId{4}));
    EXPECT_FALSE(week().placeOf(CardId{})) << "an empty slot holds no card";
    EXPECT_EQ(week().nearest({9, 9}), (BoardPlace{6, 0}));
    EXPECT_EQ(week().nearest({0, 9}), (BoardPlace{0, 2}));
    EXPECT_EQ(week().nearest({-1, -1}), (BoardPlace{0, 0}));
}

TEST_F(CardChoiceTest, ACardIsAddedBelowTheCurrentOneOrIntoTheEmptySlot)
{
    EXPECT_EQ(choice.card(), kOne);
    EXPECT_EQ(choice.placeToAdd(), (BoardPlace{0, 1}));
    choice.goTo({1, 0});
    EXPECT_EQ(choice.placeToAdd(), (BoardPlace{1, 0}));
}

TEST_F(CardChoiceTest, ThePlaceGoesAlongWithItsCard)
{
    choice.goTo({0, 1});
    WeekCards moved;
    moved.days[4] = {kThree, kTwo};
    choice.follow(moved);
    EXPECT_EQ(choice.place(), (BoardPlace{4, 1}));
    EXPECT_EQ(choice.card(), kTwo);
}

TEST_F(CardChoiceTest, WithTheCardGoneThePlaceStaysAsNearAsItCan)
{
    choice.goTo({0, 1});
    WeekCards left;
    left.days[0] = {kOne};
    choice.follow(left);
    EXPECT_EQ(choice.place(), (BoardPlace{0, 1})) << "the empty slot now";
    choice.follow({});
    EXPECT_EQ(choice.place(), (BoardPlace{0, 0}));
}

TEST_F(CardChoiceTest, AnActionIsForTheCardsChosenElseForTheCurrentOne)
{
    EXPECT_THAT(choice.forAction(), ElementsAre(kOne));
    choice.choose({kTwo, kThree, CardId{9}});
    EXPECT_THAT(choice.forAction(), ElementsAre(kTwo, kThree));
    choice.choose({});
    choice.goTo({6, 0});
    EXPECT_THAT(choice.forAction(), IsEmpty());
}

TEST_F(CardChoiceTest, WhatIsGoneIsChosenNoMore)
{
    choice.chooseAll();
    EXPECT_THAT(choice.chosen(), ElementsAre(kOne, kTwo, kThree));
    WeekCards left;
    left.days[5] = {kThree};
    choice.follow(left);
    EXPECT_THAT(choice.chosen(), ElementsAre(kThree));
}

TEST_F(CardChoiceTest, TheFirstCardToggledJoinsTheCurrentOne)
{
    choice.startHere();
    choice.toggle(kThree);
    EXPECT_THAT(choice.chosen(), ElementsAre(kOne, kThree));
    choice.toggle(kOne);
    EXPECT_THAT(choice.chosen(), ElementsAre(kThree));
    choice.choose({});
    choice.startHere();
    choice.toggle(kOne);
    EXPECT_THAT(choice.chosen(), ElementsAre(kOne)) << "the current one alone";
    choice.choose({});
    choice.goTo({6, 0});
    choice.startHere();
    choice.toggle(kTwo);
    EXPECT_THAT(choice.chosen(), ElementsAre(kTwo)) << "from an empty slot";
}

TEST_F(CardChoiceTest, ARangeGoesFromWhereItWasStartedOverTheDays)
{
    choice.startHere();
    choice.chooseUpTo(kThree);
    EXPECT_THAT(choice.chosen(), ElementsAre(kOne, kTwo, kThree));
    choice.chooseUpTo(kTwo);
    EXPECT_THAT(choice.chosen(), ElementsAre(kOne, kTwo));
    choice.goTo({6, 0});
    choice.startHere();
    choice.chooseUpTo(kTwo);
    EXPECT_THAT(choice.chosen(), ElementsAre(kTwo)) << "started nowhere";
}

TEST_F(CardChoiceTest, ExtendingChoosesBothEnds)
{
    choice.extendTo({0, 1});
    EXPECT_EQ(choice.place(), (BoardPlace{0, 1}));
    EXPECT_THAT(choice.chosen(), ElementsAre(kOne, kTwo));
    choice.extendTo({1, 0});
    choice.extendTo({2, 0});
    EXPECT_THAT(choice.chosen(), ElementsAre(kOne, kTwo, kThree)) << "an empty slot adds none";
}
