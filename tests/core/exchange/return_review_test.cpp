#include "core/exchange/returns.h"

#include "tests/core/exchange/return_files.h"

#include <gmock/gmock.h>
#include <numeric>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;
using tests::kMonday;
using tests::PlannedWeek;
using tests::ReturnFile;

namespace {

class ReturnReviewTest : public testing::Test
{
protected:
    ReturnReviewTest()
    {
        basis.lifters = {week.lifter};
        Lifter bo = week.lifter;
        bo.id = LifterId{8};
        bo.name = QStringLiteral("Bo Example");
        basis.lifters.push_back(bo);
        basis.variations = week.catalogue;
        basis.cards = week.cards;
    }

    SheetReview review(const ReturnFile &sheet) { return reviewAll({sheet.read()}).front(); }

    std::vector<SheetReview> reviewAll(const std::vector<ReturnSheet> &sheets)
    {
        return reviewReturns(sheets, basis);
    }

    Edit accept(const std::vector<ReturnSheet> &sheets)
    {
        std::vector<size_t> all(sheets.size());
        std::iota(all.begin(), all.end(), size_t(0));
        return acceptReturns({sheets, reviewAll(sheets), basis}, all,
            {[this] { return SessionId{++m_session}; }, [this] { return CheckInId{++m_checkIn}; }});
    }

    /// As the roster would be after the edit.
    void apply(const Edit &edit)
    {
        const auto change = [](auto &rows, const auto &by) {
            for (const auto &row : by.before)
                std::erase(rows, row);
            rows.insert(rows.end(), by.after.begin(), by.after.end());
        };
        change(basis.sessions, edit.sessions);
        change(basis.checkIns, edit.checkIns);
    }

    /// The set at a place of the sheet, from 0: row 0 is the sheet's own.
    static tests::ReturnRow &setOf(ReturnFile &sheet, int set) { return sheet.rows[set + 1]; }

    VariationId idOf(const char *code) const
    {
        for (const Variation &variation : week.catalogue)
            if (variation.code == QLatin1String(code))
                return variation.id;
        return {};
    }

    PlannedWeek week;
    ReturnFile file{week};
    ReturnBasis basis;

private:
    qint64 m_session = 100;
    qint64 m_checkIn = 200;
};

} // namespace

TEST_F(ReturnReviewTest, AWeekDoneAsPlannedIsReadyAndGoesIntoTheLog)
{
    const SheetReview got = review(file);
    EXPECT_EQ(got.standing, SheetStanding::ready);
    EXPECT_EQ(got.lifter, week.lifter.id);
    EXPECT_THAT(got.notices, IsEmpty());
    EXPECT_EQ(got.newSets, 4);
    ASSERT_EQ(got.days.size(), 2u);
    for (const DayReview &day : got.days)
        for (const SetReview &set : day.sets)
            EXPECT_EQ(set.outcome, SetOutcome::asPlanned)
                << set.differences.join(u' ').toStdString();
    EXPECT_EQ(got.days[0].sets[0].planned, QStringLiteral("3 x 100 kg"));
    EXPECT_EQ(got.days[0].sets[0].done, QStringLiteral("3 x 100 kg, RPE 8"));

    const Edit edit = accept({file.read()});
    EXPECT_THAT(edit.sessions.before, IsEmpty());
    ASSERT_EQ(edit.sessions.after.size(), 2u);
    const LoggedSession &monday = edit.sessions.after[0];
    EXPECT_EQ(monday.lifter, week.lifter.id);
    EXPECT_EQ(monday.day, kMonday);
    EXPECT_TRUE(monday.id.isValid());
    ASSERT_EQ(monday.sets.size(), 3u);
    EXPECT_EQ(monday.sets[0].variation, idOf("comp"));
    EXPECT_EQ(monday.sets[0].repsPlanned, 3);
    EXPECT_EQ(monday.sets[2].variation, idOf("off_chest_pause"));
    EXPECT_THAT(problems(monday), IsEmpty());
}

