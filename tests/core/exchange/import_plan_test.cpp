#include "core/exchange/import_plan.h"

#include "tests/core/exchange/files.h"

#include <gmock/gmock.h>

using core::ImportCounts;
using core::ImportPlan;
using core::RosterRows;

namespace {

core::Variation variation(qint64 id, const char *code)
{
    core::Variation v;
    v.id = {id};
    v.code = QString::fromLatin1(code);
    v.name = v.code;
    return v;
}

RosterRows emptyRoster()
{
    return {{}, {variation(1, "comp"), variation(2, "feet_up"), variation(3, "close_grip")}, {}};
}

core::IdSource plannedIdsFrom(qint64 first)
{
    return {[n = first]() mutable { return core::LifterId{n++}; },
        [n = first]() mutable { return core::SessionId{n++}; }};
}

/// The roster after the edit, as the file would have it.
RosterRows after(RosterRows roster, const core::Edit &edit)
{
    const auto apply = [](auto &rows, const auto &change) {
        for (const auto &row : change.before)
            EXPECT_EQ(std::erase(rows, row), 1u) << "before is not what the roster holds";
        rows.insert(rows.end(), change.after.begin(), change.after.end());
    };
    apply(roster.lifters, edit.lifters);
    apply(roster.sessions, edit.sessions);
    return roster;
}

ImportPlan planOf(const QByteArray &rows, const RosterRows &roster)
{
    return core::planImport(files::logRows(rows), {}, roster, plannedIdsFrom(100));
}

const QByteArray kThreeSets = "Ada,2026-03-30,comp,100,5,5,8,0\n"
                              "Ada,2026-03-30,comp,100,5,5,8,0\n"
                              "Bo,2026-03-31,feet_up,80,5,5,7.5,0\n";

} // namespace

TEST(ImportPlan, AddsLiftersAndSessions)
{
    const ImportPlan plan = planOf(kThreeSets, emptyRoster());
    ASSERT_TRUE(plan.isClean());
    EXPECT_EQ(plan.counts, (ImportCounts{2, 0, 2, 0, 3, 0}));
    ASSERT_EQ(plan.edit.lifters.after.size(), 2u);
    const core::Lifter &ada = plan.edit.lifters.after[0];
    EXPECT_EQ(ada.name, QStringLiteral("Ada"));
    EXPECT_EQ(ada.gear, core::usualGear(core::Unit::kilogram));
    EXPECT_TRUE(core::problems(ada).isEmpty());
    ASSERT_EQ(plan.edit.sessions.after.size(), 2u);
    EXPECT_EQ(plan.edit.sessions.after[0].lifter, ada.id);
    EXPECT_EQ(plan.edit.sessions.after[0].sets.size(), 2u);
    EXPECT_EQ(plan.edit.sessions.after[1].sets[0].variation, core::VariationId{2});
}

TEST(ImportPlan, TheSameFileTwiceAddsNothing)
{
    const RosterRows once = after(emptyRoster(), planOf(kThreeSets, emptyRoster()).edit);
    const ImportPlan twice = planOf(kThreeSets, once);
    EXPECT_TRUE(twice.edit.isEmpty());
    EXPECT_EQ(twice.counts, (ImportCounts{0, 0, 0, 0, 0, 3}));
}

TEST(ImportPlan, EqualSetsAreCountedNotMerged)
{
    const RosterRows once = after(emptyRoster(), planOf(kThreeSets, emptyRoster()).edit);
    const ImportPlan more = planOf("Ada,2026-03-30,comp,100,5,5,8,0\n" + kThreeSets, once);
    EXPECT_EQ(more.counts, (ImportCounts{0, 0, 0, 1, 1, 3}));
    ASSERT_EQ(more.edit.sessions.after.size(), 1u);
    EXPECT_EQ(more.edit.sessions.after[0].sets.size(), 3u);
    EXPECT_EQ(more.edit.sessions.after[0].id, more.edit.sessions.before[0].id);
}

