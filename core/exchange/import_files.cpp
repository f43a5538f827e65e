#include "core/exchange/import_files.h"

#include "core/exchange/file_kind.h"
#include "core/exchange/read_file.h"

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

ImportPlan readImport(const ImportFiles &files, const RosterReader &roster, const IdSource &ids,
    QDate today, const Watch &watch)
{
    LogTable log;
    PeopleTable people;
    if (!files.log.isEmpty())
        log = readFile<LogTable>(files.log, [&](QIODevice &device, const QString &name) {
            return readLog(device, name, today, watch.part(0.0, 0.5));
        });
    if (!files.people.isEmpty())
        people = readFile<PeopleTable>(files.people, [&](QIODevice &device, const QString &name) {
            return readPeople(device, name, watch.stop);
        });
    return planImport(log, people, rowsFor(log, roster, watch.part(0.5, 1.0)), ids, watch.stop);
}

} // namespace core
