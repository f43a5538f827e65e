#include "core/storage/roster_file.h"

#include "core/exchange/catalogue_csv.h"
#include "core/storage/database.h"
#include "core/storage/migrations.h"
#include "core/storage/repositories.h"
#include "core/storage/roster_header.h"
#include "core/storage/storage_error.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QLockFile>

namespace core {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("RosterFile", text);
}

QString shown(const QString &path)
{
    return QDir::toNativeSeparators(path);
}

/// Held while a window has the roster open. A lock left by a crash is taken over.
std::unique_ptr<QLockFile> lock(const QString &path)
{
    const QFileInfo info(path);
    auto lock = std::make_unique<QLockFile>(
        info.dir().filePath(u'.' + info.fileName() + QStringLiteral(".lock")));
    lock->setStaleLockTime(0);
    if (lock->tryLock(0))
        return lock;
    if (lock->error() == QLockFile::LockFailedError)
        throw StorageError(
            tr("%1 is open in another window of Benchwright. Go on there, or close it first.")
                .arg(shown(path)));
    throw StorageError(
        tr("The folder of %1 cannot be written. Copy the roster to a folder of yours and open it "
           "there.")
            .arg(shown(path)));
}

void refuseUnlessRoster(const QString &path)
{
    const RosterHeader header = readRosterHeader(path);
    switch (header.kind) {
    case RosterHeader::Kind::missing:
        throw StorageError(tr("There is no file %1.").arg(shown(path)));
    case RosterHeader::Kind::unreadable:
        throw StorageError(tr("%1 cannot be read. Check its permissions.").arg(shown(path)));
    case RosterHeader::Kind::foreign:
        throw StorageError(tr("%1 is not a roster of Benchwright. It was left as it is. To read a "
                              "training log, use Import.")
                               .arg(shown(path)));
    case RosterHeader::Kind::roster:
        break;
    }
    if (header.schemaVersion > int(migrations().size()))
        throw StorageError(
            tr("%1 was made by a newer version of Benchwright. It was left as it is; "
               "update Benchwright to open it.")
                .arg(shown(path)));
    if (!QFileInfo(path).isWritable())
        throw StorageError(tr("%1 is read-only. Copy it to a folder of yours and open it there.")
                               .arg(shown(path)));
}

void refuseDamaged(const QString &path)
{
    QString found;
    try {
        Database probe(path, Database::Access::frozen);
        found = probe.value(QStringLiteral("PRAGMA quick_check(1)")).toString();
    } catch (const StorageError &e) {
        found = e.detail();
    }
    if (found != QStringLiteral("ok"))
        throw StorageError(tr("%1 is damaged. It was left as it is; open the newest backup beside "
                              "it.")
                               .arg(shown(path)),
            found);
}

void setUp(Database &db)
{
    (void)db.value(QStringLiteral("PRAGMA journal_mode = WAL"));
    db.run(QStringLiteral("PRAGMA synchronous = FULL"));
    db.run(QStringLiteral("PRAGMA foreign_keys = ON"));
}

template <class Row> void refuseUnsound(const std::vector<Row> &rows)
{
    for (const Row &row : rows)
        if (const QStringList wrong = problems(row); !wrong.isEmpty())
            throw StorageError(row.name + QStringLiteral(": ") + wrong.join(u' '));
}

void refuseUnsound(const std::vector<LoggedSession> &sessions)
{
    for (const LoggedSession &session : sessions)
        for (size_t i = 0; i < session.sets.size(); ++i)
            if (const QStringList wrong = problems(session.sets[i]); !wrong.isEmpty())
                throw StorageError(tr("Session of %1, set %2: %3")
                                       .arg(session.day.toString(Qt::ISODate))
                                       .arg(i + 1)
                                       .arg(wrong.join(u' ')));
}

template <class Repository, class Row>
void removeAll(Repository repository, const RowChange<Row> &change)
{
    for (const Row &row : change.before)
        repository.remove(row);
}

template <class Repository, class Row>
void insertAll(Repository repository, const RowChange<Row> &change)
{
    for (const Row &row : change.after)
        repository.insert(row);
}

} // namespace

struct RosterFile::Impl
{
    Impl(const QString &filePath, std::unique_ptr<QLockFile> heldLock)
        : path(filePath)
        , lock(std::move(heldLock))
        , db(filePath, Database::Access::readWrite)
    {
    }

