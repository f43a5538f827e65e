#include "app/commands/roster_copy.h"

#include "core/storage/storage_error.h"

#include <QCoreApplication>
#include <QFile>

namespace app {

namespace {

void copyFile(const QString &from, const QString &to)
{
    QFile file(from);
    if (!file.copy(to))
        throw core::StorageError(QCoreApplication::translate("Commands", "%1 cannot be read: %2")
                                     .arg(from, file.errorString()));
    QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner);
}

} // namespace

RosterCopy::RosterCopy(const QString &path)
{
    const QString copy = m_folder.filePath(QStringLiteral("copy.benchwright"));
    copyFile(path, copy);
    const QString log = QStringLiteral("-wal"); // what is written and not yet folded in
    if (QFile::exists(path + log))
        copyFile(path + log, copy + log);
    try {
        m_roster.emplace(core::RosterFile::open(copy));
    } catch (const core::StorageError &error) { // the user knows the file, not our copy of it
        throw core::StorageError(QString(error.words()).replace(copy, path), error.detail());
    }
}

} // namespace app
