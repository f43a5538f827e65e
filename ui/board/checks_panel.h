#pragma once

#include "core/advice/plan_checks.h"

#include <QScrollArea>
#include <vector>

class QVBoxLayout;

namespace ui {

class Estimates;
class LifterHistory;
class OpenRoster;
class WeekPlan;

/// What a tired coach overlooks in the week shown, in words, the worst first. Each finding can be
/// waved through with a note; those are kept at the end and can be taken up again.
class ChecksPanel : public QScrollArea
{
    Q_OBJECT

public:
    ChecksPanel(OpenRoster &roster, Estimates &estimates, LifterHistory &history, WeekPlan &plan,
        QWidget *parent = nullptr);

    [[nodiscard]] const std::vector<core::Finding> &findings() const { return m_findings; }
    /// Those not waved through.
    [[nodiscard]] int openCount() const;

Q_SIGNALS:
    void findingsChanged();
    void cardWanted(core::CardId card);

protected:
    void changeEvent(QEvent *event) override;

private:
    void check();
    void fill();
    [[nodiscard]] QWidget *rowOf(const core::Finding &finding);
    void waveThrough(const core::Finding &finding);
    void takeUp(const core::Finding &finding);

    OpenRoster &m_roster;
    Estimates &m_estimates;
    LifterHistory &m_history;
    WeekPlan &m_plan;
    QVBoxLayout *m_rows;
    std::vector<core::Finding> m_findings;
};

/// Open ones before those waved through, and in each the worst first.
[[nodiscard]] std::vector<core::Finding> inOrder(std::vector<core::Finding> findings);

} // namespace ui
