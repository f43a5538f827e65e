#pragma once

#include "core/exchange/import_plan.h"

namespace core {

/// Paths of the files to import; either may be empty.
struct ImportFiles
{
    QString log;
    QString people;

    [[nodiscard]] bool isEmpty() const { return log.isEmpty() && people.isEmpty(); }
    friend bool operator==(const ImportFiles &, const ImportFiles &) = default;
};

/// The files with those of `paths` that are a log or people put in their places; what is neither is
/// left out and named in `unknown`.
[[nodiscard]] ImportFiles placed(ImportFiles files, const QStringList &paths, QStringList *unknown);

/// Reads the files and plans their import into the roster. A file that cannot be opened becomes a
/// problem of the plan. May run on any thread. Throws StorageError when the roster cannot be read.
/// @param today  see readLog() and readPeople()
[[nodiscard]] ImportPlan readImport(const ImportFiles &files, const IdSource &ids, QDate today,
    const RosterReader &roster, const Watch &watch = {});

} // namespace core
