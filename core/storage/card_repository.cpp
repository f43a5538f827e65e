#include "core/storage/repositories.h"

#include "core/storage/row_values.h"

namespace core {

std::vector<Card> CardRepository::between(LifterId lifter, QDate from, QDate to)
{
    std::vector<Card> cards;
    QSqlQuery &rows = m_db.select(
        QStringLiteral("SELECT id, lifter_id, day, position, variation_id, set_line, note FROM card"
                       " WHERE lifter_id = ? AND day BETWEEN ? AND ? ORDER BY day, position, id"),
        {lifter.value, toVariant(from), toVariant(to)});
    while (rows.next()) {
        RowReader row(rows);
        Card card;
        card.id = {row.id()};
        card.lifter = {row.id()};
        card.day = row.date();
        card.position = row.integer();
        card.variation = {row.id()};
        card.setLine = row.text();
        card.note = row.text();
        cards.push_back(std::move(card));
    }
    return cards;
}

void CardRepository::insert(const Card &card)
{
    m_db.run(
        QStringLiteral("INSERT INTO card (id, lifter_id, day, position, variation_id, set_line,"
                       " note) VALUES (?, ?, ?, ?, ?, ?, ?)"),
        {card.id.value, card.lifter.value, toVariant(card.day), card.position, card.variation.value,
            toVariant(card.setLine), toVariant(card.note)});
}

void CardRepository::remove(const Card &card)
{
    removeRow(m_db, QStringLiteral("card"), card.id.value);
}

} // namespace core
