#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/storage/database.h"

namespace core {

namespace {

const QString kColumns =
    QStringLiteral("id, lifter_id, rule, card_id, monday, lift, measure, note");

} // namespace

std::vector<Waiver> Repository<Waiver>::select(Database &db, const Where &where)
{
    std::vector<Waiver> waivers;
    Rows rows = db.select(
        QStringLiteral("SELECT %1 FROM waiver %2 ORDER BY id").arg(kColumns, where.condition),
        where.values);
    while (rows.next()) {
        Waiver waiver;
        waiver.id = {rows.id()};
        waiver.key.lifter = {rows.id()};
        const std::optional<CheckRule> rule = fromFileWord<CheckRule>(rows.text());
        waiver.key.card = {rows.id()};
        waiver.key.monday = rows.date();
        waiver.key.lift = fromFileWord<Lift>(rows.text()).value_or(Lift::bench);
        waiver.measure = rows.real();
        waiver.note = rows.text();
        if (!rule)
            continue; // of a rule that there is no more
        waiver.key.rule = *rule;
        waivers.push_back(std::move(waiver));
    }
    return waivers;
}

void Repository<Waiver>::insert(Database &db, const Waiver &waiver)
{
    db.insert("waiver", kColumns,
        {waiver.id.value, waiver.key.lifter.value, fileWord(waiver.key.rule), waiver.key.card.value,
            toVariant(waiver.key.monday), fileWord(waiver.key.lift), waiver.measure,
            toVariant(waiver.note)});
}

QString Repository<Waiver>::describe(Database &db, const Waiver &waiver)
{
    return Text::tr("Note on a finding of %1").arg(nameOf(waiver.key.lifter, db));
}

} // namespace core
