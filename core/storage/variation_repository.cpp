#include "core/storage/repositories.h"

#include "core/storage/row_values.h"
#include "core/storage/storage_error.h"

#include <QCoreApplication>

namespace core {

std::vector<Variation> VariationRepository::all()
{
    std::vector<Variation> variations;
    QSqlQuery &rows = m_db.select(QStringLiteral(
        "SELECT id, code, name, lift, competition, serves, stance, purpose, tempo_lowering,"
        " tempo_pause, tempo_lifting, reps_low, reps_high, ratio, ratio_spread, ratio_source,"
        " rep_cost, fatigue, spares, when_to_use, cautions, retired FROM variation ORDER BY id"));
    while (rows.next()) {
        RowReader row(rows);
        Variation v;
        v.id = {row.id()};
        v.code = row.text();
        v.name = row.text();
        v.lift = liftFromFileWord(row.text()).value_or(Lift::bench);
        v.competition = row.boolean();
        v.serves = servesFromFileWord(row.text()).value_or(Serves::both);
        v.stance = row.text();
        v.purpose = row.text();
        v.tempo.lowering = row.integer();
        v.tempo.pause = row.integer();
        v.tempo.lifting = row.integer();
        v.repsLow = row.integer();
        v.repsHigh = row.integer();
        v.ratio = row.real();
        v.ratioSpread = row.real();
        v.ratioSource = row.text();
        v.repCost = row.real();
        v.fatigue = fatigueFromFileWord(row.text()).value_or(Fatigue::moderate);
        v.spares = bodyAreasFromFileWords(row.text()).value_or(std::vector<BodyArea>());
        v.whenToUse = row.text();
        v.cautions = row.text();
        v.retired = row.boolean();
        variations.push_back(std::move(v));
    }
    return variations;
}

void VariationRepository::insert(const Variation &v)
{
    if (m_db.value(QStringLiteral("SELECT id FROM variation WHERE code = ?"), {v.code}).isValid())
        throw StorageError(QCoreApplication::translate(
            "Storage", "There is a variation with the code %1 already. Choose another code.")
                               .arg(v.code));
    m_db.run(
        QStringLiteral(
            "INSERT INTO variation (id, code, name, lift, competition, serves, stance, purpose,"
            " tempo_lowering, tempo_pause, tempo_lifting, reps_low, reps_high, ratio,"
            " ratio_spread, ratio_source, rep_cost, fatigue, spares, when_to_use, cautions, "
            "retired)"
            " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
        {v.id.value, v.code, v.name, fileWord(v.lift), int(v.competition), fileWord(v.serves),
            toVariant(v.stance), toVariant(v.purpose), v.tempo.lowering, v.tempo.pause,
            v.tempo.lifting, v.repsLow, v.repsHigh, v.ratio, v.ratioSpread,
            toVariant(v.ratioSource), v.repCost, fileWord(v.fatigue),
            toVariant(fileWords(v.spares)), toVariant(v.whenToUse), toVariant(v.cautions),
            int(v.retired)});
}

void VariationRepository::remove(const Variation &variation)
{
    removeRow(m_db, QStringLiteral("variation"), variation.id.value);
}

} // namespace core
