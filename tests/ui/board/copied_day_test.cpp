#include "tests/ui/board/shown_week_board.h"
#include "ui/board/day_headers.h"
#include "ui/board/paste_day_dialog.h"
#include "ui/board/week_board.h"
#include "ui/board/week_commands.h"
#include "ui/look/date_field.h"

#include <QComboBox>
#include <QLineEdit>
#include <QMenu>
#include <QPlainTextEdit>
#include <QTest>
#include <QTimer>

namespace {

constexpr Qt::KeyboardModifiers kDayKeys = Qt::ControlModifier | Qt::AltModifier;

/// The week board with a heavy Monday, and what the board says.
class CopiedDayTest : public WeekBoardPageTest
{
protected:
    CopiedDayTest()
    {
        QObject::connect(
            &page, &WeekBoardPage::said, &page, [this](const QString &words) { said << words; });
        add("competition");
        setSets("1x1 @9.5 then 3x3 -10%");
        grid->focusPlace({0, 1});
        add("feet-up");
        setSets("3x8 @7");
    }

    void copyMonday()
    {
        grid->focusPlace({0, 0});
        press(Qt::Key_C, kDayKeys);
    }
    [[nodiscard]] std::vector<std::string> cardsOf(core::LifterId lifter)
    {
        std::vector<std::string> all;
        for (const core::Card &card :
            roster.session.cards(lifter, roster.monday, roster.monday.addDays(13)))
            all.push_back(QStringLiteral("%1:%2 %3")
                              .arg(roster.monday.daysTo(card.day))
                              .arg(card.position)
                              .arg(QString(card.setLine).replace(u'\n', u'|'))
                              .toStdString());
        return all;
    }
    [[nodiscard]] QString remarksOf(PasteDayDialog &dialog)
    {
        return dialog.findChild<QPlainTextEdit *>(QStringLiteral("remarks"))->toPlainText();
    }

    QStringList said;
};

} // namespace

TEST_F(CopiedDayTest, IsPastedOntoAnotherDayAsOneStep)
{
    copyMonday();
    EXPECT_THAT(QApplication::clipboard()->text().toStdString(), HasSubstr("then 3x3 -10%"));
    grid->focusPlace({3, 0});
    press(Qt::Key_V, kDayKeys);
    EXPECT_THAT(cardsOf(roster.lifter),
        ElementsAre("0:0 1x1 @9.5|3x3 -10%", "0:1 3x8 @7", "3:0 1x1 @9.5|3x3 -10%", "3:1 3x8 @7"));
    EXPECT_EQ(grid->choice().chosen().size(), 2u) << "the new ones";
    ASSERT_TRUE(roster.session.undo());
    EXPECT_THAT(cardsOf(roster.lifter), ElementsAre("0:0 1x1 @9.5|3x3 -10%", "0:1 3x8 @7"));
    EXPECT_THAT(said, IsEmpty());
}

TEST_F(CopiedDayTest, AnEmptyOneOrAForeignClipboardIsSaid)
{
    grid->focusPlace({5, 0});
    press(Qt::Key_C, kDayKeys);
    ASSERT_EQ(said.size(), 1);
    EXPECT_EQ(said[0], QStringLiteral("Nothing is planned for this day."));
    QApplication::clipboard()->setText(QStringLiteral("shopping: milk"));
    press(Qt::Key_V, kDayKeys);
    press(Qt::Key_M, kDayKeys);
    ASSERT_EQ(said.size(), 3);
    EXPECT_THAT(said[1].toStdString(), HasSubstr("cannot be read as cards"));
    EXPECT_EQ(said[2], said[1]);
    QApplication::clipboard()->clear();
    press(Qt::Key_V, kDayKeys);
    EXPECT_THAT(said.back().toStdString(), HasSubstr("No day is copied yet"));
}

