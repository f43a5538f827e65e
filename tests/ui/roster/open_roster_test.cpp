#include "ui/roster/open_roster.h"

#include "tests/support/set_clock.h"
#include "tests/ui/roster/failing_store.h"
#include "ui/roster/selection.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <gmock/gmock.h>
#include <random>

using namespace core;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using ui::OpenRoster;

namespace {

class OpenRosterTest : public testing::Test
{
protected:
    QTemporaryDir dir;
    FailingStore *store = new FailingStore(dir.filePath(QStringLiteral("r.benchwright")));
    SetClock clock;
    OpenRoster roster{std::unique_ptr<RosterStore>(store), clock.today};

    Lifter newLifter(const QString &name)
    {
        Lifter lifter;
        lifter.id = roster.newId<Lifter>();
        lifter.name = name;
        lifter.gear = usualGear(Unit::kilogram);
        return lifter;
    }
    static Edit adding(const Lifter &lifter)
    {
        Edit edit;
        edit.lifters.after = {lifter};
        return edit;
    }
    bool add(const Lifter &lifter)
    {
        return roster.perform(QStringLiteral("Add %1").arg(lifter.name), adding(lifter));
    }
    Card cardOn(const Lifter &lifter, QDate day)
    {
        Card card;
        card.id = roster.newId<Card>();
        card.lifter = lifter.id;
        card.day = day;
        card.variation = roster.variations().front().id;
        card.setLine = QStringLiteral("3x3 @8");
        return card;
    }
    bool put(const std::optional<Card> &before, const Card &after, const QString &series = {})
    {
        Edit edit;
        if (before)
            edit.cards.before = {*before};
        edit.cards.after = {after};
        return roster.perform(QStringLiteral("Move"), edit, series);
    }
    [[nodiscard]] std::vector<std::string> names() const
    {
        std::vector<std::string> names;
        for (const Lifter &lifter : roster.lifters())
            names.push_back(lifter.name.toStdString());
        return names;
    }
    [[nodiscard]] std::vector<QDate> days(const Lifter &lifter)
    {
        std::vector<QDate> days;
        for (const Card &card : roster.cards(lifter.id, QDate(2026, 1, 1), QDate(2026, 12, 31)))
            days.push_back(card.day);
        return days;
    }
};

std::string wordsOf(const QSignalSpy &failed)
{
    return failed.isEmpty() ? std::string() : failed.last().at(0).toString().toStdString();
}

} // namespace

TEST_F(OpenRosterTest, AnActionIsOneUndoStepAndIsToldOnce)
{
    QSignalSpy told(&roster, &OpenRoster::changed);
    ASSERT_TRUE(add(newLifter(QStringLiteral("Ada"))));
    EXPECT_THAT(names(), ElementsAre("Ada"));
    EXPECT_EQ(roster.steps().undoText(), QStringLiteral("Add Ada"));

    EXPECT_TRUE(roster.undo());
    EXPECT_THAT(names(), IsEmpty());
    EXPECT_TRUE(roster.redo());
    EXPECT_THAT(names(), ElementsAre("Ada"));
    EXPECT_EQ(told.count(), 3);
}

TEST_F(OpenRosterTest, AnEmptyEditIsNoStepAndNothingIsTold)
{
    QSignalSpy told(&roster, &OpenRoster::changed);
    EXPECT_TRUE(roster.perform(QStringLiteral("Nothing"), {}));
    EXPECT_EQ(roster.steps().count(), 0);
    EXPECT_EQ(told.count(), 0);
}

TEST_F(OpenRosterTest, WithoutAStepThereIsNothingToTakeBackOrToDoAgain)
{
    EXPECT_FALSE(roster.undo());
    EXPECT_FALSE(roster.redo());
}

TEST_F(OpenRosterTest, AChangeNamesKindsLiftersAndDays)
{
    const Lifter lifter = newLifter(QStringLiteral("Ada"));
    ASSERT_TRUE(add(lifter));
    const Card card = cardOn(lifter, QDate(2026, 3, 2));
    std::vector<RosterChange> told;
    QObject::connect(&roster, &OpenRoster::changed, &roster,
        [&told](const RosterChange &change) { told.push_back(change); });
    ASSERT_TRUE(put({}, card));
    ASSERT_EQ(told.size(), 1u);
    EXPECT_TRUE(told[0].has<Card>(lifter.id));
    EXPECT_FALSE(told[0].has<Card>(LifterId{lifter.id.value + 1}));
    EXPECT_FALSE(told[0].has<Lifter>());
    EXPECT_TRUE(told[0].isWithin(card.day, card.day));
    EXPECT_FALSE(told[0].isWithin(card.day.addDays(1), card.day.addDays(7)));
    EXPECT_EQ(roster.cards(lifter.id, card.day, card.day), std::vector<Card>{card});
}

