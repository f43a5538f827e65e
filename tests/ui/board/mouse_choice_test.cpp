#include "tests/ui/board/shown_week_board.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QTimer>

// Cards are chosen by the mouse as files are.

namespace {

class MouseChoice : public WeekBoardPageTest
{
protected:
    MouseChoice()
    {
        for (const char *sets : {"3x3", "2x2", "1x1"}) {
            add("comp");
            setSets(sets);
        }
        grid->focusPlace({3, 0});
    }
    CardWidget *at(int position)
    {
        for (CardWidget *each : grid->findChildren<CardWidget *>())
            if (each->isVisible()
                && roster.session
                        .cards(roster.lifter, roster.monday, roster.monday)[size_t(position)]
                        .id
                    == each->card().id)
                return each;
        return nullptr;
    }
    void click(int position, Qt::KeyboardModifiers held = Qt::NoModifier)
    {
        QTest::mouseClick(at(position), Qt::LeftButton, held);
    }
    /// What the menu of a card offers, asked for by the right button.
    QStringList menuOf(int position)
    {
        QStringList offers;
        QTimer::singleShot(0, grid, [&offers] {
            auto *menu = qobject_cast<QMenu *>(QApplication::activePopupWidget());
            ASSERT_NE(menu, nullptr);
            for (const QAction *action : menu->actions())
                offers << action->text().section(u'\t', 0, 0);
            menu->close();
        });
        QTest::mousePress(at(position), Qt::RightButton);
        const QPoint middle = at(position)->rect().center();
        QContextMenuEvent asked(
            QContextMenuEvent::Mouse, middle, at(position)->mapToGlobal(middle));
        QApplication::sendEvent(at(position), &asked);
        return offers;
    }
    size_t chosen() const { return grid->choice().chosen().size(); }
};

} // namespace

TEST_F(MouseChoice, CtrlAddsToTheOneThatWasClickedAndAPlainClickClears)
{
    click(0);
    click(2, Qt::ControlModifier);
    EXPECT_EQ(chosen(), 2u);
    click(2, Qt::ControlModifier);
    EXPECT_EQ(chosen(), 1u);
    click(1);
    EXPECT_EQ(chosen(), 0u);
    EXPECT_EQ(grid->choice().forAction(), std::vector{at(1)->card().id});
}

TEST_F(MouseChoice, ShiftChoosesAllFromTheOneThatWasClicked)
{
    click(0);
    click(2, Qt::ShiftModifier);
    EXPECT_EQ(chosen(), 3u);
    click(1, Qt::ShiftModifier);
    EXPECT_EQ(chosen(), 2u) << "from the same one";
}

TEST_F(MouseChoice, AltWithAnArrowKeyIsTheCardsOwn)
{
    click(0);
    QKeyEvent asked(QEvent::ShortcutOverride, Qt::Key_Down, Qt::AltModifier);
    asked.ignore();
    QApplication::sendEvent(at(0), &asked);
    EXPECT_TRUE(asked.isAccepted()) << "else the window goes to the next lifter";
    grid->focusPlace({3, 0});
    asked.ignore();
    QApplication::sendEvent(QApplication::focusWidget(), &asked);
    EXPECT_FALSE(asked.isAccepted()) << "on an empty day it is the window's";
}

TEST_F(MouseChoice, TheMenuOfACardIsOfThatCard)
{
    const QStringList offers = menuOf(1);
    EXPECT_TRUE(offers.contains(QStringLiteral("Edit sets")));
    EXPECT_EQ(grid->choice().card(), at(1)->card().id);
}

TEST_F(MouseChoice, TheMenuOfOneOfSeveralIsOfAllThatAreChosen)
{
    click(0);
    click(1, Qt::ControlModifier);
    const QStringList offers = menuOf(1);
    EXPECT_TRUE(offers.contains(QStringLiteral("Remove 2 cards")))
        << offers.join(u'|').toStdString();
}
