#include "ui/look/roomy_delegate.h"

#include "ui/look/metrics.h"

namespace ui {

namespace {
constexpr QMargins kRoom(space::tight, space::tight, space::tight, space::tight);
} // namespace

void RoomyDelegate::paint(
    QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QStyleOptionViewItem inner = option; // the view has painted the ground of the whole row
    inner.rect = option.rect.marginsRemoved(kRoom);
    QStyledItemDelegate::paint(painter, inner, index);
}

QSize RoomyDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    QStyleOptionViewItem inner = option;
    inner.rect = option.rect.marginsRemoved(kRoom); // text wraps to the width inside
    return QStyledItemDelegate::sizeHint(inner, index).grownBy(kRoom);
}

} // namespace ui
