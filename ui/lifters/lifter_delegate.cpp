#include "ui/lifters/lifter_delegate.h"

#include "ui/lifters/lifter_list_model.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"
#include "ui/look/touch_mark.h"

#include <QPainter>

namespace ui {

namespace {

constexpr int kMarkColumn = space::gap + space::mark + space::gap;

/// Draws `right` whole at the right end of `line` and `left`, elided, in what remains.
void drawLine(QPainter &painter, const QRect &line, const QString &left, const QFont &leftFont,
    const QColor &leftColour, const QString &right, const QFont &rightFont,
    const QColor &rightColour)
{
    const QFontMetrics rightMetrics(rightFont);
    const int rightWidth = right.isEmpty() ? 0 : rightMetrics.horizontalAdvance(right);
    painter.setFont(rightFont);
    painter.setPen(rightColour);
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, right);

    QRect rest = line;
    rest.setRight(line.right() - rightWidth - (rightWidth > 0 ? space::gap : 0));
    painter.setFont(leftFont);
    painter.setPen(leftColour);
    painter.drawText(rest, Qt::AlignLeft | Qt::AlignVCenter,
        QFontMetrics(leftFont).elidedText(left, Qt::ElideRight, rest.width()));
}

} // namespace

void LifterDelegate::paint(
    QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const Colours &c = colours(option.palette);
    const bool chosen = option.state & QStyle::State_Selected;
    const bool hovered = option.state & QStyle::State_MouseOver;
    painter->save();
    if (chosen || hovered)
        painter->fillRect(option.rect, chosen ? c.chosen : c.sunken);
    if (chosen)
        painter->fillRect(QRect(option.rect.topLeft(), QSize(3, option.rect.height())), c.accent);

    const QFont name = font(Type::strong, option.font);
    const QFont small = font(Type::small, option.font);
    const bool archived = index.data(LifterListModel::ArchivedRole).toBool();
    const bool trusted = index.data(LifterListModel::TrustedRole).toBool();
    const QColor text = chosen ? c.onChosen : c.text;

    QRect content = option.rect.adjusted(kMarkColumn, 0, -space::gap, 0);
    QRect top = content;
    top.setHeight(content.height() / 2);
    top.adjust(0, space::tight, 0, 0);
    QRect bottom = content;
    bottom.setTop(top.bottom() + 1);
    bottom.adjust(0, 0, 0, -space::tight);

    const auto style =
        static_cast<core::TouchStyle>(index.data(LifterListModel::TouchStyleRole).toInt());
    paintTouchMark(*painter,
        QRectF(option.rect.left() + space::gap + 2, top.center().y() - space::mark / 2.0,
            space::mark, space::mark),
        style, option.palette);
    drawLine(*painter, top, index.data().toString(), name, archived ? c.mutedText : text,
        index.data(LifterListModel::EstimateRole).toString(), option.font,
        trusted ? text : c.mutedText);

    QStringList below{core::words(style)};
    if (archived)
        below << tr("archived");
    else if (const QString meet = index.data(LifterListModel::MeetRole).toString(); !meet.isEmpty())
        below << meet;
    drawLine(*painter, bottom, below.join(QStringLiteral(" · ")), small, c.mutedText,
        index.data(LifterListModel::StandingRole).toString(), small, c.mutedText);

    if (option.state & QStyle::State_HasFocus && option.state & QStyle::State_KeyboardFocusChange) {
        painter->setPen(QPen(c.accent, 1.5));
        painter->drawRect(QRectF(option.rect).adjusted(1, 1, -1, -1));
    }
    painter->restore();
}

QSize LifterDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &) const
{
    const int lines = QFontMetrics(font(Type::strong, option.font)).height()
        + QFontMetrics(font(Type::small, option.font)).height();
    return {240, lines + space::hair + 2 * space::tight};
}

} // namespace ui
