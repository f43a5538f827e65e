#pragma once

#include <QToolButton>

namespace ui {

struct DayView;

/// The empty slot below a day's cards.
class DaySlot : public QToolButton
{
    Q_OBJECT

public:
    explicit DaySlot(QWidget *board);

    /// Named for a screen reader with what the day's head says.
    void show(const DayView &day);
    using QToolButton::show;
};

} // namespace ui
