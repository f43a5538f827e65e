#include "core/storage/sql_reads.h"

#include "core/storage/database.h"
#include "core/storage/repositories.h"

namespace core {

template <class Base> std::vector<Lifter> SqlReads<Base>::lifters() const
{
    return Repository<Lifter>::select(db());
}

template <class Base> std::vector<Variation> SqlReads<Base>::variations() const
{
    return Repository<Variation>::select(db());
}

template <class Base>
std::vector<Card> SqlReads<Base>::cards(LifterId lifter, QDate from, QDate to) const
{
    return Repository<Card>::select(db(),
        {QStringLiteral("WHERE lifter_id = ? AND day BETWEEN ? AND ?"),
            {lifter.value, toVariant(from), toVariant(to)}});
}

template <class Base> std::vector<Card> SqlReads<Base>::cards(QDate from, QDate to) const
{
    return Repository<Card>::select(
        db(), {QStringLiteral("WHERE day BETWEEN ? AND ?"), {toVariant(from), toVariant(to)}});
}

template <class Base> std::vector<LoggedSession> SqlReads<Base>::sessions(LifterId lifter) const
{
    return rowsOf<LoggedSession>(lifter, db());
}

template <class Base> std::vector<LoggedSession> SqlReads<Base>::sessions() const
{
    return Repository<LoggedSession>::select(db());
}

template <class Base> std::vector<CheckIn> SqlReads<Base>::checkIns(LifterId lifter) const
{
    return rowsOf<CheckIn>(lifter, db());
}

template <class Base> std::vector<CheckIn> SqlReads<Base>::checkIns() const
{
    return Repository<CheckIn>::select(db());
}

template <class Base> std::vector<CheckIn> SqlReads<Base>::checkInsFor(QDate from, QDate to) const
{
    return Repository<CheckIn>::select(db(),
        {QStringLiteral(
             "WHERE day BETWEEN ? AND ? OR (pain = 1 AND day < ? AND NOT EXISTS ("
             "SELECT 1 FROM check_in AS later WHERE later.lifter_id = check_in.lifter_id"
             " AND later.pain_free = 1 AND later.day > check_in.day AND later.day < ?))"),
            {toVariant(from), toVariant(to), toVariant(from), toVariant(from)}});
}

template <class Base> std::vector<BlockTemplate> SqlReads<Base>::templates() const
{
    return Repository<BlockTemplate>::select(db());
}

template <class Base> std::vector<Block> SqlReads<Base>::blocks(LifterId lifter) const
{
    return rowsOf<Block>(lifter, db());
}

template <class Base> std::vector<Block> SqlReads<Base>::blocks() const
{
    return Repository<Block>::select(db());
}

template <class Base> std::vector<Waiver> SqlReads<Base>::waivers(LifterId lifter) const
{
    return rowsOf<Waiver>(lifter, db());
}

template class SqlReads<RosterReader>;
template class SqlReads<RosterStore>;

} // namespace core
