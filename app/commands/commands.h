#pragma once

#include "app/commands/console.h"
#include "app/commands/moment.h"
#include "ui/print/hand_out_batch.h"

#include <QSize>
#include <QStringList>
#include <functional>

/// What the command line can do. Each command gives the exit code and throws StorageError. Of what
/// is later than Moment::asOf, sessions and check-ins are passed over.
namespace app {

/// Says what a file is, a roster, a log or people, and everything that is wrong with it. Changes
/// nothing; a log is judged by the catalogue that comes with the program.
[[nodiscard]] int check(const QString &path, const Moment &moment, Console &console);

struct DemoOptions
{
    QString folder;
    bool force = false; ///< replace what an earlier run made
};
/// Writes the demo roster of the day and its log and people as CSV: demo.benchwright, log.csv,
/// people.csv.
[[nodiscard]] int demo(const DemoOptions &options, const Moment &moment, Console &console);

struct LogOptions
{
    QString log;    ///< "-" = standard input
    QString people; ///< may be empty
    QString out;    ///< of estimate(); "-" = standard output
};
/// Estimated maxima of a log by the catalogue that comes with the program; as of its last day where
/// no day is asked for.
[[nodiscard]] int estimate(const LogOptions &options, const Moment &moment, Console &console);
/// How well the sets of each week could be forecast from the weeks before it: the reps in reserve
/// that were said, and the misses. Needs no known max, so it works on any log.
[[nodiscard]] int score(const LogOptions &options, const Moment &moment, Console &console);

struct ExportOptions
{
    QString roster;
    QString log; ///< training log CSV to write, - for standard output
};
/// Writes the training log of a roster as CSV, see core/exchange/log_csv.h.
[[nodiscard]] int exportLog(const ExportOptions &options, const Moment &moment, Console &console);

struct HandOutOptions
{
    QString roster;
    QString lifter; ///< name; empty = everyone who has something planned
    QDate day;      ///< any day of the week; invalid = this week
    ui::HandOutKinds kinds;
    ui::PaperSize paper = ui::PaperSize::a4;
    QString folder;       ///< is made where it is not there
    bool isDraft = false; ///< gives nothing, and may be written while a window has the roster open
    QString accepted;     ///< the coach's note on what the plan checks stop; empty = not accepted
    core::GivenBy by = core::GivenBy::handOut;
};
/// Writes what the lifters get for a week, and keeps in the roster what they were given. What the
/// plan checks stop is written only with a note that accepts it, which the roster keeps, or on a
/// draft, where it is printed. Takes a QGuiApplication.
[[nodiscard]] int handOut(const HandOutOptions &options, const Moment &moment, Console &console);

struct ImportOptions
{
    QString roster;
    QString log; ///< this or people, or both
    QString people;
    bool create = false; ///< make the roster, which must not be there yet
    bool dryRun = false; ///< tell what would happen, change nothing
};
/// Imports a log and people into a roster, all or nothing.
[[nodiscard]] int import(const ImportOptions &options, const Moment &moment, Console &console);

struct PictureOptions
{
    QString roster;
    QString out;
    QString lifter; ///< name; empty = the first of the list
    int page = 1;   ///< which page of the window, from 1
    QSize size{1366, 768};
    bool dark = false;
};
/// Saves the window on a roster as a PNG, without a display.
[[nodiscard]] int picture(const PictureOptions &options, const Moment &moment, Console &console);

struct ReturnOptions
{
    QString roster;
    QStringList sheets;
    bool dryRun = false; ///< tell what would happen, change nothing
    /// Accept also those that are for the coach to judge, such as of an old plan.
    bool acceptMismatched = false;
};
/// Reads return sheets into a roster, all that are accepted as one action. A sheet that cannot be
/// used does not hold up the others, and makes it exitProblems.
[[nodiscard]] int returnSheets(
    const ReturnOptions &options, const Moment &moment, Console &console);

/// Opens the window, on a roster unless `path` is empty, and returns when it is closed. Takes a
/// QApplication.
/// @param clock  asked as long as the window is open
[[nodiscard]] int window(
    const QString &path, const std::function<QDateTime()> &clock, Console &console);

} // namespace app
