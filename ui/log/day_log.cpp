#include "ui/log/day_log.h"

#include "core/domain/check_in_on.h"
#include "core/domain/variation.h"
#include "core/loads/far_above_max.h"
#include "core/log/session_log.h"
#include "core/plan/plan_edits.h"
#include "ui/roster/giving.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <algorithm>

namespace ui {

namespace {

/// A check-in of a day on which nothing was said.
core::CheckIn unsaid(core::LifterId lifter, QDate day)
{
    core::CheckIn blank;
    blank.lifter = lifter;
    blank.day = day;
    return blank;
}

} // namespace

DayLog::DayLog(OpenRoster &roster, Estimates &estimates, Insights &insights, LifterHistory &history,
    Selection &selection, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_insights(insights)
    , m_selection(selection)
    , m_history(history)
    , m_day(today())
{
    // The history follows lifter, log and check-ins.
    connect(&history, &LifterHistory::changed, this, &DayLog::takeHistory);
    connect(&roster, &OpenRoster::changed, this, &DayLog::follow);
    connect(&roster, &OpenRoster::settling, this, &DayLog::settling);
    connect(&roster, &OpenRoster::closing, this, &DayLog::closing);
    connect(&estimates, &Estimates::changed, this, [this](const QSet<core::LifterId> &lifters) {
        if (lifters.contains(m_selection.lifter()))
            replan();
    });
    connect(&insights, &Insights::changed, this, &DayLog::replan);
    connect(&roster.today(), &Today::changed, this, &DayLog::replan);
    reload();
}

const core::Lifter *DayLog::lifter() const
{
    return m_roster.lifter(m_selection.lifter());
}

const core::Lifter *DayLog::lifter(core::LifterId id) const
{
    return m_roster.lifter(id);
}

const std::vector<core::Variation> &DayLog::catalogue() const
{
    return m_roster.variations();
}

QDate DayLog::today() const
{
    return m_roster.today().date();
}

void DayLog::setDay(QDate day)
{
    if (!day.isValid() || day == m_day)
        return;
    if (!m_roster.settle())
        return;
    m_day = day;
    m_isToday = day == today();
    reload();
}

void DayLog::keepUp()
{
    if (m_isToday)
        setDay(today());
}

core::DaySet DayLog::swapped(size_t planned, core::VariationId variation) const
{
    return core::swapped(inputs(), m_plan, planned, variation);
}

QString DayLog::withheld(const core::SetEntry &set) const
{
    return lifter() ? core::whyWithheld(inputs(), m_plan, set) : QString();
}

double DayLog::easedKg(core::VariationId variation, double loadKg) const
{
    return lifter() ? core::easedKg(inputs(), variation, loadKg) : loadKg;
}

QString DayLog::whyFarAbove(const core::SetEntry &set) const
{
    const core::Variation *variation = core::find(catalogue(), set.variation);
    if (!lifter() || !variation)
        return {};
    return core::whyFarAboveMax(
        set, *variation, m_day, m_estimates.of(lifter()->id, variation->lift), *lifter());
}

bool DayLog::add(const core::SetEntry &set, size_t place)
{
    if (!lifter())
        return false;
    core::Edit facts; // from the first set on the day's loads are what the lifter was given
    facts.given.after = core::giveDay(inputs(), m_plan, giving(m_roster, core::GivenBy::firstSet));
    return perform(tr("Log a set of %1"), set.variation,
        core::addSet(sessions(), lifter()->id, m_day, set, place,
            [this] { return m_roster.newId<core::LoggedSession>(); }),
        facts);
}

bool DayLog::change(const core::SetEntry &set, size_t place)
{
    return perform(
        tr("Change a set of %1"), set.variation, core::changeSet(sessions(), set, place));
}

bool DayLog::remove(size_t place)
{
    return perform(
        tr("Delete a set of %1"), m_done[place].variation, core::removeSet(sessions(), place));
}

core::CheckIn DayLog::checkIn() const
{
    if (const core::CheckIn *said =
            core::checkInOn(m_history.checkIns(), m_selection.lifter(), m_day))
        return *said;
    return unsaid(m_selection.lifter(), m_day);
}

void DayLog::say(const core::CheckIn &checkIn)
{
    // It may be about the lifter that was shown before, and even one that an undo has taken away.
    if (!m_roster.lifter(checkIn.lifter))
        return;
    m_told = checkIn;
    m_told.id = {};
    const std::vector<core::CheckIn> all = m_roster.checkIns(checkIn.lifter);
    const auto before = std::find_if(all.begin(), all.end(),
        [&checkIn](const core::CheckIn &other) { return other.day == checkIn.day; });
    if (m_roster.perform(tr("Change the check-in"),
            core::sayCheckIn(before == all.end() ? nullptr : &*before, checkIn,
                [this] { return m_roster.newId<core::CheckIn>(); })))
        return;
    m_told = before == all.end() ? unsaid(checkIn.lifter, checkIn.day) : *before;
    m_told.id = {};
    Q_EMIT checkInNotSaved(m_told);
}

void DayLog::setShiftsLoads(bool shifts)
{
    if (shifts == m_plan.shiftsLoads)
        return;
    m_shiftLoads = shifts;
    replan();
}

void DayLog::takeSwap(const core::SoreSwap &swap)
{
    perform(tr("Swap for %1"), swap.spares, core::changeVariation(m_cards, swap.card, swap.spares));
}

void DayLog::follow(const core::RosterChange &change)
{
    const core::LifterId shown = m_selection.lifter();
    if (change.has<core::Lifter>(shown)) {
        reload();
        return;
    }
    const bool hasCards = change.has<core::Card>(shown) && change.isWithin(m_day, m_day);
    if (hasCards) {
        core::carryOut(m_cards, change.rows<core::Card>(), [this, shown](const core::Card &card) {
            return card.lifter == shown && card.day == m_day;
        });
        m_cards = core::cardsOn(m_cards, m_day);
    }
    if (hasCards || change.has<core::Variation>())
        replan();
}

void DayLog::reload()
{
    if (m_read != key()) {
        m_read = key();
        m_shiftLoads.reset(); // the choice was about another
    }
    m_cards.clear();
    m_done.clear();
    if (lifter()) {
        m_cards = core::cardsOn(m_roster.cards(lifter()->id, m_day, m_day), m_day);
        m_done = core::setsOf(sessions());
    }
    replan();
}

/// A day that was looked up of one lifter says nothing of the next.
void DayLog::turnTo(core::LifterId lifter)
{
    m_day = today();
    Q_EMIT opening(lifter, &m_day);
    m_isToday = m_day == today();
}

void DayLog::takeHistory()
{
    if (m_read.first != m_selection.lifter())
        turnTo(m_selection.lifter());
    if (m_read != key()) {
        reload();
        return;
    }
    m_done = core::setsOf(sessions());
    replan();
}

void DayLog::replan()
{
    m_plan = lifter() ? core::dayPlan(inputs()) : core::DayPlan{};
    tellCheckIn();
    Q_EMIT changed();
}

void DayLog::tellCheckIn()
{
    core::CheckIn now = checkIn();
    now.id = {};
    if (now == m_told)
        return;
    m_told = now;
    Q_EMIT checkInChanged(now);
}

core::DayInputs DayLog::inputs() const
{
    const core::Lifter &who = *lifter();
    return {who, m_day, catalogue(), m_cards, m_history.given(), m_roster.today().date(), m_done,
        m_history.checkIns(),
        [this, id = who.id](core::Lift lift) { return m_estimates.of(id, lift); },
        m_insights.readiness(who.id), m_shiftLoads};
}

std::pair<core::LifterId, QDate> DayLog::key() const
{
    return {m_selection.lifter(), m_day};
}

std::vector<core::LoggedSession> DayLog::sessions() const
{
    std::vector<core::LoggedSession> sessions;
    for (const core::LoggedSession &session : m_history.sessions())
        if (session.day == m_day)
            sessions.push_back(session);
    return sessions;
}

bool DayLog::perform(const QString &pattern, core::VariationId variation, const core::Edit &edit,
    const core::Edit &facts)
{
    const core::Variation *known = m_roster.variation(variation);
    return m_roster.perform(
        pattern.arg(known ? known->name : QStringLiteral("?")), edit, {}, facts);
}

} // namespace ui
