#pragma once

#include <QScrollArea>

namespace ui {

class DayHeaders;
class WeekGrid;
class WeekPlan;

/// The week grid under the heads of its days, which stay when the grid scrolls.
class WeekBoard : public QScrollArea
{
    Q_OBJECT

public:
    explicit WeekBoard(WeekPlan &plan, QWidget *parent = nullptr);

    [[nodiscard]] WeekGrid &grid() { return *m_grid; }

protected:
    void resizeEvent(QResizeEvent *event) override;
    bool viewportEvent(QEvent *event) override;

private:
    void placeHeaders();

    WeekGrid *m_grid;
    DayHeaders *m_headers;
};

} // namespace ui
