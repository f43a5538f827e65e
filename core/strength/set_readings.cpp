#include "core/strength/set_readings.h"

#include <algorithm>
#include <cmath>

namespace strength {

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
/// A rep that just failed or just went: SD of where the line lies, reps.
constexpr double kEdgeNoise = 0.25;
/// Reps. Far wider than the scatter: what sets go unrated for is shared by many of them, so that
/// a hundred know little more than one; and where a coach hears nothing, loads lag behind strength.
constexpr double kUnratedNoise = 12.0;
/// Chance that an entry is gross (mistyped, wrong variation), and what is then as good as any: a
/// rating anywhere within 20 reps, an interval hit or not, a speed within 1 m/s.
constexpr Gross kGrossRating{0.02, 1.0 / 20.0};
constexpr Gross kGrossCount{0.02, 0.5};
/// A set that was racked early may have been so for another reason.
constexpr Gross kCutShort{0.2, 0.5};
constexpr Gross kGrossSpeed{0.03, 1.0};
/// Whatever a lifter's curve: further off than this a rating is not of this load.
constexpr double kFarthestReps = 12.0;
/// At and below this a rating says "light" and no number of reps: Zourdos et al. (2016), J Strength
/// Cond Res 30(1):267-275, have four to six left at 5 to 6, and below it only words.
constexpr double kLightRating = 5.5;
/// An unrated set with more left than this was a warm-up.
constexpr double kWarmUpReserve = 6.0;
constexpr double kSpeedNoise = 0.035; ///< m/s

double square(double x)
{
    return x * x;
}

Reading countReading(Reading::Kind kind, const Expectation &possible, double low, double high)
{
    return {kind, possible, low, high, square(kEdgeNoise) + square(possible.byCap * kSetNoise),
        kGrossCount};
}

Reading ratingReading(const Expectation &said, double expectedReserve, const TrainingSet &set,
    const RatingWays &ways, bool vague)
{
    const double reserveSaid = 10.0 - *set.rpe;
    Reading reading{Reading::Kind::rated, said, reserveSaid, reserveSaid, 0.0, kGrossRating};
    // By the reserve that the model expects: those that were said low would weigh the most.
    const double reserve = vague ? reserveSaid : expectedReserve;
    reading.noise = ways.scale * square(ratingNoise(reserve)) + square(said.byCap * kSetNoise);
    if (!vague && std::abs(said.value - reserveSaid) > kFarthestReps)
        reading.gross.chance = 1.0;
    if (*set.rpe >= 10.0) {
        reading.low = -kInfinity;
        reading.high = ways.halfStep;
        reading.gross = kGrossCount;
    } else if (*set.rpe <= std::max(ways.lowest, kLightRating)) {
        reading.low = reserveSaid - ways.halfStep;
        reading.high = kInfinity;
        reading.gross = kGrossCount;
    }
    return reading;
}

} // namespace

double ratingNoise(double reserve)
{
    // Refalo et al. (2024), J Strength Cond Res 38(3):e78-e85: an absolute error of about 0.65 rep
    // on bench sets near failure, rounding included; it grows with the reserve.
    return 0.55 + 0.13 * std::clamp(reserve, 0.0, 8.0);
}

SetReadings readingsOf(const SetModel &model, const TrainingSet &set, double hardBefore,
    const RatingWays &ways, bool vague)
{
    SetReadings readings;
    const auto add = [&](const Reading &reading) {
        readings.list[size_t(readings.size++)] = reading;
    };
    const Expectation possible = model.possibleReps(set, hardBefore);
    readings.reserve = possible.value - set.reps;
    if (set.missed) {
        add(countReading(Reading::Kind::missed, possible,
            set.reps == 0 ? -kInfinity : double(set.reps), set.reps + 1.0));
    } else {
        // Far from failure a finished set says nothing that is not known.
        constexpr double kSurelyFinished = 3.0;
        if (vague || readings.reserve < kSurelyFinished)
            add(countReading(Reading::Kind::finished, possible, set.reps, kInfinity));
        if (set.repsPlanned.value_or(0) > set.reps) {
            // Racked before the plan was done: most likely since no rep was left.
            Reading &finished = readings.list[0];
            if (readings.size == 0)
                add(countReading(Reading::Kind::finished, possible, set.reps, kInfinity));
            finished.high = set.reps + 1.0;
            finished.gross = kCutShort;
        }
        Expectation left = possible;
        left.value -= set.reps;
        if (set.rpe) {
            add(ratingReading(model.saidReserve(left), readings.reserve, set, ways, vague));
        } else if (readings.reserve < kWarmUpReserve) {
            left.value -= model.state[unratedReserve];
            left.gradient.add(unratedReserve, -1.0);
            add({Reading::Kind::unrated, left, 0.0, 0.0,
                square(kUnratedNoise) + square(left.byCap * kSetNoise), kGrossRating});
        }
    }
    if (set.velocity) {
        const Expectation speed = model.speed(set, hardBefore);
        add({Reading::Kind::speed, speed, *set.velocity, *set.velocity,
            square(kSpeedNoise) + square(speed.byCap * kSetNoise), kGrossSpeed});
    }
    return readings;
}

} // namespace strength
