#pragma once

#include "core/domain/edit.h"

#include <QVariant>
#include <unordered_map>
#include <vector>

/// How the rows of each kind lie in the file: the SQL and nothing else. A repository has
///     kTable               where the rows are; their parts in other tables go with them
///     select(db, where)    the rows with their parts, in the order that RosterReader promises
///     insert(db, row)      adds the row with its parts
///     describe(db, row)    names it in an error: "Card 2 of Ann on 2024-05-01"
/// Rows that others refer to are updated in place:
///     release(db, id)      frees what is unique about it, so that two rows may swap names
///     update(db, row)      writes a released row anew
/// All throw StorageError; none opens a transaction.
namespace core {

class Database;

/// Which rows of a table; all of them unless said.
struct Where
{
    QString condition; ///< "WHERE id = ?"
    QVariantList values;
};

template <class Row> struct Repository;

template <> struct Repository<Lifter>
{
    static constexpr auto kTable = "lifter";
    [[nodiscard]] static std::vector<Lifter> select(Database &db, const Where &where = {});
    static void insert(Database &db, const Lifter &lifter);
    static void release(Database &db, LifterId id);
    static void update(Database &db, const Lifter &lifter);
    [[nodiscard]] static QString describe(Database &db, const Lifter &lifter);
};

template <> struct Repository<Variation>
{
    static constexpr auto kTable = "variation";
    [[nodiscard]] static std::vector<Variation> select(Database &db, const Where &where = {});
    static void insert(Database &db, const Variation &variation);
    static void release(Database &db, VariationId id);
    static void update(Database &db, const Variation &variation);
    [[nodiscard]] static QString describe(Database &db, const Variation &variation);
};

template <> struct Repository<Card>
{
    static constexpr auto kTable = "card";
    [[nodiscard]] static std::vector<Card> select(Database &db, const Where &where = {});
    static void insert(Database &db, const Card &card);
    [[nodiscard]] static QString describe(Database &db, const Card &card);
};

template <> struct Repository<LoggedSession>
{
    static constexpr auto kTable = "session";
    [[nodiscard]] static std::vector<LoggedSession> select(Database &db, const Where &where = {});
    static void insert(Database &db, const LoggedSession &session);
    [[nodiscard]] static QString describe(Database &db, const LoggedSession &session);
};

template <> struct Repository<CheckIn>
{
    static constexpr auto kTable = "check_in";
    [[nodiscard]] static std::vector<CheckIn> select(Database &db, const Where &where = {});
    static void insert(Database &db, const CheckIn &checkIn);
    [[nodiscard]] static QString describe(Database &db, const CheckIn &checkIn);
};

template <> struct Repository<BlockTemplate>
{
    static constexpr auto kTable = "block_template";
    [[nodiscard]] static std::vector<BlockTemplate> select(Database &db, const Where &where = {});
    static void insert(Database &db, const BlockTemplate &block);
    [[nodiscard]] static QString describe(Database &db, const BlockTemplate &block);
};

template <> struct Repository<Block>
{
    static constexpr auto kTable = "block";
    [[nodiscard]] static std::vector<Block> select(Database &db, const Where &where = {});
    static void insert(Database &db, const Block &block);
    [[nodiscard]] static QString describe(Database &db, const Block &block);
};

template <> struct Repository<Waiver>
{
    static constexpr auto kTable = "waiver";
    [[nodiscard]] static std::vector<Waiver> select(Database &db, const Where &where = {});
    static void insert(Database &db, const Waiver &waiver);
    [[nodiscard]] static QString describe(Database &db, const Waiver &waiver);
};

template <> struct Repository<GivenDay>
{
    static constexpr auto kTable = "given_day";
    [[nodiscard]] static std::vector<GivenDay> select(Database &db, const Where &where = {});
    static void insert(Database &db, const GivenDay &given);
    [[nodiscard]] static QString describe(Database &db, const GivenDay &given);
};

/// The rows of one lifter.
template <class Row> [[nodiscard]] std::vector<Row> rowsOf(LifterId lifter, Database &db)
{
    return Repository<Row>::select(db, {QStringLiteral("WHERE lifter_id = ?"), {lifter.value}});
}

/// Name of a lifter for describe(); "?" where there is none.
[[nodiscard]] QString nameOf(LifterId lifter, Database &db);

/// The rows by their ids, to put parts to; as long as the vector stays as it is.
template <class Row> [[nodiscard]] auto byId(std::vector<Row> &rows)
{
    std::unordered_map<qint64, Row *> found;
    for (Row &row : rows)
        found.emplace(row.id.value, &row);
    return found;
}

/// Of a table of parts those whose rows `where` picks.
/// @param column  by which a part refers to its row
template <class Row> [[nodiscard]] Where partsOf(const Where &where, const char *column)
{
    if (where.condition.isEmpty())
        return {};
    return {
        QStringLiteral("WHERE %1 IN (SELECT id FROM %2 %3)")
            .arg(QLatin1String(column), QLatin1String(Repository<Row>::kTable), where.condition),
        where.values};
}

} // namespace core
