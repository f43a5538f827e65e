#include "core/exchange/return_booking.h"

#include "tests/core/exchange/return_files.h"

#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Optional;
using tests::kMonday;
using tests::PlannedWeek;
using tests::ReturnFile;

namespace {

/// Books the sheet of the planned week into a log.
struct Booked
{
    PlannedWeek week;
    ReturnFile file{week};
    ReturnBasis basis{{week.lifter}, week.catalogue, week.cards, {}, {}, {}};

    [[nodiscard]] Edit edit() const
    {
        ReturnBooking booking(basis);
        booking.book(file.read(), week.lifter.id,
            {[] { return SessionId{100}; },
                [n = qint64(200)]() mutable { return CheckInId{++n}; }});
        return booking.edit();
    }

    /// A session of the first day as the log has it.
    void log(qint64 id, int number, std::vector<SetEntry> sets = {})
    {
        basis.sessions.push_back(
            {SessionId{id}, week.lifter.id, kMonday, number, {}, std::move(sets)});
    }

    void say(const QString &day, const QString &sleep)
    {
        file.rows.append({{"row", "check_in"}, {"date", day}, {"sleep", sleep}});
    }
};

} // namespace

TEST(ReturnBooking, ANewSessionIsTheFirstOfItsDay)
{
    const Edit edit = Booked().edit();
    ASSERT_EQ(edit.sessions.after.size(), 2u);
    EXPECT_EQ(edit.sessions.after[0].number, 1);
    EXPECT_EQ(edit.sessions.after[1].number, 1);
    EXPECT_FALSE(edit.sessions.after[0].readiness);
}

TEST(ReturnBooking, ASetAnswersThatOfThePlanWhichTheSheetNames)
{
    Booked booked;
    const LoggedSession monday = booked.edit().sessions.after[0];
    EXPECT_THAT(monday.sets[0].answers, Optional(PlannedSetRef{{1}, 0}));
    EXPECT_THAT(monday.sets[1].answers, Optional(PlannedSetRef{{1}, 1}));
    EXPECT_THAT(monday.sets[2].answers, Optional(PlannedSetRef{{2}, 0}));
    EXPECT_THAT(booked.edit().sessions.after[1].sets[0].answers, Optional(PlannedSetRef{{3}, 0}));
    std::swap(booked.basis.cards[0].position, booked.basis.cards[1].position);
    EXPECT_FALSE(booked.edit().sessions.after[0].sets[0].answers) << "another card stands there";
}

TEST(ReturnBooking, ALeadSetAnswersTheCardOfItsLead)
{
    Booked booked;
    booked.basis.cards[1].variation =
        withCode(booked.week.catalogue, QStringLiteral("tempo_4_2_0"))->id;
    EXPECT_FALSE(booked.edit().sessions.after[0].sets[2].answers);
    booked.file.rows[3]["lead_variation"] = QStringLiteral("tempo_4_2_0");
    booked.file.rows[3]["lead_reps"] = QStringLiteral("1");
    EXPECT_THAT(booked.edit().sessions.after[0].sets[2].answers, Optional(PlannedSetRef{{2}, 0}));
}

TEST(ReturnBooking, OfTheSessionsOfADayTheOneThatHasMostOfTheSetsIsMeantElseTheFirst)
{
    Booked booked;
    booked.log(1, 1);
    booked.log(2, 2);
    const auto changed = [&booked] {
        std::vector<qint64> ids;
        for (const LoggedSession &session : booked.edit().sessions.before)
            ids.push_back(session.id.value);
        return ids;
    };
    EXPECT_THAT(changed(), ElementsAre(1));
    SetEntry done = booked.edit().sessions.after[0].sets[0];
    booked.basis.sessions[1].sets = {done};
    EXPECT_THAT(changed(), ElementsAre(2));
}

TEST(ReturnBooking, EachDayHasItsCheckInAndOneThatIsThereIsFilled)
{
    Booked booked;
    booked.say(QStringLiteral("2024-05-06"), QStringLiteral("2"));
    booked.say(QStringLiteral("2024-05-08"), QStringLiteral("4"));
    const Edit fresh = booked.edit();
    ASSERT_EQ(fresh.checkIns.after.size(), 2u);
    EXPECT_EQ(fresh.checkIns.after[0].sleep, 2);
    EXPECT_EQ(fresh.checkIns.after[1].sleep, 4);
    EXPECT_THAT(fresh.checkIns.before, IsEmpty());

    CheckIn known;
    known.id = {9};
    known.lifter = booked.week.lifter.id;
    known.day = kMonday.addDays(2);
    known.stress = 3;
    booked.basis.checkIns = {known};
    const Edit filled = booked.edit();
    EXPECT_THAT(filled.checkIns.before, ElementsAre(known));
    known.sleep = 4;
    EXPECT_THAT(filled.checkIns.after, testing::Contains(known));
    EXPECT_EQ(filled.checkIns.after.size(), 2u);
}

TEST(ReturnBooking, WhatOthersLoggedAndSaidStays)
{
    Booked booked;
    booked.log(1, 1);
    booked.basis.sessions[0].lifter = LifterId{8};
    CheckIn said;
    said.id = {9};
    said.lifter = LifterId{8};
    said.day = kMonday;
    booked.basis.checkIns = {said};
    booked.say(QStringLiteral("2024-05-06"), QStringLiteral("2"));
    const Edit edit = booked.edit();
    EXPECT_THAT(edit.sessions.before, IsEmpty());
    EXPECT_THAT(edit.checkIns.before, IsEmpty());
    EXPECT_EQ(edit.sessions.after.size(), 2u);
    EXPECT_EQ(edit.checkIns.after.size(), 1u);
}
