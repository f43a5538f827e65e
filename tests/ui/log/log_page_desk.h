#pragma once

#include "tests/ui/board/board_roster.h"
#include "ui/log/log_page.h"
#include "ui/look/keep_question.h"
#include "ui/roster/insights.h"
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>

namespace tests {

using namespace core;
using namespace ui;

/// The log page of a lifter, in a window that has the focus.
class LogPageTest : public testing::Test
{
protected:
    LogPageTest()
    {
        window.resize(1100, 700);
        window.show();
        window.setFocus();
        QApplication::setActiveWindow(&window);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }

    void plan(const char *code, const QString &setLine)
    {
        Card card;
        card.id = roster.session.newId<Card>();
        card.lifter = roster.lifter;
        card.day = today;
        card.position = int(roster.session.cards(roster.lifter, today, today).size());
        card.variation = roster.variation(code);
        card.setLine = setLine;
        Edit edit;
        edit.cards.after = {card};
        ASSERT_TRUE(roster.session.perform(QStringLiteral("Plan"), edit));
    }

    void say(const CheckIn &checkIn)
    {
        Edit edit;
        edit.checkIns.after = {checkIn};
        edit.checkIns.after[0].id = roster.session.newId<CheckIn>();
        edit.checkIns.after[0].lifter = roster.lifter;
        edit.checkIns.after[0].day = today;
        ASSERT_TRUE(roster.session.perform(QStringLiteral("Say"), edit));
    }

    /// One key press; the window says who has the focus.
    void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key(key), with);
        ++keys;
    }
    void type(const char *text)
    {
        for (; *text; ++text) {
            QTest::keyClick(QApplication::focusWidget(), *text);
            ++keys;
        }
    }
    void enter(const char *text)
    {
        type(text);
        press(Qt::Key_Return);
    }

    std::vector<SetEntry> logged() const
    {
        std::vector<SetEntry> sets;
        for (const LoggedSession &session : roster.session.sessions(roster.lifter))
            if (session.day == today)
                sets.insert(sets.end(), session.sets.begin(), session.sets.end());
        return sets;
    }
    QString said(const char *name) const
    {
        const auto *label = window.findChild<QLabel *>(QString::fromLatin1(name));
        return label->isVisible() ? label->text() : QString();
    }
    QLineEdit &field() const { return *window.findChild<QLineEdit *>(QStringLiteral("entry")); }
    QString cell(int row, int column) const
    {
        const auto *table = window.findChild<QTableView *>(QStringLiteral("sets"));
        return table->model()->index(row, column).data().toString();
    }

    BoardRoster roster;
    const QDate today = roster.clock.today.date();
    Insights insights{roster.session, roster.estimates};
    LogPage window{roster.session, roster.estimates, insights, roster.history, roster.selection};
    int keys = 0;
};

} // namespace tests
