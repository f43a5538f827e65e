#pragma once

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariant>
#include <unordered_map>

namespace core {

/// One SQLite connection of its own. Every failure is a StorageError with statement and driver
/// text.
class Database
{
public:
    enum class Access {
        readWrite,
        frozen ///< read-only, taking the file as unchanging: leaves no trace beside it
    };

    Database(const QString &path, Access access);
    ~Database();
    Database(const Database &) = delete;
    Database &operator=(const Database &) = delete;

    /// Runs one statement that returns no rows.
    /// @return rows changed
    int run(const QString &sql, const QVariantList &values = {});

    /// Runs one statement and stands before its first row. The query is kept for reuse: finish
    /// reading it before the same SQL is run again.
    [[nodiscard]] QSqlQuery &select(const QString &sql, const QVariantList &values = {});

    /// First column of the first row; invalid when there is none.
    [[nodiscard]] QVariant value(const QString &sql, const QVariantList &values = {});

    [[nodiscard]] int userVersion() { return value(QStringLiteral("PRAGMA user_version")).toInt(); }
    void setUserVersion(int version);

    [[nodiscard]] QSqlDatabase &connection() { return m_connection; }

private:
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

    void commit();

private:
    Database &m_db;
    bool m_open = true;
};

} // namespace core
