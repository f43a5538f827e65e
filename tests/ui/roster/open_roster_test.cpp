#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <gmock/gmock.h>

using namespace core;
using ui::OpenRoster;

namespace {

class RosterSessionTest : public testing::Test
{
protected:
    QTemporaryDir dir;
    OpenRoster session{RosterFile::create(dir.filePath(QStringLiteral("r.benchwright")))};

    Lifter newLifter(const QString &name)
    {
        Lifter lifter;
        lifter.id = session.newId<LifterTag>();
        lifter.name = name;
        lifter.gear = usualGear(Unit::kilogram);
        return lifter;
    }
    bool add(const Lifter &lifter)
    {
        Edit edit;
        edit.lifters.after = {lifter};
        return session.perform(QStringLiteral("Add lifter"), edit);
    }
};

} // namespace

TEST_F(RosterSessionTest, AnActionIsOneUndoStepAndIsTold)
{
    QSignalSpy told(&session, &OpenRoster::liftersChanged);
    ASSERT_TRUE(add(newLifter(QStringLiteral("Ada"))));
    EXPECT_EQ(session.lifters().size(), 1u);
    EXPECT_EQ(session.undoStack().undoText(), QStringLiteral("Add lifter"));

    session.undoStack().undo();
    EXPECT_TRUE(session.lifters().empty());
    session.undoStack().redo();
    EXPECT_EQ(session.lifters().size(), 1u);
    EXPECT_EQ(told.count(), 3);
}

TEST_F(RosterSessionTest, AnEmptyEditIsNoStep)
{
    EXPECT_TRUE(session.perform(QStringLiteral("Nothing"), {}));
    EXPECT_EQ(session.undoStack().count(), 0);
}

TEST_F(RosterSessionTest, AFailedWriteIsToldInWordsAndLeavesNoStep)
{
    ASSERT_TRUE(add(newLifter(QStringLiteral("Ada"))));
    QSignalSpy failed(&session, &OpenRoster::failed);
    EXPECT_FALSE(add(newLifter(QStringLiteral("ada")))); // the name is taken
    ASSERT_EQ(failed.count(), 1);
    EXPECT_THAT(failed.at(0).at(0).toString().toStdString(), testing::HasSubstr("Ada"));
    EXPECT_EQ(session.lifters().size(), 1u);
    EXPECT_EQ(session.undoStack().count(), 1);
}

TEST_F(RosterSessionTest, CardChangesNameTheLiftersConcerned)
{
    const Lifter lifter = newLifter(QStringLiteral("Ada"));
    ASSERT_TRUE(add(lifter));
    QSignalSpy told(&session, &OpenRoster::cardsChanged);
    Card card;
    card.id = session.newId<CardTag>();
    card.lifter = lifter.id;
    card.day = QDate(2026, 3, 2);
    card.variation = session.variations().front().id;
    card.setLine = QStringLiteral("3x3 @8");
    Edit edit;
    edit.cards.after = {card};
    ASSERT_TRUE(session.perform(QStringLiteral("Add card"), edit));
    ASSERT_EQ(told.count(), 1);
    EXPECT_TRUE(told.at(0).at(0).value<QSet<LifterId>>().contains(lifter.id));
    EXPECT_EQ(session.cards(lifter.id, card.day, card.day), std::vector<Card>{card});
}

TEST(Selection, AWeekIsNamedByItsMondayAndToldOnce)
{
    ui::Selection selection;
    selection.setWeekOf(QDate(2026, 11, 25)); // a Wednesday
    QSignalSpy told(&selection, &ui::Selection::weekChanged);
    EXPECT_EQ(selection.monday(), QDate(2026, 11, 23));
    selection.setWeekOf(QDate(2026, 11, 29)); // the Sunday of the same week
    EXPECT_EQ(told.count(), 0);
    selection.setWeekOf(QDate(2026, 11, 30));
    EXPECT_EQ(told.count(), 1);
}
