#pragma once

#include <QScrollArea>

class QLayout;

namespace ui {

/// Holds a page that is scrolled both ways where there is less room than it needs, and is not to be
/// noticed elsewhere: a window with it fits every screen.
class ScrollingRoom final : public QScrollArea
{
    Q_OBJECT

public:
    explicit ScrollingRoom(QWidget *page);
    /// The page is what is laid out so.
    explicit ScrollingRoom(QLayout *layout);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
};

/// The size, as far as the screen that the window is on has room for it and for a title.
[[nodiscard]] QSize onScreen(const QSize &size, const QWidget &window);

/// Opens the window at the size, or at what it needs where none is given, as far as the screen
/// goes.
void sizeToScreen(QWidget &window, const QSize &wanted = {});

/// Makes the window as small as its screen, if it is larger, and moves it onto it.
void keepOnScreen(QWidget &window);

} // namespace ui
