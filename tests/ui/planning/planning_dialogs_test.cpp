#include "core/plan/block_edits.h"
#include "core/plan/template.h"
#include "core/plan/touch_swap.h"
#include "tests/ui/board/board_roster.h"
#include "ui/planning/block_desk.h"
#include "ui/planning/block_dialog.h"
#include "ui/planning/block_ribbon.h"
#include "ui/planning/carry_forward_dialog.h"
#include "ui/planning/lay_template_dialog.h"
#include "ui/planning/rule_editor.h"
#include "ui/planning/save_template_dialog.h"
#include "ui/planning/what_if_view.h"
#include "ui/roster/lifter_history.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>
#include <gmock/gmock.h>

using namespace ui;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

class PlanningTest : public testing::Test
{
protected:
    core::Card put(int day, const char *code, const char *setLine, core::LifterId lifter)
    {
        core::Card card{roster.session.newId<core::Card>(), lifter, roster.monday.addDays(day), 0,
            roster.variation(code), QString::fromLatin1(setLine), {}};
        core::Edit edit;
        edit.cards.after = {card};
        EXPECT_TRUE(roster.session.perform(QStringLiteral("Add card"), edit));
        return card;
    }
    core::Block putBlock(int weeks)
    {
        core::Block block;
        block.id = roster.session.newId<core::Block>();
        block.lifter = roster.lifter;
        block.name = QStringLiteral("Strength");
        block.start = roster.monday;
        block.weeks = weeks;
        core::Edit edit;
        edit.blocks.after = {block};
        EXPECT_TRUE(roster.session.perform(QStringLiteral("Add block"), edit));
        return block;
    }
    std::function<core::CardId()> newCard()
    {
        return [this] { return roster.session.newId<core::Card>(); };
    }
    PlanSource source() { return {roster.session, roster.estimates, history, roster.lifter}; }

    BoardRoster roster;
    LifterHistory history{roster.session, roster.selection};
};

} // namespace

TEST_F(PlanningTest, ABlockIsNamedAndRefusedWhereItCannotStand)
{
    core::Block block;
    block.lifter = roster.lifter;
    block.name = QStringLiteral("Strength");
    block.start = roster.monday;
    BlockDialog dialog(QStringLiteral("New block"), block, [](const core::Block &made) {
        return made.weeks > 6 ? QStringLiteral("too long") : core::problems(made).join(u' ');
    });
    auto *take = dialog.findChild<QDialogButtonBox *>()->button(QDialogButtonBox::Ok);
    EXPECT_TRUE(take->isEnabled());
    dialog.findChild<QSpinBox *>()->setValue(7);
    EXPECT_FALSE(take->isEnabled());
    dialog.findChild<QSpinBox *>()->setValue(5);
    const QList<QCheckBox *> deloads = dialog.findChildren<QCheckBox *>();
    ASSERT_EQ(deloads.size(), 5);
    deloads.back()->click();
    EXPECT_THAT(dialog.block().deloadWeeks, ElementsAre(5));
    EXPECT_EQ(dialog.block().weeks, 5);
    dialog.findChild<QSpinBox *>()->setValue(4); // the deload goes with its week
    EXPECT_TRUE(dialog.block().deloadWeeks.empty());
    EXPECT_TRUE(take->isEnabled());

    // All of the first day is typed anew, key by key.
    dialog.show();
    auto *day = dialog.findChild<QLineEdit *>(QStringLiteral("date"));
    day->selectAll();
    QTest::keyClicks(day, QStringLiteral("07 Dec 20"));
    EXPECT_FALSE(take->isEnabled()) << "not a date yet";
    QTest::keyClicks(day, QStringLiteral("26"));
    EXPECT_TRUE(take->isEnabled());
    EXPECT_EQ(dialog.block().start, QDate(2026, 12, 7));
}

