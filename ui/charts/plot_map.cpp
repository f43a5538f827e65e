#include "ui/charts/plot_map.h"

#include <algorithm>

namespace ui {

namespace {
constexpr double kDistance = 12.0; ///< between anchor and box, px
} // namespace

QRectF placeBeside(const QPointF &anchor, const QSizeF &box, const QRectF &bounds)
{
    double left = anchor.x() + kDistance;
    if (left + box.width() > bounds.right())
        left = anchor.x() - kDistance - box.width();
    double top = anchor.y() - kDistance - box.height();
    if (top < bounds.top())
        top = anchor.y() + kDistance;
    left = std::clamp(left, bounds.left(), std::max(bounds.left(), bounds.right() - box.width()));
    top = std::clamp(top, bounds.top(), std::max(bounds.top(), bounds.bottom() - box.height()));
    return {QPointF(left, top), box};
}

} // namespace ui
