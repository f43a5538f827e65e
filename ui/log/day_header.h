#pragma once

#include <QDate>
#include <QWidget>

class QLabel;

namespace ui {

/// Which day is shown, and the way to the others. Page Up and Page Down with Ctrl turn it too.
class DayHeader : public QWidget
{
    Q_OBJECT

public:
    explicit DayHeader(QWidget *parent = nullptr);

    void show(QDate day, const QString &progress);
    using QWidget::show;

Q_SIGNALS:
    void dayWanted(QDate day);
    void todayWanted();

private:
    QDate m_day;
    QLabel *m_title;
    QLabel *m_progress;
};

} // namespace ui
