#include "core/domain/check_in.h"
#include "core/domain/given_day.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/training_history.h"

#include <QLocale>
#include <gmock/gmock.h>

// Bounds of rows beyond those that bounds_test.cpp holds against the schema.

using namespace core;

namespace {

GivenDay soundGivenDay()
{
    GivenDay given;
    given.lifter = {1};
    given.day = QDate(2026, 3, 2);
    given.at = QDateTime(QDate(2026, 3, 1), QTime(18, 0), Qt::UTC);
    given.cards.push_back({{1}, {1}, QStringLiteral("3x3 @8"), {}, {GivenLine{}}});
    return given;
}

/// How much is wrong with a day whose one line is changed so.
template <class Change> qsizetype wrongInLine(Change change)
{
    GivenDay given = soundGivenDay();
    change(given.cards[0].lines[0]);
    return problems(given).size();
}

template <class Change> qsizetype wrongInDay(Change change)
{
    GivenDay given = soundGivenDay();
    change(given);
    return problems(given).size();
}

} // namespace

TEST(GivenBounds, LoadsAreAboveNoneAndChancesChances)
{
    using Line = GivenLine;
    EXPECT_EQ(wrongInLine([](Line &) {}), 0);
    EXPECT_EQ(wrongInLine([](Line &l) { l.loadKg = 0.01; }), 0);
    EXPECT_EQ(wrongInLine([](Line &l) { l.loadKg = 0.0; }), 1);
    for (const auto chance : {&Line::allMade, &Line::firstMade}) {
        EXPECT_EQ(wrongInLine([=](Line &l) { l.*chance = 0.0; }), 0);
        EXPECT_EQ(wrongInLine([=](Line &l) { l.*chance = 1.0; }), 0);
        EXPECT_EQ(wrongInLine([=](Line &l) { l.*chance = -0.01; }), 1);
        EXPECT_EQ(wrongInLine([=](Line &l) { l.*chance = 1.01; }), 1);
    }
    EXPECT_EQ(wrongInLine([](Line &l) { l.hardSetsAfter = -0.01; }), 1);
    EXPECT_EQ(wrongInLine([](Line &l) { l.plates = {{0.05, 1}}; }), 0);
    EXPECT_EQ(wrongInLine([](Line &l) { l.plates = {{0.0, 1}}; }), 1);
    EXPECT_EQ(wrongInLine([](Line &l) { l.plates = {{20.0, 0}}; }), 1);
}

TEST(GivenBounds, ADayIsGivenAtAMomentAndCountedFromOne)
{
    using Day = GivenDay;
    EXPECT_EQ(wrongInDay([](Day &d) { d.number = 2; }), 0);
    EXPECT_EQ(wrongInDay([](Day &d) { d.number = 0; }), 1);
    EXPECT_EQ(wrongInDay([](Day &d) { d.cards.clear(); }), 1);
    EXPECT_EQ(wrongInDay([](Day &d) { d.day = {}; }), 1);
    EXPECT_EQ(wrongInDay([](Day &d) { d.at = {}; }), 1);
    EXPECT_EQ(wrongInDay([](Day &d) { d.at = d.at.addMSecs(1); }), 1);
    EXPECT_EQ(wrongInDay([](Day &d) { d.at = d.at.toOffsetFromUtc(3600); }), 1);
    EXPECT_EQ(wrongInDay([](Day &d) { d.cards[0].variation = {}; }), 1);
    EXPECT_EQ(wrongInDay([](Day &d) { d.cards.insert(d.cards.end(), 2, GivenCard()); }), 1)
        << "said once";
}

TEST(GivenBounds, AMomentIsKeptToTheSecondInUtc)
{
    const QDateTime moment(QDate(2026, 3, 1), QTime(18, 0, 5, 999), Qt::OffsetFromUTC, 3600);
    EXPECT_EQ(toSeconds(moment), QDateTime(QDate(2026, 3, 1), QTime(17, 0, 5), Qt::UTC));
    EXPECT_EQ(toSeconds(moment).timeSpec(), Qt::UTC);
}

TEST(GivenBounds, WhatWasGivenLastHolds)
{
    std::vector<GivenDay> given(4, soundGivenDay());
    given[1].number = 3;
    given[2].number = 2;
    given[3].number = 4;
    given[3].lifter = {2};
    EXPECT_EQ(givenOn(given, {1}, given[0].day), &given[1]);
    EXPECT_EQ(givenOn(given, {2}, given[0].day), &given[3]);
    EXPECT_EQ(givenOn(given, {1}, given[0].day.addDays(1)), nullptr);
    EXPECT_EQ(GivenDay{}.number, 1);
    EXPECT_EQ(GivenLine{}.hardSetsAfter, 0.0);
    EXPECT_EQ(Figure{}, (Figure{0.0, 0.0, 0.0}));
    EXPECT_EQ(PlatePairs{}.plateKg, 0.0);
}

