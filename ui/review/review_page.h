#pragma once

#include "core/domain/roster_change.h"
#include "core/domain/variation.h"
#include "ui/charts/time_window.h"
#include "ui/review/measure_series.h"
#include "ui/review/strength_series.h"

#include <QWidget>
#include <vector>

class QLabel;
class QStackedWidget;

namespace ui {

class ChoiceRow;
class CompareButton;
class Estimates;
class Insights;
class LifterHistory;
class OpenRoster;
class RangeRow;
class ReviewCharts;
class ReviewSide;
class Selection;

/// Whether training worked: the estimated max with the sets behind it, and the weekly work, of one
/// lift of the lifter that is selected, over a shared time axis.
class ReviewPage : public QWidget
{
    Q_OBJECT

public:
    ReviewPage(OpenRoster &roster, Estimates &estimates, Insights &insights, LifterHistory &history,
        Selection &selection, QWidget *parent = nullptr);

    void showLift(core::Lift lift);

protected:
    void showEvent(QShowEvent *event) override;

private:
    [[nodiscard]] QWidget *makeTopBar();
    void connectParts();
    void setKnowledge(Knowledge knowledge);
    void follow(const core::RosterChange &change);
    void refresh();
    /// What the chart of measures shows of the lifter and lift chosen.
    [[nodiscard]] MeasureContent measured(Measure measure);
    void showMessage(const QString &words);
    void showTrend();
    void showDone(const core::Lifter &lifter);

    OpenRoster &m_roster;
    Estimates &m_estimates;
    Insights &m_insights;
    LifterHistory &m_history;
    Selection &m_selection;
    TimeWindow m_window;
    bool m_stale = true; ///< something changed while the page was hidden
    core::Lift m_lift = core::Lift::bench;
    Knowledge m_knowledge = Knowledge::now;
    core::Unit m_unit = core::Unit::kilogram;
    std::vector<WeekPoint> m_weeks; ///< of the lift that is shown

    ChoiceRow *m_lifts;
    RangeRow *m_ranges;
    CompareButton *m_compare;
    ReviewCharts *m_charts;
    ReviewSide *m_side;
    QLabel *m_message;
    QStackedWidget *m_stack;
};

} // namespace ui
