#pragma once

#include "core/domain/edit.h"
#include "core/plan/what_if.h"

#include <functional>
#include <optional>
#include <vector>

namespace ui {

class Estimates;
class LifterHistory;
class OpenRoster;

/// What the planning dialogs ask of one lifter's plan.
class PlanSource
{
public:
    /// @param history  of the same lifter
    PlanSource(OpenRoster &roster, const Estimates &estimates, const LifterHistory &history,
        core::LifterId lifter);

    [[nodiscard]] const core::Lifter &lifter() const { return m_lifter; }
    [[nodiscard]] const std::vector<core::Variation> &catalogue() const;
    [[nodiscard]] std::vector<core::Card> cards(QDate from, QDate to) const;
    [[nodiscard]] std::vector<core::ResolvedCard> resolved(std::vector<core::Card> cards) const;

    /// The competition bench under the plan as it is and with `edit`.
    [[nodiscard]] core::WhatIfComparison compare(const core::Edit &edit, QDate until) const;

private:
    OpenRoster &m_roster;
    const Estimates &m_estimates;
    const LifterHistory &m_history;
    core::Lifter m_lifter;
};

} // namespace ui
