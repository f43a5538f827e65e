#pragma once

#include "core/strength/estimator.h"

#include <QString>

/// How far an estimate can be trusted, in the coach's words.
namespace core {

/// Whether loads may be prescribed from an estimate of this standing.
[[nodiscard]] bool carriesLoads(strength::Standing standing);

/// A few words for a badge: "too few sets".
[[nodiscard]] QString words(strength::Standing standing);

/// One sentence: what it means and what to do about it.
[[nodiscard]] QString advice(strength::Standing standing);

} // namespace core
