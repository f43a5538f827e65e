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
};
[[nodiscard]] Adherence adherence(const std::map<QDate, DayOutcome> &days, QDate today);

} // namespace core
