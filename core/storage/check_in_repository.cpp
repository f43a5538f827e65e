#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"

#include <unordered_map>

namespace core {

namespace {

/// @param where  the same for both tables, on the check-in's columns
std::vector<CheckIn> read(Database &db, const QString &where, const QVariantList &values)
{
    std::vector<CheckIn> checkIns;
    std::unordered_map<qint64, size_t> index;
    Rows rows = db.select(
        QStringLiteral("SELECT id, lifter_id, day, sleep, stress, motivation, pain, pain_area,"
                       " pain_words, note FROM check_in %1 ORDER BY lifter_id, day")
            .arg(where),
        values);
    while (rows.next()) {
        CheckIn &checkIn = checkIns.emplace_back();
        checkIn.id = {rows.id()};
        checkIn.lifter = {rows.id()};
        checkIn.day = rows.date();
        checkIn.sleep = rows.maybeInteger();
        checkIn.stress = rows.maybeInteger();
        checkIn.motivation = rows.maybeInteger();
        const bool pain = rows.boolean();
        const QString area = rows.text();
        const QString words = rows.text();
        if (pain)
            checkIn.pain = PainFlag{fromFileWord<BodyArea>(area), words};
        checkIn.note = rows.text();
        index.emplace(checkIn.id.value, checkIns.size() - 1);
    }
    Rows sore = db.select(QStringLiteral("SELECT check_in_id, area, answer FROM check_in_soreness"
                                         " JOIN check_in ON check_in.id = check_in_id %1")
                              .arg(where),
        values);
    while (sore.next()) {
        CheckIn &checkIn = checkIns[index.at(sore.id())];
        const std::optional<BodyArea> area = fromFileWord<BodyArea>(sore.text());
        const int answer = sore.integer();
        if (area)
            checkIn.soreness.emplace(*area, answer);
    }
    return checkIns;
}

} // namespace

std::vector<CheckIn> CheckInRepository::of(LifterId lifter)
{
    return read(m_db, QStringLiteral("WHERE lifter_id = ?"), {lifter.value});
}

std::vector<CheckIn> CheckInRepository::all()
{
    return read(m_db, {}, {});
}

std::optional<CheckIn> CheckInRepository::find(CheckInId id)
{
    const std::vector<CheckIn> found = read(m_db, QStringLiteral("WHERE id = ?"), {id.value});
    return found.empty() ? std::nullopt : std::optional(found.front());
}

void CheckInRepository::insert(const CheckIn &checkIn)
{
    if (m_db.value(QStringLiteral("SELECT id FROM check_in WHERE lifter_id = ? AND day = ?"),
                {checkIn.lifter.value, toVariant(checkIn.day)})
            .isValid())
        throw StorageError(Text::tr("There is a check-in on %1 already. Change that one.")
                               .arg(checkIn.day.toString(Qt::ISODate)));
    const PainFlag pain = checkIn.pain.value_or(PainFlag{});
    m_db.run(QStringLiteral("INSERT INTO check_in (id, lifter_id, day, sleep, stress, motivation,"
                            " pain, pain_area, pain_words, note)"
                            " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
        {checkIn.id.value, checkIn.lifter.value, toVariant(checkIn.day), toVariant(checkIn.sleep),
            toVariant(checkIn.stress), toVariant(checkIn.motivation), int(checkIn.pain.has_value()),
            toVariant(pain.area ? fileWord(*pain.area) : QString()), toVariant(pain.words),
            toVariant(checkIn.note)});
    for (const auto &[area, answer] : checkIn.soreness)
        m_db.run(QStringLiteral(
                     "INSERT INTO check_in_soreness (check_in_id, area, answer) VALUES (?, ?, ?)"),
            {checkIn.id.value, fileWord(area), answer});
}

void CheckInRepository::remove(CheckInId id)
{
    m_db.run(QStringLiteral("DELETE FROM check_in WHERE id = ?"), {id.value});
}

QString CheckInRepository::describe(const CheckIn &checkIn)
{
    const std::optional<Lifter> lifter = LifterRepository(m_db).find(checkIn.lifter);
    return Text::tr("Check-in of %1 on %2")
        .arg(lifter ? lifter->name : QStringLiteral("?"), checkIn.day.toString(Qt::ISODate));
}

} // namespace core
