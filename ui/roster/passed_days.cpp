#include "ui/roster/passed_days.h"

#include "core/loads/passed_days.h"
#include "ui/roster/estimates.h"
#include "ui/roster/giving.h"
#include "ui/roster/today.h"

#include <algorithm>
#include <map>

namespace ui {

namespace {

/// Days that are worked out before they are written, so that no write is felt on the screen.
constexpr size_t kDaysAtOnce = 100;

/// All cards of the lifter on the days of `missing`: what stands above a card tires for it.
std::vector<core::Card> cardsOfDays(
    const core::RosterReader &reader, const std::vector<core::Card> &missing)
{
    std::vector<core::Card> cards =
        reader.cards(missing.front().lifter, missing.front().day, missing.back().day);
    std::erase_if(cards, [&missing](const core::Card &card) {
        return !std::ranges::binary_search(missing, card.day, {}, &core::Card::day);
    });
    return cards;
}

} // namespace

PassedDays::PassedDays(OpenRoster &roster, Estimates &estimates, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_work(roster, [this](std::optional<Found> found) { take(std::move(found)); })
{
    connect(&estimates, &Estimates::rosterFitted, this, &PassedDays::start);
}

void PassedDays::start()
{
    if (m_work.isRunning())
        return;
    m_work.start([lifters = m_roster.lifters(), variations = m_roster.variations(),
                     learnt = m_estimates.learnt(), today = m_roster.today().date(),
                     giving = giving(m_roster, core::GivenBy::dayPassed)](
                     const core::RosterReader &reader, const core::Watch &watch) -> Found {
        std::map<core::LifterId, std::vector<core::Card>> missing;
        for (core::Card &card : reader.cardsNotGiven(today))
            missing[card.lifter].push_back(std::move(card));
        core::Giving by = giving;
        const auto since = reader.givenSince();
        Found found;
        for (const core::Lifter &lifter : lifters) {
            const auto theirs = missing.find(lifter.id);
            if (theirs == missing.end())
                continue;
            if (found.given.size() >= kDaysAtOnce)
                return {std::move(found.given), false};
            const std::vector<core::Card> cards = cardsOfDays(reader, theirs->second);
            const std::vector<core::LoggedSession> sessions = reader.sessions(lifter.id);
            const std::vector<core::GivenDay> given = reader.given(lifter.id);
            for (core::GivenDay &day : core::givePassedDays(
                     {lifter, variations, cards, sessions, given, learnt}, by, watch.stop)) {
                // From before the roster kept what was given: nobody knows what it was.
                if (!since || day.day < *since)
                    day.by = core::GivenBy::reconstructed;
                found.given.push_back(std::move(day));
            }
        }
        return found;
    });
}

void PassedDays::take(std::optional<Found> found)
{
    if (!found)
        return; // told; the next fit tries again
    if (keep(m_roster, std::move(found->given)) && !found->isAll)
        start();
    else
        Q_EMIT finished();
}

} // namespace ui
