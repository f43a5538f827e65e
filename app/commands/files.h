#pragma once

#include "app/commands/console.h"
#include "app/commands/moment.h"
#include "core/domain/edit.h"
#include "core/exchange/log_csv.h"
#include "core/exchange/people_csv.h"
#include "core/exchange/return_sheet.h"

#include <QFile>
#include <optional>
#include <span>

/// Files and reports that the commands share. Each function that touches a file throws StorageError
/// with words that name it.
namespace app {

/// A file open for reading; "-" is the console's input.
class Input
{
public:
    Input(const QString &path, Console &console);

    [[nodiscard]] QIODevice &device() { return *m_device; }
    [[nodiscard]] QString name() const { return m_name; }

private:
    QString m_name;
    QFile m_file;
    QIODevice *m_device;
};

/// A table of no rows where the path is empty. What is later than Moment::asOf is not in it, right
/// or wrong.
[[nodiscard]] core::LogTable readLogFile(
    const QString &path, const Moment &moment, Console &console);
[[nodiscard]] core::PeopleTable readPeopleFile(
    const QString &path, const Moment &moment, Console &console);

[[nodiscard]] core::ReturnSheet readReturnFile(
    const QString &path, const Moment &moment, Console &console);

/// A log and people, which may be left out, as they would be in a new roster; empty after a report
/// where they have problems.
[[nodiscard]] std::optional<core::Edit> readAlone(
    const QString &log, const QString &people, const Moment &moment, Console &console);

/// Writes all or nothing: a file that is there is replaced only by a whole new one. "-" is the
/// console's output.
void writeOutput(const QString &path, const QByteArray &contents, Console &console);

/// A line of text for people.
void say(QIODevice &device, const QString &line);

/// Where the computer's clock is what counts, and is behind the newest set: says so.
void warnOfClock(
    const Moment &moment, std::span<const core::LoggedSession> sessions, Console &console);

/// The first problems, one a line, and the count of all.
void report(const core::ProblemList &problems, Console &console);

} // namespace app
