#include "ui/room/seat_words.h"

#include <gmock/gmock.h>

using namespace core;
using namespace ui;

namespace {

struct Day
{
    Day() { lifter.gear = usualGear(Unit::kilogram); }

    void add(const char *variation, const char *asked, double loadKg)
    {
        LogLine line;
        line.planned = planned.size();
        line.variation = QString::fromLatin1(variation);
        line.asked = QString::fromLatin1(asked);
        lines.push_back(line);
        DaySet set;
        if (loadKg > 0.0)
            set.loadKg = loadKg;
        planned.push_back(set);
    }
    void log(size_t line, const char *did)
    {
        lines[line].done = line;
        lines[line].did = QString::fromLatin1(did);
        lines[line].said = QStringLiteral("as planned");
        lines[line].state = LineState::asPlanned;
    }
    [[nodiscard]] SeatWords words() const { return seatWords(lines, planned, lifter); }

    Lifter lifter;
    std::vector<LogLine> lines;
    std::vector<DaySet> planned;
};

} // namespace

TEST(SeatWords, SayTheNextSetWithItsPlatesAndWhatIsLeft)
{
    Day day;
    day.add("Bench", "1 x 110 kg", 110);
    for (int set = 0; set < 3; ++set)
        day.add("Bench", "5 x 90 kg", 90);
    day.add("Close grip", "8 x 70 kg", 70);
    day.add("Close grip", "8 x 70 kg", 70);
    SeatWords words = day.words();
    EXPECT_EQ(words.next, QStringLiteral("Bench"));
    EXPECT_EQ(words.asked, QStringLiteral("1 x 110 kg"));
    EXPECT_EQ(words.plates, QStringLiteral("each side 25 + 20")) << "20 + 2 x 45";
    EXPECT_EQ(words.left,
        (QStringList{QStringLiteral("3 sets of 5 x 90 kg"),
            QStringLiteral("Close grip: 2 sets of 8 x 70 kg")}));
    EXPECT_EQ(words.last, QString());
    EXPECT_EQ(words.progress, QStringLiteral("0 of 6 sets"));

    day.log(0, "1 x 110 kg, RPE 8");
    day.log(1, "5 x 90 kg");
    words = day.words();
    EXPECT_EQ(words.asked, QStringLiteral("5 x 90 kg"));
    EXPECT_EQ(words.last, QStringLiteral("Bench, 5 x 90 kg: as planned"));
    EXPECT_EQ(words.left.front(), QStringLiteral("5 x 90 kg"));
    EXPECT_EQ(words.progress, QStringLiteral("2 of 6 sets"));

    for (size_t set = 2; set < 6; ++set)
        day.log(set, "done");
    EXPECT_EQ(day.words().next, QStringLiteral("Nothing is left to do."));
    EXPECT_EQ(day.words().asked, QString());
    EXPECT_TRUE(day.words().left.isEmpty());
}

TEST(SeatWords, SayWhatIsHeldBackAndWhatIsLighter)
{
    Day day;
    day.add("Bench", "5 reps, load open", 0);
    day.lines[0].state = LineState::withheld;
    day.planned[0].withheld = QStringLiteral("Held back: pain.");
    EXPECT_EQ(day.words().said, QStringLiteral("Held back: pain."));
    EXPECT_EQ(day.words().plates, QString());

    day.lines[0].state = LineState::open;
    day.planned[0] = {};
    day.planned[0].why = QStringLiteral("no estimate yet");
    EXPECT_EQ(day.words().said, QStringLiteral("no estimate yet"));

    day.planned[0].loadKg = 60.0;
    day.planned[0].eased = QStringLiteral("lighter after the miss");
    EXPECT_EQ(day.words().said, QStringLiteral("lighter after the miss"));
}

TEST(SeatWords, WhatWasLeftOutIsNotNext)
{
    Day day;
    day.add("Bench", "5 x 90 kg", 90);
    day.add("Bench", "5 x 95 kg", 95);
    day.lines[0].state = LineState::leftOut;
    EXPECT_EQ(day.words().asked, QStringLiteral("5 x 95 kg"));
}

TEST(SeatWords, WithoutAPlanSaysSo)
{
    EXPECT_EQ(Day().words().next, QStringLiteral("Nothing is planned today."));
    EXPECT_EQ(Day().words().progress, QStringLiteral("sets logged: 0"));
}
