#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"

namespace core {

namespace {

const QString kColumns = QStringLiteral(
    "id, lifter_id, day, sleep, stress, motivation, pain, pain_area, pain_words, pain_free, note");

} // namespace

std::vector<CheckIn> Repository<CheckIn>::select(Database &db, const Where &where)
{
    std::vector<CheckIn> checkIns;
    Rows rows = db.select(QStringLiteral("SELECT %1 FROM check_in %2 ORDER BY lifter_id, day")
                              .arg(kColumns, where.condition),
        where.values);
    while (rows.next()) {
        CheckIn &checkIn = checkIns.emplace_back();
        checkIn.id = {rows.id()};
        checkIn.lifter = {rows.id()};
        checkIn.day = rows.date();
        checkIn.sleep = rows.maybe<int>();
        checkIn.stress = rows.maybe<int>();
        checkIn.motivation = rows.maybe<int>();
        const bool pain = rows.boolean();
        const QString area = rows.text();
        const QString words = rows.text();
        if (pain)
            checkIn.pain = PainFlag{fromFileWord<BodyArea>(area), words};
        checkIn.isPainFree = rows.boolean();
        checkIn.note = rows.text();
    }
    const auto owners = byId(checkIns);
    const Where parts = partsOf<CheckIn>(where, "check_in_id");
    Rows sore =
        db.select(QStringLiteral("SELECT check_in_id, area, answer FROM check_in_soreness %1")
                      .arg(parts.condition),
            parts.values);
    while (sore.next()) {
        CheckIn &checkIn = *owners.at(sore.id());
        const std::optional<BodyArea> area = fromFileWord<BodyArea>(sore.text());
        const int answer = sore.integer();
        if (area)
            checkIn.soreness.emplace(*area, answer);
    }
    return checkIns;
}

void Repository<CheckIn>::insert(Database &db, const CheckIn &checkIn)
{
    if (db.value(QStringLiteral("SELECT id FROM check_in WHERE lifter_id = ? AND day = ?"),
              {checkIn.lifter.value, toVariant(checkIn.day)})
            .isValid())
        throw StorageError(Text::tr("There is a check-in on %1 already. Change that one.")
                               .arg(checkIn.day.toString(Qt::ISODate)));
    const PainFlag pain = checkIn.pain.value_or(PainFlag{});
    db.insert("check_in", kColumns,
        {checkIn.id.value, checkIn.lifter.value, toVariant(checkIn.day), toVariant(checkIn.sleep),
            toVariant(checkIn.stress), toVariant(checkIn.motivation), int(checkIn.pain.has_value()),
            toVariant(pain.area ? fileWord(*pain.area) : QString()), toVariant(pain.words),
            int(checkIn.isPainFree), toVariant(checkIn.note)});
    for (const auto &[area, answer] : checkIn.soreness)
        db.insert("check_in_soreness", QStringLiteral("check_in_id, area, answer"),
            {checkIn.id.value, fileWord(area), answer});
}

QString Repository<CheckIn>::describe(Database &db, const CheckIn &checkIn)
{
    return Text::tr("Check-in of %1 on %2")
        .arg(nameOf(checkIn.lifter, db), checkIn.day.toString(Qt::ISODate));
}

} // namespace core
