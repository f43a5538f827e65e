#pragma once

#include "core/log/outcome.h"
#include "ui/roster/roster_work.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace ui {

class Estimates;
class OpenRoster;
class SquadFilter;
class SquadModel;

/// All lifters on one screen, whoever needs the coach first on top. Enter or a double click opens
/// the reason.
class SquadPage final : public QWidget
{
    Q_OBJECT

public:
    SquadPage(OpenRoster &roster, Estimates &estimates, QWidget *parent = nullptr);

    [[nodiscard]] QTableView &table() { return *m_table; }

Q_SIGNALS:
    /// @param plan  the reason is a matter of the plan; else of what was done
    void reasonAskedFor(core::LifterId lifter, bool plan);

protected:
    void showEvent(QShowEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] QWidget *makeTopBar();
    void makeTable();
    void refresh();
    void workOutAdherence();
    void showCount();
    void showWhy();
    void openReason(const QModelIndex &index);

    OpenRoster &m_roster;
    Estimates &m_estimates;
    SquadModel *m_model;
    SquadFilter *m_filter;
    QTableView *m_table;
    QLabel *m_count;
    QLabel *m_why;
    RosterWork<std::map<core::LifterId, core::Adherence>> m_adherence;
    bool m_stale = true; ///< something changed while the page was hidden
};

} // namespace ui
