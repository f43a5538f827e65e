#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"

namespace core {

namespace {

const QString kColumns = QStringLiteral("id, lifter_id, day, number, readiness");
const QString kSetColumns = QStringLiteral(
    "session_id, position, variation_id, load_kg, reps_planned, reps_done, rpe, failed,"
    " velocity_ms, touch, note, lead_reps, lead_variation_id, answers_card, answers_set");

/// Adds the sets of `rows`, which come by session, to their sessions.
void readSets(Rows rows, std::vector<LoggedSession> &sessions)
{
    const auto owners = byId(sessions);
    LoggedSession *session = nullptr;
    while (rows.next()) {
        if (const qint64 id = rows.id(); !session || session->id.value != id)
            session = owners.at(id);
        SetEntry &set = session->sets.emplace_back();
        set.variation = {rows.id()};
        set.loadKg = rows.real();
        set.repsPlanned = rows.maybe<int>();
        set.repsDone = rows.integer();
        set.rpe = rows.maybe<double>();
        set.failed = rows.boolean();
        set.velocityMs = rows.maybe<double>();
        set.touch = rows.maybe<int>();
        set.note = rows.text();
        const std::optional<int> leadReps = rows.maybe<int>();
        const qint64 leadVariation = rows.id();
        if (leadReps)
            set.lead = {{leadVariation}, *leadReps};
        if (const qint64 card = rows.id())
            set.answers = {{card}, rows.integer()};
    }
}

} // namespace

/// Two queries, however many sessions: the sets are read in the order they are stored, which is
/// nearly twice as fast as joining them to sessions that are in another order.
std::vector<LoggedSession> Repository<LoggedSession>::select(Database &db, const Where &where)
{
    std::vector<LoggedSession> sessions;
    Rows rows =
        db.select(QStringLiteral("SELECT %1 FROM session %2 ORDER BY lifter_id, day, number")
                      .arg(kColumns, where.condition),
            where.values);
    while (rows.next()) {
        LoggedSession &session = sessions.emplace_back();
        session.id = {rows.id()};
        session.lifter = {rows.id()};
        session.day = rows.date();
        session.number = rows.integer();
        session.readiness = rows.maybe<int>();
    }
    const Where parts = partsOf<LoggedSession>(where, "session_id");
    readSets(db.select(
                 QStringLiteral("SELECT session_id, variation_id, load_kg, reps_planned, reps_done,"
                                " rpe, failed, velocity_ms, touch, nullif(note, ''), lead_reps,"
                                " lead_variation_id, answers_card, answers_set FROM set_entry %1 "
                                "ORDER BY session_id, position")
                     .arg(parts.condition),
                 parts.values),
        sessions);
    return sessions;
}

void Repository<LoggedSession>::insert(Database &db, const LoggedSession &session)
{
    if (db.value(QStringLiteral(
                     "SELECT id FROM session WHERE lifter_id = ? AND day = ? AND number = ?"),
              {session.lifter.value, toVariant(session.day), session.number})
            .isValid())
        throw StorageError(
            Text::tr("The lifter has a session %1 on %2 already. Give this one another number.")
                .arg(session.number)
                .arg(session.day.toString(Qt::ISODate)));
    db.insert("session", kColumns,
        {session.id.value, session.lifter.value, toVariant(session.day), session.number,
            toVariant(session.readiness)});
    for (int position = 0; const SetEntry &set : session.sets)
        db.insert("set_entry", kSetColumns,
            {session.id.value, position++, set.variation.value, set.loadKg,
                toVariant(set.repsPlanned), set.repsDone, toVariant(set.rpe), int(set.failed),
                toVariant(set.velocityMs), toVariant(set.touch), toVariant(set.note),
                set.lead ? QVariant(set.lead->reps) : QVariant(),
                set.lead ? QVariant(set.lead->variation.value) : QVariant(),
                set.answers ? QVariant(set.answers->card.value) : QVariant(),
                set.answers ? QVariant(set.answers->set) : QVariant()});
}

QString Repository<LoggedSession>::describe(Database &db, const LoggedSession &session)
{
    return Text::tr("Session %1 of %2 on %3")
        .arg(QString::number(session.number), nameOf(session.lifter, db),
            session.day.toString(Qt::ISODate));
}

} // namespace core
