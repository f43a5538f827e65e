#pragma once

#include "core/domain/edit.h"
#include "core/exchange/return_basis.h"

#include <functional>
#include <map>
#include <set>

namespace core {

/// Ids for rows to be added.
struct ReturnIds
{
    std::function<SessionId()> session;
    std::function<CheckInId()> checkIn;
};

/// The log of the lifters as it becomes while one sheet after the other is booked.
///
/// Sets go into the session of the day they were done on, or into a new one. A set that the log has
/// is not booked again. Where the log has other values for a set, which shows by its place among
/// those of its variation and planned reps that the sheet does not tell as they are, the sheet
/// corrects it: a lifter who gives back twice means the later one. What the log has besides stays.
class ReturnBooking
{
public:
    struct Counts
    {
        int added = 0;
        int corrected = 0; ///< in the log with other values
        int known = 0;
    };

    explicit ReturnBooking(const ReturnBasis &basis); ///< which outlives the booking

    /// Problems that only the catalogue can tell: codes it does not have.
    [[nodiscard]] ProblemList unknownCodes(const ReturnSheet &sheet) const;

    /// Books a sheet of this lifter, without problems.
    Counts book(const ReturnSheet &sheet, LifterId lifter, const ReturnIds &ids);

    /// Everything that was booked.
    [[nodiscard]] Edit edit() const;

private:
    /// A row of the log and what has become of it.
    template <class Row> struct Booked
    {
        std::optional<Row> before; ///< none = a new one
        Row after;
    };

    void takeDay(LifterId lifter, QDate day);
    [[nodiscard]] SetEntry entryOf(const ReturnedSet &returned, LifterId lifter) const;
    [[nodiscard]] LoggedSession &sessionFor(
        LifterId lifter, QDate day, const std::vector<SetEntry> &sets, const ReturnIds &ids);
    void book(CheckIn said, LifterId lifter, const ReturnIds &ids);

    const ReturnBasis &m_basis;
    std::map<QString, VariationId> m_idOf;       ///< by code
    std::set<std::pair<LifterId, QDate>> m_days; ///< whose rows are held below
    std::vector<Booked<LoggedSession>> m_sessions;
    std::vector<Booked<CheckIn>> m_checkIns;
};

} // namespace core
