#include "ui/lifters/lifter_summary.h"

#include "core/domain/search_text.h"
#include "tests/support/roster_fixture.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

using strength::Standing;

TEST(BenchSummary, ShowsTheIntervalWithTheEstimateInTheLiftersUnit)
{
    const ui::BenchSummary bench{strength::Band{142.4, 136.6, 148.9}, Standing::enough};
    EXPECT_EQ(ui::bandText(bench, core::Unit::kilogram), u"142 (137–149) kg"_s);
    // 142.4, 136.6 and 148.9 kg over 0.45359237 are 313.9, 301.2 and 328.3 lb.
    EXPECT_EQ(ui::bandText(bench, core::Unit::pound), u"314 (301–328) lb"_s);
}

TEST(BenchSummary, HasWordsInPlaceOfANumberWithoutData)
{
    const ui::BenchSummary none = ui::benchSummary(nullptr, QDate(2026, 1, 1));
    EXPECT_TRUE(ui::bandText(none, core::Unit::kilogram).isEmpty());
    EXPECT_FALSE(ui::standingText(none).isEmpty());
    EXPECT_TRUE(ui::standingText({strength::Band{100, 95, 105}, Standing::enough}).isEmpty());
    EXPECT_FALSE(ui::standingText({strength::Band{100, 80, 120}, Standing::thin}).isEmpty());
}

TEST(BenchSummary, OfAClockThatIsBehindIsOfTheLastSet)
{
    core::LiftEstimate fit;
    for (const int sunday : {20002, 20009}) // 6 and 13 October 2024
        fit.estimate.weeks.push_back({sunday, {sunday / 200.0, 90.0, 120.0}, {}, 4});
    fit.estimate.asOf = 20008;
    for (const int clock : {20008, 20001, 19000})
        EXPECT_NEAR(ui::benchSummary(&fit, core::fromEngineDay(clock)).band->kg, 100.045, 1e-6);
}

TEST(MeetText, CountsDownAndFallsSilentAfterwards)
{
    const QDate today(2026, 11, 25);
    EXPECT_EQ(ui::meetText(today, today), u"meet today"_s);
    EXPECT_EQ(ui::meetText(today.addDays(1), today), u"meet tomorrow"_s);
    EXPECT_EQ(ui::meetText(QDate(2026, 12, 25), today), u"meet in 30 days"_s);
    EXPECT_EQ(ui::meetText(today.addDays(-1), today), QString());
    EXPECT_EQ(ui::meetText(std::nullopt, today), QString());
}

TEST(SearchText, ForgetsCaseAndAccents)
{
    EXPECT_EQ(core::folded(u"Zoë NÚÑEZ"_s), u"zoe nunez"_s);
    EXPECT_EQ(core::folded(u"Straße"_s), core::folded(u"STRASSE"_s));
    EXPECT_TRUE(
        core::matchesWords(core::folded(u"Zoë Núñez evening"_s), core::folded(u"nun  ev"_s)));
    EXPECT_FALSE(core::matchesWords(core::folded(u"Zoë Núñez"_s), core::folded(u"nunez bo"_s)));
    EXPECT_TRUE(core::matchesWords(QString(), u"  "_s));
}

TEST(Groups, AreSortedAndListedOnce)
{
    core::Lifter a = inventedLifter(u"A"_s);
    core::Lifter b = inventedLifter(u"B"_s);
    a.groups = {u"tuesday"_s, u"evening"_s};
    b.groups = {u"evening"_s};
    EXPECT_EQ(ui::groupsOf({a, b}), (QStringList{u"evening"_s, u"tuesday"_s}));
}