TEST_F(OpenRosterTest, AFirstWriteThatFailsIsToldAndLeavesNoStep)
{
    store->failsToWrite = true;
    QSignalSpy failed(&roster, &OpenRoster::failed);
    QSignalSpy told(&roster, &OpenRoster::changed);
    EXPECT_FALSE(add(newLifter(QStringLiteral("Ada"))));
    EXPECT_THAT(wordsOf(failed), HasSubstr("disk is full"));
    EXPECT_EQ(roster.steps().count(), 0);
    EXPECT_EQ(told.count(), 0);
    EXPECT_THAT(names(), IsEmpty());
}

TEST_F(OpenRosterTest, AStepThatCannotBeTakenBackStaysAndIsTakenBackLater)
{
    ASSERT_TRUE(add(newLifter(QStringLiteral("Ada"))));
    store->failsToWrite = true;
    QSignalSpy failed(&roster, &OpenRoster::failed);
    EXPECT_FALSE(roster.undo());
    EXPECT_EQ(failed.count(), 1);
    EXPECT_EQ(roster.steps().undoText(), QStringLiteral("Add Ada"));
    EXPECT_THAT(names(), ElementsAre("Ada"));

    store->failsToWrite = false;
    EXPECT_TRUE(roster.undo());
    EXPECT_THAT(names(), IsEmpty());

    store->failsToWrite = true;
    EXPECT_FALSE(roster.redo());
    EXPECT_EQ(roster.steps().redoText(), QStringLiteral("Add Ada"));
    store->failsToWrite = false;
    EXPECT_TRUE(roster.redo());
    EXPECT_THAT(names(), ElementsAre("Ada"));
}

TEST_F(OpenRosterTest, AStepWhoseCommitFailsStaysToo)
{
    const Lifter ada = newLifter(QStringLiteral("Ada"));
    ASSERT_TRUE(add(ada));
    // Somebody else plans for Ada, so that the lifter can no longer be taken out: the file finds
    // out when the transaction is committed.
    Edit plan;
    plan.cards.after = {cardOn(ada, QDate(2026, 3, 2))};
    store->changeElsewhere(plan);
    QSignalSpy failed(&roster, &OpenRoster::failed);
    EXPECT_FALSE(roster.undo());
    EXPECT_THAT(wordsOf(failed), HasSubstr("still has a plan or a log"));
    EXPECT_EQ(roster.steps().undoText(), QStringLiteral("Add Ada"));

    store->changeElsewhere(inverse(plan));
    EXPECT_TRUE(roster.undo());
    EXPECT_THAT(names(), IsEmpty());
}

TEST_F(OpenRosterTest, AChangeThatCannotBeReadBackIsNotCalledAFailedOne)
{
    QSignalSpy failed(&roster, &OpenRoster::failed);
    store->failsToRead = true;
    EXPECT_TRUE(add(newLifter(QStringLiteral("Ada"))));
    EXPECT_THAT(wordsOf(failed), HasSubstr("is stored, but it could not be read back"));
    EXPECT_EQ(roster.steps().count(), 1);
    EXPECT_THAT(names(), IsEmpty()) << "as it was shown before";

    store->failsToRead = false;
    EXPECT_TRUE(add(newLifter(QStringLiteral("Bo"))));
    EXPECT_THAT(names(), ElementsAre("Ada", "Bo"));
}

TEST_F(OpenRosterTest, WhoeverIsToldOfAChangeMayNotChangeAnything)
{
    bool refused = false;
    QObject::connect(&roster, &OpenRoster::changed, &roster,
        [&] { refused = !add(newLifter(QStringLiteral("Bo"))); });
    QSignalSpy failed(&roster, &OpenRoster::failed);
    ASSERT_TRUE(add(newLifter(QStringLiteral("Ada"))));
    EXPECT_TRUE(refused);
    EXPECT_THAT(wordsOf(failed), HasSubstr("Do it once more"));
    EXPECT_THAT(names(), ElementsAre("Ada"));

    ASSERT_TRUE(roster.undo());
    EXPECT_EQ(roster.steps().redoText(), QStringLiteral("Add Ada")) << "the stack is whole";
    ASSERT_TRUE(roster.redo());
    EXPECT_THAT(names(), ElementsAre("Ada"));
}

