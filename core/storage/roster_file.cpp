#include "core/storage/roster_file_impl.h"

#include "core/domain/storage_error.h"
#include "core/domain/text.h"

#include <unordered_set>

namespace core {

namespace {

/// Reads the file that a window has open, by a connection of its own.
class FileReader final : public SqlReads<RosterReader>
{
public:
    explicit FileReader(const QString &path)
        : m_db(std::make_unique<Database>(path, Database::Access::readOnly))
    {
        m_db->run(QStringLiteral("BEGIN")); // the first query sets the moment
    }

protected:
    [[nodiscard]] Database &db() const override { return *m_db; }

private:
    std::unique_ptr<Database> m_db;
};

template <class Row> auto idsOf(const std::vector<Row> &rows)
{
    std::unordered_set<decltype(Row::id)> ids;
    for (const Row &row : rows)
        ids.insert(row.id);
    return ids;
}

/// Rows that others refer to. A card or a session is taken out and put back, so that two may swap
/// places.
template <class Row>
concept UpdatesInPlace = requires(Database &db, Row row)
{
    Repository<Row>::update(db, row);
};

template <class Row> void carryOut(Database &db, const RowChange<Row> &change)
{
    using Repository = Repository<Row>;
    const auto before = idsOf(change.before);
    const auto after = idsOf(change.after);
    const QString whereId = QStringLiteral("WHERE id = ?");

    for (const Row &row : change.before)
        if (Repository::select(db, {whereId, {row.id.value}}) != std::vector{row})
            throw StorageError(Text::tr(
                "%1 was changed or removed in the meantime. Nothing was changed; look at it once "
                "more and try again.")
                                   .arg(Repository::describe(db, row)));
    for (const Row &row : change.before) {
        if constexpr (UpdatesInPlace<Row>) {
            if (after.contains(row.id)) {
                Repository::release(db, row.id);
                continue;
            }
        }
        db.run(QStringLiteral("DELETE FROM %1 %2").arg(QLatin1String(Repository::kTable), whereId),
            {row.id.value});
    }
    for (const Row &row : change.after) {
        QStringList wrong = problems(row);
        if (!row.id.isValid())
            wrong << Text::tr("It has no id.");
        if (!wrong.isEmpty())
            throw StorageError(Text::tr("%1 cannot be saved. %2")
                                   .arg(Repository::describe(db, row), wrong.join(u' ')));
        if constexpr (UpdatesInPlace<Row>) {
            if (before.contains(row.id)) {
                Repository::update(db, row);
                continue;
            }
        }
        try {
            Repository::insert(db, row);
        } catch (const StorageError &e) {
            if (e.detail().isEmpty()) // says by itself what is wrong
                throw;
            throw StorageError(
                Text::tr("%1 cannot be saved. %2").arg(Repository::describe(db, row), e.words()),
                e.detail());
        }
    }
}

void refuseDangling(Database &db)
{
    Rows rows = db.select(QStringLiteral("PRAGMA foreign_key_check"));
    if (!rows.next())
        return;
    const QString child = rows.text();
    rows.skip(1);
    const QString parent = rows.text();
    QString words =
        Text::tr("The variation is still used by a card or in a log. Retire it instead; "
                 "nothing was changed.");
    if (parent == QStringLiteral("lifter"))
        words = Text::tr(
            "The lifter still has a plan or a log. Archive the lifter instead; nothing was "
            "changed.");
    else if (parent == QStringLiteral("block_template"))
        words =
            Text::tr("A block was laid out by this version of the template, so it is kept; nothing "
                     "was changed.");
    throw StorageError(words, QStringLiteral("%1 refers to %2").arg(child, parent));
}

} // namespace

RosterFile::RosterFile(std::unique_ptr<Impl> impl)
    : m_impl(std::move(impl))
{
}
RosterFile::RosterFile(RosterFile &&) noexcept = default;
RosterFile &RosterFile::operator=(RosterFile &&) noexcept = default;
RosterFile::~RosterFile() = default;

QString RosterFile::path() const
{
    return m_impl->path;
}

QString RosterFile::backupTrouble() const
{
    return m_impl->backupTrouble;
}

RosterFile::ReaderSource RosterFile::readers() const
{
    return [path = m_impl->path]() -> std::unique_ptr<RosterReader> {
        return std::make_unique<FileReader>(path);
    };
}

void RosterFile::apply(const Edit &edit)
{
    Transaction tx(db());
    db().run(QStringLiteral("PRAGMA defer_foreign_keys = ON")); // rows come and go in any order
    forEachRowKind([&](auto kind) { carryOut(db(), edit.*kind); });
    try {
        tx.commit();
    } catch (const StorageError &) {
        refuseDangling(db()); // the transaction is still open, so the reason can be looked for
        throw;
    }
}

qint64 RosterFile::takeId(size_t rowKind)
{
    return ++m_impl->lastIds[rowKind];
}

Database &RosterFile::db() const
{
    return m_impl->db;
}

} // namespace core
