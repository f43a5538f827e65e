#include "ui/board/week_view.h"
#include "ui/look/week_header.h"

#include "core/loads/estimate_words.h"

#include <gmock/gmock.h>

using namespace ui;
using testing::HasSubstr;

namespace {

const QDate kMonday(2026, 3, 2);

/// One lifter with a bench estimate of 100 kg, two percent a rep, no fatigue.
class WeekViewTest : public testing::Test
{
protected:
    WeekViewTest()
    {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        m_lifter.gear = core::usualGear(core::Unit::kilogram);
        core::Variation bench;
        bench.id = {1};
        bench.name = QStringLiteral("Competition bench");
        core::Variation squat = bench;
        squat.id = {2};
        squat.lift = core::Lift::squat;
        squat.name = QStringLiteral("Squat");
        m_variations = {bench, squat};
        const strength::Band max{100.0, 96.0, 104.0};
        m_bench.rows = {{1}};
        m_bench.priors = {{1.0, 0.0, 1.0}};
        m_bench.estimate.standing = strength::Standing::enough;
        m_bench.estimate.weeks = {{core::engineDay(kMonday), max, max, 5}};
        m_bench.estimate.variations = {{{1.0, 1.0, 1.0}, max, 5}};
        m_bench.estimate.curve = {0.02, 1.0};
    }

    core::Card card(int id, int day, const QString &setLine, int variation = 1)
    {
        return {{id}, {1}, kMonday.addDays(day), 0, {variation}, setLine, {}};
    }

    WeekView view(const std::vector<core::Card> &cards,
        const std::map<QDate, core::DayOutcome> &outcomes = {})
    {
        const core::PlanSources sources{m_lifter, m_variations,
            [this](core::Lift lift) { return lift == core::Lift::bench ? &m_bench : nullptr; },
            m_checkIns, m_given, kMonday};
        return weekView(core::resolveCards(cards, sources), sources, kMonday, outcomes);
    }

    core::Lifter m_lifter;
    std::vector<core::CheckIn> m_checkIns;
    std::vector<core::Variation> m_variations;
    core::LiftEstimate m_bench;
    std::vector<core::GivenDay> m_given;
};

} // namespace

TEST_F(WeekViewTest, ShowsTheLoadAndWhatItWillFeelLike)
{
    // N = 5 at exp(-0.08) = 92.3 %: 92.5 kg; the effort there rounds back to 8.
    const WeekView week = view({card(1, 2, QStringLiteral("4x3 @8"))});
    ASSERT_EQ(week.days[2].cards.size(), 1u);
    const CardView shown = week.days[2].cards[0];
    EXPECT_EQ(shown.name, QStringLiteral("Competition bench"));
    ASSERT_EQ(shown.lines.size(), 1u);
    EXPECT_EQ(shown.lines[0].load, QStringLiteral("92.5 kg"));
    EXPECT_EQ(shown.lines[0].effort, QStringLiteral("RPE 8, as asked"));
    EXPECT_TRUE(shown.caution.isEmpty());
    EXPECT_THAT(shown.toolTip.toStdString(), HasSubstr("25 + 10 + 1.25")); // (92.5 - 20) / 2
    for (const char *part : {"Competition bench", "4x3 @8", "92.5 kg", "RPE 8"})
        EXPECT_THAT(shown.spoken.toStdString(), HasSubstr(part));
}

TEST_F(WeekViewTest, SumsLiftsAndTonnage)
{
    const WeekView week = view({card(1, 0, QStringLiteral("4x3 100kg")),
        card(2, 4, QStringLiteral("2x5 60kg"), 2), card(3, 4, QStringLiteral("3x3"))});
    EXPECT_EQ(week.days[0].lifts, QStringLiteral("12 lifts"));
    EXPECT_EQ(week.days[0].tonnage, QStringLiteral("1200 kg"));
    EXPECT_EQ(week.days[4].tonnage, QStringLiteral("600 kg"));
    EXPECT_EQ(week.tonnage, QStringLiteral("1800 kg"));
    EXPECT_TRUE(week.days[1].lifts.isEmpty());
    EXPECT_FALSE(week.isEmpty());
    EXPECT_TRUE(view({}).isEmpty());
}

