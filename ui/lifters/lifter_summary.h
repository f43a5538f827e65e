#pragma once

#include "core/domain/lifter.h"
#include "core/loads/lift_estimate.h"

#include <QString>
#include <optional>
#include <vector>

/// What the lifter list and the header say of a lifter, as values and as words.
namespace ui {

/// Competition bench max today.
struct BenchSummary
{
    std::optional<strength::Band> band; ///< empty without data
    strength::Standing standing = strength::Standing::noData;

    friend bool operator==(const BenchSummary &, const BenchSummary &) = default;
};

/// @param fit    null before the first fit
/// @param today  where the clock is behind the lifter's last set, the day of the set counts
[[nodiscard]] BenchSummary benchSummary(const core::LiftEstimate *fit, QDate today);

/// "142 (137–148) kg": whole units, since an estimate is never surer than that. Empty without a
/// band.
[[nodiscard]] QString bandText(const BenchSummary &bench, core::Unit unit);

/// What has to be said besides the number; empty when there is enough data.
[[nodiscard]] QString standingText(const BenchSummary &bench);

/// "meet today", "meet tomorrow", "meet in 40 days"; empty without a meet and after it.
[[nodiscard]] QString meetText(const std::optional<QDate> &meet, QDate today);

/// One row of the lifter list.
struct LifterRow
{
    core::LifterId id;
    QString name;
    core::TouchStyle touchStyle = core::TouchStyle::undecided;
    QStringList groups;
    QString notes;
    bool archived = false;
    QString estimate;     ///< of the bench, as bandText()
    QString standing;     ///< as standingText()
    bool trusted = false; ///< the estimate carries loads
    QString meet;

    friend bool operator==(const LifterRow &, const LifterRow &) = default;
};

[[nodiscard]] LifterRow lifterRow(
    const core::Lifter &lifter, const core::LiftEstimate *fit, QDate today);

/// Every group that a lifter is in, sorted as the locale does.
[[nodiscard]] QStringList groupsOf(const std::vector<core::Lifter> &lifters);

} // namespace ui
