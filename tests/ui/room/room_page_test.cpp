#include "tests/support/roster_fixture.h"
#include "tests/ui/board/board_roster.h"
#include "ui/room/room_page.h"
#include "ui/room/seat.h"
#include "ui/room/seat_column.h"
#include "ui/roster/insights.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTest>
#include <QToolButton>
#include <gmock/gmock.h>

using namespace core;
using namespace ui;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Optional;
using testing::SizeIs;

namespace {

/// Ada, Ben, Cem and Dua train at once; the room is driven by keys alone.
class RoomPageTest : public testing::Test
{
protected:
    RoomPageTest()
    {
        for (const char *name : {"Ben", "Cem", "Dua"})
            others.push_back(roster.addLifter(QString::fromLatin1(name), TouchStyle::soft));
        window.resize(1000, 620);
        window.show();
        window.setFocus();
        QApplication::setActiveWindow(&window);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        QObject::connect(
            &window, &RoomPage::said, &window, [this](const QString &words) { told << words; });
    }

    void plan(LifterId lifter, const char *code, const QString &setLine)
    {
        Card card;
        card.id = roster.session.newId<Card>();
        card.lifter = lifter;
        card.day = today;
        card.position = int(roster.session.cards(lifter, today, today).size());
        card.variation = roster.variation(code);
        card.setLine = setLine;
        Edit edit;
        edit.cards.after = {card};
        ASSERT_TRUE(roster.session.perform(QStringLiteral("Plan"), edit));
    }
    void planBench(LifterId lifter, double loadKg, int sets)
    {
        plan(lifter, "comp", QStringLiteral("%1x5 %2kg").arg(sets).arg(loadKg));
    }

    static void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key(key), with);
        QApplication::processEvents();
    }
    static void type(const char *text)
    {
        for (; *text; ++text)
            QTest::keyClick(QApplication::focusWidget(), *text);
        QApplication::processEvents();
    }
    static void enter(const char *text)
    {
        type(text);
        press(Qt::Key_Return);
    }
    void letIn(const char *part)
    {
        press(Qt::Key_L, Qt::AltModifier);
        auto *field = window.findChild<QLineEdit *>(QStringLiteral("addToRoom"));
        ASSERT_TRUE(field->hasFocus());
        // The names offered are a window of their own, whose keys go to the field too.
        QTest::keyClicks(field, QString::fromLatin1(part));
        QTest::keyClick(field, Qt::Key_Return);
        QTest::keyClick(field, Qt::Key_Escape);
        QApplication::processEvents();
        // Without a window manager nobody gives the focus back that the names had.
        window.activateWindow();
        QApplication::setActiveWindow(&window);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        window.setFocus();
    }

    std::vector<SetEntry> logged(LifterId lifter) const
    {
        std::vector<SetEntry> sets;
        for (const LoggedSession &session : roster.session.sessions(lifter))
            if (session.day == today)
                sets.insert(sets.end(), session.sets.begin(), session.sets.end());
        return sets;
    }
    std::vector<std::string> inside() const
    {
        std::vector<std::string> names;
        for (const Seat *seat : window.room().seats())
            names.push_back(seat->lifter()->name.toStdString());
        return names;
    }
    SeatColumn &column(size_t place) const
    {
        return *window.findChildren<SeatColumn *>().at(qsizetype(place));
    }
    std::string said(size_t place, const char *label) const
    {
        const auto *words = column(place).findChild<QLabel *>(QString::fromLatin1(label));
        return words->isVisible() ? words->text().toStdString() : std::string();
    }
    std::string racks() const
    {
        const auto *words = window.findChild<QLabel *>(QStringLiteral("racks"));
        return words->isVisible() ? words->text().toStdString() : std::string();
    }

    BoardRoster roster;
    const QDate today = roster.clock.today.date();
    std::vector<LifterId> others;
    Insights insights{roster.session, roster.estimates};
    mutable RoomPage window{roster.session, roster.estimates, insights, roster.selection};
    QStringList told;
};

} // namespace

