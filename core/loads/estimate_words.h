#pragma once

#include "core/strength/estimator.h"

#include <QDate>
#include <QString>

/// How far an estimate can be trusted, in the coach's words.
namespace core {

/// Whether loads may be prescribed from an estimate of this standing.
[[nodiscard]] bool carriesLoads(strength::Standing standing);

/// A few words for a badge: "too few sets".
[[nodiscard]] QString words(strength::Standing standing);
/// The same, and where it is out of date how long ago the last set was.
[[nodiscard]] QString words(const strength::LifterEstimate &estimate);

/// A sentence or two: what it means and what to do about it.
[[nodiscard]] QString advice(strength::Standing standing);
/// The same, and where it is out of date how long ago the last set was.
[[nodiscard]] QString advice(const strength::LifterEstimate &estimate);

/// Of a clock that is behind the log: what it says, of when the newest set is, and what to do.
/// Empty where nothing is wrong.
/// @param newest  day of the newest set; invalid without any
[[nodiscard]] QString clockTrouble(QDate today, QDate newest);

} // namespace core
