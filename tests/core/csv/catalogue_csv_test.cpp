#include "core/csv/catalogue_csv.h"

#include <QBuffer>
#include <QFile>
#include <QSet>
#include <algorithm>
#include <gmock/gmock.h>

using namespace core;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const Variation &withCode(const char *code)
{
    const auto &all = builtInCatalogue();
    const auto it = std::find_if(all.begin(), all.end(),
        [code](const Variation &v) { return v.code == QLatin1String(code); });
    if (it == all.end())
        throw std::invalid_argument(code);
    return *it;
}

/// All that the coach reads about a variation.
QString textOf(const Variation &v)
{
    return QStringList{v.purpose, v.whenToUse, v.cautions}.join(u'\n');
}

std::ptrdiff_t countOf(Lift lift)
{
    const auto &all = builtInCatalogue();
    return std::count_if(
        all.begin(), all.end(), [lift](const Variation &v) { return v.lift == lift; });
}

MATCHER_P(Says, part, "")
{
    return textOf(arg).contains(QString::fromUtf8(part), Qt::CaseInsensitive);
}

} // namespace

TEST(Catalogue, IsSoundAndWhole)
{
    QSet<QString> codes;
    QSet<QString> names;
    for (const Variation &v : builtInCatalogue()) {
        EXPECT_THAT(problems(v), IsEmpty()) << v.code.toStdString();
        EXPECT_FALSE(codes.contains(v.code)) << v.code.toStdString();
        EXPECT_FALSE(names.contains(v.name.toCaseFolded())) << v.name.toStdString();
        codes << v.code;
        names << v.name.toCaseFolded();
        for (const QString &text : {v.purpose, v.whenToUse, v.cautions, v.ratioSource})
            EXPECT_FALSE(text.isEmpty()) << v.code.toStdString();
        EXPECT_TRUE(v.lift == Lift::bench || !v.stance.isEmpty()) << v.code.toStdString();
        EXPECT_TRUE(v.lift != Lift::bench || v.stance.isEmpty()) << v.code.toStdString();
        EXPECT_FALSE(v.retired) << v.code.toStdString();
    }
}

TEST(Catalogue, CoversTheWeek)
{
    EXPECT_GE(countOf(Lift::bench), 16);
    EXPECT_GE(countOf(Lift::squat), 3);
    EXPECT_GE(countOf(Lift::deadlift), 4);
    for (const char *code : {"comp", "touch_and_go", "off_chest_pause", "tempo_4_2_0", "feet_up",
             "close_grip", "long_pause", "dead_stop_pins", "incline", "board_5cm", "squat",
             "deadlift", "deadlift_conventional", "deadlift_sumo", "floor_press",
             "pin_press_lockout", "board_10cm", "neutral_grip_bar", "bands", "chains",
             "bent_over_row", "supported_row", "triceps_extension", "triceps_pushdown"})
        EXPECT_NO_THROW((void)withCode(code)) << code;
}

TEST(Catalogue, HasOneCompetitionVariationALift)
{
    for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift}) {
        const auto &all = builtInCatalogue();
        EXPECT_EQ(std::count_if(all.begin(), all.end(),
                      [lift](const Variation &v) { return v.lift == lift && v.competition; }),
            1);
    }
    EXPECT_TRUE(withCode("comp").competition);
    EXPECT_TRUE(withCode("squat").competition);
    EXPECT_TRUE(withCode("deadlift").competition);
}

TEST(Catalogue, ServesEachTouchStyleWithSeveralVariations)
{
    for (const Serves serves : {Serves::soft, Serves::sinking, Serves::both}) {
        const auto &all = builtInCatalogue();
        EXPECT_GE(std::count_if(all.begin(), all.end(),
                      [serves](const Variation &v) {
                          return v.lift == Lift::bench && v.serves == serves;
                      }),
            3);
    }
}

// The facts of the trade below: common practice, no source.

TEST(Catalogue, OffChestPauseIsHeavyNearAndShort)
{
    const Variation &v = withCode("off_chest_pause");
    EXPECT_THAT(v, Says("as near the chest as possible without touching"));
    EXPECT_THAT(v, Says("two counts by default"));
    EXPECT_THAT(v, Says("in place of singles"));
    EXPECT_EQ(v.tempo, (Tempo{0, 2, 0}));
    EXPECT_EQ(v.repsHigh, 3);
    EXPECT_DOUBLE_EQ(v.ratio, 1.0);
    EXPECT_EQ(v.serves, Serves::soft);
}

TEST(Catalogue, TempoBenchIsSlowTiringAndLeads)
{
    const Variation &v = withCode("tempo_4_2_0");
    EXPECT_THAT(v, Says("four counts down, two on the chest, then as fast as possible"));
    EXPECT_THAT(v, Says("lead rep before competition reps"));
    EXPECT_THAT(v, Says("more only for teaching"));
    EXPECT_EQ(v.tempo, (Tempo{4, 2, 0}));
    EXPECT_EQ(v.repsLow, 1);
    EXPECT_EQ(v.repsHigh, 3);
    EXPECT_EQ(v.fatigue, Fatigue::high);
    EXPECT_LT(v.ratio, 1.0);
}

