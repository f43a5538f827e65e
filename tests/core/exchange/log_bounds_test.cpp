#include "core/domain/merged_sets.h"
#include "tests/core/exchange/files.h"

#include <gmock/gmock.h>

// Which columns the files of log and people need (log_csv.h, people_csv.h), and how far each field
// of the log reaches.

namespace {

QStringList fieldsOf(const core::ProblemList &problems)
{
    QStringList fields;
    for (const core::Problem &problem : problems.items())
        fields << problem.field;
    return fields;
}

const QStringList kSound;

/// What is wrong with a sound line that has one column more.
QStringList wrongWith(const QByteArray &columns, const QByteArray &values)
{
    return fieldsOf(files::log(files::kLogHeader.trimmed() + ',' + columns
        + "\nAda,2026-03-31,comp,100,5,5,8,0," + values + '\n')
                        .problems);
}

QStringList wrongOn(const char *day)
{
    return fieldsOf(files::logRows(QByteArray("Ada,") + day + ",comp,100,5,5,8,0\n").problems);
}

} // namespace

TEST(LogBounds, EachOfTheEightColumnsHasToBeThere)
{
    const QByteArrayList columns = files::kLogHeader.trimmed().split(',');
    EXPECT_EQ(fieldsOf(files::logRows("").problems), kSound) << "and no other";
    for (const QByteArray &column : columns) {
        QByteArrayList others = columns;
        others.removeOne(column);
        EXPECT_EQ(fieldsOf(files::log(others.join(',') + '\n').problems),
            QStringList(QString::fromLatin1(column)));
    }
}

TEST(LogBounds, PeopleHaveANameASexAndABodyweight)
{
    EXPECT_EQ(fieldsOf(files::people("lifter,sex,bodyweight_kg\n").problems), kSound);
    EXPECT_EQ(fieldsOf(files::people("birth_year,touch_style,unit\n").problems),
        (QStringList{
            QStringLiteral("lifter"), QStringLiteral("sex"), QStringLiteral("bodyweight_kg")}));
}

TEST(LogBounds, TomorrowIsAlreadyTodaySomewhere)
{
    EXPECT_EQ(wrongOn("2026-07-01"), kSound);
    EXPECT_EQ(wrongOn("2026-07-02"), QStringList("date"));
    EXPECT_EQ(wrongOn("1950-01-01"), kSound);
    EXPECT_EQ(wrongOn("1949-12-31"), QStringList("date"));
}

TEST(LogBounds, ADayHoldsTwentySessions)
{
    EXPECT_EQ(wrongWith("session", "1"), kSound);
    EXPECT_EQ(wrongWith("session", "20"), kSound);
    EXPECT_EQ(wrongWith("session", "0"), QStringList("session"));
    EXPECT_EQ(wrongWith("session", "21"), QStringList("session"));
}

TEST(LogBounds, ReadinessRunsFromOneToFive)
{
    EXPECT_EQ(wrongWith("readiness", "1"), kSound);
    EXPECT_EQ(wrongWith("readiness", "5"), kSound);
    EXPECT_EQ(wrongWith("readiness", "0"), QStringList("readiness"));
    EXPECT_EQ(wrongWith("readiness", "6"), QStringList("readiness"));
}

TEST(LogBounds, LeadRepsAndTheirVariationGoTogether)
{
    const auto wrong = [](const char *values) {
        return wrongWith("lead_variation,lead_reps", values);
    };
    EXPECT_EQ(wrong(","), kSound);
    EXPECT_EQ(wrong("tempo_4_2_0,1"), kSound);
    EXPECT_EQ(wrong("tempo_4_2_0,100"), kSound);
    EXPECT_EQ(wrong("tempo_4_2_0,0"), QStringList("lead_reps"));
    EXPECT_EQ(wrong("tempo_4_2_0,101"), QStringList("lead_reps"));
    EXPECT_EQ(wrong("tempo_4_2_0,"), QStringList("lead_reps"));
    EXPECT_EQ(wrong(",1"), QStringList("lead_variation"));
    EXPECT_EQ(wrong("tempo_4_2_0,one"), QStringList("lead_reps")) << "said once";
}

