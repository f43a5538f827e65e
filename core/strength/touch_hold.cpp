#include "core/strength/touch_hold.h"

#include "core/strength/interval.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

namespace strength {

namespace {

constexpr int kCuts = kTouchSteps - 1;
constexpr int kParameters = kTouchSteps; // first threshold, three gaps, one slope
constexpr int kSlope = kParameters - 1;
constexpr double kCentreShare = 0.85, kShareUnit = 0.05;
constexpr double kStartCounts = 3.0; ///< lifters
constexpr int kRounds = 12;
constexpr int kDriftWindow = 56;                                 ///< days
constexpr double kStartDrift = 0.0005, kStartDriftCounts = 12.0; ///< share a week; pairs of windows
constexpr double kPlainNoise = 0.012 * 0.012; ///< of a pair's difference, share squared
constexpr int kFewestSets = 12;
constexpr double kBeyondAllLoads = 1.5;      ///< share; stands for an end that is not known
constexpr double kLeastWeight = 1.0 / 256.0; ///< of a reading; lighter ones only cost time
constexpr double kWidestInterval = 0.25;     ///< of the share, beyond which nothing is said

double covariate(double share)
{
    return (share - kCentreShare) / kShareUnit;
}

double shareOf(double x)
{
    return kCentreShare + kShareUnit * x;
}

/// Before any roster: a touch that is light at 85 % and slips one step for about 8 % more, known
/// only roughly (common practice, no source).
NormalBelief startPrior()
{
    NormalBelief start{
        Eigen::VectorXd(kParameters), Eigen::MatrixXd::Zero(kParameters, kParameters)};
    start.mean << 0.0, 0.7, 0.7, 0.7, 1.3;
    start.covariance.diagonal() << 6.0, 0.5, 0.5, 0.5, 1.5;
    return start;
}

void check(const TouchReading &reading)
{
    if (!(reading.share > 0.0) || reading.score < 1 || reading.score > kTouchSteps)
        throw std::invalid_argument("touch: a share is above 0 and a score 1 to 5");
}

struct Weighted
{
    TouchReading reading;
    double weight = 1.0;
};

OrdinalData dataOf(std::span<const Weighted> readings)
{
    OrdinalData data;
    data.categories = kTouchSteps;
    const auto n = Eigen::Index(readings.size());
    data.covariates.resize(n, 1);
    data.weight.resize(n);
    data.score.reserve(readings.size());
    for (Eigen::Index i = 0; i < n; ++i) {
        const Weighted &one = readings[size_t(i)];
        check(one.reading);
        data.covariates(i, 0) = covariate(one.reading.share);
        data.weight[i] = one.weight;
        data.score.push_back(one.reading.score - 1);
    }
    return data;
}

std::vector<Weighted> alike(std::span<const TouchReading> readings, double weight)
{
    std::vector<Weighted> all;
    all.reserve(readings.size());
    for (const TouchReading &reading : readings)
        all.push_back({reading, weight});
    return all;
}

/// How the sums of the scores' derivatives over sessions scatter against those over single sets,
/// along every parameter that the sets speak of.
struct Scatter
{
    double ofSets = 0.0, ofSessions = 0.0;

    void add(std::span<const TouchReading> readings, const Eigen::VectorXd &at)
    {
        std::map<int, Eigen::VectorXd> bySession;
        for (const TouchReading &reading : readings) {
            const Weighted one{reading, 1.0};
            Eigen::VectorXd gradient;
            (void)ordinalLogLikelihood(dataOf({&one, 1}), at, &gradient);
            // The first threshold alone: it moves all of them, which is what a day does.
            auto [session, isNew] =
                bySession.try_emplace(reading.session, Eigen::VectorXd::Zero(kParameters));
            session->second += gradient;
            ofSets += gradient[0] * gradient[0];
        }
        for (const auto &[session, gradient] : bySession)
            ofSessions += gradient[0] * gradient[0];
    }

    [[nodiscard]] double factor() const
    {
        return ofSets > 0.0 ? std::max(ofSessions / ofSets, 1.0) : 1.0;
    }
};

/// How far the level of a lifter's touch moves between neighbouring windows, beyond what the sets'
/// own scatter explains. Means of a random walk over two neighbouring spans of w weeks differ by
/// 2/3 w steps' variance.
struct Drift
{
    double count = kStartDriftCounts;
    double squares = kStartDriftCounts * kStartDrift * kStartDrift; ///< a week

    void add(std::span<const TouchReading> readings, const NormalBelief &lifter, double clustering)
    {
        NormalBelief onlyLevel = lifter;
        onlyLevel.covariance = 1e-10 * Eigen::MatrixXd::Identity(kParameters, kParameters);
        onlyLevel.covariance(0, 0) = 100.0;
        std::map<int, std::vector<TouchReading>> windows;
        for (const TouchReading &reading : readings)
            windows[reading.day / kDriftWindow].push_back(reading);
        const double slope = std::max(lifter.mean[kSlope], 0.2);
        std::optional<std::pair<int, NormalBelief>> before;
        for (const auto &[number, inside] : windows) {
            if (int(inside.size()) < kFewestSets)
                continue;
            const auto fit =
                fitOrdinal(dataOf(alike(inside, 1.0 / clustering)), onlyLevel).parameters;
            if (before && number == before->first + 1) {
                const double toShare = std::pow(kShareUnit / slope, 2.0);
                const double step = fit.mean[0] - before->second.mean[0];
                const double noise =
                    toShare * (fit.covariance(0, 0) + before->second.covariance(0, 0));
                // Pairs of few sets say little: their noise drowns the step.
                const double weight = 1.0 / std::pow(1.0 + noise / kPlainNoise, 2.0);
                squares +=
                    weight * (toShare * step * step - noise) / (2.0 / 3.0 * kDriftWindow / 7.0);
                count += weight;
            }
            before = {number, fit};
        }
    }

