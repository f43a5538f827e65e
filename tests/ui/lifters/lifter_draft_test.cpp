#include "ui/lifters/lifter_draft.h"

#include "tests/support/roster_fixture.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

using core::Unit;
using ui::LifterField;

namespace {

const QDate kToday(2026, 11, 25);

core::Lifter soundLifter()
{
    core::Lifter lifter = inventedLifter(QStringLiteral("Ada Quill"));
    lifter.id = {7};
    lifter.birthYear = 1990;
    lifter.bodyweightKg = 71.4;
    lifter.groups = {QStringLiteral("evening"), QStringLiteral("masters")};
    lifter.meetDate = QDate(2027, 3, 6);
    lifter.gripNote = QStringLiteral("ring finger on the ring");
    lifter.notes = QStringLiteral("long arms");
    return lifter;
}

} // namespace

TEST(LifterDraft, ReadsBackWhatItShows)
{
    for (const Unit unit : {Unit::kilogram, Unit::pound}) {
        const core::Lifter lifter = ui::inUnit(soundLifter(), unit);
        const ui::LifterReading reading = ui::read(ui::draftOf(lifter), lifter, {}, kToday);
        EXPECT_TRUE(reading.problems.isEmpty());
        EXPECT_EQ(reading.lifter, lifter) << "rounding for the screen must not change a weight";
    }
}

TEST(LifterDraft, ChangingTheUnitThereAndBackLosesNothing)
{
    const core::Lifter lifter = soundLifter();
    EXPECT_EQ(ui::inUnit(ui::inUnit(lifter, Unit::pound), Unit::kilogram), lifter);
}

TEST(LifterDraft, UsualPlatesFollowTheUnitButOwnPlatesStay)
{
    core::Lifter usual = soundLifter();
    EXPECT_EQ(ui::inUnit(usual, Unit::pound).gear, core::usualGear(Unit::pound));
    usual.gear.plates.pop_back();
    EXPECT_EQ(ui::inUnit(usual, Unit::pound).gear, usual.gear);
}

TEST(LifterDraft, ConvertsATypedWeightByTheExactPound)
{
    core::Lifter lifter = soundLifter();
    lifter.unit = Unit::pound;
    ui::LifterDraft draft = ui::draftOf(lifter);
    draft.bodyweight = QStringLiteral("200");
    // International avoirdupois pound, 0.45359237 kg exactly (NIST Handbook 44, appendix C).
    EXPECT_DOUBLE_EQ(*ui::read(draft, lifter, {}, kToday).lifter.bodyweightKg, 90.718474);
}

TEST(LifterDraft, TakesAPointAndACommaAsDecimalSign)
{
    ui::LifterDraft draft = ui::draftOf(soundLifter());
    for (const char *text : {"82.5", "82,5", " 82.5 "}) {
        draft.bodyweight = QString::fromLatin1(text);
        EXPECT_EQ(ui::read(draft, soundLifter(), {}, kToday).lifter.bodyweightKg, 82.5) << text;
    }
}

TEST(LifterDraft, EmptyBirthYearAndBodyweightMeanUnknown)
{
    ui::LifterDraft draft = ui::draftOf(soundLifter());
    draft.birthYear.clear();
    draft.bodyweight = QStringLiteral("  ");
    const ui::LifterReading reading = ui::read(draft, soundLifter(), {}, kToday);
    EXPECT_TRUE(reading.problems.isEmpty());
    EXPECT_FALSE(reading.lifter.birthYear);
    EXPECT_FALSE(reading.lifter.bodyweightKg);
}

