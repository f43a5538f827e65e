#pragma once

#include "core/domain/edit.h"

/// What a coach does to lifters, as edits.
namespace ui {

/// `lifter` carries its new id.
[[nodiscard]] core::Edit addLifter(const core::Lifter &lifter);

/// Empty when nothing changed.
[[nodiscard]] core::Edit changeLifter(const core::Lifter &before, const core::Lifter &after);

/// Archived lifters keep their log and leave the list; restoring brings them back.
[[nodiscard]] core::Edit setArchived(const core::Lifter &lifter, bool archived);

} // namespace ui
