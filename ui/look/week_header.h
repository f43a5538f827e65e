#pragma once

#include <QDate>
#include <QWidget>

class QLabel;
class QMenu;

namespace ui {

/// Which week is shown, and the way to the others. Page Up and Page Down with Ctrl turn it too.
class WeekHeader : public QWidget
{
    Q_OBJECT

public:
    explicit WeekHeader(QWidget *parent = nullptr);

    void show(QDate monday, const QString &totals);
    /// A button at the end of the row.
    void addMenu(const QString &text, QMenu *menu);
    using QWidget::show;

Q_SIGNALS:
    void weekWanted(QDate day);
    void thisWeekWanted();

private:
    QDate m_monday;
    QLabel *m_title;
    QLabel *m_totals;
};

/// "2 - 8 March 2026, week 10" in the user's locale; weeks by ISO 8601.
[[nodiscard]] QString weekTitle(QDate monday);

} // namespace ui
