#pragma once

#include <QScrollArea>

namespace ui {

class DayHeaders;
class WeekCommands;
class WeekGrid;
class WeekPlan;

/// The week grid under the heads of its days, which stay when the grid scrolls.
class WeekBoard : public QScrollArea
{
    Q_OBJECT

public:
    explicit WeekBoard(WeekPlan &plan, QWidget *parent = nullptr);

    [[nodiscard]] WeekGrid &grid() { return *m_grid; }
    [[nodiscard]] WeekCommands &commands() { return *m_commands; }

protected:
    void resizeEvent(QResizeEvent *event) override;
    bool viewportEvent(QEvent *event) override;

private:
    void placeHeaders();

    WeekGrid *m_grid;
    WeekCommands *m_commands;
    DayHeaders *m_headers;
};

} // namespace ui
