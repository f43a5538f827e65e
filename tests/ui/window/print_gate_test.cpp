#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/checks/accept_dialog.h"
#include "ui/look/theme.h"
#include "ui/print/plan_preview.h"
#include "ui/window/main_window.h"
#include "ui/window/roster_view.h"

#include <QApplication>
#include <QLineEdit>
#include <QTest>
#include <QTimer>
#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace {

/// A lifter whose shoulders hurt and who is to bench today.
class PrintGate : public testing::Test
{
protected:
    void SetUp() override
    {
        {
            core::RosterFile file = core::RosterFile::create(path);
            std::vector<core::Lifter> lifters{inventedLifter(u"Ada Núñez"_s)};
            addTo(file, lifters);
            lifter = lifters[0].id;
            core::Edit edit;
            core::CheckIn said;
            said.id = file.newId<core::CheckIn>();
            said.lifter = lifter;
            said.day = today;
            said.pain = core::PainFlag{core::BodyArea::shoulders, {}};
            edit.checkIns.after = {said};
            core::Card card;
            card.id = file.newId<core::Card>();
            card.lifter = lifter;
            card.day = today;
            card.variation = core::competitionOf(file.variations(), core::Lift::bench)->id;
            card.setLine = u"3x3 80kg"_s;
            edit.cards.after = {card};
            file.apply(edit);
        }
        window.show();
        ASSERT_TRUE(window.openFile(path));
        window.roster()->selection().setLifter(lifter);
        window.roster()->selection().setWeekOf(today);
    }
    ui::OpenRoster &roster() { return window.roster()->openRoster(); }

    /// Opens the preview, saves the plan as PDF, and answers what is asked.
    bool print(const QString &note)
    {
        bool isSaved = false;
        QTimer::singleShot(0, [&] {
            auto *preview = qobject_cast<ui::PlanPreview *>(QApplication::activeModalWidget());
            ASSERT_NE(preview, nullptr) << "the preview may be opened freely";
            QTimer::singleShot(0, [&] {
                auto *asking = qobject_cast<ui::AcceptDialog *>(QApplication::activeModalWidget());
                if (!asking)
                    return;
                ++asked;
                asking->findChild<QLineEdit *>(u"note"_s)->setText(note);
                note.isEmpty() ? asking->reject() : asking->accept();
            });
            isSaved = preview->savePdf(pdf);
            preview->reject();
        });
        window.roster()->printPlan();
        return isSaved;
    }

    PrivateFolder folder;
    QString path = folder.path(u"club.benchwright"_s);
    QString pdf = folder.path(u"plan.pdf"_s);
    ui::Theme theme{*static_cast<QApplication *>(QCoreApplication::instance())};
    SetClock clock;
    QDate today = clock.today.date();
    core::LifterId lifter;
    ui::MainWindow window{theme, clock.today};
    int asked = 0;
};

} // namespace

TEST_F(PrintGate, AsksBeforeAPlanThatTheChecksStopIsPrinted)
{
    EXPECT_FALSE(print({})) << "the coach went back";
    EXPECT_EQ(asked, 1);
    EXPECT_FALSE(QFile::exists(pdf));
    EXPECT_TRUE(roster().given(lifter).empty()) << "nothing was given";

    const int steps = roster().steps().index();
    EXPECT_TRUE(print(u"cleared by the physician"_s));
    EXPECT_EQ(asked, 2);
    EXPECT_TRUE(QFile::exists(pdf));
    ASSERT_EQ(roster().waivers(lifter).size(), 1u);
    EXPECT_EQ(roster().waivers(lifter)[0].note, u"cleared by the physician"_s);
    EXPECT_EQ(roster().steps().index(), steps + 1) << "one step";

    EXPECT_TRUE(print({}));
    EXPECT_EQ(asked, 2) << "accepted for good";
}