TEST(LifterDraft, SaysEachSlipBesideItsField)
{
    struct Slip
    {
        LifterField field;
        void (*make)(ui::LifterDraft &);
    };
    const Slip slips[] = {
        {LifterField::name, [](ui::LifterDraft &d) { d.name = QStringLiteral("  "); }},
        {LifterField::name, [](ui::LifterDraft &d) { d.name = QStringLiteral("bo  STONE"); }},
        {LifterField::birthYear, [](ui::LifterDraft &d) { d.birthYear = QStringLiteral("90"); }},
        {LifterField::birthYear, [](ui::LifterDraft &d) { d.birthYear = QStringLiteral("soon"); }},
        {LifterField::bodyweight, [](ui::LifterDraft &d) { d.bodyweight = QStringLiteral("7"); }},
        {LifterField::bodyweight, [](ui::LifterDraft &d) { d.bodyweight = QStringLiteral("x"); }},
        {LifterField::bar, [](ui::LifterDraft &d) { d.gear.bar.clear(); }},
        {LifterField::bar, [](ui::LifterDraft &d) { d.gear.bar = QStringLiteral("-20"); }},
        {LifterField::collars, [](ui::LifterDraft &d) { d.gear.collars = QStringLiteral("99"); }},
        {LifterField::plates, [](ui::LifterDraft &d) { d.gear.plates[0].pairs.clear(); }},
        {LifterField::plates, [](ui::LifterDraft &d) { d.gear.plates[0].pairs = u"1.5"_s; }},
        {LifterField::plates, [](ui::LifterDraft &d) { d.gear.plates[0].plate = u"big"_s; }},
        {LifterField::plates, [](ui::LifterDraft &d) { d.gear.plates[0].plate = u"500"_s; }},
        {LifterField::plates,
            [](ui::LifterDraft &d) { d.gear.plates.push_back(d.gear.plates[0]); }},
    };
    for (const Slip &slip : slips) {
        ui::LifterDraft draft = ui::draftOf(soundLifter());
        slip.make(draft);
        const ui::LifterReading reading =
            ui::read(draft, soundLifter(), {QStringLiteral("Bo Stone")}, kToday);
        EXPECT_EQ(reading.problems.keys(), QList<LifterField>{slip.field})
            << "slip " << &slip - slips;
        EXPECT_GT(reading.problems.value(slip.field).size(), 10) << "says what to do";
    }
}

TEST(LifterDraft, SortsGroupsAndPlatesAndDropsEmptyRows)
{
    ui::LifterDraft draft = ui::draftOf(soundLifter());
    draft.groups = QStringLiteral(" north ,, evening,north");
    draft.gear.plates = {{u"5"_s, u"1"_s}, {QString(), QString()}, {u"20"_s, u"2"_s}};
    const core::Lifter lifter = ui::read(draft, soundLifter(), {}, kToday).lifter;
    EXPECT_EQ(lifter.groups, (QStringList{u"evening"_s, u"north"_s}));
    EXPECT_EQ(lifter.gear.plates, (std::vector<core::PlatePairs>{{20, 2}, {5, 1}}));
}

TEST(LifterDraft, CautionsForMinorsNovicesAndWhereTheAgeIsNotKnown)
{
    core::Lifter lifter = soundLifter();
    const QDate today(2026, 11, 25);
    lifter.birthYear = 2010;
    EXPECT_TRUE(ui::ageCaution(lifter, today).contains(QStringLiteral("supervision")));
    lifter.birthYear = 2008; // may still be 17
    EXPECT_FALSE(ui::ageCaution(lifter, today).isEmpty());
    lifter.birthYear = 2007;
    EXPECT_TRUE(ui::ageCaution(lifter, today).isEmpty());
    lifter.trainingSince = today.addYears(-1).addDays(1);
    EXPECT_TRUE(ui::ageCaution(lifter, today).contains(QStringLiteral("less than a year")));
    lifter.trainingSince.reset();
    lifter.birthYear.reset();
    EXPECT_TRUE(ui::ageCaution(lifter, today).contains(QStringLiteral("age is known")));
    lifter.isAdult = true;
    EXPECT_TRUE(ui::ageCaution(lifter, today).isEmpty());
}
