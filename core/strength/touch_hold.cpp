#include "core/strength/touch_hold.h"

#include "core/strength/touch_regression.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace strength {

namespace {

constexpr int kCuts = kTouchSteps - 1;
constexpr double kBeyondAllLoads = 1.5;      ///< share; stands for an end that is not known
constexpr double kLeastWeight = 1.0 / 256.0; ///< of a reading; lighter ones only cost time
constexpr double kWidestInterval = 0.25;     ///< of the share, beyond which nothing is said

/// Weeks of wandering that the mean of the readings has missed: the integral over the ages of the
/// squared share of the weight that is older.
double missedWeeks(std::vector<WeightedTouch> readings, int day)
{
    std::sort(readings.begin(), readings.end(), [](const WeightedTouch &a, const WeightedTouch &b) {
        return a.reading.day > b.reading.day;
    });
    double left = 0.0, weeks = 0.0;
    for (const WeightedTouch &one : readings)
        left += one.weight;
    const double whole = left;
    int at = day;
    for (const WeightedTouch &one : readings) {
        weeks += std::pow(left / whole, 2.0) * (at - one.reading.day) / 7.0;
        at = one.reading.day;
        left -= one.weight;
    }
    return weeks;
}

/// An interval with another source of error, independent of the first.
Interval widened(const Interval &interval, double sd)
{
    const auto end = [&](double half) { return std::hypot(half, kZ90 * sd); };
    return {interval.value, interval.value - end(interval.value - interval.low90),
        interval.value + end(interval.high90 - interval.value)};
}

/// Readings inside the window. The weights of old readings are scaled up together to what the
/// weighted sets are worth (Kish 1965, Survey Sampling: effective size (sum w)^2 / sum w^2), or
/// forgetting would be paid for twice.
std::vector<WeightedTouch> within(
    std::span<const TouchReading> readings, const TouchRoster &roster, const TouchWindow &window)
{
    std::vector<WeightedTouch> all;
    double sum = 0.0, squares = 0.0;
    for (const TouchReading &reading : readings) {
        const int age = window.day - reading.day;
        if (age < 0 || (window.days && age >= *window.days))
            continue;
        const double weight =
            window.halfLifeDays ? std::exp2(-double(age) / *window.halfLifeDays) : 1.0;
        if (weight < kLeastWeight)
            continue;
        all.push_back({reading, weight});
        sum += weight;
        squares += weight * weight;
    }
    for (WeightedTouch &one : all)
        one.weight *= sum / squares / roster.clustering;
    return all;
}

/// Threshold - slope x, a normal value at every x, whose zero is the hold.
struct Margin
{
    double threshold, slope;
    double vThreshold, vBoth, vSlope;

    Margin(const NormalBelief &belief, int wanted)
        : threshold(ordinalThresholds(belief.mean, kTouchSteps)[wanted - 1])
        , slope(belief.mean[kTouchSlope])
        , vSlope(belief.covariance(kTouchSlope, kTouchSlope))
    {
        Eigen::VectorXd toThreshold = Eigen::VectorXd::Zero(kTouchParameters);
        toThreshold[0] = 1.0;
        for (int k = 1; k < wanted; ++k)
            toThreshold[k] = std::exp(belief.mean[k]);
        vThreshold = toThreshold.dot(belief.covariance * toThreshold);
        vBoth = belief.covariance.row(kTouchSlope).dot(toThreshold);
    }

    /// In SDs: above kZ90 = surely kept at the share, below -kZ90 surely not.
    [[nodiscard]] double at(double share) const
    {
        const double x = touchCovariate(share);
        return (threshold - slope * x) / std::sqrt(vThreshold - 2.0 * x * vBoth + x * x * vSlope);
    }

