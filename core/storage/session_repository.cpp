#include "core/storage/repositories.h"

#include "core/storage/database.h"
#include "core/storage/storage_error.h"

#include <QCoreApplication>

namespace core {

namespace {

const QString kSelect = QStringLiteral(
    "SELECT s.id, s.lifter_id, s.day, s.number, s.readiness, e.variation_id, e.load_kg,"
    " e.reps_planned, e.reps_done, e.rpe, e.failed, e.velocity_ms, e.touch, e.note"
    " FROM session s LEFT JOIN set_entry e ON e.session_id = s.id %1"
    " ORDER BY s.lifter_id, s.day, s.number, e.position");

const QString kInsertSet = QStringLiteral(
    "INSERT INTO set_entry (session_id, position, variation_id, load_kg, reps_planned, reps_done,"
    " rpe, failed, velocity_ms, touch, note) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");

std::vector<LoggedSession> read(Rows rows)
{
    std::vector<LoggedSession> sessions;
    while (rows.next()) {
        const SessionId id{rows.id()};
        if (sessions.empty() || sessions.back().id != id) {
            LoggedSession session;
            session.id = id;
            session.lifter = {rows.id()};
            session.day = rows.date();
            session.number = rows.integer();
            session.readiness = rows.maybeInteger();
            sessions.push_back(std::move(session));
        } else {
            rows.skip(4);
        }
        if (rows.isNull()) // a session without sets
            continue;
        SetEntry set;
        set.variation = {rows.id()};
        set.loadKg = rows.real();
        set.repsPlanned = rows.maybeInteger();
        set.repsDone = rows.integer();
        set.rpe = rows.maybeReal();
        set.failed = rows.boolean();
        set.velocityMs = rows.maybeReal();
        set.touch = rows.maybeInteger();
        set.note = rows.text();
        sessions.back().sets.push_back(std::move(set));
    }
    return sessions;
}

} // namespace

std::vector<LoggedSession> SessionRepository::of(LifterId lifter)
{
    return read(m_db.select(kSelect.arg(QStringLiteral("WHERE s.lifter_id = ?")), {lifter.value}));
}

std::vector<LoggedSession> SessionRepository::all()
{
    return read(m_db.select(kSelect.arg(QString())));
}

std::optional<LoggedSession> SessionRepository::find(SessionId id)
{
    const std::vector<LoggedSession> found =
        read(m_db.select(kSelect.arg(QStringLiteral("WHERE s.id = ?")), {id.value}));
    return found.empty() ? std::nullopt : std::optional(found.front());
}

void SessionRepository::insert(const LoggedSession &session)
{
    if (m_db.value(QStringLiteral(
                       "SELECT id FROM session WHERE lifter_id = ? AND day = ? AND number = ?"),
                {session.lifter.value, toVariant(session.day), session.number})
            .isValid())
        throw StorageError(QCoreApplication::translate(
            "Storage", "The lifter has a session %1 on %2 already. Give this one another number.")
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
                toVariant(set.velocityMs), toVariant(set.touch), toVariant(set.note)});
}

void SessionRepository::remove(SessionId id)
{
    m_db.run(QStringLiteral("DELETE FROM session WHERE id = ?"), {id.value});
}

QString SessionRepository::describe(const LoggedSession &session)
{
    const std::optional<Lifter> lifter = LifterRepository(m_db).find(session.lifter);
    return QCoreApplication::translate("Storage", "Session %1 of %2 on %3")
        .arg(QString::number(session.number), lifter ? lifter->name : QStringLiteral("?"),
            session.day.toString(Qt::ISODate));
}

} // namespace core
