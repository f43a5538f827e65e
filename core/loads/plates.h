#pragma once

#include "core/domain/gear.h"

#include <cstdint>
#include <optional>
#include <vector>

/// Which loads a lifter can put on the bar with the plates at hand, and how.
///
/// Taking the heaviest plate that fits is not enough once pairs are limited: with one pair each of
/// 20, 15 and 10 kg, 25 kg a side is 15 + 10, which the greedy way misses. So every sum that can be
/// reached on a side is worked out once, kind by kind. Sums are whole micrograms, in which plates
/// in kg and in lb (0.45359237 kg) are both exact; sums less than a gram apart count as one, which
/// keeps the table small for odd collections.
namespace core {

/// A loaded bar.
struct BarLoad
{
    double loadKg = 0.0;            ///< bar, collars and plates
    std::vector<PlatePairs> plates; ///< heaviest first; `pairs` is the count on each side

    friend bool operator==(const BarLoad &, const BarLoad &) = default;
};

enum class Rounding {
    nearest, ///< the lighter of two that are equally near
    down     ///< never above the target, except for the empty bar
};

class PlateTable
{
public:
    /// @throws std::invalid_argument when problems(gear) is not empty
    explicit PlateTable(const Gear &gear);

    /// The loadable load for a target; the lightest or heaviest one where the target lies outside.
    /// Of several ways to load it, the one with the fewest plates, the heaviest ones first.
    [[nodiscard]] BarLoad round(double targetKg, Rounding rounding = Rounding::nearest) const;

    /// The empty bar with its collars.
    [[nodiscard]] double lightestKg() const { return loadKg(0); }
    /// All plates on.
    [[nodiscard]] double heaviestKg() const { return loadKg(m_sides.size() - 1); }
    /// The next loadable load above `loadKg`; empty at the top.
    [[nodiscard]] std::optional<double> above(double loadKg) const;
    /// The next loadable load below `loadKg`; empty at the bottom.
    [[nodiscard]] std::optional<double> below(double loadKg) const;
    /// The smallest step between two neighbouring loads; empty when there are no plates.
    [[nodiscard]] std::optional<double> smallestJumpKg() const;

private:
    /// What is on one side.
    struct Side
    {
        std::int64_t sum = 0; ///< micrograms
        int plates = 0;
        std::vector<int> counts; ///< one a kind, heaviest first
    };

    [[nodiscard]] static bool isHandier(const Side &a, const Side &b);
    [[nodiscard]] double loadKg(size_t side) const;

    std::int64_t m_bar = 0;        ///< with collars, micrograms
    std::vector<double> m_kindsKg; ///< heaviest first
    std::vector<Side> m_sides;     ///< by sum; the first is empty
};

/// Plates on each side, heaviest first: "2 x 20 + 5", or that the bar is empty.
[[nodiscard]] QString platesWords(const std::vector<PlatePairs> &plates, Unit unit);

} // namespace core
