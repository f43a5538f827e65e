#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/storage/database.h"

namespace core {

namespace {

const QString kColumns =
    QStringLiteral("id, lifter_id, day, position, variation_id, set_line, note");

} // namespace

std::vector<Card> Repository<Card>::select(Database &db, const Where &where)
{
    std::vector<Card> cards;
    Rows rows = db.select(QStringLiteral("SELECT %1 FROM card %2 ORDER BY lifter_id, day, position")
                              .arg(kColumns, where.condition),
        where.values);
    while (rows.next()) {
        Card &card = cards.emplace_back();
        card.id = {rows.id()};
        card.lifter = {rows.id()};
        card.day = rows.date();
        card.position = rows.integer();
        card.variation = {rows.id()};
        card.setLine = rows.text();
        card.note = rows.text();
    }
    return cards;
}

void Repository<Card>::insert(Database &db, const Card &card)
{
    db.insert("card", kColumns,
        {card.id.value, card.lifter.value, toVariant(card.day), card.position, card.variation.value,
            toVariant(card.setLine), toVariant(card.note)});
}

QString Repository<Card>::describe(Database &db, const Card &card)
{
    return Text::tr("Card %1 of %2 on %3")
        .arg(QString::number(card.position + 1), nameOf(card.lifter, db),
            card.day.toString(Qt::ISODate));
}

} // namespace core