TEST(Catalogue, FeetUpBenchIsForSoreDaysAndAnyRepRange)
{
    const Variation &v = withCode("feet_up");
    EXPECT_THAT(v, Says("no leg drive"));
    EXPECT_THAT(v, Says("a little more range of motion"));
    EXPECT_THAT(v, Says("back or legs are sore"));
    EXPECT_THAT(v, Says("right across the rep ranges"));
    EXPECT_THAT(v, Says("less return at the top end"));
    EXPECT_EQ(v.work[BodyArea::back], Work::none);
    EXPECT_EQ(v.work[BodyArea::legs], Work::none);
    EXPECT_EQ(v.work[BodyArea::shoulders], Work::much) << "no way round sore shoulders";
    EXPECT_EQ(v.repsLow, 1);
    EXPECT_GE(v.repsHigh, 10);
    EXPECT_EQ(v.serves, Serves::both);
}

TEST(Catalogue, WhatIsHungOnTheBarIsInTheNoteAndNotInTheLoad)
{
    for (const char *code : {"bands", "chains"}) {
        EXPECT_THAT(withCode(code), Says("The load is the bar's; the note says")) << code;
        EXPECT_LT(withCode(code).ratio, 1.0) << code;
    }
}

TEST(Catalogue, RowsAndTricepsWorkAreAssistanceAndNothingElseIs)
{
    for (const Variation &v : builtInCatalogue())
        EXPECT_EQ(v.assistance,
            v.code.endsWith(QStringLiteral("_row"))
                || v.code.startsWith(QStringLiteral("triceps_")))
            << v.code.toStdString();
    EXPECT_EQ(withCode("supported_row").work[BodyArea::legs], Work::none);
    EXPECT_EQ(withCode("supported_row").work[BodyArea::chest], Work::none);
    EXPECT_EQ(withCode("triceps_extension").work[BodyArea::elbows], Work::much);
}

TEST(Catalogue, SpeedGoesByAShareOfTheMaxBetweenHalfAndTwoThirds)
{
    for (const Variation &v : builtInCatalogue())
        EXPECT_EQ(v.usualPercent.has_value(), v.code == QStringLiteral("speed"));
    EXPECT_GE(withCode("speed").usualPercent.value(), 50.0);
    EXPECT_LE(withCode("speed").usualPercent.value(), 67.0);
    EXPECT_THAT(withCode("speed"), Says("about half to two thirds of the max"));
}

TEST(Catalogue, NamesNobodyAndPromisesNothingThatHurts)
{
    for (const Variation &v : builtInCatalogue())
        for (const QString &text : {textOf(v), v.ratioSource, v.name}) {
            EXPECT_FALSE(text.contains(QStringLiteral("et al"))) << v.code.toStdString();
            EXPECT_FALSE(text.contains(QStringLiteral("from memory"))) << v.code.toStdString();
            EXPECT_FALSE(text.contains(QStringLiteral("trains nothing"))) << v.code.toStdString();
        }
    for (const char *code : {"board_5cm", "board_10cm", "floor_press"}) {
        EXPECT_EQ(withCode(code).work[BodyArea::shoulders], Work::some) << code;
        EXPECT_THAT(withCode(code), Says("no way round")) << code;
    }
    EXPECT_EQ(withCode("deadlift_sumo").work[BodyArea::back], Work::some);
}

TEST(Catalogue, RatiosRunAsTheTradeKnowsThem)
{
    EXPECT_GT(withCode("board_10cm").ratio, withCode("board_5cm").ratio) << "shorter still";
    EXPECT_GT(withCode("pin_press_lockout").ratio, 1.0);
    EXPECT_LT(withCode("floor_press").ratio, 1.0) << "no leg drive, no arch";
    EXPECT_LT(withCode("bands").ratio, withCode("chains").ratio) << "bands add from the chest on";
    EXPECT_GT(withCode("touch_and_go").ratio, 1.0) << "no pause to hold";
    EXPECT_GT(withCode("board_5cm").ratio, 1.0) << "a shorter way";
    EXPECT_LT(withCode("long_pause").ratio, 1.0);
    EXPECT_LT(withCode("dead_stop_pins").ratio, withCode("long_pause").ratio);
    EXPECT_LT(withCode("incline").ratio, withCode("close_grip").ratio);
    // Wilk et al. (2020), J Hum Kinet 72:151-159: the slower the lowering, the lower the max.
    EXPECT_LT(withCode("tempo_4_2_0").ratio, withCode("slow_lowering").ratio);
    EXPECT_LT(withCode("slow_lowering").ratio, withCode("comp").ratio);
}

TEST(Catalogue, EveryBenchVariationUnderABarNamesItsSpotterOrSafeties)
{
    for (const Variation &v : builtInCatalogue())
        if (v.lift == Lift::bench && v.code != QStringLiteral("dumbbell")
            && v.code != QStringLiteral("overhead_press") && !v.assistance) {
            EXPECT_TRUE(v.cautions.contains(QStringLiteral("spotter"))
                && v.cautions.contains(QStringLiteral("safeties")))
                << v.code.toStdString();
        }
}

