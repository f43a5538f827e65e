#pragma once

#include <QStringList>
#include <functional>
#include <vector>

namespace core {

class Database;

/// One step of the schema. Its place in the list is the version it leads to, counted from 1.
struct Migration
{
    QStringList statements;
};

/// The statements of a script. Split where SQLite itself sees a statement end, since triggers hold
/// semicolons.
[[nodiscard]] QStringList statementsOf(const QByteArray &script);

/// All steps of this program, from resources/schema.
[[nodiscard]] const std::vector<Migration> &migrations();

/// Throws StorageError when a file of this version is newer than the list.
void refuseNewer(int version, const std::vector<Migration> &steps);

/// Takes the file to the last version in one transaction: it ends new or as it was. Calls `backUp`
/// first where there is something to lose. Throws StorageError when a step fails, or for a file
/// that is newer than the list.
void migrate(
    Database &db, const std::vector<Migration> &steps, const std::function<void()> &backUp);

} // namespace core
