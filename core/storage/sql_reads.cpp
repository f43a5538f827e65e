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

template <class Base> std::vector<GivenDay> SqlReads<Base>::given(LifterId lifter) const
{
    return rowsOf<GivenDay>(lifter, db());
}

template <class Base> std::vector<GivenDay> SqlReads<Base>::given(QDate from, QDate to) const
{
    return Repository<GivenDay>::select(
        db(), {QStringLiteral("WHERE day BETWEEN ? AND ?"), {toVariant(from), toVariant(to)}});
}

template <class Base> std::vector<Card> SqlReads<Base>::cardsNotGiven(QDate before) const
{
    return Repository<Card>::select(db(),
        {QStringLiteral(
             "WHERE day < ? AND NOT EXISTS (SELECT 1 FROM given_card JOIN given_day"
             " ON given_day.id = given_card.given_day_id WHERE given_card.card_id = card.id"
             " AND given_day.lifter_id = card.lifter_id AND given_day.day = card.day"
             " AND given_card.variation_id = card.variation_id"
             " AND given_card.set_line = card.set_line)"),
            {toVariant(before)}});
}

template <class Base> std::optional<QDate> SqlReads<Base>::givenSince() const
{
    const QVariant first = db().value(QStringLiteral("SELECT min(at) FROM given_day"));
    return first.isNull()
        ? std::nullopt
        : std::optional(QDateTime::fromString(first.toString(), Qt::ISODate).date());
}

template class SqlReads<RosterReader>;
template class SqlReads<RosterStore>;

} // namespace core
