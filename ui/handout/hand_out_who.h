#pragma once

#include "core/domain/lifter.h"

#include <QString>
#include <optional>
#include <vector>

namespace ui {

/// One answer to "who gets a hand-out?".
struct HandOutWho
{
    QString words;
    std::vector<core::LifterId> lifters;

    friend bool operator==(const HandOutWho &, const HandOutWho &) = default;
};

/// All who train, each group, and the lifter selected in the window; archived ones train no more.
/// Answers that hold nobody are left out.
[[nodiscard]] std::vector<HandOutWho> whoGetsOne(
    const std::vector<core::Lifter> &lifters, core::LifterId selected);

} // namespace ui
