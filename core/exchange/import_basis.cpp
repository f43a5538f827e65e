#include "core/exchange/import_basis.h"

#include "core/storage/roster_store.h"

#include <QSet>

namespace core {

RosterRows rowsFor(const LogTable &log, const RosterReader &roster, const Watch &watch)
{
    RosterRows rows{roster.lifters(), roster.variations(), {}};
    QSet<QString> named;
    for (const LogRow &row : log.rows)
        named << row.lifter.toCaseFolded();
    for (size_t i = 0; i < rows.lifters.size(); ++i) {
        if (!watch.goesOn(double(i) / double(rows.lifters.size())))
            break;
        if (!named.contains(rows.lifters[i].name.toCaseFolded()))
            continue;
        std::vector<LoggedSession> sessions = roster.sessions(rows.lifters[i].id);
        std::move(sessions.begin(), sessions.end(), std::back_inserter(rows.sessions));
    }
    return rows;
}

} // namespace core
