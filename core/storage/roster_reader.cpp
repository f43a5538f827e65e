#include "core/storage/roster_reader.h"

#include "core/storage/database.h"
#include "core/storage/repositories.h"

namespace core {

RosterReader::RosterReader(const QString &path)
    : m_db(std::make_unique<Database>(path, Database::Access::readOnly))
{
    m_db->run(QStringLiteral("BEGIN")); // the first query sets the moment
}

RosterReader::~RosterReader() = default;

std::vector<LoggedSession> RosterReader::sessions(LifterId lifter)
{
    return SessionRepository(*m_db).of(lifter);
}

std::vector<LoggedSession> RosterReader::sessions()
{
    return SessionRepository(*m_db).all();
}

std::vector<CheckIn> RosterReader::checkIns()
{
    return CheckInRepository(*m_db).all();
}

} // namespace core
