#include "ui/lifters/lifter_summary.h"

#include "core/loads/estimate_words.h"
#include "ui/look/text.h"

#include <QCollator>
#include <algorithm>

namespace ui {

BenchSummary benchSummary(const core::LiftEstimate *fit, QDate today)
{
    if (!fit)
        return {};
    const int day = std::max(core::engineDay(today), fit->estimate.asOf);
    return {fit->estimate.maxOn(day), fit->estimate.standing};
}

QString bandText(const BenchSummary &bench, core::Unit unit)
{
    if (!bench.band)
        return {};
    const auto whole = [unit](double kg) { return core::formatLoadNumber(kg, unit, 0); };
    return Text::tr("%1 (%2–%3) %4", "estimate, low and high end of its interval, unit")
        .arg(whole(bench.band->kg), whole(bench.band->low90), whole(bench.band->high90),
            core::symbol(unit));
}

QString standingText(const BenchSummary &bench)
{
    return bench.standing == strength::Standing::enough ? QString() : core::words(bench.standing);
}

QString meetText(const std::optional<QDate> &meet, QDate today)
{
    if (!meet || *meet < today)
        return {};
    const int days = int(today.daysTo(*meet));
    if (days == 0)
        return Text::tr("meet today");
    return days == 1 ? Text::tr("meet tomorrow") : Text::tr("meet in %1 days").arg(days);
}

LifterRow lifterRow(const core::Lifter &lifter, const core::LiftEstimate *fit, QDate today)
{
    const BenchSummary bench = benchSummary(fit, today);
    return {lifter.id, lifter.name, lifter.touchStyle, lifter.groups, lifter.notes, lifter.archived,
        bandText(bench, lifter.unit), standingText(bench), core::carriesLoads(bench.standing),
        meetText(lifter.meetDate, today)};
}

QStringList groupsOf(const std::vector<core::Lifter> &lifters)
{
    QStringList groups;
    for (const core::Lifter &lifter : lifters)
        groups << lifter.groups;
    groups.removeDuplicates();
    QCollator byLocale;
    byLocale.setNumericMode(true);
    std::sort(groups.begin(), groups.end(), byLocale);
    return groups;
}

} // namespace ui
