#pragma once

#include "core/domain/roster_change.h"
#include "core/domain/variation.h"
#include "ui/charts/time_window.h"
#include "ui/review/measure_series.h"
#include "ui/review/strength_series.h"

#include <QWidget>
#include <optional>

class QButtonGroup;
class QLabel;
class QStackedWidget;

namespace ui {

class CompareButton;
class Estimates;
class Insights;
class MeasurePanel;
class ReviewLegend;
class LifterHistory;
class OpenRoster;
class Selection;
class StrengthChart;
class TouchPanel;
class WorkChart;

/// Whether training worked: the estimated max with the sets behind it, and the weekly work, of one
/// lift of the lifter that is selected, over a shared time axis.
class ReviewPage : public QWidget
{
    Q_OBJECT

public:
    ReviewPage(OpenRoster &roster, Estimates &estimates, Insights &insights, LifterHistory &history,
        Selection &selection, QWidget *parent = nullptr);

    void showLift(core::Lift lift);
    void setKnowledge(Knowledge knowledge);

    /// All charts as one picture, into the clipboard.
    void copyPicture();

protected:
    void showEvent(QShowEvent *event) override;

private:
    [[nodiscard]] QWidget *makeTopBar();
    [[nodiscard]] QWidget *makeCharts();
    [[nodiscard]] QWidget *makeSidePanel();
    void follow(const core::RosterChange &change);
    void refresh();
    /// What the chart of measures shows of the lifter and lift chosen.
    [[nodiscard]] MeasureContent measured(Measure measure);
    void showMessage(const QString &words);
    void showTrend();
    /// What a range button shows.
    [[nodiscard]] TimeSpan spanOf(int range) const;
    void showRange();

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
    std::optional<int> m_range = 3; ///< button that is down; none while another span is shown

    QButtonGroup *m_lifts = nullptr;
    QButtonGroup *m_ranges = nullptr;
    QButtonGroup *m_views = nullptr;
    QStackedWidget *m_stack = nullptr;
    QWidget *m_charts = nullptr;
    StrengthChart *m_strength = nullptr;
    WorkChart *m_work = nullptr;
    MeasurePanel *m_measures = nullptr;
    CompareButton *m_compare = nullptr;
    TouchPanel *m_touch = nullptr;
    ReviewLegend *m_legend = nullptr;
    QLabel *m_message = nullptr;
    QLabel *m_standing = nullptr;
    QLabel *m_advice = nullptr;
    QLabel *m_trend = nullptr;
};

} // namespace ui
