#include "ui/look/words_label.h"

#include "ui/look/elided_tips.h"
#include "ui/look/wrapped_text.h"

#include <QHelpEvent>
#include <QPainter>
#include <QStyle>
#include <algorithm>

namespace ui {

namespace {
constexpr int kLeastWrapped = 120; ///< px
constexpr int kLeastElided = 60;
} // namespace

WrappedLabel::WrappedLabel(const QString &text)
    : QLabel(text)
{
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
}

int WrappedLabel::insets() const
{
    return 2 * (margin() + frameWidth());
}

QSize WrappedLabel::minimumSizeHint() const
{
    QSize least = QLabel::minimumSizeHint();
    if (!wordWrap())
        return least;
    if (isVisible()) // for what asks no height of a width, such as a splitter
        least.setHeight(heightForWidth(width()));
    return least.boundedTo({kLeastWrapped, QWIDGETSIZE_MAX});
}

void WrappedLabel::resizeEvent(QResizeEvent *event)
{
    QLabel::resizeEvent(event);
    if (event->oldSize().width() != width())
        updateGeometry();
}

bool WrappedLabel::needsBreaks(int width) const
{
    if (!wordWrap())
        return false;
    const QStringList words = text().split(u' ');
    return std::any_of(words.begin(), words.end(),
        [&](const QString &word) { return fontMetrics().size(0, word).width() > width; });
}

int WrappedLabel::heightForWidth(int width) const
{
    const int room = width - insets();
    if (!needsBreaks(room))
        return QLabel::heightForWidth(width);
    return wrappedTextSize(text(), font(), room).height() + insets();
}

void WrappedLabel::paintEvent(QPaintEvent *event)
{
    const QRect room = contentsRect().adjusted(margin(), margin(), -margin(), -margin());
    if (!needsBreaks(room.width())) {
        QLabel::paintEvent(event);
        return;
    }
    QPainter painter(this);
    drawFrame(&painter);
    painter.setPen(palette().color(foregroundRole()));
    QTextOption option = wrappedTextOption();
    option.setAlignment(alignment() & Qt::AlignHorizontal_Mask);
    QRect place = room;
    if (alignment() & Qt::AlignVCenter)
        place.setTop(room.top()
            + std::max(
                0, (room.height() - wrappedTextSize(text(), font(), room.width()).height()) / 2));
    painter.drawText(QRectF(place), text(), option);
}

ElidedLabel::ElidedLabel(const QString &text)
    : QLabel(text)
{
    setTextFormat(Qt::PlainText);
}

QSize ElidedLabel::minimumSizeHint() const
{
    return QLabel::minimumSizeHint().boundedTo({kLeastElided, QWIDGETSIZE_MAX});
}

QString ElidedLabel::shown() const
{
    return fontMetrics().elidedText(
        QString(text()).replace(u'\n', u' '), Qt::ElideRight, contentsRect().width());
}

bool ElidedLabel::event(QEvent *event)
{
    if (event->type() != QEvent::ToolTip || shown() == text())
        return QLabel::event(event);
    // Plain, whatever a coach wrote; and what the label itself has to tell comes below.
    const QString tip = toolTip().isEmpty() ? text() : text() + QStringLiteral("\n") + toolTip();
    showPlainTip(*static_cast<QHelpEvent *>(event), tip, this);
    return true;
}

void ElidedLabel::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    style()->drawItemText(&painter, contentsRect(), int(alignment()), palette(), isEnabled(),
        shown(), foregroundRole());
}

} // namespace ui
