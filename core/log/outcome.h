#pragma once

#include "core/domain/check_in.h"
#include "core/log/session_rows.h"

#include <map>

/// Done beside planned, of days, weeks and months.
namespace core {

enum class Outcome {
    open,   ///< nothing done yet, and the day is not over
    done,   ///< every set, with all its reps
    partly, ///< sets left out or cut short
    missed, ///< a rep was tried and missed
    leftOut ///< nothing done, and the day is over
};

/// What became of a card.
struct CardOutcome
{
    CardId card;
    Outcome outcome = Outcome::open;
    int sets = 0; ///< planned
    int done = 0; ///< of them, with all their reps

    friend bool operator==(const CardOutcome &, const CardOutcome &) = default;
};

struct DayOutcome
{
    std::vector<CardOutcome> cards; ///< in their order; a card whose sets cannot be read has none
    int extra = 0;                  ///< sets beside the plan
    int missed = 0;                 ///< sets, planned or not, of which a rep was tried and missed
    bool hasPain = false;           ///< said on the day

    friend bool operator==(const DayOutcome &, const DayOutcome &) = default;
};

/// What days of one lifter are measured by.
struct DoneInput
{
    std::span<const ResolvedCard> cards;     ///< by day and position
    std::span<const LoggedSession> sessions; ///< by day and number
    std::span<const CheckIn> checkIns;
    std::span<const Variation> catalogue;
    QDate today;
};

/// Every day from the first to the last, both included, that has cards or sets.
[[nodiscard]] std::map<QDate, DayOutcome> outcomes(const DoneInput &input, QDate from, QDate to);

/// How much of what was planned was done. Days that are not over count with what is done.
struct Adherence
{
    int sets = 0; ///< planned on days that are over, and those done on others
    int done = 0;
    int extra = 0;

    /// 0..1; empty where nothing was planned.
    [[nodiscard]] std::optional<double> share() const
    {
        return sets > 0 ? std::optional(double(done) / sets) : std::nullopt;
    }
    Adherence &operator+=(const Adherence &other)
    {
        sets += other.sets;
        done += other.done;
        extra += other.extra;
        return *this;
    }
    friend bool operator==(const Adherence &, const Adherence &) = default;
};
[[nodiscard]] Adherence adherence(const std::map<QDate, DayOutcome> &days, QDate today);

/// Adherence of late is that of so many weeks that are over.
inline constexpr int kAdherenceWeeks = 4;
[[nodiscard]] Adherence adherenceOfLate(const DoneInput &input);
/// The first and the last of its days.
[[nodiscard]] std::pair<QDate, QDate> daysOfLate(QDate today);

/// A week that is over.
struct WeekOutcome
{
    Adherence adherence;
    int missed = 0;       ///< sets, planned or not, of which a rep was tried and missed
    bool hasPain = false; ///< said in the week, on a day of training or not

    friend bool operator==(const WeekOutcome &, const WeekOutcome &) = default;
};

/// By Monday, from the week of `from` on; weeks that nothing is known of are left out, and so is
/// the week that runs.
[[nodiscard]] std::map<QDate, WeekOutcome> finishedWeeks(const DoneInput &input, QDate from);

} // namespace core
