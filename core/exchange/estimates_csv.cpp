#include "core/exchange/estimates_csv.h"

#include "core/csv/csv_writer.h"

namespace core {

QStringList estimatesColumns()
{
    return QStringLiteral("lifter,date,view,estimate_kg,low90_kg,high90_kg").split(u',');
}

QByteArray writeEstimates(const std::vector<Lifter> &lifters,
    const std::map<std::pair<LifterId, Lift>, LiftEstimate> &estimates)
{
    const auto kg = [](double value) { return QByteArray::number(value, 'f', 2); };
    QByteArray text = estimatesColumns().join(u',').toLatin1() + "\r\n";
    for (const Lifter &lifter : lifters) {
        const auto found = estimates.find({lifter.id, Lift::bench});
        if (found == estimates.end())
            continue;
        const QByteArray name = csvField(lifter.name);
        const auto write = [&](const char *view, strength::Band strength::WeekEstimate::*band) {
            const auto line = [&](int day, const strength::Band &b) {
                text += csvLine({name, fromEngineDay(day).toString(Qt::ISODate).toLatin1(), view,
                    kg(b.kg), kg(b.low90), kg(b.high90)});
            };
            const strength::LifterEstimate &estimate = found->second.estimate;
            for (const strength::WeekEstimate &week : estimate.weeks)
                line(week.sunday, week.*band);
            if (estimate.idle)
                line(estimate.idle->until, estimate.idle->max);
        };
        write("filtered", &strength::WeekEstimate::filtered);
        write("smoothed", &strength::WeekEstimate::smoothed);
    }
    return text;
}

} // namespace core
