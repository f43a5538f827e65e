#pragma once

#include <QWidget>

namespace ui {

class WeekPlan;

/// The heads of the seven columns: day, date and the day's totals.
class DayHeaders : public QWidget
{
    Q_OBJECT

public:
    explicit DayHeaders(WeekPlan &plan, QWidget *parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void menuWanted(int day, QPoint globalPos);

protected:
    void contextMenuEvent(QContextMenuEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    WeekPlan &m_plan;
};

} // namespace ui
