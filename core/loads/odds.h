#pragma once

#include <span>

/// The chance that planned reps are made.
namespace core {

/// One set, or one part of a lead-rep set, as a matter of ln loads.
struct Margin
{
    /// ln(heaviest load that can be done for the reps / load on the bar), expected.
    double mean = 0.0;
    double sd = 0.0;     ///< of what is not known of the lifter: max, ratio, curve; >= 0
    double formSd = 0.0; ///< of the form of the day; >= 0
};

/// SD of a set against the form of its day, ln units: grip, setup, a breath at the wrong time.
/// Common practice, no source; the simulated lifters of the tests draw 0.006.
inline constexpr double kSetNoise = 0.008;

/// How far a lifter's curve may be off, as a share of what it says the reps cost in ln load. Common
/// practice, no source: half a rep in ten. Chosen on the train seeds of chance_report.
inline constexpr double kCurveDoubt = 0.05;

/// What a good day adds, as a share of what a bad one takes: a lifter who is ill or slept badly
/// falls further below the usual than the best day rises above it. Common practice, no source;
/// chosen on the train seeds of chance_report.
inline constexpr double kGoodDay = 0.85;

/// Chances from here to kMostEven are told as even: the estimate knows no better. Below, a miss is
/// likelier than not by enough to be said.
inline constexpr double kLeastEven = 0.4;
inline constexpr double kMostEven = 0.6;

/// The chance that every margin turns out above 0.
///
/// What is not known of the max, the ratio and the form of the day is the same for all sets of a
/// line, so they rise and fall together; only kSetNoise is each set's own. The form has heavy
/// tails: Student's t with three degrees, as the model has it (core/strength/model.h), of the SD
/// `formSd`. Most days are nearer to the usual than a normal of that SD says, and a few are far
/// off.
///
/// Such a t is a normal whose variance is drawn anew each day, so the chance is the mean over a few
/// equally likely variances. For each, the common part is one standard normal z, shortened by
/// kGoodDay above 0, and the chance the mean over z of the product over the sets of Phi((mean +
/// spread z) / kSetNoise), by the trapezoid rule, which converges fast for such smooth, decaying
/// integrands.
[[nodiscard]] double chanceOfAll(std::span<const Margin> margins);

} // namespace core
