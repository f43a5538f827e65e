#pragma once

#include "core/domain/touch_style.h"

#include <QIcon>
#include <QPainterPath>
#include <QRectF>

class QPainter;
class QPalette;

/// Marks of the touch styles. Each has a shape of its own besides its colour, and stands beside its
/// word wherever there is room: soft = an open ring, sinking = a filled triangle pointing down into
/// the chest, both = a filled diamond, undecided = a short bar.
namespace ui {

/// The shape inside `box` (its largest centred square). Filled by paintTouchMark.
[[nodiscard]] QPainterPath touchMarkPath(const QRectF &box, core::TouchStyle style);
[[nodiscard]] QPainterPath touchMarkPath(const QRectF &box, core::Serves serves);

void paintTouchMark(
    QPainter &painter, const QRectF &box, core::TouchStyle style, const QPalette &palette);
void paintTouchMark(
    QPainter &painter, const QRectF &box, core::Serves serves, const QPalette &palette);

/// The mark as an icon for combo boxes, lists and labels.
[[nodiscard]] QIcon touchMarkIcon(core::TouchStyle style, const QPalette &palette);
[[nodiscard]] QIcon touchMarkIcon(core::Serves serves, const QPalette &palette);

} // namespace ui
