#pragma once

#include "core/domain/body_area.h"
#include "core/domain/ids.h"

#include <QDate>
#include <QStringList>
#include <map>
#include <optional>
#include <vector>

namespace core {

/// Pain is not soreness: it stops the lift and is a matter for a physician. It stands until a later
/// check-in answers that there is none (core/safety/day_limits.h).
struct PainFlag
{
    std::optional<BodyArea> area; ///< empty = elsewhere, and the words say where
    QString words;

    friend bool operator==(const PainFlag &, const PainFlag &) = default;
};

/// What a lifter said before training on a day. Every item runs from 1 (worst) to 5 (best),
/// soreness too: 1 is very sore, 5 not at all; empty = not asked. Source of the items and the
/// direction of the scale: McLean et al. (2010), Int J Sports Physiol Perform 5:367-383 (from
/// memory); soreness by area and motivation in place of mood are ours.
struct CheckIn
{
    CheckInId id;
    LifterId lifter;
    QDate day;
    std::optional<int> sleep;
    std::optional<int> stress; ///< 5 = relaxed
    std::optional<int> motivation;
    std::map<BodyArea, int> soreness; ///< areas not asked about are missing
    std::optional<PainFlag> pain;
    bool isPainFree = false; ///< asked, and answered with no; without a pain and this: not asked
    QString note;

    friend bool operator==(const CheckIn &, const CheckIn &) = default;
};

/// Said to be sore: 2 or less.
[[nodiscard]] bool isSore(const CheckIn &checkIn, BodyArea area);
[[nodiscard]] std::vector<BodyArea> soreAreas(const CheckIn &checkIn);

/// Mean of sleep, stress, motivation and the sorest area, 1..5; empty when nothing was asked.
/// The sorest area alone stands for soreness, so that a sore back is not thinned out by the areas
/// that are well.
[[nodiscard]] std::optional<double> readiness(const CheckIn &checkIn);

/// Below this readiness the day is no usual one (common practice, no source).
inline constexpr double kLowReadiness = 2.5;

/// The five steps of an item in words, from 1 to 5.
[[nodiscard]] QStringList sleepSteps();
[[nodiscard]] QStringList stressSteps();
[[nodiscard]] QStringList motivationSteps();
[[nodiscard]] QStringList sorenessSteps();

/// Where it hurts, in words; never empty.
[[nodiscard]] QString words(const PainFlag &pain);

/// What is wrong, in words a coach can act on; empty when sound.
[[nodiscard]] QStringList problems(const CheckIn &checkIn);

} // namespace core
