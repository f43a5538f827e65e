#include "core/log/session_log.h"

#include <stdexcept>

namespace core {

namespace {

struct Place
{
    const LoggedSession *session = nullptr;
    size_t set = 0;
};

Place placeOf(std::span<const LoggedSession> sessions, size_t place)
{
    for (const LoggedSession &session : sessions) {
        if (place < session.sets.size())
            return {&session, place};
        place -= session.sets.size();
    }
    throw std::out_of_range("no set at this place");
}

Edit replacing(const LoggedSession &before, const LoggedSession &after)
{
    Edit edit;
    if (before != after)
        edit.sessions = {{before}, {after}};
    return edit;
}

} // namespace

std::vector<SetEntry> setsOf(std::span<const LoggedSession> sessions)
{
    std::vector<SetEntry> sets;
    for (const LoggedSession &session : sessions)
        sets.insert(sets.end(), session.sets.begin(), session.sets.end());
    return sets;
}

Edit addSet(std::span<const LoggedSession> sessions, LifterId lifter, QDate day,
    const SetEntry &set, size_t place, const std::function<SessionId()> &newId)
{
    if (sessions.empty()) {
        Edit edit;
        edit.sessions.after.push_back({newId(), lifter, day, 1, std::nullopt, {set}});
        return edit;
    }
    const Place before = place > 0 ? placeOf(sessions, place - 1) : Place{&sessions.front(), 0};
    const size_t at = place > 0 ? before.set + 1 : 0;
    LoggedSession after = *before.session;
    after.sets.insert(after.sets.begin() + std::ptrdiff_t(at), set);
    return replacing(*before.session, after);
}

Edit changeSet(std::span<const LoggedSession> sessions, const SetEntry &set, size_t place)
{
    const Place at = placeOf(sessions, place);
    LoggedSession after = *at.session;
    after.sets[at.set] = set;
    return replacing(*at.session, after);
}

Edit removeSet(std::span<const LoggedSession> sessions, size_t place)
{
    const Place at = placeOf(sessions, place);
    LoggedSession after = *at.session;
    after.sets.erase(after.sets.begin() + std::ptrdiff_t(at.set));
    if (!after.sets.empty() || after.readiness)
        return replacing(*at.session, after);
    Edit edit;
    edit.sessions.before.push_back(*at.session);
    return edit;
}

Edit sayCheckIn(const CheckIn *before, CheckIn now, const std::function<CheckInId()> &newId)
{
    CheckIn nothing;
    nothing.id = now.id;
    nothing.lifter = now.lifter;
    nothing.day = now.day;
    Edit edit;
    const bool isBlank = now == nothing;
    now.id = before ? before->id : isBlank ? CheckInId{} : newId();
    if (before && *before == now)
        return edit;
    if (before)
        edit.checkIns.before.push_back(*before);
    if (!isBlank)
        edit.checkIns.after.push_back(std::move(now));
    return edit;
}

} // namespace core
