#include "tests/app/program.h"

#include "core/exchange/return_sheet.h"

#include <QJsonDocument>
#include <QJsonObject>

/// Return sheets against the demo roster, made from the data of a hand-out as its page would.
class Return : public Program
{
protected:
    void SetUp() override
    {
        ASSERT_EQ(run({"demo", "d", "--as-of", kDay}).code, 0);
        ASSERT_EQ(run({"handout", "d/demo.benchwright", "--out", "out", "--lifter", "Marit Oskedal",
                          "--as-of", kDay})
                      .code,
            0);
        const QString page = QDir(path("out")).entryList({QStringLiteral("*.html")}).value(0);
        const QByteArray html = read("out/" + page);
        const QByteArray mark = "id=\"plan\">";
        const qsizetype begin = html.indexOf(mark) + mark.size();
        plan = QJsonDocument::fromJson(html.mid(begin, html.indexOf("</script>", begin) - begin))
                   .object();
        ASSERT_FALSE(plan.isEmpty());
    }

    /// A sheet with one extra set, done on the Monday of the plan's week; the demo log has none
    /// of its variation on a Monday.
    QByteArray sheet(const QString &name, double loadKg, const QString &note = {}) const
    {
        const QString week = plan["week"].toString();
        const auto line = [](const QMap<QString, QString> &row) {
            QStringList fields;
            for (const QString &column : core::returnColumns())
                fields << row.value(column);
            return fields.join(u',').toUtf8() + "\r\n";
        };
        return core::returnColumns().join(u',').toUtf8() + "\r\n"
            + line({{"row", "sheet"}, {"format", "1"},
                {"lifter_id", QString::number(plan["lifter"].toObject()["id"].toInt())},
                {"lifter", name}, {"week", week}, {"plan", plan["mark"].toString()}})
            + line({{"row", "set"}, {"planned_date", week}, {"card", "1"}, {"set", "90"},
                {"date", week}, {"variation", "close_grip"}, {"load_kg", QString::number(loadKg)},
                {"reps_done", "5"}, {"rpe", "7"}, {"failed", "0"}, {"note", note}})
            + line({{"row", "end"}, {"rows", "2"}});
    }

    QString log()
    {
        const Run got = run({"export", "d/demo.benchwright", "--log", "-"});
        EXPECT_EQ(got.code, 0) << got.err.toStdString();
        return got.out;
    }

    QJsonObject plan;
};

TEST_F(Return, ASheetGoesIntoTheLogOnceHoweverOftenItIsRead)
{
    write("r.csv", sheet("Marit Oskedal", 61.25));
    const QString before = log();
    Run got = run({"return", "d/demo.benchwright", "r.csv", "--dry-run"});
    EXPECT_EQ(got.code, 0) << got.err.toStdString();
    EXPECT_TRUE(got.out.contains(QStringLiteral("Nothing was changed")));
    EXPECT_EQ(log(), before);
    got = run({"return", "d/demo.benchwright", "r.csv"});
    EXPECT_EQ(got.code, 0) << got.err.toStdString();
    EXPECT_TRUE(got.out.contains(QStringLiteral("extra set"))) << got.out.toStdString();
    const QString after = log();
    EXPECT_EQ(after.count(u'\n'), before.count(u'\n') + 1);
    EXPECT_TRUE(after.contains(QStringLiteral("close_grip,61.25")));
    got = run({"return", "d/demo.benchwright", "r.csv", "r.csv"});
    EXPECT_EQ(got.code, 0);
    EXPECT_TRUE(got.out.contains(QStringLiteral("accepted: 0 of 2")));
    EXPECT_EQ(log(), after);
}

TEST_F(Return, HostileSheetsChangeNothingAndDoNotHoldUpASoundOne)
{
    const QByteArray sound = sheet("Marit Oskedal", 61.25);
    write("sound.csv", sound);
    write("cut.csv", sound.left(sound.size() * 2 / 3));
    write("stranger.csv", sheet("<script>alert(1)</script>", 62.5));
    write("formula.csv", sheet("Marit Oskedal", 63.75, "=1+1|<script>"));
    write("letter.csv", "Dear coach,\nall went well.\n");
    const QString before = log();
    const Run refused =
        run({"return", "d/demo.benchwright", "cut.csv", "stranger.csv", "letter.csv"});
    EXPECT_EQ(refused.code, 1);
    EXPECT_TRUE(refused.err.contains(QStringLiteral("cut.csv")));
    EXPECT_TRUE(refused.out.contains(QStringLiteral("accepted: 0 of 3")));
    EXPECT_EQ(log(), before);
    const Run mixed = run({"return", "d/demo.benchwright", "cut.csv", "sound.csv", "formula.csv"});
    EXPECT_EQ(mixed.code, 1) << "one was left out";
    EXPECT_TRUE(mixed.out.contains(QStringLiteral("accepted: 2 of 3"))) << mixed.out.toStdString();
    EXPECT_TRUE(log().contains(QStringLiteral("=1+1|<script>"))) << "a note is text, kept as it is";
}

TEST_F(Return, AnOldPlanIsAcceptedOnlyWhenAskedFor)
{
    QByteArray old = sheet("Marit Oskedal", 61.25);
    old.replace(plan["mark"].toString().toUtf8(), "0123456789abcdef");
    write("old.csv", old);
    Run got = run({"return", "d/demo.benchwright", "old.csv"});
    EXPECT_EQ(got.code, 1);
    EXPECT_TRUE(got.out.contains(QStringLiteral("earlier one"))) << got.out.toStdString();
    got = run({"return", "d/demo.benchwright", "old.csv", "--accept-mismatched"});
    EXPECT_EQ(got.code, 0);
    EXPECT_TRUE(got.out.contains(QStringLiteral("accepted: 1 of 1")));
}

TEST_F(Return, AsOfADaySetsOfALaterOneHaveNotComeYet)
{
    write("r.csv", sheet("Marit Oskedal", 61.25)); // of Monday, the 16th
    const QStringList read{"return", "d/demo.benchwright", "r.csv", "--dry-run"};
    EXPECT_EQ(run(read).code, 0);
    EXPECT_EQ(run(read + QStringList{"--as-of", "2026-03-15"}).code, 0)
        << "tomorrow is already today somewhere";
    const Run early = run(read + QStringList{"--as-of", "2026-03-14"});
    EXPECT_EQ(early.code, 1);
    EXPECT_TRUE(early.err.contains(QStringLiteral("2026-03-16 has not come yet")))
        << early.err.toStdString();
}

TEST_F(Return, CheckKnowsAReturnSheet)
{
    write("r.csv", sheet("Marit Oskedal", 61.25));
    const Run got = run({"check", "r.csv"});
    EXPECT_EQ(got.code, 0);
    EXPECT_TRUE(got.out.contains(QStringLiteral("return sheet of Marit Oskedal")));
    EXPECT_EQ(run({"return", "gone.benchwright", "r.csv"}).code, 3);
    EXPECT_EQ(run({"return", "d/demo.benchwright", "gone.csv"}).code, 3);
    EXPECT_EQ(run({"return", "d/demo.benchwright"}).code, 2);
}
