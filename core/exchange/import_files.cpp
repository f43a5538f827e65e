#include "core/exchange/import_files.h"

#include "core/exchange/file_kind.h"
#include "core/exchange/read_file.h"

#include <QBuffer>

namespace core {

ImportFiles placed(ImportFiles files, const QStringList &paths, QStringList *unknown)
{
    for (const QString &path : paths) {
        QFile file(path);
        const FileKind kind = file.open(QIODevice::ReadOnly) ? fileKind(file) : FileKind::unknown;
        if (kind == FileKind::log)
            files.log = path;
        else if (kind == FileKind::people)
            files.people = path;
        else
            unknown->append(QFileInfo(path).fileName());
    }
    return files;
}

ImportPlan readImport(const ImportFiles &files, const IdSource &ids, QDate today,
    const RosterReader &roster, const Watch &watch)
{
    LogTable log;
    PeopleTable people;
    if (!files.log.isEmpty())
        if (auto contents = contentsOf(files.log, log)) {
            QBuffer device(&*contents);
            (void)device.open(QIODevice::ReadOnly);
            log = readLog(device, log.file, today, watch.part(0.0, 0.5));
        }
    if (!files.people.isEmpty())
        if (auto contents = contentsOf(files.people, people)) {
            QBuffer device(&*contents);
            (void)device.open(QIODevice::ReadOnly);
            people = readPeople(device, people.file, today, watch.stop);
        }
    return planImport(log, people, rowsFor(log, roster, watch.part(0.5, 1.0)), ids, watch.stop);
}

} // namespace core
