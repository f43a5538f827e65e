#pragma once

#include "core/advice/open_stops.h"

#include <QWidget>

class QStackedWidget;
class QTabWidget;

namespace ui {

class AdvicePanel;
class BlockDesk;
class BlockRibbon;
class ChecksPanel;
class Estimates;
class Insights;
class KeepQuestion;
class LifterHistory;
class OpenRoster;
class Selection;
class VariationShelf;
class WeekBoard;
class WeekHeader;
class WeekPlan;

/// The week board of the selected lifter under its block ribbon; beside it the variation shelf, the
/// advice on which to take, and the plan checks.
class WeekBoardPage : public QWidget
{
    Q_OBJECT

public:
    WeekBoardPage(OpenRoster &roster, Estimates &estimates, const Insights &insights,
        LifterHistory &history, Selection &selection, QWidget *parent = nullptr);

    [[nodiscard]] const WeekPlan &plan() const { return *m_plan; }
    [[nodiscard]] WeekPlan &plan() { return *m_plan; }
    /// What the checks stop in the week shown, and the coach has not accepted.
    [[nodiscard]] std::vector<core::OpenStop> openStops() const;

Q_SIGNALS:
    /// Why something was not done.
    void said(const QString &words);

protected:
    /// The focus is for the place on the board where it was last.
    void focusInEvent(QFocusEvent *event) override;

private:
    void showPlan();
    void showChecks();
    void addHelp();
    void beginAdding(const QString &typed);

    OpenRoster &m_roster;
    WeekPlan *m_plan;
    BlockDesk *m_blocks;
    BlockRibbon *m_ribbon;
    QStackedWidget *m_stack;
    WeekHeader *m_header;
    WeekBoard *m_board;
    VariationShelf *m_shelf;
    AdvicePanel *m_advice;
    ChecksPanel *m_checks;
    QTabWidget *m_side;
    KeepQuestion *m_question; ///< about what is to be pasted
};

} // namespace ui
