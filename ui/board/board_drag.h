#pragma once

#include "core/domain/ids.h"

#include <QMimeData>
#include <memory>
#include <variant>

/// What is dragged within the window: a variation from the shelf or a card of the board.
namespace ui {

using Dragged = std::variant<std::monostate, core::VariationId, core::CardId>;

[[nodiscard]] std::unique_ptr<QMimeData> mimeOf(core::VariationId variation);
[[nodiscard]] std::unique_ptr<QMimeData> mimeOf(core::CardId card);

/// Nothing for data from elsewhere, other windows of ours included: ids mean nothing in them.
[[nodiscard]] Dragged draggedIn(const QMimeData *mime);

[[nodiscard]] QString variationMimeType();

} // namespace ui
