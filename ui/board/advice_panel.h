#pragma once

#include "core/advice/advisor.h"
#include "ui/board/board_layout.h"

#include <QWidget>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QListWidget;
class QSpinBox;

namespace ui {

class Estimates;
class LifterHistory;
class OpenRoster;
class WeekPlan;

/// Which variation to take for the place that is current on the board, and why: the advisor's
/// ranking with its reasons. Enter or a double click puts one on the board.
class AdvicePanel : public QWidget
{
    Q_OBJECT

public:
    AdvicePanel(OpenRoster &roster, Estimates &estimates, LifterHistory &history, WeekPlan &plan,
        QWidget *parent = nullptr);

    /// Where the choice would go.
    void setPlace(BoardPlace place);

Q_SIGNALS:
    /// @param setLine  reps and effort as asked for here
    void chosen(core::VariationId variation, const QString &setLine);

protected:
    void showEvent(QShowEvent *event) override;

private:
    [[nodiscard]] core::Slot slotAsked() const;
    void rank();
    void choose();

    OpenRoster &m_roster;
    Estimates &m_estimates;
    LifterHistory &m_history;
    WeekPlan &m_plan;
    BoardPlace m_place;
    QLabel *m_for;
    QComboBox *m_lift;
    QSpinBox *m_reps;
    QDoubleSpinBox *m_rpe;
    QLabel *m_cautions;
    QListWidget *m_list;
    core::Ranking m_ranking;
};

/// A row of the list: the rank, the name, how it is done, and the reasons with their signs.
[[nodiscard]] QString adviceText(
    int rank, const core::Advice &advice, const std::vector<core::Variation> &catalogue);

} // namespace ui
