#include "ui/board/shelf_delegate.h"

#include "ui/board/shelf_model.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"
#include "ui/look/touch_mark.h"

#include <QAbstractItemView>
#include <QPainter>

namespace ui {

namespace {

constexpr int kPadding = 6;
constexpr int kIndent = space::mark + space::gap;

struct ShelfText
{
    Type type;
    int indent;
    QString text;
    bool muted;
};

std::vector<ShelfText> textsOf(const ShelfRow &row)
{
    if (!row.variation)
        return {{Type::small, 0, row.head, true}};
    std::vector<ShelfText> texts{{Type::strong, kIndent, row.variation->name, false}};
    if (!row.variation->purpose.isEmpty())
        texts.push_back({Type::small, kIndent, row.variation->purpose, true});
    texts.push_back({Type::small, kIndent, shelfDetails(*row.variation), true});
    return texts;
}

/// Calls `place(text, rect)` for each text from the top and returns the bottom.
template <class Place>
int layTexts(const ShelfRow &row, const QRect &rect, const QFont &body, Place place)
{
    int y = rect.top() + kPadding;
    for (const ShelfText &text : textsOf(row)) {
        const QRect room(rect.left() + kPadding + text.indent, y,
            rect.width() - 2 * kPadding - text.indent, 10000);
        const QFontMetrics metrics(font(text.type, body));
        const QRect used = metrics.boundingRect(room, Qt::TextWordWrap, text.text);
        place(text, QRect(room.topLeft(), QSize(room.width(), used.height())));
        y += used.height() + 1;
    }
    return y + kPadding;
}

const ShelfRow &rowAt(const QModelIndex &index)
{
    return static_cast<const ShelfModel *>(index.model())->row(index);
}

} // namespace

void ShelfDelegate::paint(
    QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const ShelfRow &row = rowAt(index);
    const Colours &look = colours(option.palette);
    const bool chosen = row.variation && option.state.testFlag(QStyle::State_Selected);
    painter->save();
    if (chosen)
        painter->fillRect(option.rect, look.chosen);
    else if (!row.variation)
        painter->fillRect(option.rect, look.sunken);
    else if (option.state.testFlag(QStyle::State_MouseOver))
        painter->fillRect(option.rect, look.window);
    if (row.variation) {
        const int nameHeight = QFontMetrics(font(Type::strong, option.font)).height();
        const QRect mark(option.rect.left() + kPadding,
            option.rect.top() + kPadding + (nameHeight - space::mark) / 2, space::mark,
            space::mark);
        paintTouchMark(*painter, mark, row.variation->serves, option.palette);
    }
    layTexts(row, option.rect, option.font, [&](const ShelfText &text, const QRect &rect) {
        painter->setFont(font(text.type, option.font));
        painter->setPen(chosen ? look.onChosen : text.muted ? look.mutedText : look.text);
        painter->drawText(rect, Qt::TextWordWrap, text.text);
    });
    painter->restore();
}

QSize ShelfDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const auto *view = qobject_cast<const QAbstractItemView *>(option.widget);
    const int width = view ? view->viewport()->width() : option.rect.width();
    const int height = layTexts(
        rowAt(index), QRect(0, 0, width, 0), option.font, [](const ShelfText &, const QRect &) {});
    return {width, height};
}

} // namespace ui
