#pragma once

#include "core/domain/units.h"
#include "core/notation/set_line.h"

#include <rapidcheck.h>

/// Generators over the whole value space of a set line.
namespace tests {

inline rc::Gen<double> halves(double least, double most)
{
    return rc::gen::map(
        rc::gen::inRange(int(least * 2), int(most * 2) + 1), [](int h) { return h / 2.0; });
}

/// `least` .. `most` in hundredths.
inline rc::Gen<double> hundredths(double least, double most)
{
    return rc::gen::map(
        rc::gen::inRange(int(least * 100), int(most * 100) + 1), [](int h) { return h / 100.0; });
}

/// A range or a single value in halves.
inline std::pair<double, std::optional<double>> someRange(double least, double most)
{
    const double from = *halves(least, most);
    if (from >= most || *rc::gen::arbitrary<bool>())
        return {from, std::nullopt};
    return {from, *halves(from + 0.5, most)};
}

inline rc::Gen<core::Target> anyTarget()
{
    return rc::gen::exec([]() -> core::Target {
        switch (*rc::gen::inRange(0, 6)) {
        case 0:
            return {};
        case 1: {
            const auto [rpe, to] = someRange(1.0, 10.0);
            return core::RpeTarget{rpe, to};
        }
        case 2: {
            const auto [rir, to] = someRange(0.0, core::kMostReserve);
            return core::ReserveTarget{rir, to};
        }
        case 3:
            return core::ShareTarget{*hundredths(0.01, core::kMostPercent)};
        case 4: {
            const bool inPounds = *rc::gen::arbitrary<bool>();
            const double amount = *hundredths(0.01, core::kMostLoadKg);
            return core::LoadTarget{
                core::toKg(amount, inPounds ? core::Unit::pound : core::Unit::kilogram), inPounds};
        }
        default:
            using In = core::DropTarget::In;
            const In in = *rc::gen::element(In::percent, In::kilogram, In::pound);
            return core::DropTarget{*hundredths(0.01, in == In::percent ? 99.99 : 999.99), in};
        }
    });
}

inline rc::Gen<core::Manner> anyManner()
{
    return rc::gen::exec([]() -> core::Manner {
        const auto counts = [] { return *rc::gen::inRange(0, core::kMostCounts + 1); };
        switch (*rc::gen::inRange(0, 3)) {
        case 0:
            return {};
        case 1:
            return core::Pause{counts()};
        default:
            core::Tempo tempo;
            tempo.lowering = counts();
            tempo.pause = counts();
            tempo.lifting = counts();
            return tempo;
        }
    });
}

/// Any text of one row without blanks at its ends, also with the signs of the grammar in it.
inline rc::Gen<QString> anyNote()
{
    const auto letters = rc::gen::container<std::string>(
        rc::gen::elementOf(std::string("abc XYZ 012 ;/@%()+-.,\"\\\t")));
    return rc::gen::map(letters, [](const std::string &s) {
        QString note = QString::fromStdString(s);
        if (note.size() % 3 == 1)
            note += QStringLiteral("\u00e4\u6bb5"); // beyond Latin-1
        return note.trimmed();
    });
}

inline rc::Gen<core::SetLine> anySetLine()
{
    return rc::gen::exec([] {
        core::SetLine line;
        line.sets = *rc::gen::inRange(1, core::kMostSets + 1);
        line.reps = *rc::gen::inRange(1, core::kMostReps + 1);
        switch (*rc::gen::inRange(0, 4)) {
        case 0:
            break;
        case 1:
            if (line.reps < core::kMostReps)
                line.mostReps = *rc::gen::inRange(line.reps + 1, core::kMostReps + 1);
            break;
        case 2:
            line.asManyAsPossible = true;
            if (*rc::gen::arbitrary<bool>())
                line.mostReps = *rc::gen::inRange(line.reps, core::kMostReps + 1);
            break;
        default:
            if (line.reps > 1)
                line.leadReps = *rc::gen::inRange(1, line.reps);
            if (line.leadReps > 0 && *rc::gen::arbitrary<bool>())
                line.restCode = *rc::gen::element(
                    QStringLiteral("feet_up"), QStringLiteral("board_5cm"), QStringLiteral("2x"));
        }
        line.target = *anyTarget();
        line.manner = *anyManner();
        if (*rc::gen::arbitrary<bool>())
            line.restSeconds = *rc::gen::inRange(1, core::kMostRestSeconds + 1);
        line.note = *anyNote();
        return line;
    });
}

} // namespace tests