TEST(ImportPlan, ALogThatGrewAddsWhatIsNew)
{
    const RosterRows once = after(emptyRoster(), planOf(kThreeSets, emptyRoster()).edit);
    const ImportPlan grown = planOf(kThreeSets
            + "Ada,2026-03-30,comp,90,5,5,7,0\n"
              "Ada,2026-04-02,comp,105,3,3,8,0\n",
        once);
    EXPECT_EQ(grown.counts, (ImportCounts{0, 0, 1, 1, 2, 3}));
    const RosterRows twice = after(once, grown.edit);
    EXPECT_EQ(twice.sessions.size(), 3u);
}

TEST(ImportPlan, ANoteOfTheCoachDoesNotMakeASetNew)
{
    RosterRows roster = after(emptyRoster(), planOf(kThreeSets, emptyRoster()).edit);
    for (core::LoggedSession &session : roster.sessions)
        for (core::SetEntry &set : session.sets)
            set.note = QStringLiteral("elbows");
    const ImportPlan plan = planOf(kThreeSets, roster);
    EXPECT_TRUE(plan.edit.isEmpty());
    EXPECT_EQ(plan.counts.knownSets, 3);
}

TEST(ImportPlan, AVelocityThatComesLaterFillsTheSet)
{
    const RosterRows once = after(emptyRoster(), planOf(kThreeSets, emptyRoster()).edit);
    const core::LogTable log =
        files::log("lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed,velocity_ms\n"
                   "Ada,2026-03-30,comp,100,5,5,8,0,0.4\n");
    const ImportPlan plan = core::planImport(log, {}, once, plannedIdsFrom(200));
    EXPECT_EQ(plan.counts, (ImportCounts{0, 0, 0, 1, 0, 1}));
    ASSERT_EQ(plan.edit.sessions.after.size(), 1u);
    EXPECT_EQ(plan.edit.sessions.after[0].sets.size(), 2u);
    EXPECT_EQ(plan.edit.sessions.after[0].sets[0].velocityMs, 0.4);
    EXPECT_FALSE(plan.edit.sessions.after[0].sets[1].velocityMs);
}

TEST(ImportPlan, SessionsOfADayAreKeptApart)
{
    const core::LogTable log =
        files::log("lifter,date,session,variation,load_kg,reps_planned,reps_done,rpe,failed,"
                   "readiness\n"
                   "Ada,2026-03-30,2,comp,100,5,5,8,0,2\n"
                   "Ada,2026-03-30,1,comp,100,5,5,8,0,\n"
                   "Ada,2026-03-30,2,comp,100,5,5,9,0,\n");
    const ImportPlan plan = core::planImport(log, {}, emptyRoster(), plannedIdsFrom(1));
    ASSERT_EQ(plan.edit.sessions.after.size(), 2u);
    EXPECT_EQ(plan.edit.sessions.after[0].number, 1);
    EXPECT_FALSE(plan.edit.sessions.after[0].readiness);
    EXPECT_EQ(plan.edit.sessions.after[1].readiness, 2);
    EXPECT_EQ(plan.edit.sessions.after[1].sets.size(), 2u);
}

TEST(ImportPlan, KnowsALifterWhateverTheCase)
{
    const RosterRows once = after(emptyRoster(), planOf(kThreeSets, emptyRoster()).edit);
    const ImportPlan plan = planOf("ADA,2026-04-02,comp,100,5,5,8,0\n", once);
    EXPECT_EQ(plan.counts, (ImportCounts{0, 0, 1, 0, 1, 0}));
}

