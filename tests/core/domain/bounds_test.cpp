#include "core/domain/block.h"
#include "core/domain/block_template.h"
#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/variation.h"
#include "core/domain/waiver.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>

// Whatever problems() lets pass has to go into the roster file, and what the file would refuse has
// to be said in words first. The bounds here are the CHECKs of resources/schema, which are never
// edited once released.

using namespace core;

namespace {

/// Sound at both ends of a field's range and unsound just beyond them.
template <class Row, class Value, class Set>
void expectRange(const Row &sound, Set set, Value least, Value most, Value step)
{
    const auto with = [&](Value value) {
        Row row = sound;
        set(row, value);
        return row;
    };
    EXPECT_TRUE(problems(with(least)).isEmpty()) << "at " << least;
    EXPECT_TRUE(problems(with(most)).isEmpty()) << "at " << most;
    EXPECT_EQ(problems(with(least - step)).size(), 1) << "below " << least;
    EXPECT_EQ(problems(with(most + step)).size(), 1) << "above " << most;
}

constexpr double kAHair = 1e-6; ///< kg, shares or m/s: beyond any reading of them

SetEntry soundSet()
{
    SetEntry set;
    set.variation = {1};
    set.loadKg = 100.0;
    set.repsDone = 3;
    return set;
}

Lifter soundLifter()
{
    Lifter lifter;
    lifter.name = QStringLiteral("Test Lifter");
    lifter.gear = usualGear(Unit::kilogram);
    return lifter;
}

Variation soundVariation()
{
    Variation v;
    v.code = QStringLiteral("feet_up");
    v.name = QStringLiteral("Feet-up bench");
    return v;
}

} // namespace

TEST(Bounds, OfASet)
{
    using Set = SetEntry;
    const Set sound = soundSet();
    expectRange(
        sound, [](Set &s, double kg) { s.loadKg = kg; }, kAHair, 700.0, kAHair);
    expectRange(
        sound, [](Set &s, int reps) { s.repsDone = reps; }, 1, 100, 1);
    expectRange(
        sound, [](Set &s, int reps) { s.repsPlanned = reps; }, 1, 100, 1);
    expectRange(
        sound, [](Set &s, double rpe) { s.rpe = rpe; }, 1.0, 10.0, 0.5);
    expectRange(
        sound, [](Set &s, double v) { s.velocityMs = v; }, kAHair, 3.0, kAHair);
    expectRange(
        sound, [](Set &s, int score) { s.touch = score; }, 1, 5, 1);
    expectRange(
        sound,
        [](Set &s, int reps) {
            s.lead = LeadReps{{2}, reps};
        },
        1, 100, 1);
    Set between = sound;
    for (const double rpe : {1.25, 7.9, 9.75}) {
        between.rpe = rpe;
        EXPECT_EQ(problems(between).size(), 1) << rpe;
    }
}

TEST(Bounds, OfASetWithoutAnyRepDone)
{
    SetEntry set = soundSet();
    set.repsDone = 0;
    EXPECT_EQ(problems(set).size(), 1);
    set.failed = true;
    EXPECT_TRUE(problems(set).isEmpty());
    set.repsDone = -1;
    EXPECT_EQ(problems(set).size(), 1);
}

TEST(Bounds, OfASession)
{
    LoggedSession sound;
    sound.lifter = {1};
    sound.day = QDate(2026, 3, 2);
    sound.sets = {soundSet(), soundSet()};
    EXPECT_TRUE(problems(sound).isEmpty());
    expectRange(
        sound, [](LoggedSession &s, int said) { s.readiness = said; }, 1, 5, 1);
    LoggedSession unsound = sound;
    unsound.lifter = {};
    unsound.day = {};
    unsound.number = 0;
    EXPECT_EQ(problems(unsound).size(), 3);
    unsound = sound;
    unsound.sets[0].variation = {};
    unsound.sets[1].lead = LeadReps{{}, 1};
    const QStringList wrong = problems(unsound);
    ASSERT_EQ(wrong.size(), 2);
    EXPECT_TRUE(wrong[0].startsWith(QStringLiteral("Set 1:")));
    EXPECT_TRUE(wrong[1].startsWith(QStringLiteral("Set 2:")));
}

