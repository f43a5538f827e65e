#include "core/csv/csv_table.h"

#include "core/domain/nearest_word.h"
#include "core/domain/text.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace core {

namespace {

QString fromUtf8(std::string_view bytes)
{
    return QString::fromUtf8(bytes.data(), qsizetype(bytes.size()));
}

std::string_view trimmed(std::string_view cell)
{
    const auto isSpace = [](char c) { return c == ' ' || c == '\t'; };
    while (!cell.empty() && isSpace(cell.front()))
        cell.remove_prefix(1);
    while (!cell.empty() && isSpace(cell.back()))
        cell.remove_suffix(1);
    return cell;
}

/// The whole of `cell` as a number of type T, in the C locale.
template <class T> std::optional<T> parsed(std::string_view cell)
{
    T value{};
    const char *end = cell.data() + cell.size();
    const auto [stop, error] = std::from_chars(cell.data(), end, value);
    if (error != std::errc{} || stop != end)
        return std::nullopt;
    return value;
}

/// A cell as it is quoted in a message; a long one is cut.
QString quoted(std::string_view cell)
{
    QString text = fromUtf8(cell).simplified();
    if (text.size() > 40)
        text = text.left(39) + u'…';
    return u'"' + text + u'"';
}

} // namespace

QStringList columnNames(std::span<const Column> columns)
{
    QStringList names;
    for (const Column &column : columns)
        names << QString::fromLatin1(column.name);
    return names;
}

CsvTable::CsvTable(
    QIODevice &device, const QString &file, std::span<const Column> columns, ProblemList &problems)
    : m_file(file)
    , m_columns(columns)
    , m_problems(problems)
    , m_reader(device)
    , m_at(columns.size(), -1)
{
    m_readable = readHeader();
}

bool CsvTable::readHeader()
{
    switch (m_reader.next()) {
    case CsvReader::Step::end:
        m_problems.add({m_file, 0, {}, Text::tr("The file is empty."),
            Text::tr("Its first line has to name the columns: %1").arg(headerLine())});
        return false;
    case CsvReader::Step::fault:
        complainOfHeader({}, m_reader.words(), m_reader.remedy());
        return false;
    case CsvReader::Step::record:
        break;
    }
    m_width = m_reader.fields().size();
    return checkHeader(m_reader.fields());
}

bool CsvTable::checkHeader(const std::vector<std::string_view> &names)
{
    if (names.size() == 1)
        for (const char separator : {';', '\t'})
            if (names[0].find(separator) != std::string_view::npos) {
                complainOfHeader({},
                    separator == ';' ? Text::tr("The columns are separated by semicolons.")
                                     : Text::tr("The columns are separated by tabs."),
                    Text::tr(
                        "Save the file again with commas between the columns and points in the "
                        "decimals."));
                return false;
            }
    const QStringList known = columnNames(m_columns);
    bool sound = true;
    const auto complain = [&](const QString &field, const QString &words, const QString &remedy) {
        complainOfHeader(field, words, remedy);
        sound = false;
    };
    for (size_t i = 0; i < names.size(); ++i) {
        const QString name = fromUtf8(trimmed(names[i]));
        const qsizetype column = known.indexOf(name);
        if (column < 0) {
            const QString nearest = nearestWord(name, known);
            complain(name, Text::tr("There is no column of this name."),
                nearest.isEmpty()
                    ? Text::tr("Remove the column. The columns are: %1").arg(headerLine())
                    : Text::tr("Name it %1, or remove it.").arg(nearest));
        } else if (m_at[size_t(column)] >= 0) {
            complain(name, Text::tr("The header names this column twice."),
                Text::tr("Remove one of them."));
        } else {
            m_at[size_t(column)] = int(i);
        }
    }
    for (size_t i = 0; i < m_columns.size(); ++i)
        if (m_columns[i].required && m_at[i] < 0)
            complain(known[qsizetype(i)], Text::tr("The column is missing."),
                Text::tr("The header has to name: %1").arg(headerLine()));
    return sound;
}

