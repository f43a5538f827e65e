#include "core/domain/card_order.h"

#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;

namespace {

const QDate kFirst(2026, 3, 2);
using Place = std::pair<qint64, int>; ///< id and position

Card placed(qint64 id, int position, QDate day = kFirst)
{
    Card card;
    card.id = {id};
    card.day = day;
    card.position = position;
    return card;
}

std::vector<Place> placesOn(const std::vector<Card> &cards, QDate day = kFirst)
{
    std::vector<Place> places;
    for (const Card &card : cardsOn(cards, day))
        places.emplace_back(card.id.value, card.position);
    return places;
}

/// Three cards of the first day, with gaps, and one of the next.
std::vector<Card> fourCards()
{
    return {placed(1, 2), placed(2, 0), placed(3, 5), placed(4, 3, kFirst.addDays(1))};
}

} // namespace

TEST(CardOrder, TheCardsOfADayStandByPositionAndEqualOnesAsTheyCame)
{
    EXPECT_THAT(placesOn(fourCards()), ElementsAre(Place(2, 0), Place(1, 2), Place(3, 5)));
    EXPECT_THAT(placesOn({placed(7, 1), placed(8, 1), placed(9, 0)}),
        ElementsAre(Place(9, 0), Place(7, 1), Place(8, 1)));
}

TEST(CardOrder, GapsAreClosedOnTheDayAlone)
{
    std::vector<Card> cards = fourCards();
    renumber(cards, kFirst);
    EXPECT_THAT(placesOn(cards), ElementsAre(Place(2, 0), Place(1, 1), Place(3, 2)));
    EXPECT_THAT(placesOn(cards, kFirst.addDays(1)), ElementsAre(Place(4, 3)));
}

TEST(CardOrder, ACardIsPushedInAtItsPositionOrAtTheNearestThereIs)
{
    const auto with = [](int position) {
        return placesOn(withCard(fourCards(), placed(9, position)));
    };
    EXPECT_THAT(with(1), ElementsAre(Place(2, 0), Place(9, 1), Place(1, 2), Place(3, 3)));
    EXPECT_THAT(with(0), ElementsAre(Place(9, 0), Place(2, 1), Place(1, 2), Place(3, 3)));
    EXPECT_THAT(with(-1), ElementsAre(Place(9, 0), Place(2, 1), Place(1, 2), Place(3, 3)));
    EXPECT_THAT(with(3), ElementsAre(Place(2, 0), Place(1, 1), Place(3, 2), Place(9, 3)));
    EXPECT_THAT(with(4), ElementsAre(Place(2, 0), Place(1, 1), Place(3, 2), Place(9, 3)));
    const QDate empty = kFirst.addDays(2);
    EXPECT_THAT(
        placesOn(withCard(fourCards(), placed(9, 1, empty)), empty), ElementsAre(Place(9, 0)));
    EXPECT_THAT(
        placesOn(withCard(fourCards(), placed(9, 0)), kFirst.addDays(1)), ElementsAre(Place(4, 3)))
        << "another day";
}

TEST(CardOrder, ACardThatIsTakenOutLeavesItsGap)
{
    EXPECT_THAT(
        placesOn(withoutCard(fourCards(), CardId{1})), ElementsAre(Place(2, 0), Place(3, 5)));
}