TEST(LifterBounds, ANoviceTrainsForLessThanAYear)
{
    // Common practice, no source.
    Lifter lifter;
    EXPECT_FALSE(isNovice(lifter, QDate(2026, 3, 2)));
    lifter.trainingSince = QDate(2025, 3, 2);
    EXPECT_TRUE(isNovice(lifter, QDate(2026, 3, 1)));
    EXPECT_FALSE(isNovice(lifter, QDate(2026, 3, 2)));
}

TEST(LifterBounds, AnAgeIsKnownByTheYearOrByWord)
{
    Lifter lifter;
    EXPECT_TRUE(isAgeUnknown(lifter));
    EXPECT_FALSE(lifter.isAdult);
    lifter.isAdult = true;
    EXPECT_FALSE(isAgeUnknown(lifter));
    lifter.birthYear = 1990;
    EXPECT_FALSE(isAgeUnknown(lifter));
    lifter.isAdult = false;
    EXPECT_FALSE(isAgeUnknown(lifter));
    EXPECT_FALSE(mayBeMinor(lifter, QDate(2026, 1, 1)));
    lifter.trainingSince = QDate();
    lifter.name = QStringLiteral("Ada");
    EXPECT_EQ(problems(lifter).size(), 1) << "no date";
}

TEST(SetBounds, AnAnswerNamesACardAndASetFromNoneOn)
{
    SetEntry set;
    set.loadKg = 100.0;
    set.repsDone = 3;
    set.answers = PlannedSetRef{{1}, 0};
    EXPECT_TRUE(problems(set).isEmpty());
    set.answers->set = -1;
    EXPECT_EQ(problems(set).size(), 1);
    set.answers = PlannedSetRef{};
    EXPECT_EQ(problems(set).size(), 1);
    EXPECT_EQ(PlannedSetRef{}.set, 0);
}

TEST(SetBounds, TheLastDayIsThatOfTheNewestSet)
{
    std::vector<LoggedSession> sessions(3);
    EXPECT_FALSE(lastDayOf(sessions).isValid());
    sessions[0].day = QDate(2026, 3, 4);
    sessions[1].day = QDate(2026, 3, 2);
    sessions[2].day = QDate(2026, 3, 9);
    sessions[0].sets = sessions[1].sets = {SetEntry{}};
    EXPECT_EQ(lastDayOf(sessions), QDate(2026, 3, 4)) << "a session without sets is none";
}

TEST(CheckInBounds, PainIsThereOrItIsNot)
{
    CheckIn said;
    said.lifter = {1};
    said.day = QDate(2026, 3, 2);
    EXPECT_FALSE(said.isPainFree);
    said.isPainFree = true;
    EXPECT_TRUE(problems(said).isEmpty());
    said.pain = PainFlag{BodyArea::back, {}};
    EXPECT_EQ(problems(said).size(), 1);
    said.isPainFree = false;
    EXPECT_TRUE(problems(said).isEmpty());
    EXPECT_EQ(words(*said.pain), words(BodyArea::back));
    EXPECT_EQ(words(PainFlag{{}, QStringLiteral(" hip ")}), QStringLiteral("hip"));
    EXPECT_EQ(words(PainFlag{}), QStringLiteral("elsewhere"));
    said.sleep = said.stress = 9;
    EXPECT_EQ(problems(said).size(), 1) << "said once";
}

TEST(WeekLoadBounds, ALoadBlankHoldsNothingAndTheHighestOfAHabitMayBeNone)
{
    EXPECT_EQ(WeekLoad{}.missed, 0);
    EXPECT_EQ(UsualRange{}.low + UsualRange{}.high, 0.0);
    const std::vector<WeekLoad> weeks{{{}, 1, 0, 0.0}};
    const auto lifts = [](const WeekLoad &week) { return double(week.lifts); };
    EXPECT_EQ(usualRange(std::span(weeks), 1, lifts)->high, 0.0);
}

TEST(LoadWordBounds, HundredthsAreTheFinestThatIsShown)
{
    QLocale::setDefault(QLocale::c());
    EXPECT_EQ(formatLoad(99.996, Unit::kilogram), QStringLiteral("100 kg"));
    EXPECT_EQ(formatLoad(99.994, Unit::kilogram), QStringLiteral("99.99 kg"));
    EXPECT_EQ(formatLoad(99.9, Unit::kilogram), QStringLiteral("99.9 kg"));
}
