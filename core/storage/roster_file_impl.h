#pragma once

#include "core/storage/database.h"
#include "core/storage/repositories.h"
#include "core/storage/roster_file.h"

#include <QLockFile>
#include <array>
#include <atomic>

namespace core {

struct RosterFile::Impl
{
    Impl(const QString &filePath, std::unique_ptr<QLockFile> heldLock)
        : path(filePath)
        , lock(std::move(heldLock))
        , db(filePath, Database::Access::readWrite)
    {
    }

    void readLastIds()
    {
        forEachRowKind([this]<class Row>(RowChange<Row> Edit::*) {
            lastIds[kRowKind<Row>] = db.value(QStringLiteral("SELECT max(id) FROM %1")
                                                  .arg(QLatin1String(Repository<Row>::kTable)))
                                         .toLongLong();
        });
    }

    QString path;
    std::unique_ptr<QLockFile> lock; // let go after the connection is closed
    Database db;
    QString backupTrouble;
    std::array<std::atomic<qint64>, kRowKindCount> lastIds{}; ///< in the order of kRowKinds
};

} // namespace core
