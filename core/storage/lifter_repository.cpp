#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"

#include <algorithm>

namespace core {

namespace {

const QString kColumns = QStringLiteral(
    "id, name, name_key, sex, birth_year, bodyweight_kg, unit, touch_style,"
    " grip_note, bar_kg, collars_kg, meet_date, notes, archived, is_adult, training_since");
const QString kPlateColumns = QStringLiteral("lifter_id, position, plate_kg, pairs");
const QString kGroupColumns = QStringLiteral("lifter_id, position, name");

/// Two names with the same key are one name.
QString nameKey(const QString &name)
{
    return name.simplified().normalized(QString::NormalizationForm_KC).toCaseFolded();
}

/// In the order of kColumns.
QVariantList fields(const Lifter &l)
{
    return {l.id.value, l.name, nameKey(l.name), toVariant(fileWord(l.sex)), toVariant(l.birthYear),
        toVariant(l.bodyweightKg), symbol(l.unit), fileWord(l.touchStyle), toVariant(l.gripNote),
        l.gear.barKg, l.gear.collarsKg, toVariant(l.meetDate), toVariant(l.notes), int(l.archived),
        int(l.isAdult), toVariant(l.trainingSince)};
}

void insertParts(Database &db, const Lifter &lifter)
{
    for (int position = 0; const PlatePairs &p : lifter.gear.plates)
        db.insert("lifter_plate", kPlateColumns, {lifter.id.value, position++, p.plateKg, p.pairs});
    for (int position = 0; const QString &group : lifter.groups)
        db.insert("lifter_group", kGroupColumns, {lifter.id.value, position++, group});
}

void refuseTakenName(Database &db, const Lifter &lifter)
{
    Rows taken = db.select(
        QStringLiteral("SELECT name, archived FROM lifter WHERE name_key = ? AND id <> ?"),
        {nameKey(lifter.name), lifter.id.value});
    if (!taken.next())
        return;
    const QString name = taken.text();
    throw StorageError((taken.boolean()
            ? Text::tr(
                "There is an archived lifter named %1 already. Bring that one back, or choose "
                "another name.")
            : Text::tr(
                "There is a lifter named %1 already. Choose another name, so that the two can be "
                "told apart."))
                           .arg(name));
}

} // namespace

QString nameOf(LifterId lifter, Database &db)
{
    const QVariant name =
        db.value(QStringLiteral("SELECT name FROM lifter WHERE id = ?"), {lifter.value});
    return name.isValid() ? name.toString() : QStringLiteral("?");
}

std::vector<Lifter> Repository<Lifter>::select(Database &db, const Where &where)
{
    std::vector<Lifter> lifters;
    Rows rows = db.select(
        QStringLiteral("SELECT %1 FROM lifter %2").arg(kColumns, where.condition), where.values);
    while (rows.next()) {
        Lifter &lifter = lifters.emplace_back();
        lifter.id = {rows.id()};
        lifter.name = rows.text();
        rows.skip(1); // the key, which is made of the name
        lifter.sex = fromFileWord<Sex>(rows.text()).value_or(Sex::unstated);
        lifter.birthYear = rows.maybe<int>();
        lifter.bodyweightKg = rows.maybe<double>();
        lifter.unit = fromFileWord<Unit>(rows.text()).value_or(Unit::kilogram);
        lifter.touchStyle = fromFileWord<TouchStyle>(rows.text()).value_or(TouchStyle::undecided);
        lifter.gripNote = rows.text();
        lifter.gear.barKg = rows.real();
        lifter.gear.collarsKg = rows.real();
        lifter.meetDate = rows.maybe<QDate>();
        lifter.notes = rows.text();
        lifter.archived = rows.boolean();
        lifter.isAdult = rows.boolean();
        lifter.trainingSince = rows.maybe<QDate>();
    }
    const auto owners = byId(lifters);
    const Where ofThese = partsOf<Lifter>(where, "lifter_id");
    const auto parts = [&](const char *table, const QString &columns) {
        return db.select(QStringLiteral("SELECT %1 FROM %2 %3 ORDER BY lifter_id, position")
                             .arg(columns, QLatin1String(table), ofThese.condition),
            ofThese.values);
    };
    Rows plates = parts("lifter_plate", kPlateColumns);
    while (plates.next()) {
        PlatePairs &pairs = owners.at(plates.id())->gear.plates.emplace_back();
        plates.skip(1); // the position
        pairs.plateKg = plates.real();
        pairs.pairs = plates.integer();
    }
    Rows groups = parts("lifter_group", kGroupColumns);
    while (groups.next()) {
        QStringList &names = owners.at(groups.id())->groups;
        groups.skip(1); // the position
        names << groups.text();
    }
    std::ranges::sort(lifters, [](const Lifter &a, const Lifter &b) {
        const int order = QString::localeAwareCompare(a.name, b.name);
        return order == 0 ? a.id < b.id : order < 0;
    });
    return lifters;
}

void Repository<Lifter>::insert(Database &db, const Lifter &lifter)
{
    refuseTakenName(db, lifter);
    db.insert("lifter", kColumns, fields(lifter));
    insertParts(db, lifter);
}

void Repository<Lifter>::release(Database &db, LifterId id)
{
    // A key holds no line break, so this one is nobody's.
    db.run(QStringLiteral("UPDATE lifter SET name_key = char(10) || id WHERE id = ?"), {id.value});
}

void Repository<Lifter>::update(Database &db, const Lifter &lifter)
{
    refuseTakenName(db, lifter);
    db.update("lifter", kColumns, fields(lifter));
    db.run(QStringLiteral("DELETE FROM lifter_plate WHERE lifter_id = ?"), {lifter.id.value});
    db.run(QStringLiteral("DELETE FROM lifter_group WHERE lifter_id = ?"), {lifter.id.value});
    insertParts(db, lifter);
}

QString Repository<Lifter>::describe(Database &, const Lifter &lifter)
{
    return lifter.name.trimmed().isEmpty() ? Text::tr("The new lifter")
                                           : Text::tr("Lifter %1").arg(lifter.name);
}

} // namespace core