TEST(Bounds, OfALifterAndTheirGear)
{
    const Lifter sound = soundLifter();
    expectRange(
        sound, [](Lifter &l, int year) { l.birthYear = year; }, 1900, 2100, 1);
    expectRange(
        sound, [](Lifter &l, double kg) { l.bodyweightKg = kg; }, 20.0, 400.0, kAHair);
    expectRange(
        sound, [](Lifter &l, double kg) { l.gear.barKg = kg; }, kAHair, 50.0, kAHair);
    expectRange(
        sound, [](Lifter &l, double kg) { l.gear.collarsKg = kg; }, 0.0, 10.0, kAHair);
    expectRange(
        sound, [](Lifter &l, double kg) { l.gear.plates.back().plateKg = kg; }, kAHair, 100.0,
        kAHair);
    Lifter without = sound;
    without.gear.plates.back().pairs = 0;
    EXPECT_EQ(problems(without).size(), 1);
}

TEST(Bounds, OfALiftersGroups)
{
    Lifter lifter = soundLifter();
    const auto wrongWith = [&lifter](const QStringList &groups) {
        lifter.groups = groups;
        return problems(lifter).size();
    };
    const QString a = QStringLiteral("a"), b = QStringLiteral("b");
    EXPECT_EQ(wrongWith({a, b}), 0);
    EXPECT_EQ(wrongWith({b, a}), 1);
    EXPECT_EQ(wrongWith({a, a}), 1);
    EXPECT_EQ(wrongWith({QStringLiteral(" "), a}), 1);
}

TEST(Bounds, OfAVariation)
{
    using V = Variation;
    const V sound = soundVariation();
    expectRange(
        sound, [](V &v, int reps) { v.repsLow = reps; }, 1, 10, 1);
    expectRange(
        sound, [](V &v, int reps) { v.repsHigh = reps; }, 1, 50, 1);
    expectRange(
        sound, [](V &v, double ratio) { v.ratio = ratio; }, 0.2, 2.0, kAHair);
    expectRange(
        sound, [](V &v, double spread) { v.ratioSpread = spread; }, 0.0, 0.5, kAHair);
    expectRange(
        sound, [](V &v, double cost) { v.repCost = cost; }, 0.25, 4.0, kAHair);
    expectRange(
        sound, [](V &v, int counts) { v.tempo.lowering = counts; }, 0, 20, 1);
    expectRange(
        sound, [](V &v, int counts) { v.tempo.pause = counts; }, 0, 20, 1);
    expectRange(
        sound, [](V &v, int counts) { v.tempo.lifting = counts; }, 0, 20, 1);
}

TEST(Bounds, OfAVariationsCodeAndTheCompetitionLift)
{
    Variation v = soundVariation();
    for (const char *code : {"", "_up", "Feet", "feet-up", "feet up"}) {
        v.code = QLatin1String(code);
        EXPECT_EQ(problems(v).size(), 1) << code;
    }
    v.code = QStringLiteral("2ct_pause");
    EXPECT_TRUE(problems(v).isEmpty());
    v.ratio = 0.9;
    EXPECT_TRUE(problems(v).isEmpty());
    v.competition = true;
    EXPECT_EQ(problems(v).size(), 1);
    v.ratio = 1.0;
    EXPECT_TRUE(problems(v).isEmpty());
}

TEST(Bounds, OfACard)
{
    const Card sound{{1}, {1}, QDate(2026, 3, 2), 0, {1}, {}, {}};
    EXPECT_TRUE(problems(sound).isEmpty());
    Card card = sound;
    card.lifter = {};
    EXPECT_EQ(problems(card).size(), 1);
    card.variation = {};
    EXPECT_EQ(problems(card).size(), 2);
    card.day = {};
    EXPECT_EQ(problems(card).size(), 3);
    card.position = -1;
    EXPECT_EQ(problems(card).size(), 4);
}

