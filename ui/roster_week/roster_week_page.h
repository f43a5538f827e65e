#pragma once

#include <QWidget>

class QTableView;

namespace ui {

class CellDelegate;
class Estimates;
class Insights;
class OpenRoster;
class RosterWeekModel;
class Selection;
class WeekHeader;

/// The coming week of all lifters in one table, edited in place; cells are copied and pasted as
/// text.
class RosterWeekPage : public QWidget
{
    Q_OBJECT

public:
    RosterWeekPage(OpenRoster &roster, Estimates &estimates, const Insights &insights,
        Selection &selection, QWidget *parent = nullptr);

    [[nodiscard]] QTableView &table() { return *m_table; }
    [[nodiscard]] RosterWeekModel &model() { return *m_model; }

Q_SIGNALS:
    void said(const QString &words);
    /// Show this lifter's week board.
    void lifterWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void showEvent(QShowEvent *event) override;

private:
    void copy();
    void paste();
    void clear();
    void showWeek();
    void addHelp();

    OpenRoster &m_roster;
    Selection &m_selection;
    RosterWeekModel *m_model;
    CellDelegate *m_delegate;
    WeekHeader *m_header;
    QTableView *m_table;
};

} // namespace ui