TEST(ImportPlan, PeopleFillAndUpdateButABlankLeavesWhatIsThere)
{
    const auto people = [](const QByteArray &rows) {
        return files::people("lifter,sex,bodyweight_kg,birth_year,touch_style,unit\n" + rows);
    };
    const ImportPlan first = core::planImport(files::logRows(kThreeSets),
        people("Ada,f,62,1998,soft,lb\nCleo,,,,,\n"), emptyRoster(), plannedIdsFrom(1));
    ASSERT_TRUE(first.isClean());
    EXPECT_EQ(first.counts, (ImportCounts{3, 0, 2, 0, 3, 0}));
    const core::Lifter ada = first.edit.lifters.after[0];
    EXPECT_EQ(ada.sex, core::Sex::female);
    EXPECT_EQ(ada.gear, core::usualGear(core::Unit::pound));

    const RosterRows once = after(emptyRoster(), first.edit);
    const ImportPlan second =
        core::planImport({}, people("ada,,63.5,,,\nCleo,,,,,\n"), once, plannedIdsFrom(50));
    EXPECT_EQ(second.counts, (ImportCounts{0, 1, 0, 0, 0, 0}));
    core::Lifter expected = ada;
    expected.bodyweightKg = 63.5;
    EXPECT_EQ(second.edit.lifters.after.at(0), expected);
    EXPECT_EQ(second.edit.lifters.before.at(0), ada);
}

TEST(ImportPlan, AnUnknownVariationNamesTheNearestAndStopsEverything)
{
    const ImportPlan plan = planOf("Ada,2026-03-30,comp,100,5,5,8,0\n"
                                   "Ada,2026-03-30,Feet-Up,100,5,5,8,0\n"
                                   "Ada,2026-03-30,leg_day,100,5,5,8,0\n"
                                   "Ada,2026-03-30,comp,100,5,5,11,0\n",
        emptyRoster());
    EXPECT_TRUE(plan.edit.isEmpty());
    EXPECT_EQ(plan.counts, ImportCounts{});
    ASSERT_EQ(plan.problems.count(), 3u);
    const auto &p = plan.problems.items();
    EXPECT_EQ(p[0].line, 3);
    EXPECT_EQ(p[0].field, QStringLiteral("variation"));
    EXPECT_TRUE(p[0].remedy.contains(QStringLiteral("feet_up")));
    EXPECT_EQ(p[1].line, 4);
    EXPECT_FALSE(p[1].remedy.contains(QStringLiteral("feet_up")));
    EXPECT_EQ(p[2].field, QStringLiteral("rpe"));
}

TEST(ImportPlan, AProblemOfThePeopleStopsTheLogToo)
{
    const ImportPlan plan = core::planImport(files::logRows(kThreeSets),
        files::people("lifter,sex,bodyweight_kg\nAda,x,62\n"), emptyRoster(), plannedIdsFrom(1));
    EXPECT_FALSE(plan.isClean());
    EXPECT_TRUE(plan.edit.isEmpty());
}

TEST(ImportPlan, SaysWhichLoadsAreFarAboveWhatTheLogSpeaksFor)
{
    RosterRows roster = emptyRoster();
    for (core::Variation &v : roster.variations)
        v.competition = v.code == QStringLiteral("comp");
    QByteArray log;
    for (int week = 0; week < 8; ++week)
        for (const char *set : {"100,5,5,8,0", "110,1,1,8,0"})
            log += "Ada," + QDate(2026, 1, 5).addDays(7 * week).toString(Qt::ISODate).toUtf8()
                + ",comp," + set + "\n";
    const RosterRows known = after(roster, planOf(log, roster).edit);
    const ImportPlan far = planOf("Ada,2026-03-02,comp,225,3,3,8,0\n"
                                  "Ada,2026-03-02,comp,100,5,5,8,0\n",
        known);
    EXPECT_TRUE(far.isClean()) << "the coach judges";
    ASSERT_EQ(far.farLoads.size(), 1);
    EXPECT_TRUE(far.farLoads[0].startsWith(QStringLiteral("Ada, ")))
        << far.farLoads[0].toStdString();
    EXPECT_TRUE(far.farLoads[0].contains(QStringLiteral("225 kg")));
    EXPECT_TRUE(planOf(log, known).farLoads.isEmpty()) << "nothing new";
    EXPECT_TRUE(planOf(log, roster).farLoads.isEmpty()) << "of a new lifter nothing is known";
}
