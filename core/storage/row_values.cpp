#include "core/storage/row_values.h"

#include "core/storage/storage_error.h"

#include <QCoreApplication>

namespace core {

void removeRow(Database &db, const QString &table, qint64 id)
{
    const QString sql = QStringLiteral("DELETE FROM %1 WHERE id = ?").arg(table);
    if (db.run(sql, {id}) != 1)
        throw StorageError(QCoreApplication::translate(
                               "Storage", "What was to be changed is not in the roster any more."),
            QStringLiteral("%1 %2").arg(table).arg(id));
}

} // namespace core