TEST_F(OpenRosterTest, AChangeMadeElsewhereIsToldAndIsNoStep)
{
    QSignalSpy told(&roster, &OpenRoster::changed);
    store->changeElsewhere(adding(newLifter(QStringLiteral("Ada"))));
    EXPECT_EQ(told.count(), 1);
    EXPECT_THAT(names(), ElementsAre("Ada"));
    EXPECT_EQ(roster.steps().count(), 0);
}

TEST_F(OpenRosterTest, WhatIsHalfTypedIsStoredBeforeAStepIsTakenBack)
{
    ASSERT_TRUE(add(newLifter(QStringLiteral("Ada"))));
    const auto half = QObject::connect(&roster, &OpenRoster::settling, &roster,
        [&] { EXPECT_TRUE(add(newLifter(QStringLiteral("Bo")))); });
    EXPECT_TRUE(roster.undo());
    QObject::disconnect(half);
    EXPECT_THAT(names(), ElementsAre("Ada")) << "what was typed last is taken back";
    EXPECT_EQ(roster.steps().redoText(), QStringLiteral("Add Bo")) << "and is not lost";
}

TEST_F(OpenRosterTest, WhatIsHalfTypedIsStoredBeforeTheSelectionChanges)
{
    ui::Selection selection(roster);
    std::vector<LifterId> shown;
    QObject::connect(
        &roster, &OpenRoster::settling, &roster, [&] { shown.push_back(selection.lifter()); });
    selection.setLifter({1});
    selection.setLifter({1});
    selection.setLifter({2});
    EXPECT_THAT(shown, ElementsAre(LifterId{}, LifterId{1}));
}

TEST_F(OpenRosterTest, StepsOfASeriesAreOneStep)
{
    const Lifter ada = newLifter(QStringLiteral("Ada"));
    ASSERT_TRUE(add(ada));
    const Card monday = cardOn(ada, QDate(2026, 3, 2));
    ASSERT_TRUE(put({}, monday));
    Card tuesday = monday, wednesday = monday;
    tuesday.day = monday.day.addDays(1);
    wednesday.day = monday.day.addDays(2);
    const QString series = QStringLiteral("keys");
    ASSERT_TRUE(put(monday, tuesday, series));
    ASSERT_TRUE(put(tuesday, wednesday, series));
    EXPECT_EQ(roster.steps().count(), 3);
    ASSERT_TRUE(roster.undo());
    EXPECT_THAT(days(ada), ElementsAre(monday.day));
    ASSERT_TRUE(roster.redo());
    EXPECT_THAT(days(ada), ElementsAre(wednesday.day));

    ASSERT_TRUE(put(wednesday, tuesday, QStringLiteral("other keys")));
    EXPECT_EQ(roster.steps().count(), 4) << "another series is another step";
}

TEST_F(OpenRosterTest, ASeriesThatEndsWhereItBeganLeavesNoStep)
{
    const Lifter ada = newLifter(QStringLiteral("Ada"));
    ASSERT_TRUE(add(ada));
    const Card monday = cardOn(ada, QDate(2026, 3, 2));
    ASSERT_TRUE(put({}, monday));
    Card tuesday = monday;
    tuesday.day = monday.day.addDays(1);
    ASSERT_TRUE(put(monday, tuesday, QStringLiteral("keys")));
    ASSERT_TRUE(put(tuesday, monday, QStringLiteral("keys")));
    EXPECT_EQ(roster.steps().count(), 2);
    EXPECT_TRUE(roster.undo());
    EXPECT_THAT(days(ada), IsEmpty());
}

