#include "core/exchange/returns.h"

#include "tests/core/exchange/held_roster.h"
#include "tests/core/exchange/return_files.h"

#include <QTemporaryDir>
#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;
using tests::kMonday;
using tests::PlannedWeek;
using tests::ReturnFile;

namespace {

class ReturnsTest : public testing::Test
{
protected:
    ReturnsTest()
    {
        Lifter bo = week.lifter;
        bo.id = LifterId{8};
        bo.name = QStringLiteral("Bo Example");
        roster.allLifters = {week.lifter, bo};
        roster.catalogue = week.catalogue;
        roster.allCards = week.cards;
        // In the week of the sheet and the day after its last; Bo trains as well.
        for (const auto &[lifter, day] : {std::pair(week.lifter.id, kMonday),
                 std::pair(week.lifter.id, kMonday.addDays(3)), std::pair(bo.id, kMonday)})
            roster.allSessions.push_back(
                {SessionId{qint64(roster.allSessions.size()) + 1}, lifter, day, 1, 4, {}});
    }

    QString write(const char *name, const ReturnFile &contents) const
    {
        QFile written(m_folder.filePath(QString::fromLatin1(name)));
        EXPECT_TRUE(written.open(QIODevice::WriteOnly));
        written.write(contents.text());
        return written.fileName();
    }

    [[nodiscard]] static Edit accept(
        const JudgedReturns &returns, const std::vector<size_t> &accepted)
    {
        return acceptReturns(returns, accepted,
            {[n = qint64(100)]() mutable { return SessionId{++n}; },
                [n = qint64(200)]() mutable { return CheckInId{++n}; }});
    }