TEST_F(ReturnReviewTest, SaysWhatWasDoneOtherwise)
{
    setOf(file, 0)["load_kg"] = QStringLiteral("102.5");
    setOf(file, 0)["planned_rpe"] = QStringLiteral("8");
    setOf(file, 0)["rpe"] = QStringLiteral("9.5");
    setOf(file, 1)["load_kg"] = QStringLiteral("95");
    setOf(file, 1)["reps_done"] = QStringLiteral("2");
    setOf(file, 1)["failed"] = QStringLiteral("1");
    setOf(file, 2)["variation"] = QStringLiteral("feet_up");
    setOf(file, 2)["reps_done"] = QStringLiteral("3");
    file.reopen(4, "skipped");
    tests::ReturnRow extra = setOf(file, 2);
    for (const char *planned : {"planned_variation", "planned_kg", "reps_planned"})
        extra.remove(QLatin1String(planned));
    extra["set"] = QStringLiteral("2");
    file.rows.append(extra);

    const SheetReview got = review(file);
    ASSERT_EQ(got.days.size(), 2u);
    const std::vector<SetReview> &sets = got.days[0].sets;
    ASSERT_EQ(sets.size(), 4u);
    EXPECT_EQ(sets[0].outcome, SetOutcome::different);
    EXPECT_THAT(sets[0].differences,
        ElementsAre(QStringLiteral("2.5 kg heavier"),
            QStringLiteral("harder than expected (RPE 9.5 against 8)")));
    EXPECT_EQ(sets[1].outcome, SetOutcome::missed);
    EXPECT_THAT(sets[1].differences,
        ElementsAre(QStringLiteral("missed a rep"), QStringLiteral("5 kg lighter"),
            QStringLiteral("1 rep fewer")));
    EXPECT_THAT(sets[2].differences,
        ElementsAre(QStringLiteral("Feet-up bench in place of Off-chest pause bench"),
            QStringLiteral("1 rep more")));
    EXPECT_EQ(sets[3].outcome, SetOutcome::extra);
    EXPECT_TRUE(sets[3].planned.isEmpty());
    EXPECT_EQ(got.days[1].sets[0].outcome, SetOutcome::skipped);
    EXPECT_TRUE(got.days[1].sets[0].done.isEmpty());
    EXPECT_EQ(accept({file.read()}).sessions.after.size(), 1u) << "what was left out is no set";
}

TEST_F(ReturnReviewTest, LoadsAreSaidInTheLiftersUnit)
{
    basis.lifters[0].unit = Unit::pound;
    setOf(file, 0)["load_kg"] = QStringLiteral("102.26796185"); // 5 lb more
    EXPECT_THAT(
        review(file).days[0].sets[0].differences, ElementsAre(QStringLiteral("5 lb heavier")));
}

TEST_F(ReturnReviewTest, PainIsMarkedOnSheetAndDayAndIsBooked)
{
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-08"}, {"sleep", "2"},
        {"sore_back", "1"}, {"pain", "shoulders"}, {"pain_words", "right, at the bottom"}});
    const SheetReview got = review(file);
    EXPECT_TRUE(got.hasPain);
    EXPECT_EQ(got.days[0].pain, QString());
    EXPECT_EQ(got.days[1].pain, QStringLiteral("shoulders: right, at the bottom"));
    EXPECT_THAT(got.days[1].checkIn,
        ElementsAre(QStringLiteral("sleep 2 of 5"), QStringLiteral("sore back")));
    const Edit edit = accept({file.read()});
    ASSERT_EQ(edit.checkIns.after.size(), 1u);
    EXPECT_EQ(edit.checkIns.after[0].lifter, week.lifter.id);
    EXPECT_EQ(edit.checkIns.after[0].pain->area, BodyArea::shoulders);
    EXPECT_TRUE(edit.checkIns.after[0].id.isValid());
}

