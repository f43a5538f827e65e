#pragma once

#include "app/commands/console.h"
#include "core/domain/lifter.h"

#include <optional>
#include <vector>

namespace app {

/// The lifter named, whatever the case, or, without a name, all who train. Empty after a complaint
/// when there is none of the name.
[[nodiscard]] std::optional<std::vector<core::Lifter>> chosenLifters(const QString &roster,
    const QString &name, const std::vector<core::Lifter> &all, Console &console);

} // namespace app
