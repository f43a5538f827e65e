#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/storage/database.h"

namespace core {

namespace {

const QString kSelect = QStringLiteral(
    "SELECT id, lifter_id, day, position, variation_id, set_line, note FROM card WHERE ");

std::vector<Card> read(Rows rows)
{
    std::vector<Card> cards;
    while (rows.next()) {
        Card card;
        card.id = {rows.id()};
        card.lifter = {rows.id()};
        card.day = rows.date();
        card.position = rows.integer();
        card.variation = {rows.id()};
        card.setLine = rows.text();
        card.note = rows.text();
        cards.push_back(std::move(card));
    }
    return cards;
}

} // namespace

std::vector<Card> CardRepository::between(LifterId lifter, QDate from, QDate to)
{
    return read(m_db.select(
        kSelect + QStringLiteral("lifter_id = ? AND day BETWEEN ? AND ? ORDER BY day, position"),
        {lifter.value, toVariant(from), toVariant(to)}));
}

std::vector<Card> CardRepository::between(QDate from, QDate to)
{
    return read(m_db.select(
        kSelect + QStringLiteral("day BETWEEN ? AND ? ORDER BY lifter_id, day, position"),
        {toVariant(from), toVariant(to)}));
}

std::optional<Card> CardRepository::find(CardId id)
{
    const std::vector<Card> found =
        read(m_db.select(kSelect + QStringLiteral("id = ?"), {id.value}));
    return found.empty() ? std::nullopt : std::optional(found.front());
}

void CardRepository::insert(const Card &card)
{
    m_db.run(
        QStringLiteral("INSERT INTO card (id, lifter_id, day, position, variation_id, set_line,"
                       " note) VALUES (?, ?, ?, ?, ?, ?, ?)"),
        {card.id.value, card.lifter.value, toVariant(card.day), card.position, card.variation.value,
            toVariant(card.setLine), toVariant(card.note)});
}

void CardRepository::remove(CardId id)
{
    m_db.run(QStringLiteral("DELETE FROM card WHERE id = ?"), {id.value});
}

QString CardRepository::describe(const Card &card)
{
    const std::optional<Lifter> lifter = LifterRepository(m_db).find(card.lifter);
    return Text::tr("Card %1 of %2 on %3")
        .arg(QString::number(card.position + 1), lifter ? lifter->name : QStringLiteral("?"),
            card.day.toString(Qt::ISODate));
}

} // namespace core