    [[nodiscard]] double perWeek() const { return std::sqrt(std::max(squares, 0.0) / count); }
};

/// Weeks of wandering that the mean of the readings has missed: the integral over the ages of the
/// squared share of the weight that is older.
double missedWeeks(std::vector<Weighted> readings, int day)
{
    std::sort(readings.begin(), readings.end(),
        [](const Weighted &a, const Weighted &b) { return a.reading.day > b.reading.day; });
    double left = 0.0, weeks = 0.0;
    for (const Weighted &one : readings)
        left += one.weight;
    const double whole = left;
    int at = day;
    for (const Weighted &one : readings) {
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
std::vector<Weighted> within(
    std::span<const TouchReading> readings, const TouchRoster &roster, const TouchWindow &window)
{
    std::vector<Weighted> all;
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
    for (Weighted &one : all)
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
        , slope(belief.mean[kSlope])
        , vSlope(belief.covariance(kSlope, kSlope))
    {
        Eigen::VectorXd toThreshold = Eigen::VectorXd::Zero(kParameters);
        toThreshold[0] = 1.0;
        for (int k = 1; k < wanted; ++k)
            toThreshold[k] = std::exp(belief.mean[k]);
        vThreshold = toThreshold.dot(belief.covariance * toThreshold);
        vBoth = belief.covariance.row(kSlope).dot(toThreshold);
    }

    /// In SDs: above kZ90 = surely kept at the share, below -kZ90 surely not.
    [[nodiscard]] double at(double share) const
    {
        const double x = covariate(share);
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
TouchHold holdOf(const std::vector<Weighted> &all, const NormalBelief &fit,
    const TouchRoster &roster, int wanted, int day)
{
    TouchHold hold;
    hold.sets = int(all.size());
    const auto [lowest, highest] = std::minmax_element(all.begin(), all.end(),
        [](const Weighted &a, const Weighted &b) { return a.reading.share < b.reading.share; });
    hold.lowestShare = lowest->reading.share;
    hold.highestShare = highest->reading.share;

    const Margin margin(fit, wanted);
    const std::optional<Interval> crossing = margin.crossing();
    if (crossing)
        hold.share = widened(*crossing, roster.driftPerWeek * std::sqrt(missedWeeks(all, day)));
    if (hold.sets < kFewestSets) {
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

TouchRoster learnTouch(std::span<const std::vector<TouchReading>> lifters)
{
    const NormalBelief start = startPrior();
    TouchRoster roster{start, 1.0};
    for (int round = 0; round < kRounds; ++round) {
        double count = kStartCounts;
        Eigen::VectorXd sum = kStartCounts * start.mean;
        std::vector<NormalBelief> fits;
        Scatter scatter;
        for (const std::vector<TouchReading> &readings : lifters) {
            if (readings.empty())
                continue;
            const std::vector<Weighted> all = alike(readings, 1.0 / roster.clustering);
            fits.push_back(fitOrdinal(dataOf(all), roster.prior).parameters);
            scatter.add(readings, fits.back().mean);
            sum += fits.back().mean;
            count += 1.0;
        }
        const Eigen::VectorXd mean = sum / count;
        Eigen::VectorXd squares =
            kStartCounts * (start.covariance.diagonal() + (start.mean - mean).cwiseAbs2());
        for (const NormalBelief &fit : fits)
            squares += (fit.mean - mean).cwiseAbs2() + fit.covariance.diagonal();
        roster.prior.mean = mean;
        roster.prior.covariance = (squares / count).asDiagonal();
        roster.clustering = scatter.factor();
    }
    Drift drift;
    for (const std::vector<TouchReading> &readings : lifters)
        if (!readings.empty())
            drift.add(readings,
                fitOrdinal(dataOf(alike(readings, 1.0 / roster.clustering)), roster.prior)
                    .parameters,
                roster.clustering);
    roster.driftPerWeek = drift.perWeek();
    return roster;
}

TouchHold touchHold(std::span<const TouchReading> readings, const TouchRoster &roster, int wanted,
    const TouchWindow &window)
{
    return touchHolds(readings, roster, std::span(&wanted, 1), window).front();
}

std::vector<TouchHold> touchHolds(std::span<const TouchReading> readings, const TouchRoster &roster,
    std::span<const int> wanted, const TouchWindow &window)
{
    std::for_each(wanted.begin(), wanted.end(), checkWanted);
    const std::vector<Weighted> all = within(readings, roster, window);
    std::vector<TouchHold> holds(wanted.size());
    if (all.empty())
        return holds;
    const NormalBelief fit = fitOrdinal(dataOf(all), roster.prior).parameters;
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
        const std::vector<Weighted> all = within(readings, roster, {day, std::nullopt, spanDays});
        points.push_back({day, {}});
        if (all.empty())
            continue;
        const NormalBelief fit = fitOrdinal(dataOf(all), roster.prior, guess).parameters;
        points.back().hold = holdOf(all, fit, roster, wanted, day);
        guess = fit.mean;
    }
    std::reverse(points.begin(), points.end());
    return points;
}

} // namespace strength
