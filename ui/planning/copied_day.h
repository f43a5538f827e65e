#pragma once

#include "core/domain/lifter.h"
#include "core/notation/card_text.h"

#include <QString>
#include <vector>

/// A day on the clipboard: its cards as text, which any program can show, and beside it whose they
/// are, since loads in kg or lb are nobody else's.
namespace ui {

struct CopiedDay
{
    std::vector<core::CardRow> rows;
    core::LifterId from; ///< invalid where the clipboard does not say
    QString refused;     ///< why it cannot be read as cards; then there are no rows
};

/// @param cards  as core::cardText() writes them
void copyDay(const QString &cards, const core::Lifter &lifter);

/// What the clipboard holds.
[[nodiscard]] CopiedDay copiedDay(
    const std::vector<core::Variation> &catalogue, const std::vector<core::Lifter> &lifters);

} // namespace ui
