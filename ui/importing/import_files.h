#pragma once

#include "core/exchange/log_csv.h"
#include "core/exchange/people_csv.h"

namespace ui {

/// Paths of the files to import; either may be empty.
struct ImportFiles
{
    QString log;
    QString people;

    [[nodiscard]] bool isEmpty() const { return log.isEmpty() && people.isEmpty(); }
    friend bool operator==(const ImportFiles &, const ImportFiles &) = default;
};

struct ImportTables
{
    core::LogTable log;
    core::PeopleTable people;
};

/// Reads both. A file that cannot be opened becomes a problem of its table. May run on any thread.
[[nodiscard]] ImportTables readTables(const ImportFiles &files, QDate today);

/// The files with those of `paths` that are a log or people put in their places; what is neither is
/// left out and named in `unknown`.
[[nodiscard]] ImportFiles placed(ImportFiles files, const QStringList &paths, QStringList *unknown);

} // namespace ui
