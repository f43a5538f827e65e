#include "ui/look/elided_tips.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QHelpEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QStyleOptionComboBox>
#include <QToolTip>

namespace ui {

namespace {

QString ifWider(const QString &text, const QFontMetrics &metrics, int room)
{
    const QString plain = QString(text).remove(u'&');
    return metrics.size(0, plain).width() > room ? plain : QString();
}

/// The text of the cell or the header that the viewport shows there, where it is cut.
QString cutIn(const QAbstractItemView &view, const QPoint &at)
{
    if (const auto *header = qobject_cast<const QHeaderView *>(&view)) {
        const int section = header->logicalIndexAt(at);
        if (section < 0)
            return {};
        const QString text = header->model()->headerData(section, header->orientation()).toString();
        const bool isCut = header->orientation() == Qt::Horizontal
            ? header->sectionSizeHint(section) > header->sectionSize(section)
            : header->sizeHint().width() > header->width();
        return isCut ? ifWider(text, header->fontMetrics(), 0) : QString();
    }
    const QModelIndex index = view.indexAt(at);
    if (!index.data(Qt::ToolTipRole).toString().isEmpty())
        return {};
    const QSize room = view.visualRect(index).size();
    const QSize wanted = view.sizeHintForIndex(index);
    return wanted.width() > room.width() || wanted.height() > room.height()
        ? index.data().toString()
        : QString();
}

/// What the widget cuts off; empty when it shows all.
QString cutText(const QWidget &widget, const QPoint &at)
{
    if (const auto *box = qobject_cast<const QComboBox *>(&widget)) {
        QStyleOptionComboBox option;
        option.initFrom(box);
        const QRect field = box->style()->subControlRect(
            QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, box);
        return ifWider(box->currentText(), box->fontMetrics(), field.width());
    }
    if (const auto *button = qobject_cast<const QPushButton *>(&widget))
        return button->sizeHint().width() > button->width()
            ? ifWider(button->text(), button->fontMetrics(), 0)
            : QString();
    if (const auto *field = qobject_cast<const QLineEdit *>(&widget))
        return field->text().isEmpty()
            ? ifWider(field->placeholderText(), field->fontMetrics(), field->contentsRect().width())
            : QString();
    const auto *view = qobject_cast<const QAbstractItemView *>(widget.parentWidget());
    return view && view->viewport() == &widget ? cutIn(*view, at) : QString();
}

/// The tip that would be shown there.
QString tipAt(const QWidget &widget, const QPoint &at)
{
    const auto *view = qobject_cast<const QAbstractItemView *>(widget.parentWidget());
    if (!view || view->viewport() != &widget)
        return widget.toolTip();
    if (const auto *header = qobject_cast<const QHeaderView *>(view))
        return header->model()
            ->headerData(header->logicalIndexAt(at), header->orientation(), Qt::ToolTipRole)
            .toString();
    return view->indexAt(at).data(Qt::ToolTipRole).toString();
}

} // namespace

ElidedTips::ElidedTips(QObject *parent)
    : QObject(parent)
{
    qApp->installEventFilter(this);
}

bool ElidedTips::eventFilter(QObject *watched, QEvent *event)
{
    auto *widget = qobject_cast<QWidget *>(watched);
    if (event->type() != QEvent::ToolTip || !widget)
        return false;
    const auto &asked = *static_cast<const QHelpEvent *>(event);
    const QString cut = cutText(*widget, asked.pos());
    if (cut.isEmpty()) {
        // Words of a coach or a sheet that read as HTML would be laid out, and its pictures loaded.
        const QString tip = tipAt(*widget, asked.pos());
        if (!Qt::mightBeRichText(tip))
            return false;
        showPlainTip(asked, tip, widget);
        return true;
    }
    showPlainTip(asked,
        widget->toolTip().isEmpty() ? cut : cut + QStringLiteral("\n") + widget->toolTip(), widget);
    return true;
}

void showPlainTip(const QHelpEvent &asked, const QString &words, QWidget *widget)
{
    QToolTip::showText(asked.globalPos(),
        QStringLiteral("<p style='white-space:pre-wrap'>%1</p>").arg(words.toHtmlEscaped()),
        widget);
}

} // namespace ui
