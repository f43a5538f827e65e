#include "core/csv/csv_writer.h"

#include <array>
#include <charconv>

namespace core {

QByteArray csvField(const QString &text)
{
    QByteArray field = text.toUtf8();
    const bool plain = field.trimmed().size() == field.size()
        && std::none_of(field.begin(), field.end(),
            [](char c) { return c == '"' || c == ',' || c == '\r' || c == '\n'; });
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
    std::array<char, 400> text; // the longest double has 309 digits before the point
    const auto [end, error] =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    return error == std::errc{} ? QByteArray(text.data(), end - text.data()) : QByteArray();
}

} // namespace core
