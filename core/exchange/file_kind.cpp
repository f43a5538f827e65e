#include "core/exchange/file_kind.h"

#include "core/csv/csv_reader.h"
#include "core/exchange/estimates_csv.h"
#include "core/exchange/log_csv.h"
#include "core/exchange/people_csv.h"
#include "core/exchange/return_sheet.h"

#include <QIODevice>
#include <algorithm>
#include <array>

namespace core {

FileKind fileKind(QIODevice &device)
{
    const QByteArray databaseMark("SQLite format 3\0", 16); // the SQLite file format, section 1.3
    if (device.peek(databaseMark.size()) == databaseMark)
        return FileKind::roster;
    if (device.peek(1).isEmpty())
        return FileKind::empty;

    CsvReader reader(device);
    if (reader.next() != CsvReader::Step::record)
        return FileKind::unknown;
    QStringList header;
    for (const std::string_view name : reader.fields())
        header << QString::fromUtf8(name.data(), qsizetype(name.size())).trimmed();
    if (header.size() == 1) // of the wrong separator; the table says so
        header = header.front().split(header.front().contains(u';') ? u';' : u'\t');

    struct Likeness
    {
        FileKind kind;
        qsizetype columns;
    };
    const auto likeness = [&header](FileKind kind, const QStringList &columns) {
        return Likeness{kind, std::ranges::count_if(header, [&](const QString &name) {
                            return columns.contains(name);
                        })};
    };
    const std::array kinds{likeness(FileKind::log, logColumns()),
        likeness(FileKind::people, peopleColumns()),
        likeness(FileKind::estimates, estimatesColumns()),
        likeness(FileKind::returnSheet, returnColumns())};
    const Likeness &best = *std::ranges::max_element(
        kinds, [](const Likeness &a, const Likeness &b) { return a.columns < b.columns; });
    return best.columns > 1 ? best.kind : FileKind::unknown;
}

} // namespace core