TEST_F(PlanningTest, AWeekIsCarriedForwardByARuleThatCanBeChangedByHand)
{
    put(0, "comp", "4x3 @7", roster.lifter);
    put(3, "off_chest_pause", "3x2 80%", roster.lifter);
    CarryForwardDialog dialog(source(), roster.monday, newCard());
    auto *kind = dialog.findChild<RuleEditor *>()->findChild<QComboBox *>();
    kind->setCurrentText(RuleEditor::tr("Raise the RPE"));
    auto *table = dialog.findChild<QTableWidget *>();
    ASSERT_EQ(dialog.rows().size(), 6u);
    EXPECT_EQ(dialog.rows()[0].setLine, QStringLiteral("4x3 @7.5"));
    EXPECT_EQ(dialog.rows()[0].day, roster.monday.addDays(7));
    EXPECT_EQ(dialog.rows()[4].setLine, QStringLiteral("4x3 @8.5"));
    EXPECT_THAT(table->item(0, 3)->text().toStdString(), HasSubstr(" kg"));

    table->item(0, 2)->setText(QStringLiteral("5x3 @7.5"));
    EXPECT_EQ(dialog.rows()[0].setLine, QStringLiteral("5x3 @7.5"));
    table->item(1, 2)->setText(QStringLiteral("5x"));
    EXPECT_THAT(table->item(1, 3)->text().toStdString(), HasSubstr("reps"));
    QPushButton *layOut = nullptr;
    for (QPushButton *button : dialog.findChildren<QPushButton *>())
        if (button->text() == CarryForwardDialog::tr("&Lay out"))
            layOut = button;
    ASSERT_TRUE(layOut);
    EXPECT_FALSE(layOut->isEnabled()) << "what is refused is not laid out";
    table->item(1, 2)->setText(QStringLiteral("3x1+2(feetup) @8"));
    EXPECT_THAT(table->item(1, 3)->text().toStdString(), HasSubstr("Did you mean feet_up?"));
    EXPECT_FALSE(layOut->isEnabled());
    table->item(1, 2)->setText(QStringLiteral("3x2 @7 then 2x2 -10%"));
    EXPECT_EQ(dialog.rows()[1].setLine, QStringLiteral("3x2 @7\n2x2 -10%"));
    EXPECT_EQ(table->item(1, 2)->text(), QStringLiteral("3x2 @7 then 2x2 -10%"));
    EXPECT_TRUE(layOut->isEnabled());
    const core::Edit edit = dialog.edit();
    EXPECT_EQ(edit.cards.after.size(), 6u);
    EXPECT_TRUE(edit.cards.before.empty());
    EXPECT_TRUE(roster.session.perform(QStringLiteral("Carry"), edit));
    EXPECT_EQ(roster.cards().size(), 8);
}

TEST_F(PlanningTest, StepsAreReadInTheProgramsAndTheCoachsWriting)
{
    EXPECT_THAT(stepsOf(QStringLiteral("0, 2.5, 5")), ElementsAre(0.0, 2.5, 5.0));
    EXPECT_THAT(stepsOf(QStringLiteral("0; 2.5;5")), ElementsAre(0.0, 2.5, 5.0));
    EXPECT_TRUE(stepsOf(QStringLiteral("0, two")).empty());
}

TEST_F(PlanningTest, ATemplateIsLaidOnManyLiftersAsOneStep)
{
    put(0, "off_chest_pause", "3x2 @8", roster.lifter);
    const core::Block block = putBlock(2);
    core::BlockTemplate made = core::templateOf(QStringLiteral("Heavy"), block,
        roster.session.cards(roster.lifter, block.start, block.end()), roster.session.variations(),
        core::usualTouchSwaps(roster.session.variations()));
    made.id = roster.session.newId<core::BlockTemplate>();
    core::Edit save;
    save.templates.after = {made};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Save template"), save));
    std::set<core::LifterId> lifters;
    for (int i = 0; i < 20; ++i)
        lifters.insert(roster.addLifter(QStringLiteral("Lifter %1").arg(i),
            i % 2 ? core::TouchStyle::sinking : core::TouchStyle::soft));
    lifters.insert(roster.lifter); // whose own block is in the way

    LayTemplateDialog dialog(roster.session, source(), roster.monday);
    dialog.mark(lifters);
    EXPECT_EQ(dialog.lifterCount(), 20);
    const std::string words = dialog.findChild<QPlainTextEdit *>()->toPlainText().toStdString();
    EXPECT_THAT(words, HasSubstr("Ada: left out."));
    EXPECT_THAT(words, HasSubstr("in place of"));
    const int steps = roster.session.steps().count();
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Lay"), dialog.edit()));
    EXPECT_EQ(roster.session.steps().count(), steps + 1);
    EXPECT_EQ(roster.session.blocks().size(), 21u);
    roster.session.undo();
    EXPECT_EQ(roster.session.blocks().size(), 1u);
}

TEST_F(PlanningTest, ATemplateOfAKnownNameBecomesItsNextVersion)
{
    core::BlockTemplate first;
    first.id = {1};
    first.name = QStringLiteral("Heavy");
    first.version = 3;
    SaveTemplateDialog dialog(QStringLiteral("Other"), {first}, roster.session.variations());
    EXPECT_EQ(dialog.earlier(), nullptr);
    dialog.findChild<QComboBox *>()->setEditText(QStringLiteral("Heavy"));
    ASSERT_NE(dialog.earlier(), nullptr);
    EXPECT_EQ(dialog.earlier()->version, 3);
    EXPECT_FALSE(dialog.swaps().empty());
}