    PlannedWeek week;
    ReturnFile file{week};
    tests::HeldRoster roster;

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(ReturnsTest, WhatIsReadIsReviewedAsByTheWholeRoster)
{
    const JudgedReturns got = readReturns({write("ada.csv", file)}, tests::kReadOn, roster);
    ASSERT_EQ(got.sheets.size(), 1u);
    const ReturnBasis whole{
        roster.allLifters, roster.catalogue, roster.allCards, roster.allSessions, {}, {}};
    const std::vector<ReturnSheet> sheets{file.read()};
    const SheetReview direct = reviewReturns(sheets, whole).front();
    ASSERT_EQ(got.reviews.size(), 1u);
    EXPECT_EQ(got.reviews[0].standing, SheetStanding::ready);
    EXPECT_EQ(got.reviews[0].standing, direct.standing);
    EXPECT_EQ(got.reviews[0].lifter, direct.lifter);
    EXPECT_EQ(got.reviews[0].notices, direct.notices);
    EXPECT_EQ(got.reviews[0].newSets, direct.newSets);
    EXPECT_EQ(got.reviews[0].days, direct.days);
    EXPECT_EQ(accept(got, {0}), accept({sheets, {direct}, whole}, {0}));
}

TEST_F(ReturnsTest, OnlyTheLiftersAndDaysOfTheSheetsAreTakenFromTheRoster)
{
    const JudgedReturns got = readReturns({write("ada.csv", file)}, tests::kReadOn, roster);
    EXPECT_THAT(roster.sessionsReadOf, ElementsAre(week.lifter.id));
    EXPECT_THAT(got.basis.sessions, ElementsAre(roster.allSessions[0]));
    EXPECT_EQ(got.basis.cards, week.cards);
}

TEST_F(ReturnsTest, ASheetOfAnotherNumberIsStillFoundByItsName)
{
    file.rows[0]["lifter_id"] = QStringLiteral("99");
    const JudgedReturns got = readReturns({write("ada.csv", file)}, tests::kReadOn, roster);
    EXPECT_EQ(got.reviews[0].lifter, week.lifter.id);
    EXPECT_THAT(accept(got, {0}).sessions.before, ElementsAre(roster.allSessions[0]));
}

TEST_F(ReturnsTest, AFileNamedTwiceIsReadOnceAndOneThatHasGoneIsAProblem)
{
    const QString ada = write("ada.csv", file);
    const JudgedReturns got =
        readReturns({ada, ada, QStringLiteral("gone.csv")}, tests::kReadOn, roster);
    ASSERT_EQ(got.reviews.size(), 2u);
    EXPECT_EQ(got.reviews[0].standing, SheetStanding::ready);
    EXPECT_EQ(got.reviews[1].standing, SheetStanding::refused);
    EXPECT_EQ(got.reviews[1].file, QStringLiteral("gone.csv"));
    EXPECT_EQ(accept(got, {0, 1}), accept(got, {0})) << "what is refused is not booked";
}

TEST_F(ReturnsTest, TwoSheetsOfOneLifterAreBookedInOrder)
{
    ReturnFile later = file;
    later.rows[2]["rpe"] = QStringLiteral("9.5"); // the second set of Monday
    const JudgedReturns got =
        readReturns({write("ada.csv", file), write("later.csv", later)}, tests::kReadOn, roster);
    ASSERT_TRUE(got.reviews[0].isAcceptable() && got.reviews[1].isAcceptable());
    const Edit both = accept(got, {0, 1});
    EXPECT_THAT(both.sessions.before, ElementsAre(roster.allSessions[0]));
    ASSERT_EQ(both.sessions.after.size(), 2u) << "one session a day";
    EXPECT_EQ(both.sessions.after[0].readiness, 4);
    ASSERT_EQ(both.sessions.after[0].sets.size(), 3u) << "no set is there twice";
    EXPECT_EQ(both.sessions.after[0].sets[1].rpe, 9.5);
    EXPECT_EQ(accept(got, {1, 0}).sessions.after[0].sets[1].rpe, 8.0);
}

TEST_F(ReturnsTest, AStopReadsNoFurther)
{
    ReturnFile ofBo = file;
    ofBo.rows[0]["lifter"] = QStringLiteral("Bo Example");
    ofBo.rows[0]["lifter_id"] = QStringLiteral("8");
    const QStringList paths{write("ada.csv", file), write("bo.csv", ofBo)};
    std::stop_source stop;
    roster.whenSessionsAreRead = [&stop] { stop.request_stop(); };
    const JudgedReturns got = readReturns(paths, tests::kReadOn, roster, {stop.get_token(), {}});
    EXPECT_THAT(roster.sessionsReadOf, ElementsAre(week.lifter.id)) << "Bo comes after Ada";
    EXPECT_THAT(got.reviews, IsEmpty());

    const JudgedReturns nothing =
        readReturns(paths, tests::kReadOn, roster, {stop.get_token(), {}});
    EXPECT_THAT(nothing.sheets, IsEmpty());
}

TEST_F(ReturnsTest, ItTellsHowFarItIsAndNeverGoesBack)
{
    std::vector<double> told;
    const JudgedReturns got = readReturns({write("ada.csv", file)}, tests::kReadOn, roster,
        {{}, [&told](double share) { told.push_back(share); }});
    EXPECT_EQ(got.reviews.size(), 1u);
    // The file, then in the other half the two lifters, then the sheet.
    EXPECT_THAT(told, ElementsAre(0.0, 0.5, 0.625, 0.75));
}

TEST_F(ReturnsTest, TheWeekOfASheetIsReadFromItsMondayToItsSunday)
{
    Card card = week.cards[0];
    for (const int day : {-1, 6, 7}) {
        card.id = CardId{100 + day};
        card.day = kMonday.addDays(day);
        roster.allCards.push_back(card);
    }
    const JudgedReturns got = readReturns({write("ada.csv", file)}, tests::kReadOn, roster);
    std::vector<qint64> read;
    for (const Card &one : got.basis.cards)
        read.push_back(one.id.value);
    EXPECT_THAT(read, testing::UnorderedElementsAre(1, 2, 3, 106));
}

TEST_F(ReturnsTest, FilesAreAHalfOfTheWorkAndRosterAndReviewAQuarterEach)
{
    ReturnFile later = file;
    later.rows[2]["rpe"] = QStringLiteral("9.5");
    std::vector<double> told;
    const JudgedReturns got = readReturns({write("ada.csv", file), write("later.csv", later)},
        tests::kReadOn, roster, {{}, [&told](double share) { told.push_back(share); }});
    EXPECT_EQ(got.reviews.size(), 2u);
    EXPECT_THAT(told, ElementsAre(0.0, 0.25, 0.5, 0.625, 0.75, 0.875))
        << "two files, two lifters, two sheets";
}
