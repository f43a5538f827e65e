#include "ui/board/board_menu.h"

#include <QKeyEvent>
#include <QKeySequence>
#include <gmock/gmock.h>

using namespace ui;

namespace {

QStringList words(const std::vector<BoardOffer> &menu)
{
    QStringList all;
    for (const BoardOffer &offer : menu)
        all << offer.words;
    return all;
}

} // namespace

TEST(BoardMenu, AnEmptySlotIsFilledOnly)
{
    EXPECT_EQ(words(boardMenu(false, 0)),
        (QStringList{QStringLiteral("Add a variation"), QStringLiteral("Paste"),
            QStringLiteral("Copy the day"), QStringLiteral("Paste the day"),
            QStringLiteral("Paste the day onto lifters\u2026"),
            QStringLiteral("Give the day's loads")}));
}

TEST(BoardMenu, SaysHowManyCardsWouldGo)
{
    EXPECT_EQ(boardMenu(true, 0).back().words, QStringLiteral("Remove card"));
    EXPECT_EQ(boardMenu(true, 1).back().words, QStringLiteral("Remove card"));
    EXPECT_EQ(boardMenu(true, 3).back().words, QStringLiteral("Remove 3 cards"));
}

TEST(BoardMenu, EachLineNamesTheKeyThatDoesTheSame)
{
    for (const bool onCard : {false, true})
        for (const BoardOffer &offer : boardMenu(onCard, 0)) {
            const QKeyCombination keys = QKeySequence(offer.keys)[0];
            const auto byKey =
                boardCommand(QKeyEvent(QEvent::KeyPress, keys.key(), keys.keyboardModifiers()));
            ASSERT_TRUE(byKey) << offer.words.toStdString();
            EXPECT_EQ(byKey->act, offer.act) << offer.words.toStdString();
        }
}
