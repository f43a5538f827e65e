#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"

namespace core {

namespace {

const QString kSelect = QStringLiteral(
    "SELECT id, code, name, lift, competition, serves, stance, purpose, tempo_lowering,"
    " tempo_pause, tempo_lifting, reps_low, reps_high, ratio, ratio_spread, ratio_source,"
    " rep_cost, fatigue, spares, when_to_use, cautions, retired FROM variation ");

std::vector<Variation> read(Rows rows)
{
    std::vector<Variation> variations;
    while (rows.next()) {
        Variation v;
        v.id = {rows.id()};
        v.code = rows.text();
        v.name = rows.text();
        v.lift = fromFileWord<Lift>(rows.text()).value_or(Lift::bench);
        v.competition = rows.boolean();
        v.serves = fromFileWord<Serves>(rows.text()).value_or(Serves::both);
        v.stance = rows.text();
        v.purpose = rows.text();
        v.tempo.lowering = rows.integer();
        v.tempo.pause = rows.integer();
        v.tempo.lifting = rows.integer();
        v.repsLow = rows.integer();
        v.repsHigh = rows.integer();
        v.ratio = rows.real();
        v.ratioSpread = rows.real();
        v.ratioSource = rows.text();
        v.repCost = rows.real();
        v.fatigue = fromFileWord<Fatigue>(rows.text()).value_or(Fatigue::moderate);
        v.spares = bodyAreasFromFileWords(rows.text()).value_or(std::vector<BodyArea>());
        v.whenToUse = rows.text();
        v.cautions = rows.text();
        v.retired = rows.boolean();
        variations.push_back(std::move(v));
    }
    return variations;
}

/// The columns from code to retired, in the order of kSelect.
QVariantList fields(const Variation &v)
{
    return {v.code, v.name, fileWord(v.lift), int(v.competition), fileWord(v.serves),
        toVariant(v.stance), toVariant(v.purpose), v.tempo.lowering, v.tempo.pause, v.tempo.lifting,
        v.repsLow, v.repsHigh, v.ratio, v.ratioSpread, toVariant(v.ratioSource), v.repCost,
        fileWord(v.fatigue), toVariant(fileWords(v.spares)), toVariant(v.whenToUse),
        toVariant(v.cautions), int(v.retired)};
}

} // namespace

std::vector<Variation> VariationRepository::all()
{
    return read(m_db.select(kSelect + QStringLiteral("ORDER BY id")));
}

std::optional<Variation> VariationRepository::find(VariationId id)
{
    const std::vector<Variation> found =
        read(m_db.select(kSelect + QStringLiteral("WHERE id = ?"), {id.value}));
    return found.empty() ? std::nullopt : std::optional(found.front());
}

void VariationRepository::insert(const Variation &variation)
{
    refuseTaken(variation);
    m_db.run(
        QStringLiteral(
            "INSERT INTO variation (id, code, name, lift, competition, serves, stance, purpose,"
            " tempo_lowering, tempo_pause, tempo_lifting, reps_low, reps_high, ratio,"
            " ratio_spread, ratio_source, rep_cost, fatigue, spares, when_to_use, cautions, "
            "retired)"
            " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
        QVariantList{variation.id.value} + fields(variation));
}

void VariationRepository::remove(VariationId id)
{
    m_db.run(QStringLiteral("DELETE FROM variation WHERE id = ?"), {id.value});
}

void VariationRepository::release(VariationId id)
{
    m_db.run(
        QStringLiteral("UPDATE variation SET code = '0__' || id, competition = 0 WHERE id = ?"),
        {id.value});
}

void VariationRepository::update(const Variation &variation)
{
    refuseTaken(variation);
    m_db.run(QStringLiteral(
                 "UPDATE variation SET code = ?, name = ?, lift = ?, competition = ?, serves = ?,"
                 " stance = ?, purpose = ?, tempo_lowering = ?, tempo_pause = ?, tempo_lifting = ?,"
                 " reps_low = ?, reps_high = ?, ratio = ?, ratio_spread = ?, ratio_source = ?,"
                 " rep_cost = ?, fatigue = ?, spares = ?, when_to_use = ?, cautions = ?, retired = "
                 "? WHERE id = ?"),
        fields(variation) + QVariantList{variation.id.value});
}

QString VariationRepository::describe(const Variation &variation)
{
    return Text::tr("Variation %1")
        .arg(variation.name.trimmed().isEmpty() ? variation.code : variation.name);
}

void VariationRepository::refuseTaken(const Variation &v)
{
    const QVariant owner =
        m_db.value(QStringLiteral("SELECT name FROM variation WHERE code = ? AND id <> ?"),
            {v.code, v.id.value});
    if (owner.isValid())
        throw StorageError(Text::tr("The code %1 belongs to %2 already. Choose another code.")
                               .arg(v.code, owner.toString()));
    if (!v.competition)
        return;
    const QVariant other = m_db.value(
        QStringLiteral("SELECT name FROM variation WHERE lift = ? AND competition = 1 AND id <> ?"),
        {fileWord(v.lift), v.id.value});
    if (other.isValid())
        throw StorageError(Text::tr(
            "%1 is the competition variation of its lift already, and there is one a lift. Take "
            "that mark from it first.")
                               .arg(other.toString()));
}

} // namespace core
