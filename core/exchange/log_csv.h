#pragma once

#include "core/csv/problem.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/variation.h"
#include "core/domain/watch.h"

#include <QDate>
#include <QStringList>
#include <optional>
#include <vector>

class QIODevice;

/// The training log as a file, one line a set in the order done:
///
///     lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed
///
/// and optionally `session` (1, 2 ... within the day), `velocity_ms`, `touch` (1..5), `note`,
/// `readiness` (1..5, of the session), and `lead_variation` with `lead_reps` of a lead-rep set.
/// UTF-8, ISO dates, decimal point. `variation` is a code of the catalogue; `reps_planned`, `rpe`
/// and `failed` may be blank; `failed` is 1 when the rep after the last one done was tried and
/// missed.
namespace core {

/// One line of the log. The names are as written; the roster finds their rows.
struct LogRow
{
    int line = 0;
    QString lifter;
    QDate day;
    int number = 1;
    QString variation;     ///< code
    SetEntry set;          ///< its variation and its lead are not set
    QString leadVariation; ///< code; empty = no lead reps
    int leadReps = 0;
    std::optional<int> readiness;
};

struct LogTable
{
    QString file;
    /// Every line with the right number of fields, those with problems too, so that later checks
    /// can tell all that is wrong at once. None is to be used while there are problems.
    std::vector<LogRow> rows;
    ProblemList problems;
};

/// Names of all columns.
[[nodiscard]] QStringList logColumns();

/// @param file   name for the problems
/// @param today  days after tomorrow are problems: tomorrow is already today somewhere
/// Throws StorageError when the device fails.
[[nodiscard]] LogTable readLog(
    QIODevice &device, const QString &file, QDate today, const Watch &watch = {});

/// The sessions as such a file, all columns. A session without sets has no line in it.
[[nodiscard]] QByteArray writeLog(const std::vector<Lifter> &lifters,
    const std::vector<Variation> &variations, const std::vector<LoggedSession> &sessions);

} // namespace core
