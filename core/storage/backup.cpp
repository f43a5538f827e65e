#include "core/storage/backup.h"

#include "core/domain/storage_error.h"
#include "core/domain/text.h"
#include "core/storage/database.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>
#include <map>
#include <set>
#include <unistd.h>

namespace core {

namespace {

constexpr auto kFolderEnding = " backups";

/// The day that a daily backup is named by; invalid for any other file.
QDate dayOf(const QString &fileName)
{
    static const QRegularExpression kDaily(QStringLiteral("^(\\d{4}-\\d\\d-\\d\\d)\\.[^.]+$"));
    return QDate::fromString(kDaily.match(fileName).captured(1), Qt::ISODate);
}

[[noreturn]] void fail(const QString &path, const QString &detail)
{
    throw StorageError(Text::tr("No backup could be made in %1. Free some space and check the "
                                "permissions of the folder.")
                           .arg(QDir::toNativeSeparators(QFileInfo(path).path())),
        detail);
}

/// SQLite leaves the copy of VACUUM INTO in the system's hands; it is a backup once it is on disk.
void flush(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadWrite) || ::fsync(file.handle()) != 0)
        fail(path, file.errorString());
}

/// VACUUM INTO copies what one moment's reader sees, as the online backup does, while the roster is
/// in use; besides it packs the copy and needs no second connection.
void copyTo(Database &db, const QString &path)
{
    const QString part = path + QStringLiteral(".part");
    if (!QDir().mkpath(QFileInfo(path).path()))
        fail(path, QStringLiteral("mkpath"));
    QFile::remove(part); // of a program that died over it
    try {
        db.run(QStringLiteral("VACUUM INTO ?"), {part});
        flush(part);
        if (!QFile::rename(part, path))
            fail(path, QStringLiteral("rename"));
    } catch (const StorageError &e) {
        QFile::remove(part);
        fail(path, e.detail());
    }
}

} // namespace

QString backupFolderOf(const QString &rosterPath)
{
    const QFileInfo info(rosterPath);
    return info.dir().filePath(info.completeBaseName() + QLatin1String(kFolderEnding));
}

std::vector<Backup> backupsOf(const QString &rosterPath)
{
    const QDir folder(backupFolderOf(rosterPath));
    std::vector<Backup> backups;
    for (const QString &name : folder.entryList(QDir::Files, QDir::Name | QDir::Reversed))
        if (const QDate day = dayOf(name); day.isValid())
            backups.push_back({day, folder.filePath(name)});
    return backups;
}

bool isBackup(const QString &path)
{
    return QFileInfo(path).absoluteDir().dirName().endsWith(QLatin1String(kFolderEnding));
}

QString copyOutOfBackups(const QString &backup)
{
    const QFileInfo info(backup);
    const QString roster = info.dir().dirName().chopped(qsizetype(qstrlen(kFolderEnding)));
    QDir beside = info.absoluteDir();
    beside.cdUp();
    QString copy;
    for (int number = 1; copy.isEmpty() || QFile::exists(copy); ++number)
        copy = beside.filePath(
            QStringLiteral("%1 of %2%3.%4")
                .arg(roster, info.completeBaseName(),
                    number == 1 ? QString() : QStringLiteral(" (%1)").arg(number), info.suffix()));
    const QString part = copy + QStringLiteral(".part");
    QFile::remove(part); // of a program that died over it
    QFile file(backup);
    if (!file.copy(part) || !QFile::rename(part, copy)) {
        QFile::remove(part);
        throw StorageError(
            Text::tr(
                "The backup could not be copied to %1. Free some space and check the permissions "
                "of the folder.")
                .arg(QDir::toNativeSeparators(copy)),
            file.errorString());
    }
    return copy;
}

void backUpDaily(Database &db, const QString &rosterPath, QDate today)
{
    std::vector<Backup> backups = backupsOf(rosterPath);
    const auto isToday = [today](const Backup &backup) { return backup.day == today; };
    if (std::ranges::any_of(backups, isToday))
        return;
    copyTo(db,
        QDir(backupFolderOf(rosterPath))
            .filePath(QStringLiteral("%1.%2").arg(
                today.toString(Qt::ISODate), QFileInfo(rosterPath).suffix())));
    std::vector<QDate> days{today};
    for (const Backup &backup : backups)
        days.push_back(backup.day);
    const std::vector<QDate> old = superfluous(std::move(days));
    for (const Backup &backup : backups)
        if (std::ranges::find(old, backup.day) != old.end())
            QFile::remove(backup.path);
}

void backUpBeforeMigration(
    Database &db, const QString &rosterPath, int version, const QDateTime &now)
{
    const QFileInfo info(rosterPath);
    const QString name = QStringLiteral("before version %1 on %2.%3")
                             .arg(QString::number(version + 1),
                                 now.toString(QStringLiteral("yyyy-MM-dd hhmmss")), info.suffix());
    copyTo(db, QDir(backupFolderOf(rosterPath)).filePath(name));
}

std::vector<QDate> superfluous(std::vector<QDate> days)
{
    constexpr size_t kNewest = 7;
    constexpr size_t kMonths = 12;
    std::ranges::sort(days, std::greater<>());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    std::set<QDate> kept(days.begin(), days.begin() + std::min(days.size(), kNewest));
    std::map<QDate, QDate, std::greater<>> firstOfMonth; // by the first day of the month
    for (const QDate &day : days)
        firstOfMonth[QDate(day.year(), day.month(), 1)] = day; // the last one written is the first
    for (size_t months = 0; const auto &[month, day] : firstOfMonth)
        if (months++ < kMonths)
            kept.insert(day);
    std::erase_if(days, [&kept](const QDate &day) { return kept.contains(day); });
    return days;
}

} // namespace core
