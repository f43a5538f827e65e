#pragma once

#include "core/domain/edit.h"
#include "core/exchange/return_sheet.h"

#include <functional>
#include <span>

/// What came back from the lifters, beside what was planned and what the log has: in words for the
/// coach to judge, and as one edit for what the coach accepts.
namespace core {

/// What the roster holds of the lifters and weeks that the sheets speak of; more does no harm.
struct ReturnBasis
{
    std::vector<Lifter> lifters;
    std::vector<Variation> variations;
    std::vector<Card> cards;
    std::vector<LoggedSession> sessions;
    std::vector<CheckIn> checkIns;
};

enum class SheetStanding {
    ready,      ///< from the plan as it is
    byChoice,   ///< can be accepted, but something is odd: the coach decides
    nothingNew, ///< all of it is in the log, or in another sheet read with it
    refused     ///< damaged, or of nobody in the roster
};

enum class SetOutcome { asPlanned, different, missed, extra, skipped, open };

/// One set, planned beside done.
struct SetReview
{
    QString variation; ///< as done, else as planned
    QString planned;   ///< "3 x 102.5 kg"; empty for an extra set
    QString done;      ///< "3 x 100 kg, RPE 8, touch 2"; empty where it was not done
    SetOutcome outcome = SetOutcome::open;
    QStringList differences; ///< "2.5 kg lighter than planned", "missed a rep"
    QString note;            ///< the lifter's

    friend bool operator==(const SetReview &, const SetReview &) = default;
};

struct DayReview
{
    QDate plannedDay;
    QDate day;           ///< trained on; invalid where nothing was done
    QString pain;        ///< in words; empty = none said
    QStringList checkIn; ///< "sleep 4 of 5", ...; the note too
    std::vector<SetReview> sets;

    friend bool operator==(const DayReview &, const DayReview &) = default;
};

struct SheetReview
{
    QString file;
    LifterId lifter; ///< whom it would be booked for; invalid where refused
    QString name;    ///< of the lifter, as the roster has it where known
    QDate monday;
    SheetStanding standing = SheetStanding::ready;
    QStringList notices;  ///< why it is not simply ready; what of the log it corrects
    ProblemList problems; ///< that make it unusable
    std::vector<DayReview> days;
    int newSets = 0;
    int correctedSets = 0; ///< in the log with other values
    int knownSets = 0;
    bool hasPain = false;

    [[nodiscard]] bool isAcceptable() const
    {
        return standing == SheetStanding::ready || standing == SheetStanding::byChoice;
    }
};

/// Mondays that the sheets speak of, each once: the weeks whose cards the basis needs.
[[nodiscard]] std::vector<QDate> weeksOf(std::span<const ReturnSheet> sheets);

/// One review a sheet, in their order.
[[nodiscard]] std::vector<SheetReview> reviewReturns(
    std::span<const ReturnSheet> sheets, const ReturnBasis &basis);

struct ReturnIds
{
    std::function<SessionId()> session;
    std::function<CheckInId()> checkIn;
};

/// Books the sheets, in their order, as one action. Those that are not acceptable are left out.
///
/// Sets go into the session of the day they were done on, or into a new one. A set that the log has
/// is not booked again. Where the log has other values for a set, which shows by its place among
/// those of its variation and planned reps that the sheet does not tell as they are, the sheet
/// corrects it, and the coach has to choose so: a lifter who gives back twice means the later one.
/// What the log has besides stays.
[[nodiscard]] Edit acceptReturns(
    std::span<const ReturnSheet> sheets, const ReturnBasis &basis, const ReturnIds &ids);

} // namespace core
