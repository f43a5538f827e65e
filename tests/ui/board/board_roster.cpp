#include "tests/ui/board/board_roster.h"

#include "core/storage/roster_file.h"

#include <QTest>
#include <gmock/gmock.h>

using namespace core;

namespace {

Edit newLifter(LifterId id, const QString &name, TouchStyle style)
{
    Lifter added;
    added.id = id;
    added.name = name;
    added.touchStyle = style;
    added.gear = usualGear(Unit::kilogram);
    Edit edit;
    edit.lifters.after = {added};
    return edit;
}

/// @param newId  gives the id of a session
template <class NewId> Edit benchLog(LifterId who, VariationId bench, QDate monday, NewId newId)
{
    Edit edit;
    for (int week = 12; week > 0; --week)
        for (const int day : {0, 3}) {
            LoggedSession done;
            done.id = newId();
            done.lifter = who;
            done.day = monday.addDays(day - 7 * week);
            const auto add = [&](double loadKg, int reps, double rpe) {
                SetEntry set;
                set.variation = bench;
                set.loadKg = loadKg;
                set.repsDone = reps;
                set.rpe = rpe;
                done.sets.push_back(set);
            };
            add(110.0, 1, 8.0); // without singles the interval is wide, and the card says so
            add(90.0, 5, 7.0);
            add(95.0, 5, 8.0);
            add(100.0, 5, 9.0);
            edit.sessions.after.push_back(done);
        }
    return edit;
}

std::unique_ptr<RosterFile> fileWithOneLifter(const QString &path, TouchStyle style, QDate monday)
{
    auto file = std::make_unique<RosterFile>(RosterFile::create(path));
    const LifterId lifter = file->newId<Lifter>();
    file->apply(newLifter(lifter, QStringLiteral("Ada"), style));
    const std::vector<Variation> catalogue = file->variations();
    file->apply(benchLog(lifter, competitionOf(catalogue, Lift::bench)->id, monday,
        [&file] { return file->newId<LoggedSession>(); }));
    return file;
}

} // namespace

BoardRoster::BoardRoster(TouchStyle style)
    : session(fileWithOneLifter(dir.filePath(QStringLiteral("r.benchwright")), style, monday),
        clock.today)
    , lifter(session.lifters().front().id)
{
    selection.setWeekOf(monday);
    waitForEstimate(lifter);
    selection.setLifter(lifter);
}

LifterId BoardRoster::addLifter(const QString &name, TouchStyle style)
{
    const LifterId added = session.newId<Lifter>();
    EXPECT_TRUE(session.perform(QStringLiteral("Add lifter"), newLifter(added, name, style)));
    return added;
}

void BoardRoster::logBench(LifterId who)
{
    EXPECT_TRUE(session.perform(QStringLiteral("Log sessions"),
        benchLog(
            who, variation("comp"), monday, [this] { return session.newId<LoggedSession>(); })));
}

void BoardRoster::waitForEstimate(LifterId who)
{
    const size_t sessions = session.sessions(who).size();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            const LiftEstimate *fit = estimates.of(who, Lift::bench);
            return fit && fit->readings.size() == sessions;
        },
        20000));
}

VariationId BoardRoster::variation(const char *code) const
{
    for (const Variation &v : session.variations())
        if (v.code == QLatin1String(code))
            return v.id;
    ADD_FAILURE() << "no variation " << code;
    return {};
}

QStringList BoardRoster::cards() const
{
    QStringList all;
    for (const Card &card : session.cards(lifter, monday.addYears(-1), monday.addYears(1)))
        all << QStringLiteral("%1 %2:%3 %4")
                   .arg(session.variation(card.variation)->code)
                   .arg(monday.daysTo(card.day))
                   .arg(card.position)
                   .arg(card.setLine);
    return all;
}
