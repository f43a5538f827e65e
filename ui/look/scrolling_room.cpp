#include "ui/look/scrolling_room.h"

#include "ui/look/form_parts.h"

#include <QLayout>
#include <QScreen>
#include <QStyle>

namespace ui {

namespace {
constexpr QSize kLeast(320, 160);
}

ScrollingRoom::ScrollingRoom(QWidget *page)
{
    setFrameShape(NoFrame);
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setWidget(page);
    page->setAutoFillBackground(false);
    viewport()->setAutoFillBackground(false);
}

ScrollingRoom::ScrollingRoom(QLayout *layout)
    : ScrollingRoom(boxed(layout))
{
}

QSize ScrollingRoom::sizeHint() const
{
    QSize wanted = widget()->sizeHint();
    if (widget()->layout() && widget()->layout()->hasHeightForWidth())
        wanted.setHeight(
            std::max(wanted.height(), widget()->layout()->totalHeightForWidth(wanted.width())));
    return wanted;
}

QSize ScrollingRoom::minimumSizeHint() const
{
    return widget()->minimumSizeHint().boundedTo(kLeast);
}

QSize onScreen(const QSize &size, const QWidget &window)
{
    // What the window's frame takes of the screen is not known before it is shown.
    return size.boundedTo(window.screen()->availableSize()
        - QSize(0, 2 * window.style()->pixelMetric(QStyle::PM_TitleBarHeight)));
}

void sizeToScreen(QWidget &window, const QSize &wanted)
{
    window.resize(onScreen(wanted.isEmpty() ? window.sizeHint() : wanted, window));
}

void keepOnScreen(QWidget &window)
{
    if (window.isMaximized() || window.isFullScreen())
        return;
    window.resize(onScreen(window.size(), window));
    const QRect screen = window.screen()->availableGeometry();
    const QPoint most = screen.bottomRight() - QPoint(window.width() - 1, window.height() - 1);
    window.move(std::max(screen.left(), std::min(window.x(), most.x())),
        std::max(screen.top(), std::min(window.y(), most.y())));
}

} // namespace ui