TEST(LogBounds, SetsAreTheSameWhenTheirLoadsDifferByLessThanAnyPlate)
{
    const core::LogTable log = files::logRows("Ada,2026-03-31,comp,100,5,5,8,0\n"
                                              "Ada,2026-03-31,comp,100.004,5,5,8,0\n"
                                              "Ada,2026-03-31,comp,100.006,5,5,8,0\n");
    const auto isKnown = [&log](size_t row) {
        return core::mergeSets({log.rows[0].set}, {log.rows[row].set}).known == 1;
    };
    EXPECT_TRUE(isKnown(0));
    EXPECT_TRUE(isKnown(1));
    EXPECT_FALSE(isKnown(2));
}

TEST(LogBounds, ASetThatDiffersInAnyThingToldIsAnotherOne)
{
    core::SetEntry set;
    set.variation = {1};
    set.loadKg = 100.0;
    set.repsPlanned = 5;
    set.repsDone = 5;
    set.rpe = 8.0;
    set.velocityMs = 0.4;
    set.touch = 3;
    set.note = QStringLiteral("slow");
    const auto isKnown = [&set](auto change) {
        core::SetEntry told = set;
        change(told);
        return core::mergeSets({set}, {told}).known == 1;
    };
    using Set = core::SetEntry;
    EXPECT_FALSE(isKnown([](Set &s) { s.variation = {2}; }));
    EXPECT_FALSE(isKnown([](Set &s) { s.repsPlanned = 4; }));
    EXPECT_FALSE(isKnown([](Set &s) { s.repsDone = 4; }));
    EXPECT_FALSE(isKnown([](Set &s) { s.rpe.reset(); }));
    EXPECT_FALSE(isKnown([](Set &s) { s.failed = true; }));
    EXPECT_FALSE(isKnown([](Set &s) { s.velocityMs = 0.3; }));
    EXPECT_FALSE(isKnown([](Set &s) { s.touch = 4; }));
    EXPECT_FALSE(isKnown([](Set &s) { s.note = QStringLiteral("fast"); }));
    EXPECT_TRUE(isKnown([](Set &s) {
        s.velocityMs.reset();
        s.touch.reset();
        s.note.clear();
    })) << "a blank says nothing";
}

TEST(LogBounds, ReadinessMayStandOnEachLineOfItsSession)
{
    const core::LogTable log = files::log(files::kLogHeader.trimmed() + ",readiness\n"
        + "Ada,2026-03-31,comp,100,5,5,8,0,4\n"
          "Ada,2026-03-31,comp,100,5,5,8,0,4\n"
          "Bo,2026-03-31,comp,100,5,5,8,0,2\n"
          "Ada,2026-04-01,comp,100,5,5,8,0,3\n");
    EXPECT_EQ(fieldsOf(log.problems), kSound);
    EXPECT_EQ(log.rows[0].leadReps, 0) << "no column, no lead reps";
}

TEST(LogBounds, OfPeopleABirthYearHasComeAndABodyweightIsOne)
{
    const auto wrong = [](const char *values) {
        return fieldsOf(
            files::people(QByteArray("lifter,sex,bodyweight_kg,birth_year\nAda,f,") + values + '\n')
                .problems);
    };
    EXPECT_EQ(wrong("20,2026"), kSound);
    EXPECT_EQ(wrong("400,1900"), kSound);
    EXPECT_EQ(wrong("60,2027"), QStringList("birth_year"));
    EXPECT_EQ(wrong("60,1899"), QStringList("birth_year"));
    EXPECT_EQ(wrong("19.9,"), QStringList("bodyweight_kg"));
    EXPECT_EQ(wrong("400.1,"), QStringList("bodyweight_kg"));
}
