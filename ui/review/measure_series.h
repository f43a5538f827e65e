#pragma once

#include "core/domain/check_in.h"
#include "core/review/week_measures.h"
#include "core/strength/touch_hold.h"
#include "ui/review/strength_series.h"

#include <QByteArray>
#include <QString>
#include <optional>
#include <span>
#include <vector>

/// What the review's third chart can show, as values.
namespace ui {

enum class Measure {
    intensity, ///< average intensity
    zones,     ///< reps by zone of intensity
    tension,   ///< time under tension
    monotony,  ///< monotony and strain
    planned,   ///< planned against done
    ratios,    ///< each variation's max to the competition max
    touchHold,
    readiness,
    compare ///< estimated max of several lifters
};
inline constexpr int kMeasures = 9;

struct MeasureWords
{
    QString name;        ///< as the coach chooses it
    QString explanation; ///< what it is, where it is from and what is disputed about it
    QString nothing;     ///< why there may be nothing of it, and what to do
};
[[nodiscard]] MeasureWords words(Measure measure);

struct MeasurePoint
{
    double day = 0.0; ///< days since 1970-01-01
    double value = 0.0;
    std::optional<double> low90, high90;

    friend bool operator==(const MeasurePoint &, const MeasurePoint &) = default;
};

struct MeasureLine
{
    QString name;
    std::vector<MeasurePoint> points; ///< by day

    friend bool operator==(const MeasureLine &, const MeasureLine &) = default;
};

/// No more lines than can be told apart.
inline constexpr size_t kMostLines = 6;

struct MeasureContent
{
    QString unit; ///< for the axis; may be empty
    int decimals = 0;
    bool fromZero = true;
    std::vector<MeasureLine> lines = {}; ///< at most kMostLines, none empty
    QString nothing = {};                ///< without lines: why, and what to do
};

struct ComparedLifter
{
    QString name;
    const core::LiftEstimate *lift = nullptr; ///< null = not estimated yet
};

/// One lift of one lifter.
struct MeasureSources
{
    const core::LiftEstimate &lift;
    std::span<const core::Variation> catalogue;
    std::span<const core::Card> cards;       ///< of the lifter
    std::span<const core::CheckIn> checkIns; ///< of the lifter
    const strength::TouchRoster &touch;
    core::TouchStyle style = core::TouchStyle::undecided;
    core::Unit unit = core::Unit::kilogram;
    Knowledge knowledge = Knowledge::now;
    std::vector<ComparedLifter> compared = {}; ///< the lifter first
};

[[nodiscard]] MeasureContent measureContent(Measure measure, const MeasureSources &sources);

/// The lines as CSV (RFC 4180): `day,line,value,low90,high90`, ISO days, decimal points.
[[nodiscard]] QByteArray measureCsv(const MeasureContent &content);

} // namespace ui
