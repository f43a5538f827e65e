#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"

namespace core {

namespace {

const QString kColumns = QStringLiteral(
    "id, code, name, lift, competition, serves, stance, purpose, tempo_lowering, tempo_pause,"
    " tempo_lifting, reps_low, reps_high, ratio, ratio_spread, ratio_source, rep_cost, fatigue,"
    " work, assistance, usual_percent, when_to_use, cautions, retired");

/// In the order of kColumns.
QVariantList fields(const Variation &v)
{
    return {v.id.value, v.code, v.name, fileWord(v.lift), int(v.competition), fileWord(v.serves),
        toVariant(v.stance), toVariant(v.purpose), v.tempo.lowering, v.tempo.pause, v.tempo.lifting,
        v.repsLow, v.repsHigh, v.ratio, v.ratioSpread, toVariant(v.ratioSource), v.repCost,
        fileWord(v.fatigue), fileWords(v.work), int(v.assistance), toVariant(v.usualPercent),
        toVariant(v.whenToUse), toVariant(v.cautions), int(v.retired)};
}

void refuseTaken(Database &db, const Variation &v)
{
    const QVariant owner =
        db.value(QStringLiteral("SELECT name FROM variation WHERE code = ? AND id <> ?"),
            {v.code, v.id.value});
    if (owner.isValid())
        throw StorageError(Text::tr("The code %1 belongs to %2 already. Choose another code.")
                               .arg(v.code, owner.toString()));
    if (!v.competition)
        return;
    const QVariant other = db.value(
        QStringLiteral("SELECT name FROM variation WHERE lift = ? AND competition = 1 AND id <> ?"),
        {fileWord(v.lift), v.id.value});
    if (other.isValid())
        throw StorageError(Text::tr(
            "%1 is the competition variation of its lift already, and there is one a lift. Take "
            "that mark from it first.")
                               .arg(other.toString()));
}

} // namespace

std::vector<Variation> Repository<Variation>::select(Database &db, const Where &where)
{
    std::vector<Variation> variations;
    Rows rows = db.select(
        QStringLiteral("SELECT %1 FROM variation %2 ORDER BY id").arg(kColumns, where.condition),
        where.values);
    while (rows.next()) {
        Variation &v = variations.emplace_back();
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
        v.work = areaWorkFromFileWords(rows.text()).value_or(AreaWork());
        v.assistance = rows.boolean();
        v.usualPercent = rows.maybe<double>();
        v.whenToUse = rows.text();
        v.cautions = rows.text();
        v.retired = rows.boolean();
    }
    return variations;
}

void Repository<Variation>::insert(Database &db, const Variation &variation)
{
    refuseTaken(db, variation);
    db.insert("variation", kColumns, fields(variation));
}

void Repository<Variation>::release(Database &db, VariationId id)
{
    db.run(QStringLiteral("UPDATE variation SET code = '0__' || id, competition = 0 WHERE id = ?"),
        {id.value});
}

void Repository<Variation>::update(Database &db, const Variation &variation)
{
    refuseTaken(db, variation);
    db.update("variation", kColumns, fields(variation));
}

QString Repository<Variation>::describe(Database &, const Variation &variation)
{
    return Text::tr("Variation %1")
        .arg(variation.name.trimmed().isEmpty() ? variation.code : variation.name);
}

} // namespace core
