#pragma once

#include "core/domain/edit.h"
#include "core/log/day_plan.h"
#include "ui/roster/estimates.h"

#include <QDate>
#include <QObject>
#include <optional>
#include <vector>

namespace ui {

class Insights;
class LifterHistory;
class OpenRoster;
class Selection;

/// One day of the selected lifter: what is planned, what is logged, and what the check-in makes of
/// it. Carries out what the coach does to it, each as one undo step that is in the file at once.
class DayLog : public QObject
{
    Q_OBJECT

public:
    DayLog(OpenRoster &roster, Estimates &estimates, Insights &insights, LifterHistory &history,
        Selection &selection, QObject *parent = nullptr);

    /// Null while no lifter is selected.
    [[nodiscard]] const core::Lifter *lifter() const;
    [[nodiscard]] const core::Lifter *lifter(core::LifterId id) const;
    [[nodiscard]] const std::vector<core::Variation> &catalogue() const;
    [[nodiscard]] QDate day() const { return m_day; }
    void setDay(QDate day);
    /// Goes on to today where the day shown was, before midnight.
    void keepUp();
    /// A day that is over or under way; nothing was done on a later one.
    [[nodiscard]] bool isLoggable() const { return m_day <= today(); }
    [[nodiscard]] QDate today() const;

    [[nodiscard]] const std::vector<core::DaySet> &planned() const { return m_plan.planned; }
    [[nodiscard]] const std::vector<core::SetEntry> &done() const { return m_done; }
    [[nodiscard]] const std::vector<core::SessionRow> &rows() const { return m_plan.rows; }
    /// Cards of the day whose set line cannot be read, by name.
    [[nodiscard]] const QStringList &unreadable() const { return m_plan.unreadable; }

    /// The planned set as it would be in another variation, with its load; of a lead-rep set
    /// without one.
    [[nodiscard]] core::DaySet swapped(size_t planned, core::VariationId variation) const;

    /// Why nothing is suggested for such an extra set today; empty when something may be.
    [[nodiscard]] QString withheld(const core::SetEntry &set) const;

    /// The load of an extra set, brought down by the day's misses.
    [[nodiscard]] double easedKg(core::VariationId variation, double loadKg) const;

    /// Whether the load of the set is far above the max, see core/loads/far_above_max.h.
    [[nodiscard]] QString whyFarAbove(const core::SetEntry &set) const;

    /// Each returns false when it could not be written; the roster has said why.
    bool add(const core::SetEntry &set, size_t place);
    bool change(const core::SetEntry &set, size_t place);
    bool remove(size_t place);

    /// The day's; one without an id where nothing was said.
    [[nodiscard]] core::CheckIn checkIn() const;
    void say(const core::CheckIn &checkIn);
    [[nodiscard]] const core::ReadinessAdvice &advice() const { return m_plan.advice; }
    [[nodiscard]] bool shiftsLoads() const { return m_plan.shiftsLoads; }
    void setShiftsLoads(bool shifts);
    /// Swaps the card on the plan.
    void takeSwap(const core::SoreSwap &swap);

Q_SIGNALS:
    /// The day reads differently: another lifter, day, plan, log or check-in, or it is over.
    void changed();
    /// The check-in of the day shown is another than was said here last: another lifter or day, an
    /// undo, a return sheet.
    void checkInChanged(const core::CheckIn &checkIn);
    /// The check-in could not be written, and what is stored is the same as before.
    void checkInNotSaved(const core::CheckIn &stored);
    /// What is half typed is to be stored now, see OpenRoster::settle().
    void settling(QStringList *left);
    /// See OpenRoster::closing().
    void closing(QStringList *left);
    /// Another lifter's log is opened, on today: whoever has something half typed of theirs says of
    /// which day, and it is opened there.
    void opening(core::LifterId lifter, QDate *day);

private:
    void follow(const core::RosterChange &change);
    void reload();
    void takeHistory();
    void turnTo(core::LifterId lifter);
    void replan();
    void tellCheckIn();
    [[nodiscard]] core::DayInputs inputs() const;
    [[nodiscard]] std::vector<core::LoggedSession> sessions() const;
    [[nodiscard]] std::pair<core::LifterId, QDate> key() const;
    bool perform(const QString &pattern, core::VariationId variation, const core::Edit &edit,
        const core::Edit &facts = {});

    OpenRoster &m_roster;
    Estimates &m_estimates;
    Insights &m_insights;
    Selection &m_selection;
    LifterHistory &m_history;
    QDate m_day;
    bool m_isToday = true;
    std::pair<core::LifterId, QDate> m_read; ///< whose day is in the members below
    std::vector<core::Card> m_cards;         ///< of the day
    std::vector<core::SetEntry> m_done;
    core::DayPlan m_plan;
    core::CheckIn m_told;             ///< said here, or told by checkInChanged(); without its id
    std::optional<bool> m_shiftLoads; ///< as the coach has said of this day
};

} // namespace ui