TEST_F(ReturnReviewTest, TheSameFileTwiceAddsNothing)
{
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"sleep", "4"}, {"note", "ok"}});
    const std::vector<SheetReview> both =
        reviewAll({file.read(), file.read(QStringLiteral("again.csv"))});
    EXPECT_EQ(both[0].standing, SheetStanding::ready);
    EXPECT_EQ(both[1].standing, SheetStanding::nothingNew);
    EXPECT_THAT(both[1].notices, ElementsAre(QStringLiteral("It is the same sheet as ada.csv.")));
    const Edit once = accept({file.read(), file.read(QStringLiteral("again.csv"))});
    EXPECT_EQ(once.sessions.after.size(), 2u);
    EXPECT_EQ(once.checkIns.after.size(), 1u);

    apply(once);
    const SheetReview later = review(file);
    EXPECT_EQ(later.standing, SheetStanding::nothingNew);
    EXPECT_EQ(later.knownSets, 4);
    EXPECT_TRUE(accept({file.read()}).isEmpty());
}

TEST_F(ReturnReviewTest, ALaterSheetAddsItsDaysAndCorrectsWhatItSaysAnew)
{
    ReturnFile early = file;
    early.reopen(4);
    apply(accept({early.read()}));
    ASSERT_EQ(basis.sessions.size(), 1u);
    basis.sessions[0].sets[1].velocityMs = 0.3;

    setOf(file, 1)["rpe"] = QStringLiteral("9");
    const SheetReview got = review(file);
    EXPECT_EQ(got.standing, SheetStanding::byChoice) << "the coach decides what is right";
    EXPECT_EQ(got.newSets, 1);
    EXPECT_EQ(got.correctedSets, 1);
    EXPECT_EQ(got.knownSets, 2);
    EXPECT_THAT(got.notices, ElementsAre(testing::Truly([](const QString &words) {
        return words.contains(QStringLiteral("corrects"));
    })));
    const Edit edit = accept({file.read()});
    ASSERT_EQ(edit.sessions.before.size(), 1u);
    EXPECT_EQ(edit.sessions.before[0], basis.sessions[0]);
    ASSERT_EQ(edit.sessions.after.size(), 2u);
    EXPECT_EQ(edit.sessions.after[0].sets.size(), 3u) << "no set is there twice";
    EXPECT_EQ(edit.sessions.after[0].sets[1].rpe, 9.0);
    EXPECT_EQ(edit.sessions.after[0].sets[1].velocityMs, 0.3) << "what no sheet tells is kept";
}

TEST_F(ReturnReviewTest, ACorrectedSetStillAnswersThePlan)
{
    ReturnFile early = file;
    early.reopen(4);
    apply(accept({early.read()}));
    setOf(file, 1)["rpe"] = QStringLiteral("9");
    const auto answers = [this] { return accept({file.read()}).sessions.after[0].sets[1].answers; };
    const auto planned = basis.sessions[0].sets[1].answers;
    ASSERT_TRUE(planned);
    basis.sessions[0].sets[1].answers.reset();
    EXPECT_EQ(answers(), planned) << "as the sheet tells";
    basis.sessions[0].sets[1].answers = planned;
    for (Card &card : basis.cards)
        card.position += 7;
    EXPECT_EQ(answers(), planned) << "as it was known, where the sheet's card is gone";
}

TEST_F(ReturnReviewTest, WhatTheCoachLoggedBesidesStays)
{
    LoggedSession squats{SessionId{1}, week.lifter.id, kMonday, 1, 4, {}};
    SetEntry squat;
    squat.variation = VariationId{9999};
    squat.loadKg = 140;
    squat.repsDone = 5;
    squats.sets = {squat};
    basis.sessions = {squats};
    const Edit edit = accept({file.read()});
    ASSERT_EQ(edit.sessions.after.size(), 2u);
    const LoggedSession &monday = edit.sessions.after[0];
    EXPECT_EQ(monday.id, squats.id);
    EXPECT_EQ(monday.readiness, 4);
    ASSERT_EQ(monday.sets.size(), 4u);
    EXPECT_EQ(monday.sets[0], squat);
}

