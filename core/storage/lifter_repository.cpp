#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"

#include <algorithm>
#include <unordered_map>

namespace core {

namespace {

/// Two names with the same key are one name.
QString nameKey(const QString &name)
{
    return name.simplified().normalized(QString::NormalizationForm_KC).toCaseFolded();
}

/// The columns from name to archived.
QVariantList fields(const Lifter &l)
{
    return {l.name, nameKey(l.name), toVariant(fileWord(l.sex)), toVariant(l.birthYear),
        toVariant(l.bodyweightKg), symbol(l.unit), fileWord(l.touchStyle), toVariant(l.gripNote),
        l.gear.barKg, l.gear.collarsKg, toVariant(l.meetDate), toVariant(l.notes), int(l.archived)};
}

} // namespace

std::vector<Lifter> LifterRepository::all()
{
    std::vector<Lifter> lifters = read();
    std::sort(lifters.begin(), lifters.end(), [](const Lifter &a, const Lifter &b) {
        const int order = QString::localeAwareCompare(a.name, b.name);
        return order == 0 ? a.id < b.id : order < 0;
    });
    return lifters;
}

std::optional<Lifter> LifterRepository::find(LifterId id)
{
    if (!id.isValid())
        return std::nullopt;
    const std::vector<Lifter> found = read(id);
    return found.empty() ? std::nullopt : std::optional(found.front());
}

std::vector<Lifter> LifterRepository::read(LifterId id)
{
    const auto select = [this, id](const char *columns, const char *key, const char *order) {
        return m_db.select(
            QStringLiteral("SELECT %1 %2 %3")
                .arg(QLatin1String(columns),
                    id.isValid() ? QStringLiteral("WHERE %1 = ?").arg(QLatin1String(key))
                                 : QString(),
                    QLatin1String(order)),
            id.isValid() ? QVariantList{id.value} : QVariantList());
    };
    std::vector<Lifter> lifters;
    std::unordered_map<qint64, size_t> index;
    Rows rows = select("id, name, sex, birth_year, bodyweight_kg, unit, touch_style, grip_note,"
                       " bar_kg, collars_kg, meet_date, notes, archived FROM lifter",
        "id", "");
    while (rows.next()) {
        Lifter lifter;
        lifter.id = {rows.id()};
        lifter.name = rows.text();
        lifter.sex = fromFileWord<Sex>(rows.text()).value_or(Sex::unstated);
        lifter.birthYear = rows.maybeInteger();
        lifter.bodyweightKg = rows.maybeReal();
        lifter.unit = rows.text() == symbol(Unit::pound) ? Unit::pound : Unit::kilogram;
        lifter.touchStyle = fromFileWord<TouchStyle>(rows.text()).value_or(TouchStyle::undecided);
        lifter.gripNote = rows.text();
        lifter.gear.barKg = rows.real();
        lifter.gear.collarsKg = rows.real();
        lifter.meetDate = rows.maybeDate();
        lifter.notes = rows.text();
        lifter.archived = rows.boolean();
        index.emplace(lifter.id.value, lifters.size());
        lifters.push_back(std::move(lifter));
    }
    Rows plates = select("lifter_id, plate_kg, pairs FROM lifter_plate", "lifter_id",
        "ORDER BY lifter_id, position");
    while (plates.next()) {
        Gear &gear = lifters[index.at(plates.id())].gear;
        const double plateKg = plates.real();
        gear.plates.push_back({plateKg, plates.integer()});
    }
    Rows groups =
        select("lifter_id, name FROM lifter_group", "lifter_id", "ORDER BY lifter_id, position");
    while (groups.next()) {
        QStringList &names = lifters[index.at(groups.id())].groups;
        names << groups.text();
    }
    return lifters;
}

void LifterRepository::insert(const Lifter &lifter)
{
    refuseTakenName(lifter);
    m_db.run(QStringLiteral(
                 "INSERT INTO lifter (id, name, name_key, sex, birth_year, bodyweight_kg, unit,"
                 " touch_style, grip_note, bar_kg, collars_kg, meet_date, notes, archived)"
                 " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
        QVariantList{lifter.id.value} + fields(lifter));
    insertParts(lifter);
}

void LifterRepository::remove(LifterId id)
{
    m_db.run(QStringLiteral("DELETE FROM lifter WHERE id = ?"), {id.value});
}

void LifterRepository::release(LifterId id)
{
    // A key holds no line break, so this one is nobody's.
    m_db.run(
        QStringLiteral("UPDATE lifter SET name_key = char(10) || id WHERE id = ?"), {id.value});
}

void LifterRepository::update(const Lifter &lifter)
{
    refuseTakenName(lifter);
    m_db.run(
        QStringLiteral(
            "UPDATE lifter SET name = ?, name_key = ?, sex = ?, birth_year = ?, bodyweight_kg = ?,"
            " unit = ?, touch_style = ?, grip_note = ?, bar_kg = ?, collars_kg = ?, meet_date = ?,"
            " notes = ?, archived = ? WHERE id = ?"),
        fields(lifter) + QVariantList{lifter.id.value});
    m_db.run(QStringLiteral("DELETE FROM lifter_plate WHERE lifter_id = ?"), {lifter.id.value});
    m_db.run(QStringLiteral("DELETE FROM lifter_group WHERE lifter_id = ?"), {lifter.id.value});
    insertParts(lifter);
}

void LifterRepository::insertParts(const Lifter &lifter)
{
    for (int position = 0; const PlatePairs &p : lifter.gear.plates)
        m_db.run(QStringLiteral("INSERT INTO lifter_plate (lifter_id, position, plate_kg, pairs)"
                                " VALUES (?, ?, ?, ?)"),
            {lifter.id.value, position++, p.plateKg, p.pairs});
    for (int position = 0; const QString &group : lifter.groups)
        m_db.run(QStringLiteral("INSERT INTO lifter_group (lifter_id, position, name)"
                                " VALUES (?, ?, ?)"),
            {lifter.id.value, position++, group});
}

QString LifterRepository::describe(const Lifter &lifter)
{
    return lifter.name.trimmed().isEmpty() ? Text::tr("The new lifter")
                                           : Text::tr("Lifter %1").arg(lifter.name);
}

void LifterRepository::refuseTakenName(const Lifter &lifter)
{
    Rows taken = m_db.select(
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

} // namespace core
