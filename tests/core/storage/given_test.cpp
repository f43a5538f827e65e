#include "tests/core/storage/roster_fixture.h"
#include "tests/support/days.h"

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

class GivenTest : public RosterFixture
{
protected:
    GivenTest()
    {
        Edit edit;
        edit.lifters.after = {lifter};
        edit.cards.after = {card};
        file.apply(edit);
    }

    GivenDay dayOf(const Card &given, int number = 1)
    {
        GivenDay day;
        day.id = file.newId<GivenDay>();
        day.lifter = given.lifter;
        day.day = given.day;
        day.number = number;
        day.at = QDateTime(QDate(2026, 3, 1), QTime(9, 30), Qt::UTC);
        day.cards = {{given.id, given.variation, given.setLine, {}, {GivenLine{}}}};
        day.cards[0].lines[0].loadKg = 102.5;
        return day;
    }
    void give(const GivenDay &day)
    {
        Edit edit;
        edit.given.after = {day};
        file.apply(edit);
    }
    void change(const Card &after)
    {
        Edit edit;
        edit.cards = {{card}, {after}};
        file.apply(edit);
        card = after;
    }

    RosterFile file = RosterFile::create(path);
    Lifter lifter = lifterNamed(file, QStringLiteral("Ada"));
    Card card = cardOn(file, lifter.id, kMonday, 0);
};

} // namespace

TEST_F(GivenTest, ComesBackAsItWasStored)
{
    const GivenDay day = dayOf(card);
    give(day);
    EXPECT_THAT(file.given(lifter.id), ElementsAre(day));
    EXPECT_THAT(file.given(kMonday, kMonday), ElementsAre(day));
    EXPECT_THAT(file.given(kMonday.addDays(1), kMonday.addDays(7)), IsEmpty());
}

TEST_F(GivenTest, AreTheCardsOfDaysGoneByUnlessTheyStandAsTheyWereGiven)
{
    EXPECT_THAT(file.cardsNotGiven(kMonday), IsEmpty()) << "the day is not over";
    EXPECT_THAT(file.cardsNotGiven(kMonday.addDays(1)), ElementsAre(card));
    give(dayOf(card));
    EXPECT_THAT(file.cardsNotGiven(kMonday.addDays(1)), IsEmpty());
    for (const auto &other : {+[](Card &c) { c.setLine = QStringLiteral("5x5 @7"); },
             +[](Card &c) { c.variation = {2}; }, +[](Card &c) { c.day = c.day.addDays(-1); }}) {
        const Card before = card;
        Card after = card;
        other(after);
        change(after);
        EXPECT_THAT(file.cardsNotGiven(kMonday.addDays(1)), ElementsAre(after));
        change(before);
    }
}

TEST_F(GivenTest, IsKeptSinceTheFirstWasGiven)
{
    EXPECT_EQ(file.givenSince(), std::nullopt);
    give(dayOf(card));
    GivenDay later = dayOf(card, 2);
    later.at = later.at.addDays(3);
    give(later);
    EXPECT_EQ(file.givenSince(), QDate(2026, 3, 1));
}

TEST_F(GivenTest, ALifterWhoWasGivenSomethingStays)
{
    give(dayOf(card));
    Edit edit;
    edit.cards.before = {card};
    edit.lifters.before = {lifter};
    EXPECT_THAT(wordsOf([&] { file.apply(edit); }), Says("Archive the lifter instead"));
    EXPECT_THAT(file.lifters(), SizeIs(1));
}

TEST_F(GivenTest, TheIdOfACardThatIsGoneIsNotGivenOutAgain)
{
    give(dayOf(card));
    Edit edit;
    edit.cards.before = {card};
    file.apply(edit);
    {
        const RosterFile closed = std::move(file);
    }
    RosterFile again = RosterFile::open(path, QDateTime(kMonday, QTime(9, 0)));
    EXPECT_GT(again.newId<Card>().value, card.id.value);
}

TEST_F(GivenTest, WhatIsUnsoundIsRefused)
{
    GivenDay day = dayOf(card);
    day.cards.clear();
    EXPECT_THAT(wordsOf([&] { give(day); }), Says("without cards"));
    day = dayOf(card);
    day.at = QDateTime(kMonday, QTime(9, 0), Qt::LocalTime);
    EXPECT_THAT(wordsOf([&] { give(day); }), Says("UTC"));
    day = dayOf(card);
    day.cards[0].lines[0].loadKg = 0.0;
    EXPECT_THAT(wordsOf([&] { give(day); }), Says("above 0"));
    day = dayOf(card);
    day.cards[0].lines[0].allMade = 1.01;
    EXPECT_THAT(wordsOf([&] { give(day); }), Says("between 0 and 1"));
}