TEST(Bounds, OfACheckIn)
{
    CheckIn sound;
    sound.lifter = {1};
    sound.day = QDate(2026, 3, 2);
    EXPECT_TRUE(problems(sound).isEmpty());
    expectRange(
        sound, [](CheckIn &c, int said) { c.sleep = said; }, 1, 5, 1);
    expectRange(
        sound, [](CheckIn &c, int said) { c.stress = said; }, 1, 5, 1);
    expectRange(
        sound, [](CheckIn &c, int said) { c.motivation = said; }, 1, 5, 1);
    expectRange(
        sound, [](CheckIn &c, int said) { c.soreness[BodyArea::legs] = said; }, 1, 5, 1);
    CheckIn nobodys = sound;
    nobodys.lifter = {};
    EXPECT_EQ(problems(nobodys).size(), 1);
}

TEST(Bounds, OfABlock)
{
    Block sound;
    sound.lifter = {1};
    sound.name = QStringLiteral("Strength");
    sound.start = QDate(2026, 3, 2);
    sound.weeks = 4;
    EXPECT_TRUE(problems(sound).isEmpty());
    expectRange(
        sound, [](Block &b, int weeks) { b.weeks = weeks; }, 1, 26, 1);
    expectRange(
        sound, [](Block &b, int week) { b.deloadWeeks = {week}; }, 1, 4, 1);
    Block block = sound;
    block.deloadWeeks = {2, 4};
    EXPECT_TRUE(problems(block).isEmpty());
    block.deloadWeeks = {2, 2};
    EXPECT_EQ(problems(block).size(), 1);
    block = {};
    EXPECT_EQ(problems(block).size(), 3) << "whose, what and from when";
}

TEST(Bounds, ABlockHoldsItsFirstAndItsLastDay)
{
    Block block;
    block.start = QDate(2026, 3, 2);
    block.weeks = 2;
    EXPECT_EQ(block.end(), QDate(2026, 3, 15));
    EXPECT_TRUE(block.contains(block.start));
    EXPECT_TRUE(block.contains(block.end()));
    EXPECT_FALSE(block.contains(block.start.addDays(-1)));
    EXPECT_FALSE(block.contains(block.end().addDays(1)));
}

TEST(Bounds, OfATemplate)
{
    BlockTemplate sound;
    sound.name = QStringLiteral("Strength");
    sound.weeks = 2;
    sound.cards = {
        {1, 0, 0, QStringLiteral("comp"), {}, {}}, {2, 13, 0, QStringLiteral("comp"), {}, {}}};
    EXPECT_TRUE(problems(sound).isEmpty());
    expectRange(
        sound, [](BlockTemplate &t, int day) { t.cards[0].dayOffset = day; }, 0, 13, 1);
    const auto wrongAfter = [&sound](auto change) {
        BlockTemplate changed = sound;
        change(changed);
        return problems(changed).size();
    };
    EXPECT_EQ(wrongAfter([](BlockTemplate &t) { t.name.clear(); }), 1);
    EXPECT_EQ(wrongAfter([](BlockTemplate &t) { t.version = 0; }), 1);
    EXPECT_EQ(wrongAfter([](BlockTemplate &t) { t.cards[1].key = 1; }), 1);
    EXPECT_EQ(wrongAfter([](BlockTemplate &t) { t.cards[1].position = -1; }), 1);
    EXPECT_EQ(wrongAfter([](BlockTemplate &t) { t.cards[1].code.clear(); }), 1);
    EXPECT_EQ(wrongAfter([](BlockTemplate &t) { t.swaps = {{{}, QStringLiteral("comp")}}; }), 1);
    EXPECT_EQ(wrongAfter([](BlockTemplate &t) { t.swaps = {{QStringLiteral("comp"), {}}}; }), 1);
}

TEST(Bounds, OfANoteOnAFinding)
{
    Waiver sound;
    sound.key.lifter = {1};
    sound.key.monday = QDate(2026, 3, 2);
    EXPECT_TRUE(problems(sound).isEmpty());
    Waiver waiver = sound;
    waiver.key = {};
    EXPECT_EQ(problems(waiver).size(), 2);
    waiver = sound;
    waiver.measure = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(problems(waiver).size(), 1);
}
