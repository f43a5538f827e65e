#include "core/strength/running_estimate.h"

#include "core/strength/estimate_report.h"
#include "core/strength/validation.h"

#include <algorithm>
#include <stdexcept>

namespace strength {

RunningEstimate::RunningEstimate(const LifterLog &log, const RosterPriors &priors)
    : m_before(priors, populationMax(log))
    , m_now(m_before)
{
    std::vector<const TrainingSession *> sessions;
    for (const TrainingSession &session : log.sessions)
        if (!session.sets.empty())
            sessions.push_back(&session);
    std::stable_sort(sessions.begin(), sessions.end(),
        [](const auto *a, const auto *b) { return a->day < b->day; });
    for (const TrainingSession *session : sessions) {
        m_before = std::move(m_now);
        m_before.startWeeksUpTo(session->day);
        m_now = m_before;
        m_now.addSession(session->day, session->sets);
        m_session = *session;
    }
}

void RunningEstimate::add(int day, const TrainingSet &set)
{
    checkLog({LifterLog::Sex::unstated, {}, {{day, {set}}}}, m_now.priors().lnRatio.size(), 0);
    const bool first = m_session.sets.empty();
    if (!first && day < m_session.day)
        throw std::invalid_argument("RunningEstimate: sets are added in the order of their days");
    if (first || day > m_session.day) {
        m_before = m_now;
        m_before.startWeeksUpTo(day);
        m_session = {day, {}};
    }
    m_session.sets.push_back(set);
    m_now = m_before;
    m_now.addSession(day, m_session.sets);
}

std::optional<Band> RunningEstimate::max() const
{
    if (m_session.sets.empty())
        return std::nullopt;
    return maxBand(m_now);
}

} // namespace strength
