#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"

#include <unordered_map>

namespace core {

namespace {

const QString kInsertSet = QStringLiteral(
    "INSERT INTO set_entry (session_id, position, variation_id, load_kg, reps_planned, reps_done,"
    " rpe, failed, velocity_ms, touch, note, lead_reps, lead_variation_id)"
    " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");

/// Adds the sets of `rows`, which come by session, to their sessions.
void readSets(Rows rows, std::vector<LoggedSession> &sessions)
{
    std::unordered_map<SessionId, LoggedSession *> byId;
    for (LoggedSession &session : sessions)
        byId.emplace(session.id, &session);
    LoggedSession *session = nullptr;
    while (rows.next()) {
        if (const SessionId id{rows.id()}; !session || session->id != id)
            session = byId.at(id);
        SetEntry &set = session->sets.emplace_back();
        set.variation = {rows.id()};
        set.loadKg = rows.real();
        set.repsPlanned = rows.maybeInteger();
        set.repsDone = rows.integer();
        set.rpe = rows.maybeReal();
        set.failed = rows.boolean();
        set.velocityMs = rows.maybeReal();
        set.touch = rows.maybeInteger();
        set.note = rows.text();
        const std::optional<int> leadReps = rows.maybeInteger();
        if (leadReps)
            set.lead = {{rows.id()}, *leadReps};
        else
            rows.skip(1);
    }
}

std::vector<LoggedSession> readSessions(Rows rows)
{
    std::vector<LoggedSession> sessions;
    while (rows.next()) {
        LoggedSession &session = sessions.emplace_back();
        session.id = {rows.id()};
        session.lifter = {rows.id()};
        session.day = rows.date();
        session.number = rows.integer();
        session.readiness = rows.maybeInteger();
    }
    return sessions;
}

/// Two queries, however many sessions: the sets are read in the order they are stored, which is
/// nearly twice as fast as joining them to sessions that are in another order.
std::vector<LoggedSession> read(
    Database &db, const QString &ofSessions, const QString &ofSets, const QVariantList &values = {})
{
    std::vector<LoggedSession> sessions =
        readSessions(db.select(QStringLiteral("SELECT id, lifter_id, day, number, readiness"
                                              " FROM session %1"
                                              " ORDER BY lifter_id, day, number")
                                   .arg(ofSessions),
            values));
    readSets(
        db.select(
            QStringLiteral(
                "SELECT session_id, variation_id, load_kg, reps_planned,"
                " reps_done, rpe, failed, velocity_ms, touch, nullif(note, ''),"
                " lead_reps, lead_variation_id FROM set_entry %1 ORDER BY session_id, position")
                .arg(ofSets),
            values),
        sessions);
    return sessions;
}

} // namespace

std::vector<LoggedSession> SessionRepository::of(LifterId lifter)
{
    return read(m_db, QStringLiteral("WHERE lifter_id = ?"),
        QStringLiteral("WHERE session_id IN (SELECT id FROM session WHERE lifter_id = ?)"),
        {lifter.value});
}

std::vector<LoggedSession> SessionRepository::all()
{
    return read(m_db, {}, {});
}

std::optional<LoggedSession> SessionRepository::find(SessionId id)
{
    const std::vector<LoggedSession> found = read(
        m_db, QStringLiteral("WHERE id = ?"), QStringLiteral("WHERE session_id = ?"), {id.value});
    return found.empty() ? std::nullopt : std::optional(found.front());
}

void SessionRepository::insert(const LoggedSession &session)
{
    if (m_db.value(QStringLiteral(
                       "SELECT id FROM session WHERE lifter_id = ? AND day = ? AND number = ?"),
                {session.lifter.value, toVariant(session.day), session.number})
            .isValid())
        throw StorageError(
            Text::tr("The lifter has a session %1 on %2 already. Give this one another number.")
                .arg(session.number)
                .arg(session.day.toString(Qt::ISODate)));
    m_db.run(QStringLiteral("INSERT INTO session (id, lifter_id, day, number, readiness)"
                            " VALUES (?, ?, ?, ?, ?)"),
        {session.id.value, session.lifter.value, toVariant(session.day), session.number,
            toVariant(session.readiness)});
    for (int position = 0; const SetEntry &set : session.sets)
        m_db.run(kInsertSet,
            {session.id.value, position++, set.variation.value, set.loadKg,
                toVariant(set.repsPlanned), set.repsDone, toVariant(set.rpe), int(set.failed),
                toVariant(set.velocityMs), toVariant(set.touch), toVariant(set.note),
                set.lead ? QVariant(set.lead->reps) : QVariant(),
                set.lead ? QVariant(set.lead->variation.value) : QVariant()});
}

void SessionRepository::remove(SessionId id)
{
    m_db.run(QStringLiteral("DELETE FROM session WHERE id = ?"), {id.value});
}

QString SessionRepository::describe(const LoggedSession &session)
{
    const std::optional<Lifter> lifter = LifterRepository(m_db).find(session.lifter);
    return Text::tr("Session %1 of %2 on %3")
        .arg(QString::number(session.number), lifter ? lifter->name : QStringLiteral("?"),
            session.day.toString(Qt::ISODate));
}

} // namespace core
