#pragma once

#include <QDateTime>
#include <QString>
#include <vector>

namespace core {

class Database;

/// Backups lie in a folder beside the roster, "team backups" for team.benchwright, one a day named
/// by it, such as 2026-11-25.benchwright, and one before each change of the schema. Each is a whole
/// roster that a coach can copy out and open.

/// A backup of one day.
struct Backup
{
    QDate day;
    QString path;

    friend bool operator==(const Backup &, const Backup &) = default;
};

/// The daily backups of a roster, the newest first. The roster need not be there any more.
[[nodiscard]] std::vector<Backup> backupsOf(const QString &rosterPath);

/// Whether a file is a backup in its folder. It is not to be worked in: it would be thinned out.
[[nodiscard]] bool isBackup(const QString &path);

/// The folder of a roster's backups, which need not be there.
[[nodiscard]] QString backupFolderOf(const QString &rosterPath);

/// Copies a backup out of its folder, to stand beside the roster under a name of its own such as
/// "team of 2026-11-25.benchwright", never over another file.
/// @return path of the copy; throws StorageError, and then there is none
[[nodiscard]] QString copyOutOfBackups(const QString &backup);

/// Makes the backup of `today` unless there is one, then thins the older ones out.
/// Throws StorageError, and then the backups are as they were.
void backUpDaily(Database &db, const QString &rosterPath, QDate today);

/// Makes the backup before a change of the schema from `version`, named by it and by `now`; it is
/// kept for good.
void backUpBeforeMigration(
    Database &db, const QString &rosterPath, int version, const QDateTime &now);

/// The days whose backups may go: all but the newest seven and the first of each of the newest
/// twelve months. `days` are in any order.
[[nodiscard]] std::vector<QDate> superfluous(std::vector<QDate> days);

} // namespace core
