#pragma once

#include "core/domain/edit.h"

/// What a coach does to lifters, as edits.
namespace core {

/// `lifter` carries its new id.
[[nodiscard]] Edit addLifter(const Lifter &lifter);

/// Empty when nothing changed.
[[nodiscard]] Edit changeLifter(const Lifter &before, const Lifter &after);

/// Archived lifters keep their log and leave the list; restoring brings them back.
[[nodiscard]] Edit setArchived(const Lifter &lifter, bool archived);

} // namespace core
