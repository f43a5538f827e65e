#pragma once

#include "core/csv/csv_reader.h"
#include "core/csv/problem.h"

#include <QDate>
#include <QStringList>
#include <optional>
#include <span>

namespace core {

struct Column
{
    const char *name;
    bool required = false; ///< the header has to name it; its cells may still be blank
};

[[nodiscard]] QStringList columnNames(std::span<const Column> columns);

/// A CSV file with a header row. Columns are found by name, in any order; an unknown, doubled or
/// missing one is a problem, and then there are no rows. Cells are numbered as `columns` is.
///
/// Values are read with the decimal point and ISO 8601 dates whatever the user's locale. Each
/// reader gives empty for a blank cell and for a bad one, and adds a problem for a bad one.
class CsvTable
{
public:
    /// All parameters outlive the table. Throws StorageError when the device fails.
    CsvTable(QIODevice &device, const QString &file, std::span<const Column> columns,
        ProblemList &problems);

    /// The next row with as many fields as the header; lines that are none become problems.
    [[nodiscard]] bool next();

    [[nodiscard]] int line() const { return m_reader.line(); }
    [[nodiscard]] bool isBlank(size_t column) const { return cell(column).empty(); }
    /// Without spaces around it; empty where the file lacks the column.
    [[nodiscard]] std::string_view cell(size_t column) const;
    [[nodiscard]] QString text(size_t column) const;
    [[nodiscard]] std::optional<double> number(size_t column);
    [[nodiscard]] std::optional<int> wholeNumber(size_t column);
    /// One from `least` to `most`; else the words and the remedy become a problem.
    [[nodiscard]] std::optional<int> wholeNumber(
        size_t column, int least, int most, const QString &words, const QString &remedy);
    [[nodiscard]] std::optional<QDate> date(size_t column);

    /// Adds a problem of this row.
    void complain(size_t column, const QString &words, const QString &remedy);
    /// Adds a problem, and returns false, when the cell is blank.
    bool demand(size_t column, const QString &remedy);

private:
    [[nodiscard]] bool readHeader();
    [[nodiscard]] bool checkHeader(const std::vector<std::string_view> &names);
    void complainOfHeader(const QString &field, const QString &words, const QString &remedy);
    [[nodiscard]] QString headerLine() const;

    QString m_file;
    std::span<const Column> m_columns;
    ProblemList &m_problems;
    CsvReader m_reader;
    std::vector<int> m_at; ///< one a column: index of its field in a row, -1 = not in the file
    size_t m_width = 0;    ///< fields a row
    bool m_readable = false;
};

} // namespace core
