#include "core/storage/database.h"

#include "core/domain/storage_error.h"
#include "core/domain/text.h"

#include <QSqlError>
#include <QUrl>
#include <QUuid>

namespace core {

namespace {

/// SQLite's primary result codes that a coach can do something about.
QString wordsFor(const QSqlError &error)
{
    switch (error.nativeErrorCode().toInt() & 0xff) {
    case 5: // SQLITE_BUSY
    case 6: // SQLITE_LOCKED
        return Text::tr("Another program is using the roster file. Close it there and try again.");
    case 8: // SQLITE_READONLY
        return Text::tr("The roster file cannot be written. Check its permissions.");
    case 10: // SQLITE_IOERR
        return Text::tr("The disk reported an error. Nothing of this step was kept.");
    case 11: // SQLITE_CORRUPT
    case 26: // SQLITE_NOTADB
        return Text::tr("The roster file is damaged. Open the newest backup beside it.");
    case 13: // SQLITE_FULL
        return Text::tr(
            "The disk is full. Free some space and try again; nothing of this step was kept.");
    case 14: // SQLITE_CANTOPEN
        return Text::tr("The roster file cannot be opened. Check the folder and its permissions.");
    case 19: // SQLITE_CONSTRAINT
        return Text::tr("The roster refused the change, since other rows depend on what it was.");
    default:
        return Text::tr("The roster file could not be read or written.");
    }
}

/// As many as there are values: "?,?,?".
QString marks(const QVariantList &values)
{
    return QStringList(values.size(), QStringLiteral("?")).join(u',');
}

[[noreturn]] void fail(const QSqlError &error, const QString &sql)
{
    throw StorageError(wordsFor(error), sql + u'\n' + error.text());
}

} // namespace

bool Rows::next()
{
    m_column = 0;
    if (m_query.next())
        return true;
    if (const QSqlError error = m_query.lastError(); error.isValid())
        fail(error, m_query.lastQuery());
    return false;
}

Database::Database(const QString &path, Access access)
    : m_name(QUuid::createUuid().toString(QUuid::WithoutBraces))
    , m_connection(QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name))
{
    if (access == Access::frozen) {
        QUrl url = QUrl::fromLocalFile(path);
        url.setQuery(QStringLiteral("immutable=1"));
        m_connection.setDatabaseName(url.toString(QUrl::FullyEncoded));
        m_connection.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_OPEN_READONLY"));
    } else {
        m_connection.setDatabaseName(path);
        m_connection.setConnectOptions(access == Access::readOnly
                ? QStringLiteral("QSQLITE_BUSY_TIMEOUT=2000;QSQLITE_OPEN_READONLY")
                : QStringLiteral("QSQLITE_BUSY_TIMEOUT=2000"));
    }
    if (!m_connection.open()) {
        const QSqlError error = m_connection.lastError();
        m_connection = {};
        QSqlDatabase::removeDatabase(m_name);
        fail(error, path);
    }
}

Database::~Database()
{
    m_prepared.clear(); // statements first, then their connection
    m_connection.close();
    m_connection = {};
    QSqlDatabase::removeDatabase(m_name);
}

QSqlQuery &Database::execute(const QString &sql, const QVariantList &values)
{
    auto it = m_prepared.find(sql);
    if (it == m_prepared.end()) {
        QSqlQuery query(m_connection);
        query.setForwardOnly(true);
        if (!query.prepare(sql))
            fail(query.lastError(), sql);
        it = m_prepared.emplace(sql, std::move(query)).first;
    }
    QSqlQuery &query = it->second;
    for (qsizetype i = 0; i < values.size(); ++i)
        query.bindValue(int(i), values[i]);
    if (!query.exec())
        fail(query.lastError(), sql);
    return query;
}

int Database::run(const QString &sql, const QVariantList &values)
{
    QSqlQuery &query = execute(sql, values);
    const int changed = query.numRowsAffected();
    query.finish();
    return changed;
}

Rows Database::select(const QString &sql, const QVariantList &values)
{
    return Rows(execute(sql, values));
}

QVariant Database::value(const QString &sql, const QVariantList &values)
{
    Rows rows = select(sql, values);
    return rows.next() ? rows.value() : QVariant();
}

void Database::insert(const char *table, const QString &columns, const QVariantList &values)
{
    run(QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
            .arg(QLatin1String(table), columns, marks(values)),
        values);
}

void Database::update(const char *table, const QString &columns, const QVariantList &values)
{
    run(QStringLiteral("UPDATE %1 SET (%2) = (%3) WHERE id = ?")
            .arg(QLatin1String(table), columns, marks(values)),
        values + QVariantList{values.front()});
}

void Database::setUserVersion(int version)
{
    run(QStringLiteral("PRAGMA user_version = %1").arg(version));
}

Transaction::Transaction(Database &db)
    : m_db(db)
{
    m_db.run(QStringLiteral("BEGIN IMMEDIATE"));
}

Transaction::~Transaction()
{
    if (!m_open)
        return;
    try {
        m_db.run(QStringLiteral("ROLLBACK"));
    } catch (const StorageError &) {
        // SQLite has rolled back by itself, which is what was wanted.
    }
}

void Transaction::commit()
{
    m_db.run(QStringLiteral("COMMIT"));
    m_open = false;
}

QVariant toVariant(const std::optional<int> &value)
{
    return value ? QVariant(*value) : QVariant(QMetaType::fromType<int>());
}

QVariant toVariant(const std::optional<double> &value)
{
    return value ? QVariant(*value) : QVariant(QMetaType::fromType<double>());
}

QVariant toVariant(const QDate &day)
{
    return day.toString(Qt::ISODate);
}

QVariant toVariant(const std::optional<QDate> &day)
{
    return day ? toVariant(*day) : QVariant(QMetaType::fromType<QString>());
}

QVariant toVariant(const QString &text)
{
    return text.isNull() ? QStringLiteral("") : text;
}

} // namespace core
