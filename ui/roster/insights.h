#pragma once

#include "core/log/given_score.h"
#include "core/review/carry_over_review.h"
#include "core/strength/readiness_effect.h"
#include "core/strength/touch_hold.h"
#include "ui/roster/estimates.h"

namespace ui {

/// Given loads further back tell of an engine and a lifter that are no more.
inline constexpr int kScoredDays = 26 * core::kWeekDays;

/// What the roster as a whole says of the bench press beside the estimates: touch, readiness and
/// what carried over. Worked out off the screen's thread after each fit of the roster, and when the
/// check-ins have been quiet for a while; the last ones stay until then.
class Insights : public QObject
{
    Q_OBJECT

public:
    Insights(OpenRoster &roster, Estimates &estimates, QObject *parent = nullptr);

    /// Before the first result that of a roster without scores.
    [[nodiscard]] const strength::TouchRoster &touch() const { return m_found.touch; }
    /// Null where nothing is known yet.
    [[nodiscard]] const strength::ReadinessEffect *readiness(core::LifterId lifter) const;
    /// Of all of whom anything is known.
    [[nodiscard]] const std::map<core::LifterId, strength::ReadinessEffect> &readiness() const
    {
        return m_found.readiness;
    }
    [[nodiscard]] const std::vector<core::CarryOverRow> &carriedOver() const
    {
        return m_found.carriedOver;
    }
    /// How far the chances held that all lifters were given in the last weeks.
    [[nodiscard]] const core::GivenScore &score() const { return m_found.score; }
    [[nodiscard]] bool isBusy() const { return m_work.isRunning() || m_first; }

Q_SIGNALS:
    /// What is said of the roster as a whole has moved, and so of everybody in it.
    void changed();

private:
    struct Found
    {
        strength::TouchRoster touch;
        std::map<core::LifterId, strength::ReadinessEffect> readiness;
        std::vector<core::CarryOverRow> carriedOver;
        core::GivenScore score{};
    };

    [[nodiscard]] static Found find(const core::RosterReader &reader,
        const std::vector<core::Lifter> &lifters, const std::vector<core::Variation> &catalogue,
        const Estimates::Fits &fits, QDate today, const std::stop_token &stop);
    void work();
    void take(std::optional<Found> found);

    OpenRoster &m_roster;
    Estimates &m_estimates;
    QTimer m_quiet;
    Found m_found;
    bool m_first = true;
    RosterWork<Found> m_work;
};

} // namespace ui
