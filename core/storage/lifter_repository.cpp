#include "core/storage/repositories.h"

#include "core/storage/row_values.h"
#include "core/storage/storage_error.h"

#include <QCoreApplication>
#include <algorithm>
#include <unordered_map>

namespace core {

namespace {

const QString kInsertLifter = QStringLiteral(
    "INSERT INTO lifter (id, name, name_key, sex, birth_year, bodyweight_kg, unit, touch_style,"
    " grip_note, bar_kg, collars_kg, meet_date, notes, archived)"
    " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");

/// Two names with the same key are one name.
QString nameKey(const QString &name)
{
    return name.simplified().normalized(QString::NormalizationForm_KC).toCaseFolded();
}

} // namespace

std::vector<Lifter> LifterRepository::all()
{
    std::vector<Lifter> lifters;
    std::unordered_map<qint64, size_t> index;
    QSqlQuery &rows = m_db.select(QStringLiteral(
        "SELECT id, name, sex, birth_year, bodyweight_kg, unit, touch_style, grip_note, bar_kg,"
        " collars_kg, meet_date, notes, archived FROM lifter ORDER BY id"));
    while (rows.next()) {
        RowReader row(rows);
        Lifter lifter;
        lifter.id = {row.id()};
        lifter.name = row.text();
        lifter.sex = sexFromFileWord(row.text()).value_or(Sex::unstated);
        lifter.birthYear = row.maybeInteger();
        lifter.bodyweightKg = row.maybeReal();
        lifter.unit = row.text() == symbol(Unit::pound) ? Unit::pound : Unit::kilogram;
        lifter.touchStyle = touchStyleFromFileWord(row.text()).value_or(TouchStyle::undecided);
        lifter.gripNote = row.text();
        lifter.gear.barKg = row.real();
        lifter.gear.collarsKg = row.real();
        lifter.meetDate = row.maybeDate();
        lifter.notes = row.text();
        lifter.archived = row.boolean();
        index.emplace(lifter.id.value, lifters.size());
        lifters.push_back(std::move(lifter));
    }
    QSqlQuery &plates = m_db.select(QStringLiteral(
        "SELECT lifter_id, plate_kg, pairs FROM lifter_plate ORDER BY lifter_id, position"));
    while (plates.next()) {
        RowReader row(plates);
        Gear &gear = lifters[index.at(row.id())].gear;
        const double plateKg = row.real();
        gear.plates.push_back({plateKg, row.integer()});
    }
    QSqlQuery &groups = m_db.select(
        QStringLiteral("SELECT lifter_id, name FROM lifter_group ORDER BY lifter_id, name"));
    while (groups.next()) {
        RowReader row(groups);
        QStringList &names = lifters[index.at(row.id())].groups;
        names << row.text();
    }
    std::sort(lifters.begin(), lifters.end(), [](const Lifter &a, const Lifter &b) {
        return QString::localeAwareCompare(a.name, b.name) < 0;
    });
    return lifters;
}

void LifterRepository::insert(const Lifter &l)
{
    const QVariant taken =
        m_db.value(QStringLiteral("SELECT name FROM lifter WHERE name_key = ?"), {nameKey(l.name)});
    if (taken.isValid())
        throw StorageError(QCoreApplication::translate(
            "Storage", "There is a lifter named %1 already. Tell the two apart by name.")
                               .arg(taken.toString()));
    m_db.run(kInsertLifter,
        {l.id.value, l.name, nameKey(l.name), toVariant(fileWord(l.sex)), toVariant(l.birthYear),
            toVariant(l.bodyweightKg), symbol(l.unit), fileWord(l.touchStyle),
            toVariant(l.gripNote), l.gear.barKg, l.gear.collarsKg, toVariant(l.meetDate),
            toVariant(l.notes), int(l.archived)});
    for (int position = 0; const PlatePairs &p : l.gear.plates)
        m_db.run(QStringLiteral("INSERT INTO lifter_plate VALUES (?, ?, ?, ?)"),
            {l.id.value, position++, p.plateKg, p.pairs});
    for (const QString &group : l.groups)
        m_db.run(QStringLiteral("INSERT INTO lifter_group VALUES (?, ?)"), {l.id.value, group});
}

void LifterRepository::remove(const Lifter &lifter)
{
    removeRow(m_db, QStringLiteral("lifter"), lifter.id.value);
}

} // namespace core
