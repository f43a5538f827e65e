#include "core/csv/csv_writer.h"

#include <QLocale>
#include <algorithm>

namespace core {

QByteArray csvField(const QString &text)
{
    QByteArray field = text.toUtf8();
    const bool plain = field.trimmed().size() == field.size()
        && std::ranges::none_of(
            field, [](char c) { return c == '"' || c == ',' || c == '\r' || c == '\n'; });
    if (plain)
        return field;
    field.replace("\"", "\"\"");
    return '"' + field + '"';
}

QByteArray csvLine(std::initializer_list<QByteArray> fields)
{
    QByteArray line;
    for (const QByteArray &field : fields)
        line += field + ',';
    line.chop(1);
    return line + "\r\n";
}

QByteArray csvNumber(double value)
{
    return QByteArray::number(value, 'f', QLocale::FloatingPointShortest);
}

} // namespace core
