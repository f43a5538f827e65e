#pragma once

#include "core/domain/variation.h"

#include <QString>
#include <span>
#include <vector>

/// What an editor of set lines offers while the coach types.
namespace core {

struct Completion
{
    QString insert; ///< goes in place of the `replaces` characters before the cursor
    int replaces = 0;
    QString explanation; ///< a few words
    friend bool operator==(const Completion &, const Completion &) = default;
};

/// What may follow at the cursor, likeliest first. Where a word has been begun, only what begins
/// so. Nothing where the text before the cursor is wrong already, and inside a note. Each insertion
/// leaves a line that can be read or that only lacks what is offered next.
/// @param cursor     characters before the cursor, 0 .. text.size()
/// @param catalogue  for the codes of lead-rep sets; may be empty
[[nodiscard]] std::vector<Completion> completions(
    const QString &text, int cursor, std::span<const Variation> catalogue = {});

} // namespace core
