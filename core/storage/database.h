#pragma once

#include <QDate>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariant>
#include <optional>
#include <unordered_map>

namespace core {

/// Rows of a statement, from the first to the last, and the columns of each from left to right.
class Rows
{
public:
    explicit Rows(QSqlQuery &query)
        : m_query(query)
    {
    }
    ~Rows() { m_query.finish(); }
    Rows(const Rows &) = delete;
    Rows &operator=(const Rows &) = delete;

    /// False after the last row. Throws StorageError when reading fails, so that a damaged file
    /// never passes for a short one.
    [[nodiscard]] bool next();

    [[nodiscard]] bool isNull() const { return m_query.isNull(m_column); }
    void skip(int columns) { m_column += columns; }
    [[nodiscard]] qint64 id() { return value().toLongLong(); }
    [[nodiscard]] int integer() { return value().toInt(); }
    [[nodiscard]] bool boolean() { return value().toInt() != 0; }
    [[nodiscard]] double real() { return value().toDouble(); }
    [[nodiscard]] QString text() { return value().toString(); }
    [[nodiscard]] QDate date() { return QDate::fromString(text(), Qt::ISODate); }
    /// Empty where the column is NULL.
    template <class Value> [[nodiscard]] std::optional<Value> maybe()
    {
        const QVariant field = value();
        return field.isNull() ? std::nullopt : std::optional(field.value<Value>());
    }
    [[nodiscard]] QVariant value() { return m_query.value(m_column++); }

private:
    QSqlQuery &m_query;
    int m_column = 0;
};

/// One SQLite connection of its own. Every failure is a StorageError with statement and driver
/// text. Not thread-safe.
class Database
{
public:
    enum class Access {
        readWrite,
        readOnly, ///< beside a connection that writes
        frozen    ///< read-only, taking the file as unchanging: leaves no trace beside it
    };

    Database(const QString &path, Access access);
    ~Database();
    Database(const Database &) = delete;
    Database &operator=(const Database &) = delete;

    /// Runs one statement that returns no rows.
    /// @return rows changed
    int run(const QString &sql, const QVariantList &values = {});

    /// Runs one statement and stands before its first row. The statement is kept prepared: let go
    /// of its rows before the same SQL is run again.
    [[nodiscard]] Rows select(const QString &sql, const QVariantList &values = {});

    /// First column of the first row; invalid when there is none.
    [[nodiscard]] QVariant value(const QString &sql, const QVariantList &values = {});

    /// Adds a row. `columns` have commas between, as in SQL.
    void insert(const char *table, const QString &columns, const QVariantList &values);
    /// Writes the row anew whose id is the first of `columns`.
    void update(const char *table, const QString &columns, const QVariantList &values);

    [[nodiscard]] int userVersion() { return value(QStringLiteral("PRAGMA user_version")).toInt(); }
    void setUserVersion(int version);

private:
    [[nodiscard]] QSqlQuery &execute(const QString &sql, const QVariantList &values);

    QString m_name;
    QSqlDatabase m_connection;
    std::unordered_map<QString, QSqlQuery> m_prepared;
};

/// Rolls back unless committed.
class Transaction
{
public:
    explicit Transaction(Database &db);
    ~Transaction();
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;

    /// When it throws, the transaction stays open until the destructor.
    void commit();

private:
    Database &m_db;
    bool m_open = true;
};

[[nodiscard]] QVariant toVariant(const std::optional<int> &value);
[[nodiscard]] QVariant toVariant(const std::optional<double> &value);
[[nodiscard]] QVariant toVariant(const QDate &day); ///< ISO 8601
[[nodiscard]] QVariant toVariant(const std::optional<QDate> &day);
[[nodiscard]] QVariant toVariant(const QString &text); ///< never NULL: '' where there is no text

} // namespace core
