#include "tests/app/program.h"

// What a user meets who hands in a broken file: the program says line, field, what is wrong and
// what to do, ends with 1, and writes nothing. Every command that reads a log goes the same road;
// estimate and check stand for them here, import is in import_test.cpp.

namespace {

struct Bad
{
    const char *name;
    QByteArray text;
    QStringList says;
};

QByteArray row(const QByteArray &line)
{
    return "lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n"
           "Ada,2026-03-30,comp,100,5,5,8,0\n"
        + line + '\n';
}

const std::vector<Bad> kBad{
    {"EmptyFile", "", {"log.csv: The file is empty.", "lifter,date,variation"}},
    {"WrongHeader",
        "lifter,date,variation,weight,reps_planned,reps_done,rpe,failed\nAda,1,2,3,4,5,6,7\n",
        {"log.csv:1: weight: There is no column of this name.",
            "log.csv:1: load_kg: The column is "
            "missing."}},
    {"Latin1", row("J\xF6rn,2026-03-30,comp,100,5,5,8,0"),
        {"log.csv:3: ", "not UTF-8", "CSV UTF-8"}},
    {"CommaAsDecimalSign", row("Ada,2026-03-30,comp,\"102,5\",5,5,8,0"),
        {"log.csv:3: load_kg:", "comma", "Write 102.5."}},
    {"CommaAsDecimalSignUnquoted", row("Ada,2026-03-30,comp,102,5,5,5,8,0"),
        {"log.csv:3: ", "9 fields", "102.5"}},
    {"February31", row("Ada,2026-02-31,comp,100,5,5,8,0"),
        {"log.csv:3: date:", "2026-02-31", "calendar"}},
    {"NegativeLoad", row("Ada,2026-03-30,comp,-100,5,5,8,0"),
        {"log.csv:3: load_kg:", "more than 0"}},
    {"UnknownVariation", row("Ada,2026-03-30,of_chest_pause,100,5,5,8,0"),
        {"log.csv:3: variation:", "of_chest_pause", "Write off_chest_pause"}},
    {"NoReps", row("Ada,2026-03-30,comp,100,5,0,8,0"), {"log.csv:3: reps_done:", "failed"}},
    {"Rpe11", row("Ada,2026-03-30,comp,100,5,5,11,0"), {"log.csv:3: rpe:", "1 to 10 in halves"}},
    {"TenMegabyteLine", row(QByteArray(10'000'000, 'x')),
        {"log.csv:3: ", "longer than one million"}},
};

class BadInput : public Program, public testing::WithParamInterface<Bad>
{
protected:
    void expectSaid(const Run &got) const
    {
        EXPECT_EQ(got.code, 1) << got.err.toStdString();
        for (const QString &words : GetParam().says)
            EXPECT_TRUE(got.err.contains(words)) << words.toStdString() << "\n is not in\n"
                                                 << got.err.left(2000).toStdString();
        EXPECT_LT(got.err.size(), 2000) << "the message drowns the reader";
    }
};

} // namespace

TEST_P(BadInput, IsToldByEstimateAndNothingIsWritten)
{
    write("log.csv", GetParam().text);
    expectSaid(run({"estimate", "--log", "log.csv", "--out", "estimates.csv"}));
    EXPECT_EQ(names(), QStringList{"log.csv"});
}

TEST_P(BadInput, IsToldByImportAndNothingIsWritten)
{
    write("log.csv", GetParam().text);
    expectSaid(run({"import", "new.benchwright", "--create", "--log", "log.csv"}));
    EXPECT_EQ(names(), QStringList{"log.csv"});
}

TEST_P(BadInput, IsToldByCheck)
{
    write("log.csv", GetParam().text);
    expectSaid(run({"check", "log.csv"}));
}

INSTANTIATE_TEST_SUITE_P(Files, BadInput, testing::ValuesIn(kBad),
    [](const testing::TestParamInfo<Bad> &bad) { return std::string(bad.param.name); });
