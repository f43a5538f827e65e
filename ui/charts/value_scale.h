#pragma once

/// Arithmetic of a chart's value axis.
namespace ui {

struct ValueScale
{
    double from = 0.0;
    double to = 1.0; ///< > from
    double step = 1.0;

    [[nodiscard]] int ticks() const;    ///< from and to included
    [[nodiscard]] int decimals() const; ///< places that tell one tick from the next
    friend bool operator==(const ValueScale &, const ValueScale &) = default;
};

/// The tightest scale of steps 1, 2, 2.5 or 5 times a power of ten that holds low..high in at most
/// `mostSteps` >= 1 steps. A single value gets room around it.
[[nodiscard]] ValueScale scaleFor(double low, double high, int mostSteps);

} // namespace ui
