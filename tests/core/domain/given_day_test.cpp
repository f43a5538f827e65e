#include "core/domain/given_day.h"

#include <gmock/gmock.h>

// The bounds are the CHECKs of resources/schema, as in bounds_test.cpp.

using namespace core;

namespace {

const QDateTime kGivenAt(QDate(2026, 3, 1), QTime(9, 30), Qt::UTC);

GivenDay soundGivenDay()
{
    GivenLine line;
    line.loadKg = 100.0;
    line.plates = {{20.0, 2}};
    line.allMade = 0.8;
    line.firstMade = 0.9;
    GivenDay day;
    day.lifter = {1};
    day.day = QDate(2026, 3, 2);
    day.at = kGivenAt;
    day.cards = {{{1}, {1}, {}, {}, {line}}};
    return day;
}

template <class Change> qsizetype wrongInDay(Change change)
{
    GivenDay day = soundGivenDay();
    change(day);
    return problems(day).size();
}

template <class Change> qsizetype wrongInLine(Change change)
{
    return wrongInDay([&](GivenDay &day) { change(day.cards[0].lines[0]); });
}

constexpr double kBarely = 1e-6;

} // namespace

TEST(GivenDay, HasADayATimeANumberAndCards)
{
    EXPECT_EQ(wrongInDay([](GivenDay &) {}), 0);
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.day = {}; }), 1);
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.at = {}; }), 1);
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.number = 0; }), 1);
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.number = 2; }), 0);
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.cards.clear(); }), 1);
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.cards[0].variation = {}; }), 1);
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.cards[0].lines.clear(); }), 0) << "not to be read";
    EXPECT_EQ(wrongInDay([](GivenDay &d) {
        d.cards = {GivenCard{}, GivenCard{}};
    }),
        1)
        << "said once";
}

TEST(GivenDay, TheTimeIsInUtcAndInWholeSeconds)
{
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.at = kGivenAt.addMSecs(1); }), 1);
    EXPECT_EQ(wrongInDay([](GivenDay &d) { d.at = kGivenAt.toOffsetFromUtc(3600); }), 1);
    const QDateTime moment = kGivenAt.addMSecs(15'999).toOffsetFromUtc(7200);
    EXPECT_EQ(toSeconds(moment), kGivenAt.addSecs(15));
    EXPECT_EQ(wrongInDay([&](GivenDay &d) { d.at = toSeconds(moment); }), 0);
}

TEST(GivenDay, ALoadAndItsPlatesAreAboveNothing)
{
    EXPECT_EQ(wrongInLine([](GivenLine &l) { l.loadKg.reset(); }), 0);
    EXPECT_EQ(wrongInLine([](GivenLine &l) { l.loadKg = kBarely; }), 0);
    EXPECT_EQ(wrongInLine([](GivenLine &l) { l.loadKg = 0.0; }), 1);
    EXPECT_EQ(wrongInLine([](GivenLine &l) { l.plates = {{kBarely, 1}}; }), 0);
    EXPECT_EQ(wrongInLine([](GivenLine &l) { l.plates = {{0.0, 1}}; }), 1);
    EXPECT_EQ(wrongInLine([](GivenLine &l) { l.plates = {{20.0, 0}}; }), 1);
    EXPECT_EQ(wrongInLine([](GivenLine &l) { l.hardSetsAfter = 0.0; }), 0);
    EXPECT_EQ(wrongInLine([](GivenLine &l) { l.hardSetsAfter = -kBarely; }), 1);
}

TEST(GivenDay, AChanceLiesBetweenNoneAndCertainty)
{
    for (std::optional<double> GivenLine::*chance : {&GivenLine::allMade, &GivenLine::firstMade}) {
        const auto wrongAt = [chance](std::optional<double> value) {
            return wrongInLine([&](GivenLine &l) { l.*chance = value; });
        };
        EXPECT_EQ(wrongAt(std::nullopt), 0);
        EXPECT_EQ(wrongAt(0.0), 0);
        EXPECT_EQ(wrongAt(1.0), 0);
        EXPECT_EQ(wrongAt(-kBarely), 1);
        EXPECT_EQ(wrongAt(1.0 + kBarely), 1);
    }
}

TEST(GivenDay, TheLastOfALiftersDayHolds)
{
    std::vector<GivenDay> given(5, soundGivenDay());
    given[0].number = 1;
    given[1].number = 3;
    given[2].number = 2;
    given[3].number = 9;
    given[3].lifter = {2};
    given[4].number = 9;
    given[4].day = QDate(2026, 3, 3);
    EXPECT_EQ(givenOn(given, {1}, QDate(2026, 3, 2)), &given[1]);
    EXPECT_EQ(givenOn(given, {2}, QDate(2026, 3, 2)), &given[3]);
    EXPECT_EQ(givenOn(given, {2}, QDate(2026, 3, 3)), nullptr);
}
