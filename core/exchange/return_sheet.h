#pragma once

#include "core/csv/problem.h"
#include "core/domain/check_in.h"
#include "core/domain/session.h"

#include <QDate>
#include <QStringList>
#include <optional>
#include <vector>

class QIODevice;

/// The return sheet: what a lifter gives back from a hand-out, as CSV (RFC 4180), UTF-8, with a
/// header row, ISO dates, decimal points and loads in kg. The first column says what a row is, and
/// each kind of row fills its own columns:
///
///     sheet     the first row: format (1), lifter_id and lifter as the roster has them, week (its
///               Monday), plan (the fingerprint of the plan in hand, core/exchange/plan_mark.h)
///     check_in  date, sleep, stress, motivation and sore_back ... sore_wrists (1 worst to 5 best),
///               pain (an area, "elsewhere", or "no"; blank = not asked), pain_words, note
///     set       a set that was done: planned_date, card and set (its place in the plan, from 1),
///               planned_variation, planned_kg, reps_planned, planned_rpe (blank for an extra set),
///               date, variation, load_kg, reps_done, rpe, failed, touch, note as in a training
///               log; of a lead-rep set also lead_variation and lead_reps
///     skipped   a planned set that was left out, with the planned columns only
///     open      the same without any entry yet
///     end       the last row: rows, how many rows stand between the header and this one
///
/// Planned values are those on the page, so that a later change of the plan or of the estimate does
/// not make a set look heavier or lighter than it was asked for. A file without its end was cut.
/// All text is data: no reader of it runs or renders anything.
namespace core {

inline constexpr int kReturnFormat = 1;

/// Names of all columns.
[[nodiscard]] QStringList returnColumns();

/// One set of the plan, or an extra one, and what became of it.
struct ReturnedSet
{
    enum class State { done, skipped, open };

    int line = 0;
    State state = State::open;
    QDate plannedDay; ///< the day of the plan that it belongs to
    int card = 1;     ///< within the day
    int number = 1;   ///< within the card

    QString plannedVariation; ///< code; empty = an extra set
    std::optional<double> plannedKg;
    std::optional<double> plannedRpe;

    QDate day;             ///< trained on
    QString variation;     ///< code
    QString leadVariation; ///< code of the first reps of a lead-rep set; else empty
    int leadReps = 0;
    SetEntry set; ///< without its variation; reps planned also where it was not done

    friend bool operator==(const ReturnedSet &, const ReturnedSet &) = default;
};

struct ReturnSheet
{
    QString file;
    LifterId lifterId; ///< as said; the roster judges
    QString lifter;
    QDate monday;
    QString mark; ///< fingerprint of the plan
    std::vector<ReturnedSet> sets;
    std::vector<CheckIn> checkIns; ///< one a day, without ids and lifter
    ProblemList problems;          ///< with any, nothing of the sheet is to be used
};

/// @param file   name for the problems
/// @param today  days after tomorrow are problems: tomorrow is already today somewhere
/// Throws StorageError when the device fails.
[[nodiscard]] ReturnSheet readReturnSheet(QIODevice &device, const QString &file, QDate today);

/// Two check-ins of one day as one: what was said later holds, what it leaves open stays. A pain
/// is never passed over.
[[nodiscard]] CheckIn merged(CheckIn earlier, const CheckIn &later);

} // namespace core
