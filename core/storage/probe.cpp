#include "core/storage/probe.h"

#include "core/domain/storage_error.h"
#include "core/domain/text.h"
#include "core/storage/database.h"
#include "core/storage/migrations.h"

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QtEndian>

namespace core {

namespace {

[[noreturn]] void refuse(const QString &words, const QString &path, const QString &detail = {})
{
    throw StorageError(words.arg(QDir::toNativeSeparators(path)), detail);
}

void checkContents(Database &db, const QString &path)
{
    refuseNewer(db.userVersion(), migrations());
    const QString verdict = db.value(QStringLiteral("PRAGMA quick_check(1)")).toString();
    if (verdict != QStringLiteral("ok"))
        refuse(Text::tr("%1 is damaged. It was left as it is; open the newest backup beside it."),
            path, verdict);
}

/// After a crash the last changes are in a log beside the file, and only a database that may write
/// puts both together: so a copy is looked at.
void checkCopy(const QString &path, const QString &logSuffix)
{
    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("roster"));
    if (!QFile::copy(path, copy) || !QFile::copy(path + logSuffix, copy + logSuffix))
        refuse(
            Text::tr(
                "There is no room to check %1 after a crash. Free some space for temporary files "
                "and try again."),
            path, folder.path());
    Database db(copy, Database::Access::readWrite);
    checkContents(db, path);
}

} // namespace

void probeHeader(const QString &path)
{
    // SQLite database file format, section 1.3: magic at byte 0, application id at 68, big-endian.
    constexpr int kHeaderBytes = 100;
    constexpr int kApplicationIdAt = 68;
    const QFileInfo info(path);
    if (!info.exists())
        refuse(Text::tr("There is no file %1. It may have been moved or renamed."), path);
    if (!info.isFile())
        refuse(Text::tr("%1 is not a file."), path);
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        refuse(Text::tr("%1 cannot be read. Check its permissions."), path, file.errorString());
    const QByteArray header = file.read(kHeaderBytes);
    if (header.size() < kHeaderBytes || !header.startsWith(QByteArrayView("SQLite format 3\0", 16))
        || qFromBigEndian<qint32>(header.constData() + kApplicationIdAt) != kApplicationId)
        refuse(
            Text::tr(
                "%1 is not a roster of Benchwright. It was left as it is. To read a training log, "
                "use Import; if it was a roster once, open the newest backup beside it."),
            path);
    if (!info.isWritable())
        refuse(Text::tr("%1 is read-only. Copy it to a folder of yours and open it there."), path);
}

void probeContents(const QString &path)
{
    for (const QString &logSuffix : kLogSuffixes)
        if (QFileInfo(path + logSuffix).size() > 0)
            return checkCopy(path, logSuffix);
    Database db(path, Database::Access::frozen);
    checkContents(db, path);
}

} // namespace core