TEST(Catalogue, EveryPressAndPullWorksTheArmsThatHoldTheBar)
{
    for (const Variation &v : builtInCatalogue())
        for (const BodyArea area : {BodyArea::shoulders, BodyArea::elbows, BodyArea::wrists})
            EXPECT_TRUE(works(v, area)) << v.code.toStdString();
}

TEST(Catalogue, TheCompetitionLiftsWorkWhatTheirLiftUsuallyWorks)
{
    EXPECT_EQ(withCode("comp").work, usualWork(Lift::bench));
    EXPECT_EQ(withCode("squat").work, usualWork(Lift::squat));
}

TEST(Catalogue, FaultsAreNamedByLineAndField)
{
    QByteArray bytes =
        "code,name,lift,competition,serves,stance,purpose,tempo_lowering,tempo_pause,"
        "tempo_lifting,reps_low,reps_high,ratio,ratio_spread,ratio_source,rep_cost,"
        "fatigue,work,when_to_use,cautions\n"
        "Bad Code,Bench,benchpress,0,both,,p,0,0,0,1,5,1,0,s,1,low,back:not legs:not chest:much "
        "shoulders:much elbows:much wrists:some,w,c\n";
    QBuffer buffer(&bytes);
    ASSERT_TRUE(buffer.open(QIODevice::ReadOnly));
    ProblemList found;
    (void)readCatalogueCsv(buffer, QStringLiteral("mine.csv"), found);
    ASSERT_THAT(found.items(), SizeIs(2));
    EXPECT_EQ(found.items()[0].line, 2);
    EXPECT_EQ(found.items()[0].field, QStringLiteral("lift"));
    EXPECT_EQ(found.items()[1].field, QStringLiteral("code"));
}

TEST(Catalogue, ABlankCellIsTheUsualValueAndSaidWhereThatIsNone)
{
    QByteArray bytes =
        "code,name,lift,competition,serves,stance,purpose,tempo_lowering,tempo_pause,"
        "tempo_lifting,reps_low,reps_high,ratio,ratio_spread,ratio_source,rep_cost,"
        "fatigue,work,when_to_use,cautions\n"
        "a,A,bench,,both,,p,,,,,,,,s,,low,back:not legs:some chest:much shoulders:much elbows:much "
        "wrists:some,w,c\n"
        "b,B,squat,1,soft,wide,p,3,2,1,2,7,1,0.1,s,1.5,high,back:much legs:much chest:not "
        "shoulders:not elbows:not wrists:not,w,c\n";
    QBuffer buffer(&bytes);
    ASSERT_TRUE(buffer.open(QIODevice::ReadOnly));
    ProblemList found;
    const std::vector<Variation> read = readCatalogueCsv(buffer, QStringLiteral("a.csv"), found);
    EXPECT_TRUE(found.isEmpty());
    ASSERT_THAT(read, SizeIs(2));
    EXPECT_EQ(read[0].id, VariationId{1});
    EXPECT_FALSE(read[0].competition);
    EXPECT_EQ(read[0].tempo, (Tempo{0, 0, 0}));
    EXPECT_EQ(read[0].repsLow, 1);
    EXPECT_EQ(read[0].repsHigh, 1);
    EXPECT_EQ(read[0].ratio, 1.0);
    EXPECT_EQ(read[0].ratioSpread, 0.0);
    EXPECT_EQ(read[0].repCost, 1.0);
    EXPECT_EQ(read[1].id, VariationId{2});
    EXPECT_TRUE(read[1].competition);
    EXPECT_EQ(read[1].tempo, (Tempo{3, 2, 1}));
    EXPECT_EQ(read[1].repsLow, 2);
    EXPECT_EQ(read[1].repsHigh, 7);
    EXPECT_EQ(read[1].ratioSpread, 0.1);
    EXPECT_EQ(read[1].repCost, 1.5);
    EXPECT_FALSE(read[0].assistance) << "a catalogue without the columns reads as before";
    EXPECT_FALSE(read[0].usualPercent);
    EXPECT_EQ(read[0].work[BodyArea::legs], Work::some);
    EXPECT_EQ(read[1].work[BodyArea::chest], Work::none);
}

TEST(Catalogue, EveryColumnHasToBeThere)
{
    QFile file(QStringLiteral(":/catalogue/variations.csv"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArrayList columns = file.readLine().trimmed().split(',');
    const QByteArrayList mayBeMissing{"assistance", "usual_percent"};
    for (const QByteArray &column : columns) {
        if (mayBeMissing.contains(column))
            continue;
        QByteArrayList others = columns;
        others.removeOne(column);
        QByteArray bytes = others.join(',') + '\n';
        QBuffer buffer(&bytes);
        ASSERT_TRUE(buffer.open(QIODevice::ReadOnly));
        ProblemList found;
        (void)readCatalogueCsv(buffer, QStringLiteral("mine.csv"), found);
        ASSERT_THAT(found.items(), SizeIs(1)) << column.constData();
        EXPECT_EQ(found.items()[0].field, QString::fromLatin1(column));
    }
}
