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
        // A card that is gone is still spoken of: its id may not come back as another card's.
        std::atomic<qint64> &lastCard = lastIds[kRowKind<Card>];
        for (const auto *mention : {"SELECT max(card_id) FROM given_card",
                 "SELECT max(card_id) FROM waiver", "SELECT max(answers_card) FROM set_entry"})
            lastCard = std::max<qint64>(lastCard, db.value(QLatin1String(mention)).toLongLong());
    }

    QString path;
    std::unique_ptr<QLockFile> lock; // let go after the connection is closed
    Database db;
    QString backupTrouble;
    std::array<std::atomic<qint64>, kRowKindCount> lastIds{}; ///< in the order of kRowKinds
};

} // namespace core
