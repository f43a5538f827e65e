#include "core/review/carry_over_review.h"

#include "core/domain/text.h"
#include "core/loads/implied_max.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace core {

namespace {

constexpr double kLeastRpe = 6.0; ///< ratings far from failure say little about the max

QString signedPercent(double factor)
{
    const double percent = 100.0 * (factor - 1.0);
    const QString number = QLocale().toString(std::abs(percent), 'f', 1);
    if (number == QLocale().toString(0.0, 'f', 1))
        return number;
    return (percent > 0.0 ? QStringLiteral("+") : QString(QChar(0x2212))) + number;
}

int mondayNumber(int day)
{
    // 1970-01-01 was a Thursday.
    return (day + 3) / 7;
}

} // namespace

strength::CarryLog carryLog(const LiftEstimate &lift)
{
    strength::CarryLog log;
    if (lift.readings.empty() || lift.estimate.weeks.empty())
        return log;
    const int first = mondayNumber(lift.estimate.weeks.front().sunday);
    const int last = mondayNumber(lift.estimate.weeks.back().sunday);
    log.resize(size_t(last - first + 1));
    for (strength::CarryWeek &week : log)
        week.hardLifts = Eigen::VectorXd::Zero(Eigen::Index(lift.rows.size()));
    for (const LoggedSession &session : lift.readings) {
        strength::CarryWeek &week = log.at(size_t(mondayNumber(engineDay(session.day)) - first));
        const std::optional<double> max = knownMaxKg(lift, session.day);
        double sum = 0.0;
        int rated = 0;
        for (int i = 0; const SetEntry &set : session.sets) {
            const int row = lift.rowOf(set.variation);
            const double ofVariation = *max * lift.estimate.variations[size_t(row)].ratio.value;
            if (set.loadKg >= kHardShare * ofVariation)
                week.hardLifts[row] += set.repsDone;
            if (row == 0 && !set.lead && !set.failed && set.rpe.value_or(0.0) >= kLeastRpe) {
                sum += std::log(impliedMaxKg(lift, set, row, i));
                ++rated;
            }
            ++i;
        }
        if (rated == 0)
            continue;
        // Mean over the week's sessions.
        const double before = week.lnMax.value_or(0.0) * week.sessions;
        ++week.sessions;
        week.lnMax = (before + sum / rated) / week.sessions;
    }
    return log;
}

std::vector<CarryOverRow> whatCarriedOver(
    std::span<const strength::CarryLog> logs, const std::vector<VariationId> &variations)
{
    std::vector<CarryOverRow> rows;
    for (const strength::CarryOver &effect : strength::carryOver(logs, int(variations.size())))
        if (effect.weeks > 0)
            rows.push_back({variations[size_t(effect.variation)], effect});
    std::ranges::stable_sort(rows, [](const CarryOverRow &a, const CarryOverRow &b) {
        const auto rank = [](const strength::CarryOver &e) {
            return std::pair(!e.enough, -std::log(e.factor.value));
        };
        return rank(a.effect) < rank(b.effect);
    });
    return rows;
}

QString effectWords(const strength::CarryOver &effect)
{
    if (!effect.enough)
        return Text::tr("not enough to say");
    return Text::tr("%1 % (%2 to %3)")
        .arg(signedPercent(effect.factor.value), signedPercent(effect.factor.low90),
            signedPercent(effect.factor.high90));
}

QString meaningWords(const strength::CarryOver &effect)
{
    if (!effect.enough)
        return Text::tr(
            "Weeks that used it: %1. A dozen weeks by two lifters or more are the least.")
            .arg(effect.weeks);
    if (!effect.isClear())
        return Text::tr("Not enough to say: no change is within the interval.");
    return effect.factor.value > 1.0
        ? Text::tr("The competition max rose more after such weeks than after others.")
        : Text::tr("The competition max rose less after such weeks than after others.");
}

QString carryOverCaution()
{
    return Text::tr(
        "Change of the competition max in the three weeks after a week with the usual amount of "
        "the "
        "variation, against as many hard lifts of other kinds. It is no proof of cause: a "
        "variation "
        "that is used when a lifter improves anyway looks good here, and the other way round.");
}

} // namespace core
