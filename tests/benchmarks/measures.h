#pragma once

#include <string>
#include <vector>

namespace benchmarks {

/// One estimate beside the truth. `sd` is the estimate's own, in ln units; 0 for a bare number.
struct Judged
{
    int lifter = 0;
    double estimateKg = 0.0;
    double truthKg = 0.0;
    double sd = 0.0;
};

/// Errors in per cent of the truth.
struct Measures
{
    int count = 0;
    double rmse = 0.0;
    double bias = 0.0;        ///< mean error; above 0 = too high
    double worstDecile = 0.0; ///< RMSE of the lifter whom 90 % of the lifters beat
    double coverage90 = 0.0;  ///< per cent of the truths in the 90 % interval; NaN for bare numbers
    double crps = 0.0;        ///< continuous ranked probability score; for a bare number |error|
};

/// All NaN without any judged estimate.
[[nodiscard]] Measures measure(const std::vector<Judged> &judged);

/// Continuous ranked probability score of a normal forecast, in the unit of `error`; the smaller
/// the better. Gneiting & Raftery (2007), J Am Stat Assoc 102:359-378, eq. 21; from memory.
/// @param error  truth - mean
/// @param sd     >= 0; 0 gives |error|
[[nodiscard]] double crpsNormal(double error, double sd);

/// SD in ln units of a load whose 90 % interval is low..high.
[[nodiscard]] double sdOfBand(double low90, double high90);

} // namespace benchmarks
