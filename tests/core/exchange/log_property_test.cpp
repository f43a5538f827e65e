#include "core/exchange/import_plan.h"

#include "tests/core/exchange/files.h"

#include <gmock/gmock.h>
#include <random>
#include <rapidcheck.h>

namespace {

using namespace core;

const std::vector<Variation> &catalogue()
{
    static const std::vector<Variation> kRows = [] {
        std::vector<Variation> rows(3);
        for (size_t i = 0; i < rows.size(); ++i) {
            rows[i].id = {qint64(i) + 1};
            rows[i].code = QStringLiteral("code_%1").arg(i);
        }
        return rows;
    }();
    return kRows;
}

/// Text with all that a spreadsheet or a coach might put into a note.
QString anyNote()
{
    QString note;
    const auto letters = *rc::gen::container<std::vector<char32_t>>(rc::gen::oneOf(
        rc::gen::element<char32_t>(U',', U'"', U'\n', U'\r', U' ', U';', U'é', U'ß', U'日', U'💪'),
        rc::gen::inRange<char32_t>(U'a', U'z')));
    for (const char32_t letter : letters)
        note += QString::fromUcs4(&letter, 1);
    return note.trimmed();
}

template <class Value> std::optional<Value> maybe(const rc::Gen<Value> &gen)
{
    return *rc::gen::arbitrary<bool>() ? std::optional<Value>(*gen) : std::nullopt;
}

SetEntry anySet()
{
    SetEntry set;
    set.variation = catalogue()[*rc::gen::inRange<size_t>(0, catalogue().size())].id;
    // Whatever a pound comes to in kg, so every digit counts.
    set.loadKg = *rc::gen::inRange(1, 1400) * kKgPerPound;
    set.failed = *rc::gen::arbitrary<bool>();
    set.repsDone = *rc::gen::inRange(set.failed ? 0 : 1, 101);
    set.repsPlanned = maybe(rc::gen::inRange(1, 101));
    if (const auto halves = maybe(rc::gen::inRange(2, 21)))
        set.rpe = *halves / 2.0;
    if (const auto mm = maybe(rc::gen::inRange(1, 3001)))
        set.velocityMs = *mm / 1000.0;
    set.touch = maybe(rc::gen::inRange(1, 6));
    set.note = anyNote();
    if (const auto reps = maybe(rc::gen::inRange(1, 101)))
        set.lead = {catalogue()[*rc::gen::inRange<size_t>(0, catalogue().size())].id, *reps};
    return set;
}

/// Lifters "L1", "L2" ... and sessions in the order of the roster file.
RosterRows anyRoster()
{
    RosterRows roster{{}, catalogue(), {}};
    const int lifters = *rc::gen::inRange(1, 4);
    qint64 session = 0;
    for (int i = 1; i <= lifters; ++i) {
        Lifter lifter;
        lifter.id = {i};
        lifter.name = QStringLiteral("L%1").arg(i);
        lifter.gear = usualGear(lifter.unit);
        roster.lifters.push_back(lifter);
        QDate day(2026, 1, 1);
        for (int s = *rc::gen::inRange(1, 4); s > 0; --s) {
            day = day.addDays(*rc::gen::inRange(1, 9));
            LoggedSession one{{++session}, lifter.id, day, *rc::gen::inRange(1, 4),
                maybe(rc::gen::inRange(1, 6)), {}};
            for (int n = *rc::gen::inRange(1, 5); n > 0; --n)
                one.sets.push_back(anySet());
            roster.sessions.push_back(std::move(one));
        }
    }
    return roster;
}

LogTable written(const RosterRows &roster)
{
    return files::log(writeLog(roster.lifters, roster.variations, roster.sessions));
}

} // namespace

TEST(LogProperty, WrittenAndImportedAgainIsTheSame)
{
    EXPECT_TRUE(rc::check([] {
        const RosterRows roster = anyRoster();
        const ImportPlan plan =
            planImport(written(roster), {}, {{}, catalogue(), {}}, countingIds());
        RC_ASSERT(plan.isClean());
        RC_ASSERT(plan.edit.lifters.after == roster.lifters);
        RC_ASSERT(plan.edit.sessions.after == roster.sessions);
    }));
}

TEST(LogProperty, AFileOfTheRosterAddsNothingToIt)
{
    EXPECT_TRUE(rc::check([] {
        const RosterRows roster = anyRoster();
        const ImportPlan plan = planImport(written(roster), {}, roster, countingIds());
        RC_ASSERT(plan.isClean());
        RC_ASSERT(plan.edit.isEmpty());
        RC_ASSERT(plan.counts.newSets == 0);
    }));
}

TEST(LogProperty, ABrokenFileGivesProblemsOrSoundSetsNeverACrash)
{
    std::mt19937 random(11);
    const QByteArray sound = files::kLogHeader
        + "Ada,2026-03-31,comp,102.5,5,5,8.5,0\n"
          "\"Bo, L\",2026-03-31,feet_up,80,3,2,,1\n";
    for (int round = 0; round < 3000; ++round) {
        QByteArray text = sound;
        for (int hits = 1 + round % 4; hits > 0; --hits)
            text[int(random() % unsigned(text.size()))] = char(random() % 256);
        const LogTable log = files::log(text);
        if (!log.problems.isEmpty())
            continue;
        for (const LogRow &row : log.rows) {
            EXPECT_TRUE(problems(row.set).isEmpty());
            EXPECT_TRUE(row.day.isValid());
            EXPECT_FALSE(row.lifter.isEmpty());
        }
    }
}
