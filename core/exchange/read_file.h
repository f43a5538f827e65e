#pragma once

#include "core/csv/problem.h"
#include "core/domain/storage_error.h"
#include "core/domain/text.h"

#include <QFile>
#include <QFileInfo>

namespace core {

/// The table that `read` makes of a file. A file that cannot be read has that as its problem.
/// @param read  gets the open device and the file's name for problems
template <class Table, class Read>
[[nodiscard]] Table readFile(const QString &path, const Read &read)
{
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
    } catch (const StorageError &error) {
        return unreadable(error.detail());
    }
}

} // namespace core