TEST_F(PlanningTest, WhatIfSetsBothPlansSideBySide)
{
    core::WhatIfComparison comparison;
    comparison.current.weeks = {
        {roster.monday.addDays(6), {140.0, 134.0, 146.0}, {1.0, 1.0, 1.0}, 5000.0}};
    comparison.changed.weeks = {
        {roster.monday.addDays(6), {141.4, 135.0, 148.0}, {1.12, 1.1, 1.2}, 6000.0}};
    comparison.ratio = {{1.01, 0.998, 1.02}};
    const std::vector<WhatIfRow> rows = whatIfRows(comparison, core::Unit::kilogram);
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].current, QStringLiteral("140 kg (134 to 146)"));
    EXPECT_EQ(rows[0].difference, QStringLiteral("+1.0 % (\u22120.2 to +2.0)"));
    EXPECT_EQ(rows[0].fatigue, QStringLiteral("100 % \u2192 112 %"));
}

TEST_F(PlanningTest, ActionsOfABlockFollowLifterWeekAndBlocks)
{
    QWidget window;
    const BlockDesk desk(roster.session, roster.estimates, history, roster.selection, &window);
    const auto isEnabled = [&window](const QKeySequence &keys) {
        for (const QAction *action : window.actions())
            if (action->shortcut() == keys)
                return action->isEnabled();
        ADD_FAILURE() << "no action on " << keys.toString().toStdString();
        return false;
    };
    const QKeySequence edit(QStringLiteral("Ctrl+Shift+B")), make(QStringLiteral("Ctrl+B"));
    EXPECT_TRUE(isEnabled(make));
    EXPECT_FALSE(isEnabled(edit)) << "no block yet";
    putBlock(2);
    EXPECT_TRUE(isEnabled(edit)) << "without the menu having been opened";
    roster.selection.setWeekOf(roster.monday.addDays(14));
    EXPECT_FALSE(isEnabled(edit)) << "the week after its last";
    roster.selection.setWeekOf(roster.monday.addDays(7));
    EXPECT_TRUE(isEnabled(edit));
    ASSERT_TRUE(roster.session.undo());
    EXPECT_FALSE(isEnabled(edit));
    ASSERT_TRUE(roster.session.redo());

    const core::LifterId bo = roster.addLifter(QStringLiteral("Bo"), core::TouchStyle::soft);
    roster.selection.setLifter(bo);
    EXPECT_FALSE(isEnabled(edit)) << "another lifter's";
    EXPECT_TRUE(isEnabled(make));
    roster.selection.setLifter({});
    EXPECT_FALSE(isEnabled(make));
}

TEST_F(PlanningTest, TheRibbonTurnsTheWeekAndNamesTheBlock)
{
    putBlock(3);
    BlockRibbon ribbon(roster.session, roster.history, roster.selection);
    QObject::connect(
        &ribbon, &BlockRibbon::weekWanted, [this](QDate day) { roster.selection.setWeekOf(day); });
    core::BlockId activated;
    QObject::connect(
        &ribbon, &BlockRibbon::blockActivated, [&activated](core::BlockId id) { activated = id; });
    ribbon.resize(980, 60);
    ribbon.show();
    ASSERT_EQ(ribbon.ribbon().blocks.size(), 1u);
    EXPECT_THAT(ribbon.accessibleName().toStdString(), HasSubstr("Strength"));
    QTest::mouseClick(&ribbon, Qt::LeftButton, {}, ribbon.weekRect(5).center());
    EXPECT_EQ(roster.selection.monday(), ribbon.ribbon().weeks[5].monday);
    QTest::keyClick(&ribbon, Qt::Key_Left);
    EXPECT_EQ(roster.selection.monday(), ribbon.ribbon().weeks[4].monday);
    QTest::keyClick(&ribbon, Qt::Key_Return);
    EXPECT_TRUE(activated.isValid());
}

TEST_F(PlanningTest, TheRibbonFollowsWhatIsLoggedOfAWeekThatIsOver)
{
    put(-7, "comp", "2x3 100kg", roster.lifter);
    put(0, "comp", "2x3 100kg", roster.lifter);
    BlockRibbon ribbon(roster.session, roster.history, roster.selection);
    ribbon.resize(980, 60);
    ribbon.show();
    const RibbonWeek &last = ribbon.ribbon().weeks[2];
    ASSERT_EQ(last.monday, roster.monday.addDays(-7));
    EXPECT_NE(markOf(last), WeekMark::none);
    EXPECT_EQ(ribbon.ribbon().weeks[3].outcome, std::nullopt) << "this week";
    const QImage before = ribbon.grab().toImage();

    core::CheckIn hurts;
    hurts.id = roster.session.newId<core::CheckIn>();
    hurts.lifter = roster.lifter;
    hurts.day = roster.monday.addDays(-6);
    hurts.pain = core::PainFlag{core::BodyArea::elbows, {}};
    core::Edit edit;
    edit.checkIns.after = {hurts};
    ASSERT_TRUE(roster.session.perform(QStringLiteral("Check in"), edit));
    EXPECT_TRUE(ribbon.ribbon().weeks[2].outcome->hasPain);
    EXPECT_NE(ribbon.grab().toImage(), before) << "it shows by a sign";
}
