#pragma once

#include "app/commands/console.h"
#include "core/domain/edit.h"
#include "core/exchange/log_csv.h"
#include "core/exchange/people_csv.h"
#include "core/exchange/return_sheet.h"

#include <QFile>
#include <optional>

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

/// A table of no rows where the path is empty.
[[nodiscard]] core::LogTable readLogFile(const QString &path, Console &console);
[[nodiscard]] core::PeopleTable readPeopleFile(const QString &path, Console &console);

[[nodiscard]] core::ReturnSheet readReturnFile(const QString &path, Console &console);

/// A log and people, which may be left out, as they would be in a new roster; empty after a report
/// where they have problems.
[[nodiscard]] std::optional<core::Edit> readAlone(
    const QString &log, const QString &people, Console &console);

/// Writes all or nothing: a file that is there is replaced only by a whole new one. "-" is the
/// console's output.
void writeOutput(const QString &path, const QByteArray &contents, Console &console);

/// A line of text for people.
void say(QIODevice &device, const QString &line);

/// The first problems, one a line, and the count of all.
void report(const core::ProblemList &problems, Console &console);

} // namespace app
