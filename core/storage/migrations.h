#pragma once

#include <QStringList>
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

/// Takes the file to the last version, a transaction a step; a failing step leaves the version
/// before it. Throws StorageError, and changes nothing, for a file that is newer than the list.
void migrate(Database &db, const std::vector<Migration> &steps);

} // namespace core