TEST_F(WeekViewTest, SpeaksPoundsToAPoundLifter)
{
    m_lifter.unit = core::Unit::pound;
    m_lifter.gear = core::usualGear(core::Unit::pound);
    const CardView shown = view({card(1, 0, QStringLiteral("1x1 225lb"))}).days[0].cards[0];
    EXPECT_EQ(shown.lines[0].load, QStringLiteral("225 lb"));
    EXPECT_THAT(shown.toolTip.toStdString(), HasSubstr("a side: 2 x 45"));
}

TEST_F(WeekViewTest, SaysWhyThereIsNoLoad)
{
    m_bench.estimate.standing = strength::Standing::priorOnly;
    const WeekView week = view({card(1, 0, QStringLiteral("4x3 @8")),
        card(2, 1, QStringLiteral("4x3 @8"), 2), card(3, 2, QStringLiteral("heavy"))});
    const auto caution = [&](int day) {
        return week.days[size_t(day)].cards[0].caution.toStdString();
    };
    EXPECT_THAT(caution(0), HasSubstr(core::words(strength::Standing::priorOnly).toStdString()));
    EXPECT_THAT(caution(1), HasSubstr("working out"));
    EXPECT_THAT(caution(2), HasSubstr("4x3 @8")) << "the remedy of the parser";
    EXPECT_EQ(week.days[2].cards[0].lines[0].sets, QStringLiteral("heavy"));
}

TEST_F(WeekViewTest, SaysInShortWhatSpeaksAgainstALoad)
{
    m_bench.estimate.standing = strength::Standing::stale;
    const auto caution = [&](const QString &setLine) {
        return view({card(1, 0, setLine)}).days[0].cards[0].caution;
    };
    EXPECT_EQ(caution(QStringLiteral("4x3 @8")), core::words(strength::Standing::stale));
    m_bench.estimate.standing = strength::Standing::enough;
    EXPECT_TRUE(caution(QStringLiteral("4x3 @8")).isEmpty());
    EXPECT_EQ(caution(QStringLiteral("4x3 91kg")),
        QStringLiteral("91 kg cannot be loaded with the plates at hand."));
}

TEST_F(WeekViewTest, CardsOfOtherWeeksAreLeftOut)
{
    EXPECT_TRUE(view({card(1, -1, QStringLiteral("4x3")), card(2, 7, {})}).isEmpty());
}

TEST(WeekTitle, NamesEachMonthAndYearOnceAndTheIsoWeek)
{
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    EXPECT_EQ(weekTitle(QDate(2026, 3, 2)), QStringLiteral("2 \u2013 8 March 2026, week 10"));
    EXPECT_EQ(
        weekTitle(QDate(2026, 3, 30)), QStringLiteral("30 March \u2013 5 April 2026, week 14"));
    // ISO 8601: the week of 29 December 2025 holds the first Thursday of 2026, so it is week 1.
    EXPECT_EQ(weekTitle(QDate(2025, 12, 29)),
        QStringLiteral("29 December 2025 \u2013 4 January 2026, week 1"));
}

TEST_F(WeekViewTest, TheHeadsOfDayAndWeekSayWhatWasMissedPlannedOrNot)
{
    core::DayOutcome planned, unplanned;
    planned.cards = {{{1}, core::Outcome::missed, 3, 2}};
    planned.missed = 1;
    unplanned.extra = 2;
    unplanned.missed = 1;
    const WeekView week = view({card(1, 0, QStringLiteral("3x3 90kg"))},
        {{kMonday, planned}, {kMonday.addDays(2), unplanned}});
    EXPECT_EQ(week.days[0].done, QStringLiteral("2/3 sets, 1 missed"));
    EXPECT_EQ(week.days[1].done, QString());
    planned.hasPain = true;
    EXPECT_TRUE(view({card(1, 0, QStringLiteral("3x3 90kg"))}, {{kMonday, planned}})
                    .days[0]
                    .done.startsWith(QStringLiteral("pain, 2/3")))
        << "where there is no room the end is cut off";
    EXPECT_EQ(week.days[2].done, QStringLiteral("1 missed, 2 extra"));
    EXPECT_EQ(week.done, QStringLiteral("2/3 sets, 2 missed, 2 extra"));
}