QString CsvTable::headerLine() const
{
    QStringList names;
    for (const Column &column : m_columns)
        if (column.required)
            names << QString::fromLatin1(column.name);
    return names.join(u',');
}

void CsvTable::complainOfHeader(const QString &field, const QString &words, const QString &remedy)
{
    m_problems.add({m_file, m_reader.line(), field, words, remedy});
}

bool CsvTable::next()
{
    while (m_readable) {
        switch (m_reader.next()) {
        case CsvReader::Step::end:
            return false;
        case CsvReader::Step::fault:
            m_problems.add({m_file, line(), {}, m_reader.words(), m_reader.remedy()});
            break;
        case CsvReader::Step::record:
            const size_t width = m_reader.fields().size();
            if (width == m_width)
                return true;
            m_problems.add({m_file, line(), {},
                Text::tr("The line has %1 fields, the header names %2.").arg(width).arg(m_width),
                width > m_width ? Text::tr(
                    "Write decimals with a point (102.5), and put a text that holds a comma "
                    "in quotation marks.")
                                : Text::tr("Keep a comma for each blank field too.")});
            break;
        }
    }
    return false;
}

std::string_view CsvTable::cell(size_t column) const
{
    const int at = m_at[column];
    return at < 0 ? std::string_view{} : trimmed(m_reader.fields()[size_t(at)]);
}

QString CsvTable::text(size_t column) const
{
    return fromUtf8(cell(column)).trimmed();
}

std::optional<double> CsvTable::number(size_t column)
{
    const std::string_view text = cell(column);
    if (text.empty())
        return std::nullopt;
    const std::optional<double> value = parsed<double>(text);
    if (value && std::isfinite(*value))
        return value;
    std::string pointed(text);
    std::replace(pointed.begin(), pointed.end(), ',', '.');
    if (pointed != text && parsed<double>(pointed))
        complain(column, Text::tr("%1 has a comma as decimal sign.").arg(quoted(text)),
            Text::tr("Write %1.").arg(fromUtf8(pointed)));
    else
        complain(column, Text::tr("%1 is not a number.").arg(quoted(text)),
            Text::tr("Write digits and a decimal point only, such as 102.5."));
    return std::nullopt;
}

std::optional<int> CsvTable::wholeNumber(size_t column)
{
    const std::string_view text = cell(column);
    if (text.empty())
        return std::nullopt;
    const std::optional<int> value = parsed<int>(text);
    if (!value)
        complain(column, Text::tr("%1 is not a whole number.").arg(quoted(text)),
            Text::tr("Write digits only, such as 5."));
    return value;
}

std::optional<int> CsvTable::wholeNumber(
    size_t column, int least, int most, const QString &words, const QString &remedy)
{
    const std::optional<int> value = wholeNumber(column);
    if (!value || (*value >= least && *value <= most))
        return value;
    complain(column, words, remedy);
    return std::nullopt;
}

std::optional<QDate> CsvTable::date(size_t column)
{
    const std::string_view text = cell(column);
    if (text.empty())
        return std::nullopt;
    std::optional<int> year, month, day;
    if (text.size() == 10 && text[4] == '-' && text[7] == '-') {
        year = parsed<int>(text.substr(0, 4));
        month = parsed<int>(text.substr(5, 2));
        day = parsed<int>(text.substr(8, 2));
    }
    if (!year || !month || !day) {
        complain(column, Text::tr("%1 is not a date.").arg(quoted(text)),
            Text::tr("Write year, month and day, such as 2026-03-31."));
        return std::nullopt;
    }
    const QDate date(*year, *month, *day);
    if (!date.isValid()) {
        complain(column, Text::tr("%1 is not in the calendar.").arg(quoted(text)),
            Text::tr("Look up the day the session took place on."));
        return std::nullopt;
    }
    return date;
}

void CsvTable::complain(size_t column, const QString &words, const QString &remedy)
{
    m_problems.add({m_file, line(), QString::fromLatin1(m_columns[column].name), words, remedy});
}

bool CsvTable::demand(size_t column, const QString &remedy)
{
    if (!isBlank(column))
        return true;
    complain(column, Text::tr("The field is blank."), remedy);
    return false;
}

} // namespace core