TEST_F(ReturnReviewTest, AnExtraSetOfTheSameVariationIsNotCorrectedAway)
{
    ReturnFile early = file;
    early.reopen(4);
    apply(accept({early.read()}));
    ASSERT_EQ(basis.sessions.size(), 1u);
    std::vector<SetEntry> &sets = basis.sessions[0].sets;
    SetEntry extra = sets[0];
    extra.repsPlanned.reset();
    extra.repsDone = 8;
    extra.loadKg -= 20.0;
    sets.insert(sets.begin() + 1, extra);
    setOf(file, 1)["rpe"] = QStringLiteral("9");
    const Edit edit = accept({file.read()});
    ASSERT_GE(edit.sessions.after.size(), 1u);
    EXPECT_EQ(edit.sessions.after[0].sets[1], extra);
    EXPECT_EQ(edit.sessions.after[0].sets.size(), 4u);
}

TEST_F(ReturnReviewTest, AnotherLiftersNumberIsRefused)
{
    file.rows[0]["lifter_id"] = QStringLiteral("8");
    const SheetReview got = review(file);
    EXPECT_EQ(got.standing, SheetStanding::refused);
    EXPECT_TRUE(got.notices.join(u' ').contains(QStringLiteral("Bo Example")));
    EXPECT_TRUE(accept({file.read()}).isEmpty());
}

TEST_F(ReturnReviewTest, AStrangerIsRefused)
{
    file.rows[0]["lifter_id"] = QStringLiteral("99");
    file.rows[0]["lifter"] = QStringLiteral("Nobody");
    EXPECT_EQ(review(file).standing, SheetStanding::refused);
    file.rows[0]["lifter_id"] = QStringLiteral("8"); // Bo's number, neither Bo's name nor plan
    EXPECT_EQ(review(file).standing, SheetStanding::refused);
    EXPECT_TRUE(accept({file.read()}).isEmpty());
}

TEST_F(ReturnReviewTest, ARenamedLifterAndAnotherRosterFileAreForTheCoachToJudge)
{
    file.rows[0]["lifter"] = QStringLiteral("Ada Sample");
    SheetReview got = review(file);
    EXPECT_EQ(got.standing, SheetStanding::byChoice);
    EXPECT_EQ(got.lifter, week.lifter.id);
    file.rows[0]["lifter"] = QStringLiteral("ada example");
    file.rows[0]["lifter_id"] = QStringLiteral("99");
    got = review(file);
    EXPECT_EQ(got.standing, SheetStanding::byChoice);
    EXPECT_EQ(got.lifter, week.lifter.id);
    EXPECT_EQ(accept({file.read()}).sessions.after.size(), 2u);
}

TEST_F(ReturnReviewTest, AnOldPlanIsSaidAndCanStillBeAccepted)
{
    basis.cards[0].setLine = QStringLiteral("5x5 80kg");
    SheetReview got = review(file);
    EXPECT_EQ(got.standing, SheetStanding::byChoice);
    EXPECT_TRUE(got.notices.front().contains(QStringLiteral("plan was changed")));
    EXPECT_EQ(got.days[0].sets[0].outcome, SetOutcome::asPlanned)
        << "measured against the plan that was in hand";
    EXPECT_EQ(accept({file.read()}).sessions.after.size(), 2u);
    basis.cards.clear();
    EXPECT_TRUE(review(file).notices.front().contains(QStringLiteral("Nothing is planned")));
}

TEST_F(ReturnReviewTest, AnUnknownVariationStopsTheSheetAndNamesTheRow)
{
    setOf(file, 1)["variation"] = QStringLiteral("feet_upp");
    const SheetReview got = review(file);
    EXPECT_EQ(got.standing, SheetStanding::refused);
    ASSERT_EQ(got.problems.count(), 1u);
    EXPECT_EQ(got.problems.items()[0].line, 4);
    EXPECT_TRUE(got.problems.items()[0].words.contains(QStringLiteral("feet_upp")));
    EXPECT_TRUE(accept({file.read()}).isEmpty());
}

