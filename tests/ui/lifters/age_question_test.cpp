#include "ui/lifters/age_question.h"

#include "core/safety/unknown_age.h"
#include "tests/support/roster_fixture.h"
#include "tests/support/set_clock.h"
#include "ui/lifters/lifter_draft.h"
#include "ui/lifters/lifter_header.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace {

class AgeQuestionTest : public testing::Test
{
protected:
    AgeQuestionTest()
    {
        header.resize(900, 120);
        header.show();
        selection.setLifter(lifters[0].id);
    }
    core::RosterFile makeFile()
    {
        core::RosterFile file = core::RosterFile::create(folder.path(u"roster.benchwright"_s));
        for (core::Lifter &lifter : lifters) {
            lifter.birthYear.reset();
            lifter.isAdult = false;
        }
        lifters[1].birthYear = 1990;
        addTo(file, lifters);
        return file;
    }
    const core::Lifter &ada() const { return *roster.lifter(lifters[0].id); }
    bool isAsked() const { return header.findChild<ui::AgeQuestion *>()->isVisible(); }
    QLineEdit &year() { return *header.findChild<QLineEdit *>(u"yearOfBirth"_s); }
    void answer(const QString &words)
    {
        year().setText(words);
        QTest::keyClick(&year(), Qt::Key_Return);
    }

    PrivateFolder folder;
    std::vector<core::Lifter> lifters{
        inventedLifter(u"Ada Núñez"_s), inventedLifter(u"Bo Stone"_s)};
    SetClock clock;
    ui::OpenRoster roster{std::make_unique<core::RosterFile>(makeFile()), clock.today};
    ui::Estimates estimates{roster};
    ui::Selection selection{roster};
    ui::LifterHeader header{roster, estimates, selection};
};

} // namespace

TEST_F(AgeQuestionTest, StandsInTheHeadUntilItIsAnsweredAndNeverAgain)
{
    EXPECT_TRUE(isAsked());
    header.findChild<QPushButton *>(u"adult"_s)->click();
    EXPECT_TRUE(ada().isAdult);
    EXPECT_FALSE(isAsked());
    EXPECT_EQ(roster.steps().count(), 1) << "one step";
    EXPECT_TRUE(roster.undo());
    EXPECT_TRUE(isAsked());
    EXPECT_TRUE(roster.redo());
    selection.setLifter(lifters[1].id);
    EXPECT_FALSE(isAsked()) << "the year is known";
    selection.setLifter(lifters[0].id);
    EXPECT_FALSE(isAsked());
}

TEST_F(AgeQuestionTest, SaysOfAnUnknownAgeWhatTheRuleSaysLikeTheDialog)
{
    const QString why = core::whyNoMaximalYet(core::limitsOn(ada(), clock.today.date(), {}));
    ASSERT_FALSE(why.isEmpty());
    EXPECT_TRUE(header.findChild<QLabel *>(u"ageWords"_s)->text().endsWith(why));
    EXPECT_EQ(ui::ageCaution(ada(), clock.today.date()), why);
}

TEST_F(AgeQuestionTest, TakesTheYearOfBirthAndSaysWhatIsWrongWithOne)
{
    answer(u"soon"_s);
    EXPECT_TRUE(isAsked());
    EXPECT_TRUE(header.findChild<QLabel *>(u"ageWords"_s)->text().contains(u"four digits"_s));
    answer(u"2011"_s);
    EXPECT_EQ(ada().birthYear, 2011);
    EXPECT_FALSE(isAsked());
}

TEST_F(AgeQuestionTest, AHalfTypedYearIsTakenWhenTheLifterChanges)
{
    year().setText(u"1998"_s);
    roster.settle();
    EXPECT_EQ(ada().birthYear, 1998);
}