TEST_F(RoomPageTest, FourLiftersAreLetInAndLogByKeyboardAlone)
{
    planBench(roster.lifter, 90, 3);
    planBench(others[0], 60, 2);
    planBench(others[1], 70, 2);
    planBench(others[2], 80, 2);
    for (const char *part : {"ad", "ben", "CEM", "du"})
        letIn(part);
    EXPECT_THAT(inside(), ElementsAre("Ada", "Ben", "Cem", "Dua"));
    EXPECT_EQ(window.room().atHand()->lifter()->name, QStringLiteral("Dua"));
    EXPECT_EQ(said(0, "seatNext"),
        roster.session.variation(roster.variation("comp"))->name.toStdString());
    EXPECT_THAT(said(0, "seatAsked"), HasSubstr("5 x 90 kg"));
    EXPECT_EQ(said(0, "seatPlates"), "each side 25 + 10");
    EXPECT_THAT(said(0, "seatLeft"), HasSubstr("2 sets of 5 x 90 kg"));

    press(Qt::Key_1, Qt::AltModifier);
    enter(""); // as planned
    EXPECT_THAT(logged(roster.lifter), SizeIs(1));
    EXPECT_EQ(logged(roster.lifter)[0].loadKg, 90.0);
    EXPECT_EQ(logged(roster.lifter)[0].rpe, std::nullopt);
    EXPECT_THAT(said(0, "seatLast"), HasSubstr("5 x 90 kg"));
    EXPECT_THAT(said(0, "seatProgress"), HasSubstr("1 of 3"));

    press(Qt::Key_Right);
    enter("x4 9 t3; grip");
    ASSERT_THAT(logged(others[0]), SizeIs(1));
    EXPECT_EQ(logged(others[0])[0].repsDone, 4);
    EXPECT_THAT(logged(others[0])[0].rpe, Optional(9.0));
    EXPECT_THAT(logged(others[0])[0].touch, Optional(3));
    EXPECT_EQ(logged(others[0])[0].note, QStringLiteral("grip"));

    press(Qt::Key_4, Qt::AltModifier);
    press(Qt::Key_Left);
    enter("x3 miss");
    ASSERT_THAT(logged(others[1]), SizeIs(1));
    EXPECT_TRUE(logged(others[1])[0].failed);
    EXPECT_THAT(logged(others[2]), SizeIs(0));

    EXPECT_TRUE(roster.session.undo());
    EXPECT_THAT(logged(others[1]), SizeIs(0)) << "each set is one step";
}

TEST_F(RoomPageTest, TheEntrySaysWhoseSetIsEntered)
{
    planBench(roster.lifter, 90, 3);
    letIn("ada");
    letIn("ben");
    const auto whose = [this](const QString &name) {
        for (const auto *title : window.findChildren<QLabel *>(QStringLiteral("setAtHand"))) {
            if (title->isVisible()) {
                EXPECT_TRUE(title->text().startsWith(name)) << title->text().toStdString();
            }
        }
        EXPECT_THAT(QApplication::focusWidget()->accessibleName().toStdString(),
            HasSubstr(name.toStdString()));
        EXPECT_TRUE(QApplication::focusWidget()->accessibleDescription().startsWith(name));
    };
    whose(QStringLiteral("Ben"));
    press(Qt::Key_1, Qt::AltModifier);
    whose(QStringLiteral("Ada"));
    enter("");
    whose(QStringLiteral("Ada"));
}

