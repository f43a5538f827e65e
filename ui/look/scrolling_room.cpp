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

} // namespace ui
