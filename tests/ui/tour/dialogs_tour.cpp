#include "core/exchange/log_csv.h"
#include "core/exchange/people_csv.h"
#include "core/notation/notation_help.h"
#include "core/storage/backup.h"
#include "tests/core/exchange/return_files.h"
#include "tests/ui/tour/window_tour.h"
#include "ui/catalogue/catalogue_dialog.h"
#include "ui/handout/hand_out_dialog.h"
#include "ui/importing/import_dialog.h"
#include "ui/returns/returns_dialog.h"
#include "ui/window/roster_view.h"

#include <QAbstractButton>
#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableWidget>
#include <QTreeWidget>

using namespace core;

namespace tests {

namespace {

template <class Dialog> Dialog &openDialog()
{
    return *qobject_cast<Dialog *>(QApplication::activeModalWidget());
}

} // namespace

TEST_F(WindowTour, DialogsOfTheMenus)
{
    data << logColumns() << peopleColumns(); // which the import names
    for (const auto &forms : {core::setLineForms(), core::setEntryForms()}) // which the help shows
        for (const core::NotationForm &form : forms)
            data << form.example.split(u'\n');
    for (const char *name :
        {"New roster", "Open", "Open a backup", "Import log", "Read return sheets",
            "Write hand-outs", "Print plan", "Add a lifter", "Edit the lifter",
            "Variation catalogue", "Keys and set lines", "Safety", "About Benchwright"})
        lookAtDialog(name, [this, name] { action(name)->trigger(); });
}

TEST_F(WindowTour, DialogsOfThePlan)
{
    roster().showWeekBoard();
    const auto acceptIt = [] {
        static_cast<QDialog *>(QApplication::activeModalWidget())->accept();
        QCoreApplication::processEvents();
    };
    for (const char *name : {"Edit block", "Shift block", "Copy block", "Save block as template",
             "Lay out a template", "Copy this week to", "Remove block"}) {
        lookAtDialog(name, [this, name] { action(name)->trigger(); });
        lookAtDialog(
            name, [this, name] { action(name)->trigger(); }, acceptIt);
        look(window, QLatin1String("done: ") + QLatin1String(name));
    }
    lookAtDialog(
        "New block", [this] { action("New block")->trigger(); },
        [this] {
            QWidget &dialog = *QApplication::activeModalWidget();
            dialog.findChild<QLineEdit *>()->clear();
            look(dialog, "block without a name");
            dialog.findChild<QSpinBox *>()->setValue(2);
            look(dialog, "short block");
        });
    choose("Dario Pellenk");
    lookAtDialog(
        "Carry this week forward", [this] { action("Carry this week forward")->trigger(); },
        [this] {
            QWidget &dialog = *QApplication::activeModalWidget();
            for (QComboBox *box : dialog.findChildren<QComboBox *>())
                for (int choice = 0; choice < box->count(); ++choice) {
                    box->setCurrentIndex(choice);
                    look(dialog, box->currentText());
                }
            dialog.findChild<QTableWidget *>()->item(0, 2)->setText(QStringLiteral("3x"));
            look(dialog, "unreadable row");
            for (QLineEdit *field : dialog.findChildren<QLineEdit *>())
                field->setText(QStringLiteral("?"));
            look(dialog, "unreadable rule");
        });
}

TEST_F(WindowTour, EditorOfALifter)
{
    const auto spoil = [this] {
        QWidget &dialog = *QApplication::activeModalWidget();
        for (const char *said : {"", "?", "99999"}) {
            for (QLineEdit *field : dialog.findChildren<QLineEdit *>())
                field->setText(QString::fromLatin1(said));
            auto *plates = dialog.findChild<QTableWidget *>();
            for (int row = 0; row < plates->rowCount(); ++row)
                plates->item(row, row % 2)->setText(QString::fromLatin1(said));
            look(dialog, QStringLiteral("lifter with ") + QLatin1String(said));
        }
        const QString year = QString::number(clock.today.date().year() - 12);
        dialog.findChild<QLineEdit *>(QStringLiteral("birthYear"))->setText(year);
        dialog.findChild<QComboBox *>(QStringLiteral("unit"))->setCurrentIndex(1);
        look(dialog, "minor in pounds");
    };
    lookAtDialog(
        "Edit the lifter", [this] { action("Edit the lifter")->trigger(); }, spoil);
    lookAtDialog(
        "Add a lifter", [this] { action("Add a lifter")->trigger(); }, spoil);
}

TEST_F(WindowTour, EveryVariationOfTheCatalogue)
{
    lookAtDialog(
        "Variation catalogue", [this] { action("Variation catalogue")->trigger(); },
        [this] {
            auto &dialog = openDialog<ui::CatalogueDialog>();
            for (const Variation &variation : roster().openRoster().variations()) {
                dialog.choose(variation.id);
                look(dialog, variation.code);
            }
            dialog.addVariation();
            data << dialog.findChild<QLineEdit *>(QStringLiteral("code"))->text();
            look(dialog, "new variation");
            dialog.findChild<QLineEdit *>(QStringLiteral("name"))->clear();
            dialog.findChild<QLineEdit *>(QStringLiteral("code"))->setText(QStringLiteral("?"));
            dialog.findChild<QSpinBox *>(QStringLiteral("repsLow"))->setValue(9);
            dialog.findChild<QSpinBox *>(QStringLiteral("repsHigh"))->setValue(1);
            look(dialog, "variation with mistakes");
            dialog.choose(roster().openRoster().variations().back().id);
            dialog.retireOrRestore();
            look(dialog, "mistake elsewhere, one retired");
        });
}

TEST_F(WindowTour, ImportWithAndWithoutProblems)
{
    const QByteArray header = "lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n";
    data << QStringLiteral(".csv") << logColumns() << peopleColumns()
         << QStringList{QStringLiteral("\"x\""), QStringLiteral("\"q\""), QStringLiteral("f, m"),
                QStringLiteral("feet_upp")};
    const QStringList files{
        write(QStringLiteral("1.csv"), header + "Α,2026-03-30,long_pause,100,5,5,8,0\n"),
        write(QStringLiteral("2.csv"),
            header
                + "Α,2026-03-30,feet_upp,100,5,5,8,0\nΑ,30.3.26,long_pause,x,5,5,11,2\nΑ\n"
                  ",2099-01-01,long_pause,100,0,500,8,1,,,,,,,,,\n"),
        write(QStringLiteral("3.csv"), "lifter,sex,bodyweight_kg\nΑ,q,9999\nΑ,f,62\n"),
        write(QStringLiteral("4.csv"), "?\n"), folder.path(QStringLiteral("5.csv"))};
    for (const QString &file : files)
        lookAtDialog(
            "Import log", [this] { action("Import log")->trigger(); },
            [&] {
                auto &dialog = openDialog<ui::ImportDialog>();
                QSignalSpy planned(&dialog, &ui::ImportDialog::planned);
                dialog.offer({file});
                planned.wait(2'000);
                look(dialog, file);
            });
}

TEST_F(WindowTour, HandOuts)
{
    lookAtDialog(
        "Write hand-outs", [this] { action("Write hand-outs")->trigger(); },
        [this] {
            auto &dialog = openDialog<ui::HandOutDialog>();
            for (QComboBox *box : dialog.findChildren<QComboBox *>())
                for (int choice = 0; choice < box->count(); ++choice) {
                    box->setCurrentIndex(choice);
                    look(dialog, box->currentText());
                }
            dialog.findChild<QComboBox *>()->setCurrentIndex(0);
            QSignalSpy written(&dialog, &ui::HandOutDialog::written);
            dialog.chooseFolder(folder.path({}));
            for (QPushButton *button : dialog.findChildren<QPushButton *>())
                if (button->isDefault())
                    button->click();
            EXPECT_TRUE(written.wait(30'000));
            look(dialog, "hand-outs written");
            for (QCheckBox *box : dialog.findChildren<QCheckBox *>())
                box->setChecked(false);
            look(dialog, "no kind of hand-out");
        });
}

TEST_F(WindowTour, ReturnSheets)
{
    PlannedWeek week;
    week.lifter = roster().openRoster().lifters().front();
    week.catalogue = roster().openRoster().variations();
    week.cards.clear();
    week.add(0, "off_chest_pause", QStringLiteral("3x3 100kg"));
    week.add(2, "feet_up", QStringLiteral("3x5+ 80kg"));
    week.add(3, "long_pause", QStringLiteral("2x2"));
    Edit edit;
    for (Card &card : week.cards) {
        card.id = roster().openRoster().newId<Card>();
        edit.cards.after.push_back(card);
    }
    ASSERT_TRUE(roster().openRoster().perform(written(QStringLiteral("Add")), edit));

    const ReturnFile sound(week);
    ReturnFile otherwise = sound;
    otherwise.rows[1]["reps_done"] = QStringLiteral("1");
    otherwise.rows[1]["failed"] = QStringLiteral("1");
    otherwise.rows[2]["variation"] = QStringLiteral("feet_up");
    otherwise.rows[2]["load_kg"] = QStringLiteral("90");
    otherwise.rows[2]["touch"] = QStringLiteral("4");
    otherwise.rows[3]["date"] = QStringLiteral("2024-05-07");
    otherwise.rows[3]["rpe"] = QStringLiteral("9.5");
    otherwise.rows[3]["note"] = written(QStringLiteral("Note"));
    otherwise.reopen(4);
    otherwise.reopen(5, "skipped");
    otherwise.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"sleep", "1"},
        {"stress", "2"}, {"motivation", "5"}, {"sore_back", "1"}, {"pain", "elbows"},
        {"pain_words", written(QStringLiteral("Sharp"))},
        {"note", written(QStringLiteral("Note"))}});
    ReturnFile stranger = sound;
    stranger.rows[0]["lifter_id"] = QStringLiteral("999");
    stranger.rows[0]["lifter"] = written(QStringLiteral("Nobody"));
    ReturnFile moved = sound;
    moved.rows[0]["plan"] = QStringLiteral("0");
    ReturnFile cut = sound;
    cut.hasEnd = false;
    ReturnFile wrong = sound;
    wrong.rows[1]["load_kg"] = QStringLiteral("?");
    wrong.rows[2]["variation"] = QStringLiteral("?");
    wrong.rows[3]["row"] = QStringLiteral("?");
    ReturnFile newer = sound;
    newer.rows[0]["format"] = QStringLiteral("99");

    data << QStringLiteral(".csv") << returnColumns();
    for (const ReturnFile &file : {sound, otherwise, stranger, moved, cut, wrong, newer})
        lookAtDialog(
            "Read return sheets", [this] { action("Read return sheets")->trigger(); },
            [&] {
                auto &dialog = openDialog<ui::ReturnsDialog>();
                QSignalSpy reviewed(&dialog, &ui::ReturnsDialog::reviewed);
                dialog.offer({write(QStringLiteral("1.csv"), file.text())});
                EXPECT_TRUE(reviewed.wait(10'000));
                look(dialog, "return sheet");
            });
}

TEST_F(WindowTour, MessagesAboutFiles)
{
    const QString text = write(QStringLiteral("τ.benchwright"), "?");
    const QString open = window.path();
    for (const QString &bad : {text, folder.path(QStringLiteral("φ.benchwright"))}) {
        EXPECT_FALSE(window.openFile(bad));
        look(window, "a file that cannot be opened");
    }
    EXPECT_FALSE(window.createFile(open));
    look(window, "a file that is there");
    Q_EMIT roster().openRoster().failed(written(QStringLiteral("full")), written("disk"));
    lookAtDialog("details", [this] {
        for (QPushButton *button : window.findChildren<QPushButton *>())
            if (button->text() == said(QStringLiteral("De&tails")))
                button->click();
    });
    window.closeFile();
    EXPECT_TRUE(window.openFile(open));
    ASSERT_FALSE(backupsOf(open).empty());
    EXPECT_TRUE(window.openFile(backupsOf(open).front().path));
    data << QFileInfo(window.path()).completeBaseName();
    look(window, "a backup");
}

} // namespace tests