TEST_F(RoomPageTest, LoadsAfterAMissAndInPainAreThoseOfTheLog)
{
    planBench(roster.lifter, 90, 4);
    letIn("ada");
    // The log page of the same lifter, beside the room.
    DayLog log(roster.session, roster.estimates, insights, roster.history, roster.selection);
    const Seat &seat = *window.room().atHand();
    const auto expectSame = [&] {
        EXPECT_EQ(seat.log().planned(), log.planned());
        EXPECT_EQ(seat.log().rows(), log.rows());
    };
    expectSame();
    enter("x3 miss");
    expectSame();
    ASSERT_TRUE(seat.log().planned()[1].loadKg);
    EXPECT_LE(*seat.log().planned()[1].loadKg, 90.0 * kAfterMiss);
    EXPECT_EQ(said(0, "seatSaid"), "lighter after the miss");

    Edit edit;
    edit.checkIns.after = {CheckIn()};
    CheckIn &checkIn = edit.checkIns.after[0];
    checkIn.id = roster.session.newId<CheckIn>();
    checkIn.lifter = roster.lifter;
    checkIn.day = today;
    checkIn.pain = PainFlag{BodyArea::shoulders, QStringLiteral("left")};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Say"), edit));
    QApplication::processEvents();
    expectSame();
    EXPECT_FALSE(seat.log().planned()[1].loadKg);
    EXPECT_NE(said(0, "seatSaid"), "");
    EXPECT_NE(said(0, "seatStop"), "");
    EXPECT_EQ(said(0, "seatPlates"), "");
    enter("");
    EXPECT_THAT(logged(roster.lifter), SizeIs(1)) << "nothing is logged that is held back";
}

TEST_F(RoomPageTest, TheFirstSetGivesTheDay)
{
    planBench(others[0], 60, 2);
    letIn("ben");
    EXPECT_TRUE(roster.session.given(others[0]).empty());
    enter("");
    EXPECT_THAT(roster.session.given(others[0]), SizeIs(1));
}

TEST_F(RoomPageTest, WhatIsHalfTypedStaysWithItsLifter)
{
    planBench(roster.lifter, 90, 3);
    planBench(others[0], 60, 2);
    letIn("ada");
    letIn("ben");
    type("x4 8");
    press(Qt::Key_1, Qt::AltModifier);
    EXPECT_THAT(said(1, "seatUntaken"), HasSubstr("x4 8"));
    EXPECT_THAT(logged(others[0]), SizeIs(0));
    press(Qt::Key_2, Qt::AltModifier);
    press(Qt::Key_Return);
    ASSERT_THAT(logged(others[0]), SizeIs(1));
    EXPECT_EQ(logged(others[0])[0].repsDone, 4);

    type("nonsense");
    press(Qt::Key_Delete, Qt::AltModifier);
    EXPECT_THAT(inside(), ElementsAre("Ada", "Ben")) << "what cannot be saved keeps him in";
    EXPECT_EQ(told.size(), 1);
    press(Qt::Key_Escape);
    type("8");
    press(Qt::Key_Delete, Qt::AltModifier);
    EXPECT_THAT(inside(), ElementsAre("Ada"));
    EXPECT_THAT(logged(others[0]), SizeIs(2)) << "saved on the way out";
    press(Qt::Key_Delete, Qt::AltModifier);
    EXPECT_TRUE(inside().empty());
    EXPECT_TRUE(window.findChild<QLabel *>(QStringLiteral("roomEmpty"))->isVisible());
}

TEST_F(RoomPageTest, SharedRacksShowTheOrderWithTheFewestPlates)
{
    planBench(roster.lifter, 100, 3);
    planBench(others[0], 60, 3);
    letIn("ada");
    letIn("ben");
    EXPECT_EQ(racks(), "");
    press(Qt::Key_K, Qt::AltModifier);
    EXPECT_THAT(racks(), HasSubstr("only Ben"));
    press(Qt::Key_1, Qt::AltModifier);
    press(Qt::Key_K, Qt::AltModifier);
    EXPECT_THAT(racks(), HasSubstr("Ben 60 kg (3 sets), Ada 100 kg (3 sets). Plates"));
    EXPECT_THAT(racks(), HasSubstr("Plates on and off: 8; taking turns: 34."));
    enter(""); // Ada went first all the same: her plates are on the bar
    EXPECT_THAT(racks(), HasSubstr(": Ada 100 kg (2 sets), Ben 60 kg (3 sets)."));
    press(Qt::Key_K, Qt::AltModifier);
    EXPECT_THAT(racks(), HasSubstr("Rack 2: only Ada"));
    press(Qt::Key_K, Qt::AltModifier);
    EXPECT_THAT(racks(), HasSubstr("Rack 1: only Ben"));
}

