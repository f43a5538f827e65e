#pragma once

#include "core/domain/session.h"
#include "core/domain/units.h"

#include <QString>
#include <QStringList>
#include <optional>

/// A set in words, and how it differs from what was asked for.
namespace core {

/// What was asked for, as far as it was; variations by name.
struct SetAsked
{
    QString variation; ///< empty = nothing was planned: an extra set
    std::optional<double> loadKg = {};
    std::optional<int> reps = {};
    std::optional<double> rpe = {};
    std::optional<int> leadReps = {};
};

/// "1 rep", "5 reps"
[[nodiscard]] QString repsWords(int reps);
/// "5 x 102.5 kg"
[[nodiscard]] QString workWords(int reps, double loadKg, Unit unit);

/// "3 x 100 kg, RPE 8, touch 2"
/// @param leadName  of the variation of the lead reps; empty = no lead-rep set
[[nodiscard]] QString doneWords(
    const SetEntry &done, Unit unit, const QString &leadName = {}, int leadReps = 0);

/// "2.5 kg lighter", "missed a rep"; empty where all is as asked for.
/// @param variation  by name, as done
[[nodiscard]] QStringList differenceWords(
    const SetAsked &asked, const QString &variation, const SetEntry &done, Unit unit);

} // namespace core