TEST_F(CopiedDayTest, GoesOntoManyLiftersAtOnceEachByTheirOwnLimits)
{
    const core::LifterId minor =
        roster.addLifter(QStringLiteral("Young One"), core::TouchStyle::soft);
    core::Lifter changed = *roster.session.lifter(minor);
    core::Edit edit;
    edit.lifters.before = {changed};
    changed.birthYear = roster.monday.year() - 15;
    edit.lifters.after = {changed};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Age"), edit));
    const core::LifterId third =
        roster.addLifter(QStringLiteral("Third"), core::TouchStyle::sinking);

    copyMonday();
    PasteDayDialog dialog(roster.session,
        copiedDay(roster.session.variations(), roster.session.lifters()), roster.monday.addDays(4),
        roster.lifter);
    dialog.show();
    auto *who = dialog.findChild<QComboBox *>(QStringLiteral("who"));
    EXPECT_THAT(remarksOf(dialog).toStdString(), HasSubstr("0 cards are laid."));
    who->setCurrentIndex(who->findText(QStringLiteral("All other lifters")));
    EXPECT_THAT(remarksOf(dialog).toStdString(), HasSubstr("4 cards are laid."));
    EXPECT_THAT(remarksOf(dialog).toStdString(),
        HasSubstr("Young One: Competition bench 1x1 @8 in place of 1x1 @9.5"));
    dialog.accept();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_THAT(cardsOf(minor), ElementsAre("4:0 1x1 @8|3x3 -10%", "4:1 3x8 @7"));
    EXPECT_THAT(cardsOf(third), ElementsAre("4:0 1x1 @8|3x3 -10%", "4:1 3x8 @7"))
        << "the age is not known";
    EXPECT_EQ(cardsOf(roster.lifter).size(), 2u) << "the day is theirs";
    ASSERT_TRUE(roster.session.undo()) << "one step for all";
    EXPECT_THAT(cardsOf(minor), IsEmpty());
    EXPECT_THAT(cardsOf(third), IsEmpty());
    EXPECT_EQ(cardsOf(roster.lifter).size(), 2u);
}

TEST_F(CopiedDayTest, TheDialogSaysWhatComesBeforeItIsDone)
{
    copyMonday();
    PasteDayDialog dialog(roster.session,
        copiedDay(roster.session.variations(), roster.session.lifters()), roster.monday.addDays(7),
        roster.lifter);
    dialog.show();
    auto *lifters = dialog.findChild<QListWidget *>(QStringLiteral("lifters"));
    auto *who = dialog.findChild<QComboBox *>(QStringLiteral("who"));
    EXPECT_THAT(remarksOf(dialog).toStdString(), HasSubstr("0 cards are laid."));
    lifters->item(0)->setCheckState(Qt::Checked); // onto another day of their own
    EXPECT_THAT(remarksOf(dialog).toStdString(), HasSubstr("2 cards are laid."));
    who->setCurrentIndex(who->findText(QStringLiteral("Nobody")));
    EXPECT_THAT(remarksOf(dialog).toStdString(), HasSubstr("0 cards are laid."));
    QPushButton *paste = nullptr;
    for (QPushButton *button : dialog.findChildren<QPushButton *>())
        if (button->text().contains(QStringLiteral("Paste")))
            paste = button;
    ASSERT_TRUE(paste);
    EXPECT_FALSE(paste->isEnabled());
    lifters->item(0)->setCheckState(Qt::Checked);
    EXPECT_EQ(who->currentIndex(), 0) << "chosen one by one again";
    EXPECT_TRUE(paste->isEnabled());
    QLineEdit &onto = dialog.findChild<DateField *>(QStringLiteral("onto"))->field();
    onto.selectAll();
    QTest::keyClicks(&onto, shownDate(roster.monday));
    auto *occupied = dialog.findChild<QComboBox *>(QStringLiteral("occupied"));
    occupied->setCurrentIndex(1);
    paste->click();
    EXPECT_THAT(cardsOf(roster.lifter), ElementsAre("0:0 1x1 @9.5|3x3 -10%", "0:1 3x8 @7"))
        << "in place of the same";
}

TEST_F(CopiedDayTest, TheHeadOfADayHasTheMenuOfTheDay)
{
    auto *headers = page.findChild<DayHeaders *>();
    ASSERT_TRUE(headers);
    QStringList offers;
    QTimer::singleShot(0, &page, [&offers] {
        auto *menu = qobject_cast<QMenu *>(QApplication::activePopupWidget());
        ASSERT_TRUE(menu);
        for (const QAction *action : menu->actions())
            offers << action->text().section(u'\t', 0, 0);
        menu->close();
    });
    const QPoint onTuesday = boardColumns(headers->width(), headers->height())[1].center();
    QContextMenuEvent event(QContextMenuEvent::Mouse, onTuesday, headers->mapToGlobal(onTuesday));
    QApplication::sendEvent(headers, &event);
    EXPECT_TRUE(offers.contains(QStringLiteral("Copy the day")));
    EXPECT_EQ(grid->choice().place().day, 1);
}

TEST_F(CopiedDayTest, AMisspeltVariationIsRefusedInTheFieldWithTheNearest)
{
    grid->focusPlace({0, 0});
    setSets("3x1+2(feetup) @8");
    ASSERT_TRUE(editor()) << "the text stays";
    EXPECT_THAT(
        editor()->accessibleDescription().toStdString(), HasSubstr("Did you mean feet_up?"));
    press(Qt::Key_Escape);
    EXPECT_THAT(cardsOf(roster.lifter).front(), HasSubstr("@9.5"));
}
