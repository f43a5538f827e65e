#include "ui/catalogue/catalogue_dialog.h"

#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/roster/open_roster.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace {

class Catalogue : public testing::Test
{
protected:
    PrivateFolder folder;
    SetClock clock;
    ui::OpenRoster roster{std::make_unique<core::RosterFile>(
                              core::RosterFile::create(folder.path(u"roster.benchwright"_s))),
        clock.today};
    std::vector<core::Variation> before = roster.variations();
    ui::CatalogueDialog dialog{roster};

    void SetUp() override { dialog.show(); }
    template <class Widget> Widget *child(const char *name) const
    {
        return dialog.findChild<Widget *>(QLatin1String(name));
    }
    QPushButton *save() const
    {
        return dialog.findChild<QDialogButtonBox *>()->button(QDialogButtonBox::Save);
    }
    void chooseByCode(const QString &code)
    {
        for (const core::Variation &v : before)
            if (v.code == code)
                dialog.choose(v.id);
    }
    const core::Variation &stored(const QString &code) const
    {
        for (const core::Variation &v : roster.variations())
            if (v.code == code)
                return v;
        throw std::out_of_range("no such variation");
    }
};

} // namespace

TEST_F(Catalogue, ListsEveryVariationUnderItsLift)
{
    const auto *tree = child<QTreeWidget>("variations");
    int listed = 0;
    for (int i = 0; i < tree->topLevelItemCount(); ++i)
        listed += tree->topLevelItem(i)->childCount();
    EXPECT_EQ(listed, int(before.size()));
    EXPECT_EQ(tree->topLevelItemCount(), 3);
    EXPECT_FALSE(save()->isEnabled()) << "nothing to save yet";
}

TEST_F(Catalogue, LookingThroughEveryVariationChangesNone)
{
    for (const core::Variation &v : before)
        dialog.choose(v.id);
    EXPECT_FALSE(save()->isEnabled());
}

TEST_F(Catalogue, SavesTheChangesOfAVisitAsOneUndoStep)
{
    chooseByCode(u"feet_up"_s);
    child<QDoubleSpinBox>("ratio")->setValue(0.9);
    chooseByCode(u"close_grip"_s);
    child<QPushButton>("retire")->click();
    save()->click();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_DOUBLE_EQ(stored(u"feet_up"_s).ratio, 0.9);
    EXPECT_TRUE(stored(u"close_grip"_s).retired);
    roster.undo();
    EXPECT_EQ(roster.variations(), before);
    EXPECT_FALSE(roster.steps().canUndo());
}

TEST_F(Catalogue, AddsAVariationWhoseCodeFollowsItsName)
{
    child<QPushButton>("add")->click();
    auto *name = child<QLineEdit>("name");
    EXPECT_TRUE(name->hasFocus() || !dialog.isActiveWindow());
    name->selectAll();
    QTest::keyClicks(name, u"Towel bench"_s);
    EXPECT_EQ(name->text(), u"Towel bench"_s) << "the cursor stays while the code follows";
    EXPECT_EQ(child<QLineEdit>("code")->text(), u"towel_bench"_s);
    save()->click();
    EXPECT_EQ(stored(u"towel_bench"_s).name, u"Towel bench"_s);
    EXPECT_EQ(roster.variations().size(), before.size() + 1);
}

TEST_F(Catalogue, HoldsSaveWhileAVariationElsewhereIsUnsound)
{
    chooseByCode(u"feet_up"_s);
    auto *name = child<QLineEdit>("name");
    name->selectAll();
    QTest::keyClick(name, Qt::Key_Delete);
    EXPECT_TRUE(child<QLabel>("nameProblem")->isVisible());
    EXPECT_FALSE(save()->isEnabled());
    chooseByCode(u"close_grip"_s);
    EXPECT_FALSE(save()->isEnabled());
    chooseByCode(u"feet_up"_s);
    QTest::keyClicks(name, u"Feet up"_s);
    EXPECT_TRUE(save()->isEnabled());
}

TEST_F(Catalogue, KeepsTheCompetitionLiftAndStoredCodesFixed)
{
    chooseByCode(u"comp"_s);
    EXPECT_FALSE(child<QPushButton>("retire")->isEnabled());
    EXPECT_FALSE(child<QDoubleSpinBox>("ratio")->isEnabled());
    EXPECT_TRUE(child<QLineEdit>("code")->isReadOnly());
}

TEST_F(Catalogue, CancelChangesNothing)
{
    child<QPushButton>("add")->click();
    QTimer::singleShot(0, &dialog, [] { // asks whether what was changed is to go
        auto *question = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
        ASSERT_NE(question, nullptr);
        question->findChild<QPushButton *>(QStringLiteral("drop"))->click();
    });
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(roster.variations(), before);
    EXPECT_FALSE(roster.steps().canUndo());
}
