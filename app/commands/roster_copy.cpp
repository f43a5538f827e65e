#include "app/commands/roster_copy.h"

#include "app/commands/text.h"
#include "core/domain/storage_error.h"

#include <QFileInfo>

namespace app {

namespace {

void copyFile(const QString &from, const QString &to)
{
    QFile file(from);
    if (!file.copy(to))
        throw core::StorageError(Text::tr("%1 cannot be read: %2").arg(from, file.errorString()));
    QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner);
}

} // namespace

RosterCopy::RosterCopy(const QString &path)
    : m_original(path)
    , m_copy(m_folder.filePath(QFileInfo(path).fileName()))
{
    copyFile(path, m_copy);
    const QString log = QStringLiteral("-wal"); // what is written and not yet folded in
    if (QFile::exists(path + log))
        copyFile(path + log, m_copy + log);
}

core::RosterFile RosterCopy::open() const
{
    try {
        return core::RosterFile::open(m_copy);
    } catch (const core::StorageError &error) { // the user knows the file, not our copy of it
        throw core::StorageError(
            QString(error.words()).replace(m_copy, m_original), error.detail());
    }
}

} // namespace app
