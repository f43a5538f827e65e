#pragma once

#include <QDate>
#include <QWidget>

class QLabel;
class QStackedWidget;
class QTableView;

namespace ui {

class AdviceBox;
class CheckInForm;
class DayHeader;
class DayLog;
class EntryPanel;
class Estimates;
class Insights;
class LogDesk;
class LogTableModel;
class LifterHistory;
class OpenRoster;
class Selection;

/// The session log of the selected lifter: a day's sets, planned beside done, the field that logs
/// them, and the check-in before training.
class LogPage : public QWidget
{
    Q_OBJECT

public:
    LogPage(OpenRoster &roster, Estimates &estimates, Insights &insights, LifterHistory &history,
        Selection &selection, QWidget *parent = nullptr);

    void showDay(QDate day);

protected:
    bool event(QEvent *event) override;

private:
    [[nodiscard]] QWidget *setsColumn();
    [[nodiscard]] QWidget *checkInColumn();
    void showDesk();

    DayLog *m_log;
    LogDesk *m_desk;
    LogTableModel *m_model;
    DayHeader *m_header;
    AdviceBox *m_advice;
    EntryPanel *m_entry;
    QLabel *m_empty;
    QTableView *m_table;
    CheckInForm *m_checkIn;
    QStackedWidget *m_stack;
};

} // namespace ui