TEST_F(ReturnReviewTest, ADamagedSheetDoesNotHoldUpTheOthers)
{
    ReturnFile cut = file;
    cut.hasEnd = false;
    const std::vector<ReturnSheet> sheets{cut.read(QStringLiteral("cut.csv")), file.read()};
    const auto got = reviewAll(sheets);
    EXPECT_EQ(got[0].standing, SheetStanding::refused);
    EXPECT_EQ(got[1].standing, SheetStanding::ready);
    EXPECT_EQ(accept(sheets).sessions.after.size(), 2u);
}

TEST_F(ReturnReviewTest, ASheetWithoutEntriesSaysSo)
{
    for (int row = 1; row <= 4; ++row)
        file.reopen(row);
    const SheetReview got = review(file);
    EXPECT_EQ(got.standing, SheetStanding::nothingNew);
    EXPECT_THAT(got.notices, ElementsAre(QStringLiteral("The sheet has no entry yet.")));
}

TEST_F(ReturnReviewTest, ADayThatWasMovedIsBookedOnTheDayItWasDone)
{
    setOf(file, 3)["date"] = QStringLiteral("2024-05-09");
    const SheetReview got = review(file);
    EXPECT_EQ(got.days[1].plannedDay, kMonday.addDays(2));
    EXPECT_EQ(got.days[1].day, kMonday.addDays(3));
    EXPECT_EQ(accept({file.read()}).sessions.after[1].day, kMonday.addDays(3));
}

TEST_F(ReturnReviewTest, ALeadRepSetKeepsItsLeadReps)
{
    setOf(file, 0)["lead_variation"] = QStringLiteral("tempo_4_2_0");
    setOf(file, 0)["lead_reps"] = QStringLiteral("1");
    EXPECT_TRUE(review(file).days[0].sets[0].done.contains(QStringLiteral("the first 1 as")));
    const Edit edit = accept({file.read()});
    EXPECT_THAT(
        edit.sessions.after[0].sets[0].lead, testing::Optional(LeadReps{idOf("tempo_4_2_0"), 1}));
}

TEST_F(ReturnReviewTest, SheetsThatDifferInAnythingAreNotTheSame)
{
    const auto second = [this](auto change) {
        ReturnFile other = file;
        change(other);
        return reviewAll({file.read(), other.read(QStringLiteral("other.csv"))})[1];
    };
    const auto same = second([](ReturnFile &) {});
    EXPECT_EQ(same.notices, QStringList(QStringLiteral("It is the same sheet as ada.csv.")));
    for (const SheetReview &other :
        {second([](ReturnFile &f) { setOf(f, 0)["rpe"] = QStringLiteral("9"); }),
            second([](ReturnFile &f) {
                f.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"sleep", "2"}});
            }),
            second([](ReturnFile &f) { f.rows[0]["plan"] = QStringLiteral("another"); })})
        EXPECT_TRUE(other.isAcceptable()) << other.notices.join(u' ').toStdString();
}

TEST_F(ReturnReviewTest, AWeekIsPlannedFromItsMondayToItsSunday)
{
    const auto saidWithCardOn = [this](QDate day, LifterId lifter = LifterId{7}) {
        basis.cards = {week.cards[0]};
        basis.cards[0].day = day;
        basis.cards[0].lifter = lifter;
        basis.cards[0].setLine = QStringLiteral("5x5 80kg");
        return review(file).notices.front();
    };
    const QString changed = QStringLiteral("The plan was changed");
    EXPECT_TRUE(saidWithCardOn(kMonday).startsWith(changed));
    EXPECT_TRUE(saidWithCardOn(kMonday.addDays(6)).startsWith(changed));
    const QString nothing = QStringLiteral("Nothing is planned");
    EXPECT_TRUE(saidWithCardOn(kMonday.addDays(-1)).startsWith(nothing));
    EXPECT_TRUE(saidWithCardOn(kMonday.addDays(7)).startsWith(nothing));
    EXPECT_TRUE(saidWithCardOn(kMonday, LifterId{8}).startsWith(nothing));
}

