#include "tests/ui/board/board_roster.h"

#include <QTest>
#include <gmock/gmock.h>

using namespace core;

BoardRoster::BoardRoster(TouchStyle style)
    : session(RosterFile::create(dir.filePath(QStringLiteral("r.benchwright"))))
{
    selection.setWeekOf(monday);
    lifter = addLifter(QStringLiteral("Ada"), style);
    logBench(lifter);
    session.undoStack().clear();
    waitForEstimate(lifter);
    selection.setLifter(lifter);
}

LifterId BoardRoster::addLifter(const QString &name, TouchStyle style)
{
    Lifter added;
    added.id = session.newId<LifterTag>();
    added.name = name;
    added.touchStyle = style;
    added.gear = usualGear(Unit::kilogram);
    Edit edit;
    edit.lifters.after = {added};
    EXPECT_TRUE(session.perform(QStringLiteral("Add lifter"), edit));
    return added.id;
}

void BoardRoster::logBench(LifterId who)
{
    Edit edit;
    for (int week = 12; week > 0; --week)
        for (const int day : {0, 3}) {
            LoggedSession done;
            done.id = session.newId<SessionTag>();
            done.lifter = who;
            done.day = monday.addDays(day - 7 * week);
            const auto add = [&](double loadKg, int reps, double rpe) {
                SetEntry set;
                set.variation = variation("comp");
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
    EXPECT_TRUE(session.perform(QStringLiteral("Log sessions"), edit));
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
