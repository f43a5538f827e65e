#include "ui/importing/import_files.h"

#include "core/domain/storage_error.h"
#include "core/exchange/file_kind.h"
#include "ui/look/text.h"

#include <QFileInfo>

namespace ui {

namespace {

/// Reads one table; `read` gets the open device and the name for problems.
template <class Table, class Read> Table readTable(const QString &path, Read read)
{
    if (path.isEmpty())
        return {};
    const QString name = QFileInfo(path).fileName();
    const auto unreadable = [&name](const QString &why) {
        Table table;
        table.file = name;
        table.problems.add({name, 0, {}, Text::tr("The file cannot be read: %1.").arg(why),
            Text::tr("See that it is where it was and that you may read it.")});
        return table;
    };
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return unreadable(file.errorString());
    try {
        return read(file, name);
    } catch (const core::StorageError &error) {
        return unreadable(error.detail());
    }
}

} // namespace

ImportTables readTables(const ImportFiles &files, QDate today)
{
    return {readTable<core::LogTable>(files.log,
                [today](QIODevice &device, const QString &name) {
                    return core::readLog(device, name, today);
                }),
        readTable<core::PeopleTable>(files.people,
            [](QIODevice &device, const QString &name) { return core::readPeople(device, name); })};
}

ImportFiles placed(ImportFiles files, const QStringList &paths, QStringList *unknown)
{
    for (const QString &path : paths) {
        QFile file(path);
        const core::FileKind kind =
            file.open(QIODevice::ReadOnly) ? core::fileKind(file) : core::FileKind::unknown;
        if (kind == core::FileKind::log)
            files.log = path;
        else if (kind == core::FileKind::people)
            files.people = path;
        else
            unknown->append(QFileInfo(path).fileName());
    }
    return files;
}

} // namespace ui
