#include "core/plan/plan_edits.h"

#include "tests/support/days.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

using namespace core;
using namespace tests;

namespace {

const LifterId kLifter{1};

Card card(int id, int day, int position, const QString &setLine = {})
{
    return {{id}, kLifter, kMonday.addDays(day), position, {1}, setLine, {}};
}

/// Monday 1 2 3, Wednesday 4.
std::vector<Card> week()
{
    return {card(1, 0, 0), card(2, 0, 1), card(3, 0, 2), card(4, 2, 0)};
}

/// What the roster file does with an edit.
std::vector<Card> applied(std::vector<Card> cards, const Edit &edit)
{
    for (const Card &old : edit.cards.before)
        EXPECT_EQ(std::erase(cards, old), 1u);
    for (const Card &now : edit.cards.after)
        cards.push_back(now);
    std::sort(cards.begin(), cards.end(), [](const Card &a, const Card &b) { return a.id < b.id; });
    return cards;
}

std::vector<int> idsOn(const std::vector<Card> &cards, int day)
{
    std::vector<int> ids;
    for (const Card &c : cardsOn(cards, kMonday.addDays(day)))
        ids.push_back(int(c.id.value));
    return ids;
}

bool isGapless(const std::vector<Card> &cards, QDate day)
{
    int expected = 0;
    for (const Card &c : cardsOn(cards, day))
        if (c.position != expected++)
            return false;
    return true;
}

} // namespace

using testing::ElementsAre;
using testing::IsEmpty;

TEST(PlanEdits, AddsWhereTheCardIsDropped)
{
    const auto after = applied(week(), addCard(week(), card(9, 0, 1)));
    EXPECT_THAT(idsOn(after, 0), ElementsAre(1, 9, 2, 3));
    EXPECT_TRUE(isGapless(after, kMonday));
}

TEST(PlanEdits, AddsToAnEmptyDayAndBeyondTheEnd)
{
    const auto after = applied(week(), addCard(week(), card(9, 5, 7)));
    EXPECT_THAT(idsOn(after, 5), ElementsAre(9));
    EXPECT_EQ(cardsOn(after, kMonday.addDays(5)).front().position, 0);
}

TEST(PlanEdits, TouchesOnlyTheCardsThatChange)
{
    const Edit edit = addCard(week(), card(9, 0, 2));
    EXPECT_THAT(edit.cards.before, ElementsAre(card(3, 0, 2)));
    EXPECT_EQ(edit.cards.after.size(), 2u);
}

TEST(PlanEdits, MovesWithinADay)
{
    EXPECT_THAT(idsOn(applied(week(), moveCard(week(), {1}, kMonday, 2)), 0), ElementsAre(2, 3, 1));
    EXPECT_THAT(idsOn(applied(week(), moveCard(week(), {3}, kMonday, 0)), 0), ElementsAre(3, 1, 2));
    EXPECT_TRUE(moveCard(week(), {2}, kMonday, 1).isEmpty());
}

TEST(PlanEdits, MovesBetweenDaysAndClosesTheGap)
{
    const auto after = applied(week(), moveCard(week(), {2}, kMonday.addDays(2), 0));
    EXPECT_THAT(idsOn(after, 0), ElementsAre(1, 3));
    EXPECT_THAT(idsOn(after, 2), ElementsAre(2, 4));
    EXPECT_TRUE(isGapless(after, kMonday));
    EXPECT_TRUE(isGapless(after, kMonday.addDays(2)));
}

TEST(PlanEdits, RemovesAndClosesTheGap)
{
    const auto after = applied(week(), removeCards(week(), {{1}}));
    EXPECT_THAT(idsOn(after, 0), ElementsAre(2, 3));
    EXPECT_TRUE(isGapless(after, kMonday));
}

TEST(PlanEdits, ChangesTextsOnly)
{
    const Edit edit = changeSetLine(week(), {4}, QStringLiteral("3x5 75%"));
    EXPECT_THAT(edit.cards.before, ElementsAre(card(4, 2, 0)));
    EXPECT_THAT(edit.cards.after, ElementsAre(card(4, 2, 0, QStringLiteral("3x5 75%"))));
    EXPECT_TRUE(changeSetLine(week(), {4}, {}).isEmpty());
    EXPECT_EQ(changeNote(week(), {4}, QStringLiteral("belt")).cards.after.front().note,
        QStringLiteral("belt"));
}

TEST(PlanEdits, AnUnknownCardIsTheCallersBug)
{
    EXPECT_THROW((void)removeCards(week(), {{77}}), std::invalid_argument);
    EXPECT_THROW((void)moveCard(week(), {77}, kMonday, 0), std::invalid_argument);
}

RC_GTEST_PROP(PlanEditsProperty, PositionsStayGaplessAndEveryStepCanBeTakenBack, ())
{
    std::vector<Card> cards;
    std::vector<std::pair<std::vector<Card>, Edit>> history;
    const int steps = *rc::gen::inRange(1, 40);
    for (int step = 0; step < steps; ++step) {
        const auto someCard = [&] { return *rc::gen::elementOf(cards); };
        const int day = *rc::gen::inRange(0, 3);
        const int position = *rc::gen::inRange(0, 6);
        Edit edit;
        switch (cards.empty() ? 0 : *rc::gen::inRange(0, 4)) {
        case 0:
            edit = addCard(cards, card(step + 1, day, position));
            break;
        case 1:
            edit = moveCard(cards, someCard().id, kMonday.addDays(day), position);
            break;
        case 2:
            edit = removeCards(cards, {someCard().id});
            break;
        default:
            edit = changeSetLine(cards, someCard().id, QString::number(step));
        }
        history.emplace_back(cards, edit);
        cards = applied(cards, edit);
        for (int d = 0; d < 3; ++d)
            RC_ASSERT(isGapless(cards, kMonday.addDays(d)));
    }
    for (auto step = history.rbegin(); step != history.rend(); ++step) {
        cards = applied(cards, inverse(step->second));
        RC_ASSERT(cards == step->first);
    }
}
