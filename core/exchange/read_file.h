#pragma once

#include "core/csv/problem.h"
#include "core/domain/text.h"

#include <QFile>
#include <QFileInfo>

namespace core {

/// The contents of a file that a table is to be read from; `table` gets the file's name. Nothing
/// where it cannot be read, and then the table has that as its problem.
template <class Table>
[[nodiscard]] std::optional<QByteArray> contentsOf(const QString &path, Table &table)
{
    table.file = QFileInfo(path).fileName();
    QFile file(path);
    if (file.open(QIODevice::ReadOnly))
        if (QByteArray contents = file.readAll(); file.error() == QFileDevice::NoError)
            return contents;
    table.problems.add(
        {table.file, 0, {}, Text::tr("The file cannot be read: %1.").arg(file.errorString()),
            Text::tr("See that it is where it was and that you may read it.")});
    return std::nullopt;
}

} // namespace core