TEST_F(RoomPageTest, FollowsTheLifterListAndLeadsIt)
{
    letIn("ada");
    letIn("ben");
    EXPECT_EQ(roster.selection.lifter(), others[0]);
    roster.selection.setLifter(roster.lifter);
    EXPECT_EQ(window.room().atHand()->id(), roster.lifter);
    roster.selection.setLifter(others[2]);
    EXPECT_EQ(window.room().atHand()->id(), roster.lifter) << "she is not in the room";
    QTest::mouseClick(&column(1), Qt::LeftButton, {}, {5, 5});
    EXPECT_EQ(roster.selection.lifter(), others[0]);
}

TEST_F(RoomPageTest, IsRememberedForTheDay)
{
    const PrivateFolder settings;
    const QString path = QStringLiteral("/r.benchwright");
    window.room().remember(path);
    letIn("ben");
    letIn("ada");
    press(Qt::Key_K, Qt::AltModifier);
    EXPECT_EQ(
        rememberedRoom(path, today), (std::vector<RoomPlace>{{others[0], 0}, {roster.lifter, 1}}));
    EXPECT_TRUE(rememberedRoom(path, today.addDays(1)).empty());
    EXPECT_TRUE(rememberedRoom(QStringLiteral("/other.benchwright"), today).empty());

    RoomPage again(roster.session, roster.estimates, insights, roster.selection);
    again.room().remember(path);
    ASSERT_THAT(again.room().seats(), SizeIs(2));
    EXPECT_EQ(again.room().seats()[1]->rack(), 1);
}

TEST_F(RoomPageTest, AnUnknownNameIsToldAndALifterIsLetInOnce)
{
    letIn("ben");
    letIn("ben");
    EXPECT_THAT(inside(), ElementsAre("Ben"));
    EXPECT_GE(told.size(), 1);
    window.room().enter(others[0]);
    EXPECT_THAT(inside(), ElementsAre("Ben"));
}

TEST_F(RoomPageTest, AnUndoneLifterLeavesTheRoom)
{
    const LifterId late = roster.addLifter(QStringLiteral("Eli"), TouchStyle::soft);
    letIn("ada");
    letIn("eli");
    ASSERT_EQ(window.room().atHand()->id(), late);
    EXPECT_TRUE(roster.session.undo());
    QApplication::processEvents();
    EXPECT_THAT(inside(), ElementsAre("Ada"));
    enter("60x5");
    EXPECT_THAT(logged(roster.lifter), SizeIs(1));
}

TEST_F(RoomPageTest, FourFitBesideEachOtherAndMoreScroll)
{
    for (const char *part : {"ada", "ben", "cem", "dua"})
        letIn(part);
    const auto *area = window.findChild<QScrollArea *>();
    window.resize(1280 - 280, 560); // the smallest window less the lifter list
    QApplication::processEvents();
    EXPECT_LE(area->widget()->width(), area->viewport()->width());
    for (const char *name : {"Eli", "Fay"}) {
        roster.addLifter(QString::fromLatin1(name), TouchStyle::soft);
        letIn(name);
    }
    QTest::qWait(1); // for the layout, and the scrolling after it
    EXPECT_LE(window.width(), 1280 - 280);
    EXPECT_GT(area->widget()->width(), area->viewport()->width());
    const QRect shown(column(5).mapTo(area->viewport(), QPoint()), column(5).size());
    EXPECT_TRUE(area->viewport()->rect().contains(shown.adjusted(0, 0, 0, -shown.height() + 1)))
        << shown.x() << " to " << shown.right() << ", " << shown.y() << " of "
        << area->viewport()->width();
}
