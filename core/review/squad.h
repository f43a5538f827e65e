#pragma once

#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/loads/lift_estimate.h"

#include <QDate>
#include <QString>
#include <functional>
#include <optional>
#include <span>
#include <vector>

/// All lifters in one table: who needs the coach first, and why.
namespace core {

/// Why a lifter is further up. Points order the list and mean nothing else (common practice, no
/// source).
struct AttentionTerm
{
    enum class About {
        pain,
        readiness,
        missed,
        unplanned,
        away,
        falling,
        meet,
        surprise,
        conflict
    };

    About about = About::pain;
    double points = 0.0; ///< > 0
    QString words;       ///< one sentence

    friend bool operator==(const AttentionTerm &, const AttentionTerm &) = default;
};

/// The set of the last weeks that turned out furthest from its forecast.
struct SquadSurprise
{
    QDate day;
    VariationId variation;
    double sd = 0.0; ///< above 0 = better than forecast
    QString done;    ///< "5 x 100 kg, Competition bench"
    QString words;   ///< "worse than forecast: 5 x 100 kg, Competition bench"

    friend bool operator==(const SquadSurprise &, const SquadSurprise &) = default;
};

/// One lifter. Estimates are of the bench press, smoothed.
struct SquadRow
{
    LifterId lifter;
    QString name;
    std::vector<double> trendKg; ///< at most 12 weeks, the last one the newest
    std::optional<strength::Band> max;
    std::optional<double> fourWeekChange; ///< share: 0.01 = 1 % up in four weeks
    QString trendWords;
    std::optional<QDate> lastSession; ///< of any lift
    int plannedWeeks = 0;             ///< with cards, without a gap, from the first of them on
    std::optional<QDate> plannedFrom; ///< its Monday, where that is later than this week
    int missed = 0;                   ///< planned days of the last 28 without a session
    std::optional<PainFlag> pain;     ///< the latest that stands, see core/safety/day_limits.h
    std::optional<double> readiness;  ///< of the last check-in of the last week, 1..5
    std::optional<int> daysToMeet;    ///< >= 0
    std::optional<SquadSurprise> surprise;
    double attention = 0.0;           ///< sum of the terms
    std::vector<AttentionTerm> terms; ///< most urgent first

    [[nodiscard]] bool isThisWeekPlanned() const { return plannedWeeks > 0 && !plannedFrom; }
    /// The terms as sentences, or that nothing stands out.
    [[nodiscard]] QString why() const;
    /// Whether the first reason is a matter of the plan, not of what was done.
    [[nodiscard]] bool leadsToPlan() const;
};

struct SquadInput
{
    QDate today;
    std::span<const Lifter> lifters; ///< archived ones are left out
    std::span<const Variation> catalogue;
    std::span<const Card> cards;       ///< of all, from four weeks before today on
    std::span<const CheckIn> checkIns; ///< of all, from two weeks before today on
    /// Null before the first fit.
    std::function<const LiftEstimate *(LifterId, Lift)> estimateOf;
};

inline constexpr int kSquadLookBackDays = 28;

/// Most attention first; equals by name.
[[nodiscard]] std::vector<SquadRow> squadRows(const SquadInput &input);

} // namespace core
