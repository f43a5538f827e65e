#include "ui/window/help.h"

#include "core/notation/notation_help.h"
#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/board/board_keys.h"
#include "ui/lifters/lifter_list_panel.h"
#include "ui/log/entry_field.h"
#include "ui/look/theme.h"
#include "ui/room/room.h"
#include "ui/window/main_window.h"
#include "ui/window/roster_view.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QShortcut>
#include <QTabWidget>
#include <QTest>
#include <QTextBrowser>
#include <QTimer>
#include <algorithm>
#include <gtest/gtest.h>

using namespace ui;

namespace {

class HelpTest : public testing::Test
{
protected:
    HelpTest()
    {
        EXPECT_TRUE(window.createFile(folder.path(QStringLiteral("r.benchwright"))));
        core::Edit edit;
        core::Lifter lifter = inventedLifter(QStringLiteral("Ada"));
        lifter.id = window.roster()->openRoster().newId<core::Lifter>();
        edit.lifters.after = {lifter};
        EXPECT_TRUE(window.roster()->openRoster().perform(QStringLiteral("Add"), edit));
        window.roster()->selection().setLifter(lifter.id);
        window.show();
        QApplication::setActiveWindow(&window);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }

    [[nodiscard]] QString help() const { return helpHtml(window, window.roster()->helpOn()); }

    PrivateFolder folder;
    SetClock clock{QDate(2026, 3, 4)};
    Theme theme{*qApp};
    MainWindow window{theme, clock.today};
};

QString shown(const QKeySequence &keys)
{
    return keys.toString(QKeySequence::NativeText).toHtmlEscaped();
}

} // namespace

TEST_F(HelpTest, OfEveryPageListsEveryKeyThatThePageHas)
{
    QTabWidget &pages = window.roster()->pages();
    for (int page = 0; page < pages.count(); ++page) {
        window.roster()->showPage(page);
        const QString html = help();
        const QWidget &on = *pages.currentWidget();
        const auto expectKeys = [&](const QKeySequence &keys, const QString &words) {
            if (keys.isEmpty())
                return;
            EXPECT_TRUE(html.contains(shown(keys)))
                << qPrintable(pages.tabText(page)) << ' ' << qPrintable(shown(keys));
            EXPECT_FALSE(words.isEmpty()) << qPrintable(shown(keys)) << " is not explained";
        };
        for (const QShortcut *shortcut : on.findChildren<QShortcut *>())
            expectKeys(shortcut->key(), shortcut->whatsThis());
        for (const QAction *action : on.findChildren<QAction *>())
            expectKeys(action->shortcut(), action->text());
        for (const QAbstractButton *button : on.findChildren<QAbstractButton *>())
            if (button->isVisible())
                expectKeys(button->shortcut(), button->text());
        for (const QLabel *label : on.findChildren<QLabel *>())
            if (label->buddy() && label->isVisible())
                expectKeys(QKeySequence::mnemonic(label->text()), label->text());
        for (const QAction *menu : window.menuBar()->actions())
            for (const QAction *action : menu->menu()->actions())
                expectKeys(action->shortcut(), action->text());
        EXPECT_TRUE(html.contains(pages.tabText(page).remove(u'&').toHtmlEscaped()));
    }
}

TEST_F(HelpTest, ShowsSetLinesAndEntriesWhereTheyAreTyped)
{
    const auto holds = [this](const std::vector<core::NotationForm> &forms) {
        const QString html = help();
        return std::ranges::all_of(forms, [&html](const core::NotationForm &form) {
            return html.contains(form.example.section(u'\n', 0, 0).toHtmlEscaped())
                && html.contains(form.words.toHtmlEscaped());
        });
    };
    enum Page { board, log, review, rosterWeek, squad, carryOver, room };
    for (const int page : {board, rosterWeek}) {
        window.roster()->showPage(page);
        EXPECT_TRUE(holds(core::setLineForms())) << page;
    }
    window.roster()->room().enter(window.roster()->selection().lifter());
    for (const int page : {log, room}) {
        window.roster()->showPage(page);
        EXPECT_TRUE(holds(core::setEntryForms())) << page;
        EXPECT_FALSE(holds(core::setLineForms())) << page;
    }
    window.roster()->showPage(squad);
    EXPECT_FALSE(holds(core::setEntryForms()));
}

TEST_F(HelpTest, F1OpensItOnThePageThatIsShown)
{
    window.roster()->showPage(0);
    QString text;
    QTimer::singleShot(0, &window, [&text] {
        auto *dialog = qobject_cast<QDialog *>(QApplication::activeModalWidget());
        ASSERT_TRUE(dialog);
        text = dialog->findChild<QTextBrowser *>(QStringLiteral("helpText"))->toPlainText();
        QTest::keyClick(dialog, Qt::Key_Escape);
    });
    QTest::keyClick(&window, Qt::Key_F1);
    EXPECT_TRUE(text.contains(QStringLiteral("Keys of this page: Week board"))) << qPrintable(text);
    EXPECT_TRUE(text.contains(QStringLiteral("4x3 @8")));
    EXPECT_TRUE(text.contains(QStringLiteral("Lifter list")));
}

TEST_F(HelpTest, OnTheStartPageListsTheMenus)
{
    const QString html = helpHtml(window, {});
    EXPECT_TRUE(html.contains(QStringLiteral("Ctrl+O")));
    EXPECT_FALSE(html.contains(QStringLiteral("4x3 @8")));
}

TEST(HelpKeys, AreAskedOfTheTablesThatCarryThemOut)
{
    const HelpRows board = boardKeys();
    const auto row = [](const HelpRows &rows, const char *words) {
        const auto found = std::ranges::find_if(rows,
            [words](const HelpRow &each) { return each.words.startsWith(QLatin1String(words)); });
        return found == rows.end() ? std::string() : found->left.toStdString();
    };
    EXPECT_EQ(row(board, "to the card"), "Up, Down, Left, Right");
    EXPECT_EQ(row(board, "choose the cards on"), "Shift+Up, Shift+Down, Shift+Left, Shift+Right");
    EXPECT_EQ(row(board, "write the sets"), "Return, F2");
    EXPECT_EQ(row(board, "write the note"), "Shift+F2");
    EXPECT_EQ(row(board, "remove"), "Del, Backspace");
    EXPECT_EQ(row(board, "duplicate"), "Ctrl+D");
    const HelpRows entry = entryKeys();
    EXPECT_EQ(row(entry, "save the set"), "Return");
    EXPECT_EQ(row(entry, "add a set"), "Ins");
    for (const HelpRow &each : entry)
        EXPECT_FALSE(each.left.contains(QStringLiteral("Left")))
            << "leads to nobody on the log page";
}
