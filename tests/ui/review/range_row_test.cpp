#include "ui/review/range_row.h"

#include "ui/charts/time_window.h"

#include <QTest>
#include <QToolButton>
#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using namespace ui;

namespace {

class RangeRowTest : public testing::Test
{
protected:
    RangeRowTest() { row.setBounds({0, 400}); }

    void press(const QString &words)
    {
        for (QToolButton *button : row.findChildren<QToolButton *>())
            if (button->text() == words)
                button->click();
    }
    /// The words of the button that is down; empty where none is.
    QString down() const
    {
        for (const QToolButton *button : row.findChildren<QToolButton *>())
            if (button->isChecked())
                return button->text();
        return {};
    }

    TimeWindow window;
    RangeRow row{window};
};

} // namespace

TEST_F(RangeRowTest, BeginsWithAll)
{
    EXPECT_EQ(window.span(), (TimeSpan{0, 400}));
    EXPECT_EQ(down(), u"All");
}

TEST_F(RangeRowTest, AButtonShowsTheLastWeeksMonthsOrYear)
{
    press(u"8 weeks"_s);
    EXPECT_EQ(window.span(), (TimeSpan{344, 400}));
    press(u"6 months"_s);
    EXPECT_EQ(window.span(), (TimeSpan{217, 400}));
    press(u"1 year"_s);
    EXPECT_EQ(window.span(), (TimeSpan{34, 400}));
    EXPECT_EQ(down(), u"1 year");
    press(u"All"_s);
    EXPECT_EQ(window.span(), window.bounds());
}

TEST_F(RangeRowTest, AButtonComesUpOnceAnotherSpanIsShown)
{
    press(u"8 weeks"_s);
    window.pan(-10);
    EXPECT_EQ(down(), u"");
    press(u"8 weeks"_s);
    EXPECT_EQ(down(), u"8 weeks");
}

TEST_F(RangeRowTest, TheRangeChosenStaysInOtherBounds)
{
    press(u"8 weeks"_s);
    row.setBounds({100, 300});
    EXPECT_EQ(window.span(), (TimeSpan{244, 300}));
    EXPECT_EQ(down(), u"8 weeks");
}

TEST_F(RangeRowTest, ASpanThatNoButtonShowsIsKeptInOtherBounds)
{
    window.show({50, 90});
    row.setBounds({0, 500});
    EXPECT_EQ(window.span(), (TimeSpan{50, 90}));
    EXPECT_EQ(down(), u"");
}
