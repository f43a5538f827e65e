#include "core/exchange/return_words.h"

#include "tests/core/exchange/return_files.h"

#include <QSet>
#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;
using tests::kMonday;
using tests::PlannedWeek;
using tests::ReturnFile;

namespace {

struct Sheet
{
    PlannedWeek week;
    ReturnFile file{week};
    LiftEstimates estimates;

    [[nodiscard]] std::vector<DayReview> days() const
    {
        return dayReviews(file.read(), week.lifter, week.catalogue, estimates);
    }
    void say(std::initializer_list<std::pair<QString, QString>> answers)
    {
        tests::ReturnRow row{{"row", "check_in"}};
        for (const auto &[column, answer] : answers)
            row[column] = answer;
        file.rows.append(row);
    }
};

std::vector<std::string> linesOf(const SheetReview &review)
{
    std::vector<std::string> lines;
    for (const QString &line : reviewLines(review))
        lines.push_back(line.toStdString());
    return lines;
}

} // namespace

TEST(ReturnWords, WhatALifterSaidStandsOnItsDayInFullSentences)
{
    Sheet sheet;
    sheet.say({{"date", "2024-05-08"}, {"sleep", "2"}, {"stress", "4"}, {"motivation", "5"},
        {"sore_back", "2"}, {"sore_legs", "3"}, {"note", "long day"}});
    const auto days = sheet.days();
    ASSERT_EQ(days.size(), 2u);
    EXPECT_THAT(days[0].checkIn, IsEmpty());
    EXPECT_EQ(days[1].checkIn.join(u'|').toStdString(),
        "sleep 2 of 5|calm 4 of 5|motivation 5 of 5|sore back|long day");
}

TEST(ReturnWords, PainIsNamedByItsAreaByWordsOrByBoth)
{
    const auto painOf = [](const char *area, const char *words) {
        Sheet sheet;
        sheet.say({{"date", "2024-05-06"}, {"pain", area}, {"pain_words", words}});
        return sheet.days().front().pain.toStdString();
    };
    EXPECT_EQ(painOf("elbows", ""), "elbows");
    EXPECT_EQ(painOf("elbows", "left"), "elbows: left");
    EXPECT_EQ(painOf("elsewhere", "wrist"), "wrist");
}

TEST(ReturnWords, AMovedDayTakesItsCheckInAndOneOfAnotherDayStandsAlone)
{
    Sheet sheet;
    sheet.file.rows[4]["date"] = QStringLiteral("2024-05-09"); // planned for the 8th
    sheet.say({{"date", "2024-05-09"}, {"sleep", "3"}});
    sheet.say({{"date", "2024-05-08"}, {"sleep", "4"}});
    const auto days = sheet.days();
    ASSERT_EQ(days.size(), 3u);
    EXPECT_EQ(days[1].plannedDay, kMonday.addDays(2));
    EXPECT_EQ(days[1].day, kMonday.addDays(3));
    EXPECT_THAT(days[1].checkIn, ElementsAre(QStringLiteral("sleep 3 of 5")));
    EXPECT_EQ(days[2].plannedDay, kMonday.addDays(2));
    EXPECT_FALSE(days[2].day.isValid()) << "nothing was done on it";
    EXPECT_THAT(days[2].checkIn, ElementsAre(QStringLiteral("sleep 4 of 5")));
}

TEST(ReturnWords, ASetWithoutALoadSaysItsRepsAndOneThatWasNotDoneWhy)
{
    Sheet sheet;
    sheet.file.rows[1].remove("planned_kg");
    sheet.file.reopen(2, "skipped");
    sheet.file.reopen(3);
    const std::vector<SetReview> sets = sheet.days()[0].sets;
    EXPECT_EQ(sets[0].planned.toStdString(), "3 reps, load open");
    EXPECT_EQ(sets[1].outcome, SetOutcome::skipped);
    EXPECT_EQ(sets[1].planned.toStdString(), "3 x 100 kg");
    EXPECT_THAT(sets[1].differences, ElementsAre(QStringLiteral("left out")));
    EXPECT_EQ(sets[2].outcome, SetOutcome::open);
    EXPECT_THAT(sets[2].differences, ElementsAre(QStringLiteral("no entry")));
    EXPECT_EQ(sets[2].variation.toStdString(), "Off-chest pause bench");
}

TEST(ReturnWords, EveryStandingHasWordsOfItsOwn)
{
    QSet<QString> said;
    for (const SheetStanding standing : {SheetStanding::ready, SheetStanding::byChoice,
             SheetStanding::nothingNew, SheetStanding::refused})
        said << words(standing);
    EXPECT_EQ(said.size(), 4);
    EXPECT_FALSE(said.contains(QString()));
}

TEST(ReturnWords, AsPlainTextPainComesFirstAndOnlyWhatWasDoneOtherwiseIsListed)
{
    Sheet sheet;
    sheet.file.rows[2]["load_kg"] = QStringLiteral("97.5");
    sheet.file.reopen(3, "skipped");
    sheet.file.reopen(4);
    sheet.say({{"date", "2024-05-06"}, {"pain", "elbows"}});
    SheetReview review;
    review.file = QStringLiteral("ada.csv");
    review.name = QStringLiteral("Ada Example");
    review.monday = kMonday;
    review.standing = SheetStanding::byChoice;
    review.notices = QStringList{QStringLiteral("An old plan.")};
    review.days = sheet.days();
    EXPECT_THAT(linesOf(review),
        ElementsAre("ada.csv: Ada Example, week of 2024-05-06: for you to judge",
            "  PAIN on 2024-05-06: elbows. Stop what hurts; pain that stays is for a doctor or "
            "physiotherapist.",
            "  An old plan.", "  2024-05-06 Competition bench: 3 x 97.5 kg, RPE 8; 2.5 kg lighter",
            "  2024-05-06 Off-chest pause bench: left out"));
}
