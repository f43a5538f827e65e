#include "core/storage/roster_file_impl.h"

#include "core/csv/catalogue_csv.h"
#include "core/domain/storage_error.h"
#include "core/domain/text.h"
#include "core/storage/backup.h"
#include "core/storage/migrations.h"
#include "core/storage/probe.h"

#include <QDir>
#include <QFileInfo>

// How a roster file comes to be, and what has to be sure of it before it is worked in.

namespace core {

namespace {

QString shown(const QString &path)
{
    return QDir::toNativeSeparators(path);
}

/// Held while a window has the roster open. A lock left by a crash is taken over.
std::unique_ptr<QLockFile> lock(const QString &path)
{
    const QFileInfo info(path);
    auto lock = std::make_unique<QLockFile>(
        info.dir().filePath(u'.' + info.fileName() + QStringLiteral(".lock")));
    lock->setStaleLockTime(0);
    if (lock->tryLock(0))
        return lock;
    if (lock->error() == QLockFile::LockFailedError)
        throw StorageError(
            Text::tr("%1 is open in another window of Benchwright. Go on there, or close it first.")
                .arg(shown(path)));
    throw StorageError(Text::tr(
        "The folder of %1 cannot be written. Copy the roster to a folder of yours and open it "
        "there.")
                           .arg(shown(path)));
}

void setUp(Database &db)
{
    (void)db.value(QStringLiteral("PRAGMA journal_mode = WAL"));
    db.run(QStringLiteral("PRAGMA synchronous = FULL"));
    db.run(QStringLiteral("PRAGMA foreign_keys = ON"));
}

/// A whole new roster under a name of its own, so that no half-made one is ever found.
void build(const QString &path)
{
    Database db(path, Database::Access::readWrite);
    db.run(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId));
    migrate(db, migrations(), [] {});
    Transaction tx(db);
    for (const Variation &variation : builtInCatalogue())
        Repository<Variation>::insert(db, variation);
    tx.commit();
}

} // namespace

RosterFile RosterFile::create(const QString &path)
{
    if (QFileInfo::exists(path))
        throw StorageError(
            Text::tr("There is a file %1 already. Choose another name.").arg(shown(path)));
    for (const QString &logSuffix : kLogSuffixes)
        if (QFileInfo::exists(path + logSuffix)) // SQLite would work the old log into the new file
            throw StorageError(
                Text::tr("There are remains of an earlier roster named %1. Choose another "
                         "name.")
                    .arg(shown(path)),
                path + logSuffix);
    {
        const auto held = lock(path);
        const QString part = path + QStringLiteral(".part");
        for (const QString &logSuffix : kLogSuffixes)
            QFile::remove(part + logSuffix); // of a program that died while making one
        QFile::remove(part);
        try {
            build(part);
            QFile file(part);
            if (!file.rename(path)) // never over an existing file
                throw StorageError(
                    Text::tr("%1 could not be made. Check the permissions of its folder.")
                        .arg(shown(path)),
                    file.errorString());
        } catch (const StorageError &) {
            QFile::remove(part);
            throw;
        }
    }
    return RosterFile(openWithoutBackup(path, {})); // there is nothing to lose yet
}

RosterFile RosterFile::open(const QString &path, const QDateTime &now)
{
    auto impl = openWithoutBackup(path, now);
    try {
        backUpDaily(impl->db, impl->path, now.date());
    } catch (const StorageError &e) {
        impl->backupTrouble = e.words();
    }
    return RosterFile(std::move(impl));
}

std::unique_ptr<RosterFile::Impl> RosterFile::openWithoutBackup(
    const QString &path, const QDateTime &now)
{
    probeHeader(path);
    const QString real =
        QFileInfo(path).canonicalFilePath(); // one lock, whatever leads to the file
    if (isBackup(real))
        throw StorageError(
            Text::tr("%1 is a backup. Copy it out of its folder, under another name, and "
                     "open the copy.")
                .arg(shown(real)));
    auto held = lock(real);
    probeContents(real);
    auto impl = std::make_unique<Impl>(real, std::move(held));
    setUp(impl->db);
    migrate(impl->db, migrations(), [&impl, &now] {
        backUpBeforeMigration(impl->db, impl->path, impl->db.userVersion(), now);
    });
    impl->readLastIds();
    return impl;
}

} // namespace core
