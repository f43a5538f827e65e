#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/storage/database.h"

namespace core {

namespace {

const QString kSelect = QStringLiteral(
    "SELECT id, lifter_id, rule, card_id, monday, lift, measure, note FROM waiver WHERE ");

std::vector<Waiver> read(Rows rows)
{
    std::vector<Waiver> waivers;
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

} // namespace

std::vector<Waiver> WaiverRepository::of(LifterId lifter)
{
    return read(m_db.select(kSelect + QStringLiteral("lifter_id = ? ORDER BY id"), {lifter.value}));
}

std::optional<Waiver> WaiverRepository::find(WaiverId id)
{
    const std::vector<Waiver> found =
        read(m_db.select(kSelect + QStringLiteral("id = ?"), {id.value}));
    return found.empty() ? std::nullopt : std::optional(found.front());
}

void WaiverRepository::insert(const Waiver &waiver)
{
    m_db.run(QStringLiteral("INSERT INTO waiver (id, lifter_id, rule, card_id, monday, lift,"
                            " measure, note) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"),
        {waiver.id.value, waiver.key.lifter.value, fileWord(waiver.key.rule), waiver.key.card.value,
            toVariant(waiver.key.monday), fileWord(waiver.key.lift), waiver.measure,
            toVariant(waiver.note)});
}

void WaiverRepository::remove(WaiverId id)
{
    m_db.run(QStringLiteral("DELETE FROM waiver WHERE id = ?"), {id.value});
}

QString WaiverRepository::describe(const Waiver &waiver)
{
    const std::optional<Lifter> lifter = LifterRepository(m_db).find(waiver.key.lifter);
    return Text::tr("Note on a finding of %1").arg(lifter ? lifter->name : QStringLiteral("?"));
}

} // namespace core