    void readLastIds()
    {
        lastLifter = lastId(QStringLiteral("lifter"));
        lastVariation = lastId(QStringLiteral("variation"));
        lastCard = lastId(QStringLiteral("card"));
        lastSession = lastId(QStringLiteral("session"));
    }
    qint64 lastId(const QString &table)
    {
        return db.value(QStringLiteral("SELECT max(id) FROM %1").arg(table)).toLongLong();
    }

    QString path;
    std::unique_ptr<QLockFile> lock;
    Database db;
    qint64 lastLifter = 0;
    qint64 lastVariation = 0;
    qint64 lastCard = 0;
    qint64 lastSession = 0;
};

RosterFile::RosterFile(std::unique_ptr<Impl> impl)
    : m_impl(std::move(impl))
{
}
RosterFile::RosterFile(RosterFile &&) noexcept = default;
RosterFile &RosterFile::operator=(RosterFile &&) noexcept = default;
RosterFile::~RosterFile() = default;

RosterFile RosterFile::create(const QString &path)
{
    if (QFileInfo::exists(path))
        throw StorageError(tr("There is a file %1 already. Choose another name.").arg(shown(path)));
    auto held = lock(path);
    try {
        auto impl = std::make_unique<Impl>(path, std::move(held));
        impl->db.run(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId));
        setUp(impl->db);
        migrate(impl->db, migrations());
        RosterFile file(std::move(impl));
        Edit catalogue;
        catalogue.variations.after = builtInCatalogue();
        file.apply(catalogue);
        file.m_impl->readLastIds();
        // The header on disk shall say what the file is, even while the log holds the rest.
        (void)file.m_impl->db.value(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)"));
        return file;
    } catch (const StorageError &) {
        for (const char *suffix : {"", "-wal", "-shm"})
            QFile::remove(path + QLatin1String(suffix));
        throw;
    }
}

RosterFile RosterFile::open(const QString &path)
{
    refuseUnlessRoster(path);
    auto held = lock(path);
    refuseDamaged(path);
    auto impl = std::make_unique<Impl>(path, std::move(held));
    setUp(impl->db);
    migrate(impl->db, migrations());
    impl->readLastIds();
    return RosterFile(std::move(impl));
}

QString RosterFile::path() const
{
    return m_impl->path;
}

std::vector<Lifter> RosterFile::lifters() const
{
    return LifterRepository(m_impl->db).all();
}

std::vector<Variation> RosterFile::variations() const
{
    return VariationRepository(m_impl->db).all();
}

std::vector<Card> RosterFile::cards(LifterId lifter, QDate from, QDate to) const
{
    return CardRepository(m_impl->db).between(lifter, from, to);
}

std::vector<LoggedSession> RosterFile::sessions(LifterId lifter) const
{
    return SessionRepository(m_impl->db).of(lifter);
}

std::vector<LoggedSession> RosterFile::sessions() const
{
    return SessionRepository(m_impl->db).all();
}

void RosterFile::apply(const Edit &edit)
{
    refuseUnsound(edit.lifters.after);
    refuseUnsound(edit.variations.after);
    refuseUnsound(edit.sessions.after);

    Database &db = m_impl->db;
    Transaction tx(db);
    // Rows out, rows in: a replaced lifter is gone for a moment while cards still name it, so the
    // references are checked when all is done.
    db.run(QStringLiteral("PRAGMA defer_foreign_keys = ON"));
    removeAll(SessionRepository(db), edit.sessions);
    removeAll(CardRepository(db), edit.cards);
    removeAll(VariationRepository(db), edit.variations);
    removeAll(LifterRepository(db), edit.lifters);
    insertAll(LifterRepository(db), edit.lifters);
    insertAll(VariationRepository(db), edit.variations);
    insertAll(CardRepository(db), edit.cards);
    insertAll(SessionRepository(db), edit.sessions);
    tx.commit();
}

template <> LifterId RosterFile::newId<LifterTag>()
{
    return {++m_impl->lastLifter};
}
template <> VariationId RosterFile::newId<VariationTag>()
{
    return {++m_impl->lastVariation};
}
template <> CardId RosterFile::newId<CardTag>()
{
    return {++m_impl->lastCard};
}
template <> SessionId RosterFile::newId<SessionTag>()
{
    return {++m_impl->lastSession};
}

} // namespace core
