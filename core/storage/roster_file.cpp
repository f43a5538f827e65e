#include "core/storage/roster_file.h"

#include "core/csv/catalogue_csv.h"
#include "core/domain/storage_error.h"
#include "core/domain/text.h"
#include "core/storage/backup.h"
#include "core/storage/database.h"
#include "core/storage/edit_writer.h"
#include "core/storage/migrations.h"
#include "core/storage/probe.h"
#include "core/storage/repositories.h"

#include <QDir>
#include <QFileInfo>
#include <QLockFile>

namespace core {

namespace {

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
            Text::tr("%1 is open in another window of Benchwright. Go on there, or close it first.")
                .arg(shown(path)));
    throw StorageError(Text::tr(
        "The folder of %1 cannot be written. Copy the roster to a folder of yours and open it "
        "there.")
                           .arg(shown(path)));
}

void setUp(Database &db)
{
    (void)db.value(QStringLiteral("PRAGMA journal_mode = WAL"));
    db.run(QStringLiteral("PRAGMA synchronous = FULL"));
    db.run(QStringLiteral("PRAGMA foreign_keys = ON"));
}

/// A whole new roster under a name of its own, so that no half-made one is ever found.
void build(const QString &path)
{
    Database db(path, Database::Access::readWrite);
    db.run(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId));
    migrate(db, migrations(), [] {});
    Edit edit;
    edit.variations.after = builtInCatalogue();
    EditWriter(db).write(edit);
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
        lastCheckIn = lastId(QStringLiteral("check_in"));
        lastTemplate = lastId(QStringLiteral("block_template"));
        lastBlock = lastId(QStringLiteral("block"));
        lastWaiver = lastId(QStringLiteral("waiver"));
    }
    qint64 lastId(const QString &table)
    {
        return db.value(QStringLiteral("SELECT max(id) FROM %1").arg(table)).toLongLong();
    }

    QString path;
    std::unique_ptr<QLockFile> lock; // let go after the connection is closed
    Database db;
    QString backupTrouble;
    qint64 lastLifter = 0;
    qint64 lastVariation = 0;
    qint64 lastCard = 0;
    qint64 lastSession = 0;
    qint64 lastCheckIn = 0;
    qint64 lastTemplate = 0;
    qint64 lastBlock = 0;
    qint64 lastWaiver = 0;
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
        throw StorageError(
            Text::tr("There is a file %1 already. Choose another name.").arg(shown(path)));
    for (const QString &logSuffix : kLogSuffixes)
        if (QFileInfo::exists(path + logSuffix)) // SQLite would work the old log into the new file
            throw StorageError(
                Text::tr("There are remains of an earlier roster named %1. Choose another "
                         "name.")
                    .arg(shown(path)),
                path + logSuffix);
    {
        const auto held = lock(path);
        const QString part = path + QStringLiteral(".part");
        for (const QString &logSuffix : kLogSuffixes)
            QFile::remove(part + logSuffix); // of a program that died while making one
        QFile::remove(part);
        try {
            build(part);
            QFile file(part);
            if (!file.rename(path)) // never over an existing file
                throw StorageError(
                    Text::tr("%1 could not be made. Check the permissions of its folder.")
                        .arg(shown(path)),
                    file.errorString());
        } catch (const StorageError &) {
            QFile::remove(part);
            throw;
        }
    }
    return RosterFile(openWithoutBackup(path)); // there is nothing to lose yet
}

RosterFile RosterFile::open(const QString &path)
{
    auto impl = openWithoutBackup(path);
    try {
        backUpDaily(impl->db, impl->path, QDate::currentDate());
    } catch (const StorageError &e) {
        impl->backupTrouble = e.words();
    }
    return RosterFile(std::move(impl));
}

std::unique_ptr<RosterFile::Impl> RosterFile::openWithoutBackup(const QString &path)
{
    probeHeader(path);
    const QString real =
        QFileInfo(path).canonicalFilePath(); // one lock, whatever leads to the file
    if (isBackup(real))
        throw StorageError(
            Text::tr("%1 is a backup. Copy it out of its folder, under another name, and "
                     "open the copy.")
                .arg(shown(real)));
    auto held = lock(real);
    probeContents(real);
    auto impl = std::make_unique<Impl>(real, std::move(held));
    setUp(impl->db);
    migrate(impl->db, migrations(),
        [&impl] { backUpBeforeMigration(impl->db, impl->path, impl->db.userVersion()); });
    impl->readLastIds();
    return impl;
}

QString RosterFile::path() const
{
    return m_impl->path;
}

QString RosterFile::backupTrouble() const
{
    return m_impl->backupTrouble;
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

std::vector<Card> RosterFile::cards(QDate from, QDate to) const
{
    return CardRepository(m_impl->db).between(from, to);
}

std::vector<LoggedSession> RosterFile::sessions(LifterId lifter) const
{
    return SessionRepository(m_impl->db).of(lifter);
}

std::vector<LoggedSession> RosterFile::sessions() const
{
    return SessionRepository(m_impl->db).all();
}

std::vector<CheckIn> RosterFile::checkIns(LifterId lifter) const
{
    return CheckInRepository(m_impl->db).of(lifter);
}

std::vector<CheckIn> RosterFile::checkIns() const
{
    return CheckInRepository(m_impl->db).all();
}

std::vector<BlockTemplate> RosterFile::templates() const
{
    return TemplateRepository(m_impl->db).all();
}

std::vector<Block> RosterFile::blocks(LifterId lifter) const
{
    return BlockRepository(m_impl->db).of(lifter);
}

std::vector<Block> RosterFile::blocks() const
{
    return BlockRepository(m_impl->db).all();
}

std::vector<Waiver> RosterFile::waivers(LifterId lifter) const
{
    return WaiverRepository(m_impl->db).of(lifter);
}

void RosterFile::apply(const Edit &edit)
{
    EditWriter(m_impl->db).write(edit);
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
template <> CheckInId RosterFile::newId<CheckInTag>()
{
    return {++m_impl->lastCheckIn};
}
template <> TemplateId RosterFile::newId<TemplateTag>()
{
    return {++m_impl->lastTemplate};
}
template <> BlockId RosterFile::newId<BlockTag>()
{
    return {++m_impl->lastBlock};
}
template <> WaiverId RosterFile::newId<WaiverTag>()
{
    return {++m_impl->lastWaiver};
}

} // namespace core
