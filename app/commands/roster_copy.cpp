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

template <class Row> std::vector<Row> laterThan(QDate day, std::vector<Row> rows)
{
    std::erase_if(rows, [day](const Row &row) { return row.day <= day; });
    return rows;
}

void forgetAfter(QDate day, core::RosterFile &roster)
{
    core::Edit edit;
    edit.sessions.before = laterThan(day, roster.sessions());
    edit.checkIns.before = laterThan(day, roster.checkIns());
    roster.apply(edit);
}

} // namespace

RosterCopy::RosterCopy(const QString &path, const Moment &moment)
    : m_moment(moment)
    , m_original(path)
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
        core::RosterFile roster = core::RosterFile::open(m_copy, m_moment.clock);
        if (m_moment.asOf)
            forgetAfter(*m_moment.asOf, roster);
        return roster;
    } catch (const core::StorageError &error) { // the user knows the file, not our copy of it
        throw core::StorageError(
            QString(error.words()).replace(m_copy, m_original), error.detail());
    }
}

} // namespace app
