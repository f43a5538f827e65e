#include "core/storage/migrations.h"

#include "core/domain/storage_error.h"
#include "core/domain/text.h"
#include "core/storage/database.h"

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
                throw StorageError(
                    Text::tr("The program lacks a part of itself; install it again."), name);
            steps.push_back({statementsOf(file.readAll())});
        }
        return steps;
    }();
    return kSteps;
}

void refuseNewer(int version, const std::vector<Migration> &steps)
{
    if (version > int(steps.size()))
        throw StorageError(
            Text::tr("The roster was made by a newer version of Benchwright. It was left "
                     "as it is; update Benchwright to open it."),
            QStringLiteral("schema %1, known are %2").arg(version).arg(steps.size()));
}

void migrate(Database &db, const std::vector<Migration> &steps, const std::function<void()> &backUp)
{
    const int from = db.userVersion();
    refuseNewer(from, steps);
    if (from == int(steps.size()))
        return;
    if (from > 0)
        backUp();
    Transaction tx(db);
    try {
        for (auto step = steps.begin() + from; step != steps.end(); ++step)
            for (const QString &statement : step->statements)
                db.run(statement);
    } catch (const StorageError &e) {
        throw StorageError(
            Text::tr(
                "The roster could not be brought to this version of Benchwright. It was left as it "
                "is; open it with the version that made it."),
            e.detail());
    }
    db.setUserVersion(int(steps.size()));
    tx.commit();
}

} // namespace core
