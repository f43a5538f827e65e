#pragma once

#include "core/domain/lifter.h"

#include <QMap>
#include <optional>
#include <vector>

/// A lifter as typed: text where the coach types, so that a slip can be said beside its field.
/// Weights are in the draft's unit and the user's locale.
namespace ui {

struct PlateDraft
{
    QString plate;
    QString pairs;

    friend bool operator==(const PlateDraft &, const PlateDraft &) = default;
};

struct GearDraft
{
    QString bar;
    QString collars;
    std::vector<PlateDraft> plates;

    friend bool operator==(const GearDraft &, const GearDraft &) = default;
};

struct LifterDraft
{
    QString name;
    core::Sex sex = core::Sex::unstated;
    QString birthYear;
    bool isAdult = false;
    std::optional<QDate> trainingSince;
    QString bodyweight;
    core::Unit unit = core::Unit::kilogram;
    core::TouchStyle touchStyle = core::TouchStyle::undecided;
    QString gripNote;
    GearDraft gear;
    QString groups; ///< with commas between
    std::optional<QDate> meetDate;
    QString notes;
};

enum class LifterField { name, birthYear, bodyweight, bar, collars, plates };

/// The lifter that the draft means, and what is wrong by field. Sound when `problems` is empty.
struct LifterReading
{
    core::Lifter lifter;
    QMap<LifterField, QString> problems;
};

[[nodiscard]] LifterDraft draftOf(const core::Lifter &lifter);

/// @param before      the lifter that the draft started from; its id, and the exact weight behind a
///                    text that was left alone, are kept
/// @param otherNames  names that are taken, archived lifters' too
/// @param today       nobody is born in a later year
[[nodiscard]] LifterReading read(const LifterDraft &draft, const core::Lifter &before,
    const QStringList &otherNames, QDate today);

[[nodiscard]] GearDraft gearDraft(const core::Gear &gear, core::Unit unit);

/// The same lifter in another unit. Weights are converted, but the usual plates of the one unit
/// become the usual ones of the other: a gym has one or the other.
[[nodiscard]] core::Lifter inUnit(core::Lifter lifter, core::Unit unit);

/// A caution to show beside age and training; empty for adults who train for a year and more.
[[nodiscard]] QString ageCaution(const core::Lifter &lifter, QDate today);

} // namespace ui