    /// A quotient of two normal values, so the interval is Fieller's (1954, J R Stat Soc B
    /// 16(2):175-185; from memory); empty where the slope may be 0 and it has no ends.
    [[nodiscard]] std::optional<Interval> crossing() const
    {
        const double z2 = kZ90 * kZ90;
        const double a = slope * slope - z2 * vSlope;
        const double b = threshold * slope - z2 * vBoth;
        const double c = threshold * threshold - z2 * vThreshold;
        const double root = b * b - a * c;
        if (slope <= 0.0 || a <= 0.0 || root < 0.0)
            return std::nullopt;
        return Interval{shareOf(threshold / slope), shareOf((b - std::sqrt(root)) / a),
            shareOf((b + std::sqrt(root)) / a)};
    }
};

void checkWanted(int wanted)
{
    if (wanted < 1 || wanted > kCuts)
        throw std::invalid_argument("touch: the wanted score is 1 to 4");
}

/// @param all  the readings inside the window, at least one
/// @param fit  of the parameters to them
TouchHold holdOf(const std::vector<WeightedTouch> &all, const NormalBelief &fit,
    const TouchRoster &roster, int wanted, int day)
{
    TouchHold hold;
    hold.sets = int(all.size());
    const auto [lowest, highest] = std::minmax_element(
        all.begin(), all.end(), [](const WeightedTouch &a, const WeightedTouch &b) {
            return a.reading.share < b.reading.share;
        });
    hold.lowestShare = lowest->reading.share;
    hold.highestShare = highest->reading.share;

    const Margin margin(fit, wanted);
    const std::optional<Interval> crossing = margin.crossing();
    if (crossing)
        hold.share = widened(*crossing, roster.driftPerWeek * std::sqrt(missedWeeks(all, day)));
    if (hold.sets < kFewestTouchSets) {
        hold.standing = TouchStanding::few;
    } else if (!crossing) {
        // How the touch falls cannot be told, but that it was kept throughout, or never, can.
        const bool kept = margin.at(hold.highestShare) > kZ90;
        const bool lost = margin.at(hold.lowestShare) < -kZ90;
        hold.standing = kept ? TouchStanding::beyond
            : lost           ? TouchStanding::below
                             : TouchStanding::flat;
        if (kept)
            hold.share = {hold.highestShare, hold.highestShare, kBeyondAllLoads};
        else if (lost)
            hold.share = {hold.lowestShare, 0.0, hold.lowestShare};
    } else if (hold.share.value > hold.highestShare) {
        hold.standing = TouchStanding::beyond;
    } else if (hold.share.value < hold.lowestShare) {
        hold.standing = TouchStanding::below;
    } else {
        hold.standing = hold.share.high90 - hold.share.low90 > kWidestInterval
            ? TouchStanding::few
            : TouchStanding::enough;
    }
    return hold;
}

} // namespace

TouchHold touchHold(std::span<const TouchReading> readings, const TouchRoster &roster, int wanted,
    const TouchWindow &window)
{
    return touchHolds(readings, roster, std::span(&wanted, 1), window).front();
}

std::vector<TouchHold> touchHolds(std::span<const TouchReading> readings, const TouchRoster &roster,
    std::span<const int> wanted, const TouchWindow &window)
{
    std::for_each(wanted.begin(), wanted.end(), checkWanted);
    const std::vector<WeightedTouch> all = within(readings, roster, window);
    std::vector<TouchHold> holds(wanted.size());
    if (all.empty())
        return holds;
    const NormalBelief fit = fitOrdinal(touchData(all), roster.prior).parameters;
    std::transform(wanted.begin(), wanted.end(), holds.begin(),
        [&](int one) { return holdOf(all, fit, roster, one, window.day); });
    return holds;
}

std::vector<TouchHoldPoint> touchHoldOverTime(std::span<const TouchReading> readings,
    const TouchRoster &roster, int wanted, int stepDays, int spanDays)
{
    if (stepDays < 1 || spanDays < 1)
        throw std::invalid_argument("touchHoldOverTime: steps and spans are at least a day");
    checkWanted(wanted);
    std::vector<TouchHoldPoint> points;
    if (readings.empty())
        return points;
    const auto [first, last] = std::minmax_element(readings.begin(), readings.end(),
        [](const TouchReading &a, const TouchReading &b) { return a.day < b.day; });
    // Backward from the last reading, so that the newest point has all its days.
    Eigen::VectorXd guess = roster.prior.mean; // one window's fit is near the next one's
    for (int day = last->day; day >= first->day; day -= stepDays) {
        const std::vector<WeightedTouch> all =
            within(readings, roster, {day, std::nullopt, spanDays});
        points.push_back({day, {}});
        if (all.empty())
            continue;
        const NormalBelief fit = fitOrdinal(touchData(all), roster.prior, guess).parameters;
        points.back().hold = holdOf(all, fit, roster, wanted, day);
        guess = fit.mean;
    }
    std::reverse(points.begin(), points.end());
    return points;
}

} // namespace strength
