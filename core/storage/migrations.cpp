#include "core/storage/migrations.h"

#include "core/storage/database.h"
#include "core/storage/storage_error.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <sqlite3.h>

namespace core {

QStringList statementsOf(const QByteArray &script)
{
    QStringList statements;
    QByteArray pending;
    for (const QByteArray &piece : script.split(';')) {
        pending += piece + ';';
        if (!sqlite3_complete(pending.constData()))
            continue;
        if (pending.trimmed() != ";") // what follows the last statement
            statements << QString::fromUtf8(pending).trimmed();
        pending.clear();
    }
    return statements;
}

const std::vector<Migration> &migrations()
{
    static const std::vector<Migration> kSteps = [] {
        std::vector<Migration> steps;
        const QDir scripts(QStringLiteral(":/schema"));
        for (const QString &name :
            scripts.entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name)) {
            QFile file(scripts.filePath(name));
            if (!file.open(QIODevice::ReadOnly))
                throw StorageError(QCoreApplication::translate("Migrations",
                                       "The program lacks a part of itself; install it again."),
                    name);
            steps.push_back({statementsOf(file.readAll())});
        }
        return steps;
    }();
    return kSteps;
}

void migrate(Database &db, const std::vector<Migration> &steps)
{
    const int from = db.userVersion();
    if (from > int(steps.size()))
        throw StorageError(QCoreApplication::translate("Migrations",
            "The roster was made by a newer version of Benchwright. Update Benchwright to open "
            "it."));
    for (int v = from; v < int(steps.size()); ++v) {
        Transaction tx(db); // schema change and version move together
        for (const QString &statement : steps[size_t(v)].statements)
            db.run(statement);
        db.setUserVersion(v + 1);
        tx.commit();
    }
}

} // namespace core