// Do, undo and redo in any order on a disk that fails now and then: what is shown is always what
// the steps done so far make of an empty roster, and nothing that was done can get out of reach.
TEST_F(OpenRosterTest, AnyOrderOfDoUndoAndRedoOnABadDiskKeepsTheRosterAndItsSteps)
{
    std::mt19937 random(7);
    std::vector<std::vector<std::string>> history{{}}; // names after each step
    size_t at = 0;
    for (int action = 0; action < 400; ++action) {
        store->failsToWrite = random() % 4 == 0;
        switch (random() % 3) {
        case 0: {
            const QString name = QStringLiteral("L%1").arg(1000 + action);
            if (add(newLifter(name))) {
                history.resize(at + 1);
                history.push_back(history[at]);
                history.back().push_back(name.toStdString());
                ++at;
            }
            break;
        }
        case 1:
            ASSERT_EQ(roster.undo(), at > 0 && !store->failsToWrite);
            at -= at > 0 && !store->failsToWrite;
            break;
        default: {
            const bool can = at + 1 < history.size() && !store->failsToWrite;
            ASSERT_EQ(roster.redo(), can);
            at += can;
        }
        }
        ASSERT_THAT(names(), testing::ElementsAreArray(history[at])) << "action " << action;
        ASSERT_EQ(roster.steps().index(), int(at));
        ASSERT_EQ(roster.steps().count(), int(history.size()) - 1);
    }
}

TEST_F(OpenRosterTest, AWeekIsNamedByItsMondayAndToldOnce)
{
    ui::Selection selection(roster);
    selection.setWeekOf(QDate(2026, 11, 25)); // a Wednesday
    QSignalSpy told(&selection, &ui::Selection::weekChanged);
    EXPECT_EQ(selection.monday(), QDate(2026, 11, 23));
    selection.setWeekOf(QDate(2026, 11, 29)); // the Sunday of the same week
    EXPECT_EQ(told.count(), 0);
    selection.setWeekOf(QDate(2026, 11, 30));
    EXPECT_EQ(told.count(), 1);
}

// Facts: what is written with an action, or without one, and is not undone

namespace {

GivenDay givenDay(OpenRoster &roster, const Card &card)
{
    GivenDay day;
    day.id = roster.newId<GivenDay>();
    day.lifter = card.lifter;
    day.day = card.day;
    day.at = QDateTime(card.day, QTime(9, 0), Qt::UTC);
    day.cards = {{card.id, card.variation, card.setLine, {}, {}}};
    return day;
}

} // namespace

TEST_F(OpenRosterTest, AFactIsWrittenWithTheActionAndOutlivesItsUndo)
{
    const Lifter ada = newLifter(QStringLiteral("Ada"));
    ASSERT_TRUE(add(ada));
    const Card card = cardOn(ada, QDate(2026, 3, 2));
    Edit edit, facts;
    edit.cards.after = {card};
    facts.given.after = {givenDay(roster, card)};
    QSignalSpy changed(&roster, &OpenRoster::changed);
    ASSERT_TRUE(roster.perform(QStringLiteral("Add"), edit, {}, facts));
    EXPECT_EQ(changed.size(), 1) << "one transaction, told once";
    EXPECT_EQ(roster.given(ada.id), facts.given.after);
    ASSERT_TRUE(roster.undo());
    EXPECT_THAT(days(ada), IsEmpty());
    EXPECT_EQ(roster.given(ada.id), facts.given.after);
    ASSERT_TRUE(roster.redo());
    EXPECT_EQ(roster.given(ada.id), facts.given.after);
}

TEST_F(OpenRosterTest, WhatIsRecordedIsNoStep)
{
    const Lifter ada = newLifter(QStringLiteral("Ada"));
    ASSERT_TRUE(add(ada));
    Edit facts;
    facts.given.after = {givenDay(roster, cardOn(ada, QDate(2026, 3, 2)))};
    ASSERT_TRUE(roster.record(facts));
    EXPECT_EQ(roster.steps().count(), 1);
    EXPECT_EQ(roster.given(ada.id), facts.given.after);
}

TEST_F(OpenRosterTest, AFactThatCannotBeWrittenIsToldAndTakesTheActionWithIt)
{
    const Lifter ada = newLifter(QStringLiteral("Ada"));
    ASSERT_TRUE(add(ada));
    const Card card = cardOn(ada, QDate(2026, 3, 2));
    Edit edit, facts;
    edit.cards.after = {card};
    facts.given.after = {givenDay(roster, card)};
    facts.given.after[0].cards.clear();
    QSignalSpy failed(&roster, &OpenRoster::failed);
    EXPECT_FALSE(roster.perform(QStringLiteral("Add"), edit, {}, facts));
    EXPECT_THAT(wordsOf(failed), HasSubstr("without cards"));
    EXPECT_THAT(days(ada), IsEmpty());
    EXPECT_EQ(roster.steps().count(), 1);
}