TEST_F(ReturnReviewTest, OfASheetFromAnotherRosterNothingIsSaidAboutThePlan)
{
    file.rows[0]["lifter_id"] = QStringLiteral("99");
    basis.cards.clear();
    EXPECT_EQ(review(file).notices.size(), 1) << "its plan is that of the other roster";
}

TEST_F(ReturnReviewTest, WhatTheLogHasAlreadyIsNoSheetWithoutEntry)
{
    for (int row = 2; row <= 4; ++row)
        file.reopen(row);
    apply(accept({file.read()}));
    SheetReview got = review(file);
    EXPECT_EQ(got.knownSets, 1);
    const QString known = QStringLiteral("All of this sheet is in the log already.");
    EXPECT_THAT(got.notices, ElementsAre(known));

    file.reopen(1);
    file.rows.append({{"row", "check_in"}, {"date", "2024-05-06"}, {"sleep", "4"}});
    apply(accept({file.read()}));
    got = review(file);
    EXPECT_EQ(got.knownSets, 0);
    EXPECT_THAT(got.notices, ElementsAre(known)) << "a check-in is an entry";
}

TEST_F(ReturnReviewTest, ASheetThatCorrectsSaysHowManySets)
{
    apply(accept({file.read()}));
    setOf(file, 0)["rpe"] = QStringLiteral("9");
    EXPECT_TRUE(review(file).notices.front().contains(QStringLiteral("for one of these sets")));
    setOf(file, 2)["rpe"] = QStringLiteral("9");
    EXPECT_TRUE(review(file).notices.front().contains(QStringLiteral("for 2 of these sets")));
}

TEST_F(ReturnReviewTest, OfARefusedSheetNothingIsCounted)
{
    file.rows[0]["lifter_id"] = QStringLiteral("8");
    const SheetReview got = review(file);
    EXPECT_FALSE(got.lifter.isValid());
    EXPECT_EQ(got.newSets + got.correctedSets + got.knownSets, 0);
    EXPECT_FALSE(got.hasPain);
    EXPECT_THAT(got.days, IsEmpty());
}

TEST_F(ReturnReviewTest, ALoadFarAboveTheMaxIsForTheCoachToJudge)
{
    std::vector<LoggedSession> log;
    for (int back = 8; back > 0; --back) {
        LoggedSession session;
        session.id = SessionId{back};
        session.lifter = week.lifter.id;
        session.day = kMonday.addDays(-7 * back);
        SetEntry heavy;
        heavy.variation = idOf("comp");
        heavy.loadKg = 110.0;
        heavy.repsDone = 1;
        heavy.rpe = 8.0;
        SetEntry light = heavy;
        light.loadKg = 95.0;
        light.repsDone = 5;
        session.sets = {heavy, light};
        log.push_back(session);
    }
    basis.estimates = estimateAll({week.lifter}, week.catalogue, log, kMonday);
    EXPECT_EQ(review(file).standing, SheetStanding::ready) << "as planned, 100 kg";
    setOf(file, 0)["load_kg"] = QStringLiteral("225");
    const SheetReview far = review(file);
    EXPECT_EQ(far.standing, SheetStanding::byChoice);
    EXPECT_EQ(far.notices.size(), 1);
    EXPECT_TRUE(far.days[0].sets[0].isFarAbove);
    EXPECT_TRUE(far.days[0].sets[0].differences.last().contains(QStringLiteral("far above")));
    EXPECT_FALSE(far.days[0].sets[1].isFarAbove);
}
