#include "core/strength/lifter_filter.h"

#include "core/strength/hard_sets.h"
#include "core/strength/rep_curve.h"
#include "core/strength/week.h"

#include <algorithm>
#include <cmath>

namespace strength {

namespace {

/// The slope fades with a half-life of about 17 weeks and is seldom beyond 0.4 % a week.
constexpr double kSlopeKept = 0.96;
constexpr double kSlopeSd = 0.002;
constexpr double kBiasDriftPerWeek = 0.045; ///< reps

/// Layoff, common practice without a source: the first ten days cost nothing; then what can be lost
/// goes with a half-life of five weeks, and comes back with one of two weeks of training.
constexpr int kFreeDays = 10;
constexpr double kLayoffHalfLifeDays = 35.0;
constexpr double kMostLost = 0.15; ///< ln units
constexpr double kLostKept = 0.7;  ///< a week of training
constexpr double kLayoffSd = 1e-3; ///< a week; keeps the chain regular where there was no layoff

/// Day forms have heavy tails: Student's t with this many degrees, as a normal whose variance is
/// chosen once the session has been read.
constexpr double kFormDegrees = 3.0;
/// What a lifter's own scatter has to outweigh.
constexpr double kRatingsAtFirst = 30.0, kSessionsAtFirst = 12.0;
/// Ratings of one lifter err together in part, so that they tell less than their scatter says.
constexpr double kSharedError = 1.4;
/// Of the level at the start, ln units.
constexpr double kVagueSd = 0.15;
/// Enough to be told as conflicting for some sessions more.
constexpr double kConflictAfterRestart = 0.5;
constexpr int kRatesInWholes = 10; ///< ratings without a half that show it

ChainVector chainOf(double a, double b, double c, double d)
{
    return ChainVector(a, b, c, d);
}

/// ln of the competition max that a set speaks for by the priors alone.
double crudeMax(const TrainingSet &set, const RosterPriors &priors)
{
    const RepCurve curve{std::exp(priors.lnKappa.mean), priors.power.mean};
    const double reserve = set.missed ? 0.5
        : set.rpe                     ? 10.0 - *set.rpe
                                      : priors.unratedReserve.mean;
    const size_t v = size_t(set.variation);
    return std::log(set.loadKg) - priors.lnRatio[v].mean
        - std::log(curve.share(set.reps + reserve, std::exp(priors.lnRepCost[v].mean)));
}

} // namespace

/// What a session says beside its updates, taken over once it has been read for good.
struct LifterFilter::Tally
{
    Surprises ratings;
    RatingWays ways;
    int wholeRatings = 0;
    double conflict = 0.0;
    Footing footing;
};

LifterFilter::LifterFilter(const RosterPriors &priors, const Prior &before)
    : m_priors(priors)
    , m_before(before)
    , m_belief(ChainVector::Zero(), ChainVector::Zero(), priors)
{
    m_slots.lnRatio.assign(priors.lnRatio.size(), -1);
    m_slots.lnRepCost.assign(priors.lnRepCost.size(), -1);
}

RatingWays LifterFilter::ratingWays() const
{
    const double own = (kRatingsAtFirst + m_ratings.sum) / (kRatingsAtFirst + m_ratings.count);
    RatingWays ways = m_ways;
    ways.scale = m_priors.ratingScale * own;
    return ways;
}

double LifterFilter::formVariance() const
{
    const double own = (kSessionsAtFirst + m_forms.sum) / (kSessionsAtFirst + m_forms.count);
    return m_priors.formSd * m_priors.formSd * own;
}

ChainStep LifterFilter::startWeek(int day)
{
    ChainStep step;
    if (!m_started) {
        m_sunday = sundayOf(day);
        m_lastDay = day;
        return step;
    }
    constexpr double kToldKept = 7.0 / 8.0;
    m_footing.toldOfLate *= kToldKept;
    const int monday = m_sunday + 1;
    m_sunday += 7;
    const int daysLost = std::max(day - std::max(monday, m_lastDay + kFreeDays + 1) + 1, 0);
    step.transition(slope, slope) = kSlopeKept;
    step.noise.diagonal() = chainOf(m_priors.driftPerWeek * m_priors.driftPerWeek,
        kSlopeSd * kSlopeSd * (1.0 - kSlopeKept * kSlopeKept), kLayoffSd * kLayoffSd,
        kBiasDriftPerWeek * kBiasDriftPerWeek);
    if (daysLost == 0) {
        step.transition(level, slope) = 1.0;
        step.transition(layoff, layoff) = kLostKept;
    } else {
        const double lost = 1.0 - std::exp2(-daysLost / kLayoffHalfLifeDays);
        step.transition(layoff, layoff) = 1.0 - lost;
        step.drift[layoff] = -kMostLost * lost;
        step.noise(layoff, layoff) += std::pow(0.5 * kMostLost * lost, 2.0);
    }
    m_belief.advance(step);
    return step;
}

void LifterFilter::startWeeksUpTo(int day)
{
    if (!m_started)
        startWeek(day);
    while (m_sunday < day)
        startWeek(std::min(day, m_sunday + 7));
}

double LifterFilter::crudeMax(std::span<const TrainingSet> sets) const
{
    std::vector<double> crude;
    for (const TrainingSet &set : sets)
        crude.push_back(strength::crudeMax(set, m_priors));
    const auto middle = crude.begin() + std::ptrdiff_t(crude.size() / 2);
    std::nth_element(crude.begin(), middle, crude.end());
    return *middle;
}

void LifterFilter::start(std::span<const TrainingSet> sets)
{
    // Near the first session's own reading, so that the gradients are taken where they hold, yet
    // wide enough that the sets decide. A first session that is absurd for any lifter is not
    // believed.
    const double crude = crudeMax(sets);
    constexpr double kAbsurd = 4.0;
    const bool absurd = std::abs(crude - m_before.mean) > kAbsurd * m_before.sd;
    m_belief =
        StateBelief(chainOf(absurd ? m_before.mean : crude, 0.0, 0.0, m_priors.ratingBias.mean),
            chainOf(absurd ? m_before.sd : kVagueSd, kSlopeSd, kLayoffSd, m_priors.ratingBias.sd),
            m_priors);
    m_started = true;
}

void LifterFilter::makeRoomFor(int variation)
{
    const size_t v = size_t(variation);
    if (variation == 0 || m_slots.lnRatio[v] >= 0)
        return; // the competition lift is the measure of the others
    m_slots.lnRatio[v] = m_belief.append(m_priors.lnRatio[v]);
    m_slots.lnRepCost[v] = m_belief.append(m_priors.lnRepCost[v]);
}

void LifterFilter::makeRoomFor(std::span<const TrainingSet> sets)
{
    for (const TrainingSet &set : sets) {
        makeRoomFor(set.variation);
        if (set.leadReps > 0)
            makeRoomFor(set.leadVariation);
        if (set.velocity && m_slots.speedShift < 0) {
            m_slots.speedShift = m_belief.append(m_priors.speedShift);
            m_slots.speedStretch = m_belief.append(m_priors.speedStretch);
        }
    }
}

void LifterFilter::expectSession(std::span<const TrainingSet> sets)
{
    makeRoomFor(sets);
    m_belief.startSession(formVariance());
}

void LifterFilter::addSession(int day, std::span<const TrainingSet> sets, PullTrail *trail)
{
    // Where nearly all sets of late were gross, it is the belief that is wrong.
    constexpr double kNearlyAll = 0.7;
    if (!m_started) {
        start(sets);
    } else if (m_conflict > kNearlyAll) {
        m_belief.restartLevel(crudeMax(sets), kVagueSd);
        m_conflict = kConflictAfterRestart;
    }
    makeRoomFor(sets);
    const StateBelief before = m_belief;
    const double usual = formVariance();
    const auto read = [&](double variance) {
        m_belief.startSession(variance);
        return readSets(sets, trail);
    };
    const auto formSquare = [&] {
        const double form = m_belief.mean()[dayForm];
        return (form * form + m_belief.covariance()(dayForm, dayForm)) / usual;
    };
    Tally tally = read(usual);
    constexpr double kUnusual = 2.0;
    if (const double square = formSquare(); square > kUnusual) {
        m_belief = before;
        if (trail)
            trail->dropSession();
        tally = read(usual * (kFormDegrees + square) / (kFormDegrees + 1.0));
    }

    m_ratings.sum += tally.ratings.sum;
    m_ratings.count += tally.ratings.count;
    constexpr double kMostCounted = 6.0; // one wild day says little of the others
    m_forms.sum += std::min(formSquare(), kMostCounted);
    m_forms.count += 1.0;
    m_ways = tally.ways;
    m_wholeRatings = tally.wholeRatings;
    m_conflict = tally.conflict;
    m_footing = tally.footing;
    m_lastDay = day;
}

LifterFilter::Tally LifterFilter::readSets(std::span<const TrainingSet> sets, PullTrail *trail)
{
    Tally tally;
    tally.ways = ratingWays();
    tally.wholeRatings = m_wholeRatings;
    tally.conflict = m_conflict;
    tally.footing = m_footing;
    double hardBefore = 0.0;
    for (size_t i = 0; i < sets.size(); ++i) {
        const double reserve = readSet(sets[i], int(i), hardBefore, tally, trail);
        hardBefore = hardSetsAfter(hardBefore, reserve);
    }
    return tally;
}

double LifterFilter::readSet(
    const TrainingSet &set, int index, double hardBefore, Tally &tally, PullTrail *trail)
{
    if (set.rpe && !set.missed) {
        const bool half = *set.rpe != std::floor(*set.rpe);
        tally.wholeRatings = half ? 0 : tally.wholeRatings + 1;
        tally.ways.halfStep = tally.wholeRatings >= kRatesInWholes ? 0.5 : 0.25;
        tally.ways.lowest = std::min(tally.ways.lowest, *set.rpe);
    }
    const RatingWays &ways = tally.ways;
    constexpr double kStillVagueSd = 0.06;
    const bool vague = lnMaxVariance(m_belief.covariance()) > kStillVagueSd * kStillVagueSd;
    Eigen::VectorXd point = m_belief.mean();
    SetReadings readings = readingsOf({point, m_slots, m_priors}, set, hardBefore, ways, vague);
    const int rounds = vague ? 3 : 0;
    for (int round = 0; round < rounds && readings.size > 0; ++round) {
        // Where the belief is wide, take the gradient where the set puts it.
        const Reading &main = readings.list[size_t(std::min(readings.size - 1, 1))];
        m_belief.covarianceWith(main.expectation.gradient, m_cross);
        double variance = 0.0, expected = main.expectation.value;
        for (int k = 0; k < main.expectation.gradient.size; ++k) {
            const size_t at = size_t(k);
            const int slot = main.expectation.gradient.slot[at];
            const double by = main.expectation.gradient.value[at];
            variance += by * m_cross[slot];
            expected += by * (m_belief.mean()[slot] - point[slot]);
        }
        point = m_belief.mean() + main.moments(expected, variance).shift * m_cross;
        readings = readingsOf({point, m_slots, m_priors}, set, hardBefore, ways, vague);
    }

    double soundness = 1.0;
    for (const Reading &reading : readings.all()) {
        const Gradient &gradient = reading.expectation.gradient;
        m_belief.covarianceWith(gradient, m_cross);
        double variance = 0.0, expected = reading.expectation.value;
        for (int k = 0; k < gradient.size; ++k) {
            const size_t at = size_t(k);
            const int slot = gradient.slot[at];
            variance += gradient.value[at] * m_cross[slot];
            expected += gradient.value[at] * (m_belief.mean()[slot] - point[slot]);
        }
        const Moments moments = reading.moments(expected, variance);
        // What was as good as certain moves nothing; most sets are finished that should be.
        constexpr double kTold = 1e-3;
        if (std::abs(moments.shrink) * variance > kTold) {
            m_belief.update(m_cross, moments);
            if (trail)
                trail->addUpdate(index, gradient, m_cross, moments);
        }
        soundness = std::min(soundness, moments.inlier);
        if (reading.kind == Reading::Kind::rated && reading.low == reading.high) {
            tally.ratings.sum +=
                kSharedError * moments.inlier * moments.surprise * moments.surprise;
            tally.ratings.count += moments.inlier;
        }
    }
    constexpr double kMemory = 1.0 / 12.0; // sets
    tally.conflict += kMemory * (1.0 - soundness - tally.conflict);
    if (set.rpe || set.missed) {
        constexpr double kReachMemory = 1.0 / 40.0; // sets
        const double reps = std::clamp(set.reps + readings.reserve, 1.0, 15.0);
        tally.footing.reach += kReachMemory * (reps - tally.footing.reach);
        tally.footing.toldOfLate += 1.0;
    }
    return set.missed ? 0.0 : readings.reserve;
}

} // namespace strength
