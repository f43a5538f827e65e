#pragma once

#include <QDate>
#include <QWidget>

class QLabel;

namespace ui {

class FieldNote;

/// Which day is shown, and the way to the others. Page Up and Page Down with Ctrl turn it too.
class DayHeader : public QWidget
{
    Q_OBJECT

public:
    explicit DayHeader(QWidget *parent = nullptr);

    /// Says how far the day is from today, where it is another.
    void show(QDate day, QDate today, const QString &progress);
    using QWidget::show;

Q_SIGNALS:
    void dayWanted(QDate day);
    void todayWanted();

private:
    QDate m_day;
    QLabel *m_title;
    FieldNote *m_notToday;
    QLabel *m_progress;
};

} // namespace ui
