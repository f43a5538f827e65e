#include "ui/lifters/lifter_editor.h"

#include "tests/support/roster_fixture.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace {

class Editor : public testing::Test
{
protected:
    core::Lifter before = inventedLifter(u"Ada Quill"_s);
    ui::LifterEditor editor{before, {u"Bo Stone"_s}, {u"evening"_s}, QDate(2026, 11, 25)};

    QLineEdit *line(const char *name) const
    {
        return editor.findChild<QLineEdit *>(QLatin1String(name));
    }
    QLabel *note(const char *name) const { return editor.findChild<QLabel *>(QLatin1String(name)); }
    QPushButton *ok() const
    {
        return editor.findChild<QDialogButtonBox *>()->button(QDialogButtonBox::Ok);
    }
    void type(const char *name, const QString &text) const
    {
        line(name)->selectAll();
        QTest::keyClick(line(name), Qt::Key_Delete);
        QTest::keyClicks(line(name), text);
    }
};

} // namespace

TEST_F(Editor, SaysASlipBesideTheFieldAndHoldsOkUntilItIsPutRight)
{
    editor.show();
    EXPECT_TRUE(ok()->isEnabled());
    type("name", u"bo stone"_s);
    EXPECT_FALSE(ok()->isEnabled());
    EXPECT_TRUE(note("nameProblem")->isVisible());
    EXPECT_TRUE(note("nameProblem")->text().contains(u"bo stone"_s));
    type("name", u"Bo Stone junior"_s);
    EXPECT_TRUE(ok()->isEnabled());
    EXPECT_FALSE(note("nameProblem")->isVisible());
}

TEST_F(Editor, CautionsBesideTheBirthYearOfAMinorWithoutForbiddingAnything)
{
    editor.show();
    type("birthYear", u"2010"_s);
    EXPECT_TRUE(note("ageCaution")->isVisible());
    EXPECT_TRUE(ok()->isEnabled());
}

TEST_F(Editor, NobodyIsBornInAYearThatHasNotCome)
{
    editor.show();
    type("birthYear", u"2026"_s);
    EXPECT_TRUE(ok()->isEnabled());
    type("birthYear", u"2027"_s);
    EXPECT_FALSE(ok()->isEnabled());
}

TEST_F(Editor, ConvertsStoredWeightsAndPlatesWithTheUnit)
{
    before.bodyweightKg = 100.0;
    ui::LifterEditor stored(before, {}, {}, QDate(2026, 11, 25));
    stored.show();
    auto *unit = stored.findChild<QComboBox *>(u"unit"_s);
    unit->setFocus();
    QTest::keyClick(unit, Qt::Key_Down);
    EXPECT_TRUE(stored.findChild<QLineEdit *>(u"bodyweight"_s)->text().startsWith(u"220.46"_s));
    EXPECT_EQ(stored.findChild<QLineEdit *>(u"bar"_s)->text(), u"45"_s);
    QTest::keyClick(
        stored.findChild<QDialogButtonBox *>()->button(QDialogButtonBox::Ok), Qt::Key_Space);
    EXPECT_EQ(stored.result(), QDialog::Accepted);
    EXPECT_EQ(stored.lifter().bodyweightKg, 100.0);
    EXPECT_EQ(stored.lifter().gear, core::usualGear(core::Unit::pound));
}

TEST_F(Editor, AWeightThatWasOnlyJustTypedIsMeantInTheUnitThatIsChosen)
{
    editor.show();
    auto *unit = editor.findChild<QComboBox *>(u"unit"_s);
    EXPECT_LT(unit->mapTo(&editor, QPoint()).y(), line("bodyweight")->mapTo(&editor, QPoint()).y())
        << "the unit is asked first";
    type("bodyweight", u"181.9"_s);
    unit->setFocus();
    QTest::keyClick(unit, Qt::Key_Down);
    EXPECT_EQ(line("bodyweight")->text(), u"181.9"_s);
    QTest::keyClick(ok(), Qt::Key_Space);
    EXPECT_NEAR(editor.lifter().bodyweightKg.value_or(0.0), 82.51, 0.01);
}

TEST_F(Editor, StaysOpenWhereItCannotBeStored)
{
    bool isStored = false;
    editor.keepBy([&isStored] { return isStored; });
    editor.show();
    type("name", u"Cleo"_s);
    QTest::keyClick(ok(), Qt::Key_Space);
    EXPECT_TRUE(editor.isVisible());
    EXPECT_EQ(line("name")->text(), u"Cleo"_s);
    EXPECT_FALSE(note("notStored")->text().isEmpty());
    isStored = true;
    QTest::keyClick(ok(), Qt::Key_Space);
    EXPECT_FALSE(editor.isVisible());
}

TEST_F(Editor, ClearsTheMeetByItsBox)
{
    editor.show();
    auto *has = editor.findChild<QCheckBox *>(u"hasMeet"_s);
    QTest::keyClick(has, Qt::Key_Space);
    QTest::keyClick(ok(), Qt::Key_Space);
    EXPECT_TRUE(editor.lifter().meetDate.has_value());
    QTest::keyClick(has, Qt::Key_Space);
    QTest::keyClick(ok(), Qt::Key_Space);
    EXPECT_FALSE(editor.lifter().meetDate.has_value());
}

TEST_F(Editor, EditsPlatesInTheTable)
{
    editor.show();
    auto *plates = editor.findChild<QTableWidget *>(u"plates"_s);
    const int rows = plates->rowCount();
    plates->item(0, 1)->setText(u"none"_s);
    EXPECT_FALSE(ok()->isEnabled());
    plates->item(0, 1)->setText(u"9"_s);
    EXPECT_TRUE(ok()->isEnabled());
    QTest::keyClick(ok(), Qt::Key_Space);
    EXPECT_EQ(int(editor.lifter().gear.plates.size()), rows);
    EXPECT_EQ(editor.lifter().gear.plates[0].pairs, 9);
}

TEST_F(Editor, LeavesAnUntouchedLifterAsItWas)
{
    editor.show();
    QTest::keyClick(ok(), Qt::Key_Space);
    EXPECT_EQ(editor.lifter(), before);
}
