#pragma once

#include "core/exchange/return_basis.h"

/// What came back from the lifters, beside what was planned and what the log has, in words for the
/// coach to judge.
namespace core {

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
    bool isFarAbove = false; ///< the load is far above the max; the differences say so

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

/// One review a sheet, in their order.
[[nodiscard]] std::vector<SheetReview> reviewReturns(
    std::span<const ReturnSheet> sheets, const ReturnBasis &basis, const Watch &watch = {});

} // namespace core
