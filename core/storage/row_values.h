#pragma once

#include "core/storage/database.h"

#include <QDate>
#include <optional>

/// Between C++ values and columns.
namespace core {

[[nodiscard]] inline QVariant toVariant(const std::optional<int> &value)
{
    return value ? QVariant(*value) : QVariant(QMetaType::fromType<int>());
}
[[nodiscard]] inline QVariant toVariant(const std::optional<double> &value)
{
    return value ? QVariant(*value) : QVariant(QMetaType::fromType<double>());
}
[[nodiscard]] inline QVariant toVariant(const QDate &day)
{
    return day.toString(Qt::ISODate);
}
[[nodiscard]] inline QVariant toVariant(const std::optional<QDate> &day)
{
    return day ? toVariant(*day) : QVariant(QMetaType::fromType<QString>());
}
/// Never NULL: an empty string where there is no text.
[[nodiscard]] inline QVariant toVariant(const QString &text)
{
    return text.isNull() ? QVariant(QStringLiteral("")) : QVariant(text);
}

/// Reads the columns of a query's row from left to right.
class RowReader
{
public:
    explicit RowReader(const QSqlQuery &query)
        : m_query(query)
    {
    }
    [[nodiscard]] bool isNull() const { return m_query.isNull(m_column); }
    void skip(int columns) { m_column += columns; }
    [[nodiscard]] qint64 id() { return next().toLongLong(); }
    [[nodiscard]] int integer() { return next().toInt(); }
    [[nodiscard]] bool boolean() { return next().toInt() != 0; }
    [[nodiscard]] double real() { return next().toDouble(); }
    [[nodiscard]] QString text() { return next().toString(); }
    [[nodiscard]] QDate date() { return QDate::fromString(text(), Qt::ISODate); }
    [[nodiscard]] std::optional<int> maybeInteger()
    {
        const QVariant value = next();
        return value.isNull() ? std::nullopt : std::optional(value.toInt());
    }
    [[nodiscard]] std::optional<double> maybeReal()
    {
        const QVariant value = next();
        return value.isNull() ? std::nullopt : std::optional(value.toDouble());
    }
    [[nodiscard]] std::optional<QDate> maybeDate()
    {
        const QVariant value = next();
        return value.isNull() ? std::nullopt
                              : std::optional(QDate::fromString(value.toString(), Qt::ISODate));
    }

private:
    QVariant next() { return m_query.value(m_column++); }

    const QSqlQuery &m_query;
    int m_column = 0;
};

/// Removes one row by id. Throws when it is not there: the edit was made from a picture of the
/// roster that no longer holds.
void removeRow(Database &db, const QString &table, qint64 id);

} // namespace core
