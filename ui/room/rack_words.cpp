#include "ui/room/rack_words.h"

#include "core/loads/rack_order.h"
#include "ui/look/text.h"

#include <algorithm>
#include <map>

namespace ui {

namespace {

constexpr qsizetype kNamed = 6; ///< steps of the order that are named

bool isSameGear(const core::Gear &a, const core::Gear &b)
{
    const auto kinds = [](const core::Gear &gear) {
        std::map<double, int> pairs;
        for (const core::PlatePairs &kind : gear.plates)
            pairs[kind.plateKg] += kind.pairs;
        return pairs;
    };
    return a.barKg == b.barKg && a.collarsKg == b.collarsKg && kinds(a) == kinds(b);
}

/// Sets of one lifter with the same load that follow each other are named once.
QString orderWords(const core::RackOrder &order, const std::vector<RackSeat> &seats)
{
    QStringList words;
    std::vector<size_t> done(seats.size());
    for (size_t at = 0; at < order.lifters.size();) {
        if (words.size() == kNamed) {
            words << Text::tr("and so on");
            break;
        }
        const size_t lifter = order.lifters[at];
        const RackSeat &seat = seats[lifter];
        const double loadKg = seat.loadsKg[done[lifter]];
        int sets = 0;
        for (; at < order.lifters.size() && order.lifters[at] == lifter
             && seat.loadsKg[done[lifter]] == loadKg;
             ++at, ++sets)
            ++done[lifter];
        const QString load = core::formatLoad(loadKg, seat.unit);
        words << (sets > 1 ? Text::tr("%1 %2 (%3 sets)").arg(seat.name, load).arg(sets)
                           : Text::tr("%1 %2").arg(seat.name, load));
    }
    return words.join(QStringLiteral(", "));
}

} // namespace

bool isOnRack(core::VariationId variation, const std::vector<core::Variation> &catalogue)
{
    const core::Variation *known = core::find(catalogue, variation);
    return !known || known->lift != core::Lift::deadlift;
}

RackSeat rackSeat(const core::Lifter &lifter, const std::vector<LogLine> &lines,
    const std::vector<core::DaySet> &planned, const std::vector<core::Variation> &catalogue)
{
    RackSeat seat{lifter.name, lifter.unit, lifter.gear, {}, false};
    for (const LogLine &line : lines) {
        if (!line.planned || line.state != LineState::open)
            continue;
        const core::DaySet &set = planned[*line.planned];
        if (!isOnRack(set.variation, catalogue))
            continue;
        const std::optional<double> loadKg = set.loadKg;
        if (!loadKg) {
            seat.hasOpenLoads = true;
            break;
        }
        seat.loadsKg.push_back(*loadKg);
    }
    return seat;
}

QString rackWords(int rack, const std::vector<RackSeat> &seats, double onBarKg)
{
    if (seats.size() == 1)
        return Text::tr("Rack %1: only %2 is on it.").arg(rack).arg(seats.front().name);
    if (seats.size() > core::kMostOnRack)
        return Text::tr("Rack %1: more than %2 lifters on one rack leave each too little to do.")
            .arg(rack)
            .arg(core::kMostOnRack);
    const core::Gear &gear = seats.front().gear;
    if (!core::problems(gear).isEmpty()
        || !std::ranges::all_of(
            seats, [&gear](const RackSeat &seat) { return isSameGear(seat.gear, gear); }))
        return Text::tr("Rack %1: bar and plates of the lifters differ, so there is no common "
                        "order. They are set in the lifter's dialog.")
            .arg(rack);

    std::vector<std::vector<double>> loadsKg;
    for (const RackSeat &seat : seats)
        loadsKg.push_back(seat.loadsKg);
    const core::PlateTable plates(gear);
    const core::RackOrder best = core::fewestPlates(loadsKg, onBarKg, plates);
    QString words = best.lifters.empty()
        ? Text::tr("Rack %1: no set with a load is left.").arg(rack)
        : Text::tr("Rack %1, fewest plate changes: %2. Plates on and off: %3; taking turns: %4.")
              .arg(QString::number(rack), orderWords(best, seats), QString::number(best.plates),
                  QString::number(core::takingTurns(loadsKg, onBarKg, plates).plates));
    if (best.inARow > 0)
        words += u' '
            + Text::tr("Sets that follow one of the same lifter: %1; rest in full before them.")
                  .arg(best.inARow);
    if (std::ranges::any_of(seats, &RackSeat::hasOpenLoads))
        words += u' ' + Text::tr("Sets without a load are not in the order.");
    return words;
}

} // namespace ui
