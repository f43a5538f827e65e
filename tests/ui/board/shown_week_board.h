#pragma once

#include "core/loads/week_sheet.h"
#include "tests/ui/board/board_roster.h"
#include "ui/board/advice_panel.h"
#include "ui/board/board_drag.h"
#include "ui/board/card_editor.h"
#include "ui/board/card_widget.h"
#include "ui/board/checks_panel.h"
#include "ui/board/variation_shelf.h"
#include "ui/board/week_board_page.h"
#include "ui/board/week_grid.h"
#include "ui/board/week_plan.h"

#include <QApplication>
#include <QClipboard>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTabWidget>
#include <QTest>
#include <gmock/gmock.h>

using namespace ui;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

/// The week board of a lifter with an estimate, in a window of its own, without anything planned.
class WeekBoardPageTest : public testing::Test
{
protected:
    WeekBoardPageTest()
    {
        page.resize(1096, 640);
        page.show();
        QApplication::setActiveWindow(&page);
        grid = page.findChild<WeekGrid *>();
        shelf = page.findChild<VariationShelf *>();
        grid->focusPlace({});
        QObject::connect(
            &roster.session, &OpenRoster::failed, [](const QString &words, const QString &detail) {
                ADD_FAILURE() << words.toStdString() << detail.toStdString();
            });
    }

    /// What has the focus gets the key, as in life.
    void press(int key, Qt::KeyboardModifiers held = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key(key), held);
    }
    void type(const char *text)
    {
        for (; *text; ++text)
            QTest::keyClick(QApplication::focusWidget(), *text);
    }
    void add(const char *find)
    {
        press(Qt::Key_Insert);
        type(find);
        press(Qt::Key_Return);
    }
    void setSets(const char *sets)
    {
        type(sets);
        press(Qt::Key_Return);
    }

    std::vector<std::string> cards() const
    {
        std::vector<std::string> all;
        for (const QString &card : roster.cards())
            all.push_back(card.toStdString());
        return all;
    }
    CardWidget *focusedCard() const
    {
        return qobject_cast<CardWidget *>(QApplication::focusWidget());
    }
    CardEditor *editor() const
    {
        for (CardEditor *open : grid->findChildren<CardEditor *>())
            if (open->isVisible())
                return open;
        return nullptr;
    }
    CardWidget *card(int day, int position) const
    {
        grid->focusPlace({day, position});
        return focusedCard();
    }

    void drop(QWidget *target, QPoint at, std::unique_ptr<QMimeData> mime,
        Qt::KeyboardModifiers held = Qt::NoModifier)
    {
        const Qt::DropAction action = held & Qt::ControlModifier ? Qt::CopyAction : Qt::MoveAction;
        const Qt::DropActions both = Qt::MoveAction | Qt::CopyAction;
        QDragEnterEvent enter(at, both, mime.get(), Qt::LeftButton, held);
        enter.setDropAction(action);
        QApplication::sendEvent(target, &enter);
        ASSERT_TRUE(enter.isAccepted());
        QDragMoveEvent move(at, both, mime.get(), Qt::LeftButton, held);
        move.setDropAction(action);
        QApplication::sendEvent(target, &move);
        QDropEvent event(at, both, mime.get(), Qt::LeftButton, held);
        event.setDropAction(action);
        QApplication::sendEvent(target, &event);
    }
    /// Middle of a day's column, at a height.
    QPoint onDay(int day, int y) const
    {
        return {boardColumns(grid->width(), 1)[size_t(day)].center().x(), y};
    }

    BoardRoster roster;
    WeekBoardPage page{
        roster.session, roster.estimates, roster.insights, roster.history, roster.selection};
    WeekGrid *grid = nullptr;
    VariationShelf *shelf = nullptr;
};
