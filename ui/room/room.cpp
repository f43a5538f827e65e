#include "ui/room/room.h"

#include "ui/room/rack_words.h"
#include "ui/room/seat.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/today.h"

#include <algorithm>

namespace ui {

Room::Room(OpenRoster &roster, Estimates &estimates, Insights &insights, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_insights(insights)
{
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Lifter>())
            dropUnknown();
    });
}

Seat *Room::atHand() const
{
    return m_place < m_seats.size() ? m_seats[m_place] : nullptr;
}

std::optional<size_t> Room::placeOf(core::LifterId lifter) const
{
    const auto found = std::ranges::find(m_seats, lifter, &Seat::id);
    return found == m_seats.end() ? std::nullopt : std::optional(size_t(found - m_seats.begin()));
}

void Room::enter(core::LifterId lifter)
{
    if (!m_roster.lifter(lifter))
        return;
    if (!holds(lifter)) {
        add({lifter, 0});
        m_place = m_seats.size() - 1;
        keep();
        Q_EMIT seatsChanged();
        Q_EMIT atHandChanged();
        return;
    }
    go(lifter);
}

void Room::add(const RoomPlace &place)
{
    auto *seat = new Seat(m_roster, m_estimates, m_insights, place.lifter, this);
    seat->setRack(place.rack);
    m_seats.push_back(seat);
    m_logged[place.lifter] = seat->log().done().size();
    connect(&seat->desk(), &LogDesk::changed, this, [this, seat] { follow(*seat); });
}

std::optional<core::EntryError> Room::leave(core::LifterId lifter)
{
    const std::optional<size_t> place = placeOf(lifter);
    if (!place)
        return std::nullopt;
    LogDesk &desk = m_seats[*place]->desk();
    if (!desk.text().trimmed().isEmpty())
        if (auto refused = desk.take())
            return refused;
    remove(*place);
    keep();
    Q_EMIT seatsChanged();
    Q_EMIT atHandChanged();
    return std::nullopt;
}

void Room::remove(size_t place)
{
    Seat *gone = m_seats[place];
    m_seats.erase(m_seats.begin() + std::ptrdiff_t(place));
    if (m_place > place || (m_place > 0 && m_place == m_seats.size()))
        --m_place;
    m_logged.erase(gone->id());
    gone->disconnect(this);
    gone->desk().disconnect(this);
    gone->deleteLater();
}

void Room::dropUnknown()
{
    bool hasGone = false;
    for (size_t place = m_seats.size(); place-- > 0;)
        if (!m_roster.lifter(m_seats[place]->id())) {
            remove(place);
            hasGone = true;
        }
    if (!hasGone)
        return;
    keep();
    Q_EMIT seatsChanged();
    Q_EMIT atHandChanged();
}

void Room::go(core::LifterId lifter)
{
    if (const std::optional<size_t> place = placeOf(lifter))
        goTo(*place);
}

void Room::goTo(size_t place)
{
    if (place >= m_seats.size() || place == m_place)
        return;
    m_place = place;
    Q_EMIT atHandChanged();
}

void Room::step(int seats)
{
    if (!m_seats.empty())
        goTo(size_t(std::clamp(int(m_place) + seats, 0, int(m_seats.size()) - 1)));
}

void Room::turnRack()
{
    Seat *seat = atHand();
    if (!seat)
        return;
    seat->setRack((seat->rack() + 1) % (kSharedRacks + 1));
    keep();
    Q_EMIT changed();
}

double Room::onBarKg(int rack) const
{
    const auto known = m_onBarKg.find(rack);
    return known == m_onBarKg.end() ? 0.0 : known->second;
}

void Room::follow(Seat &seat)
{
    const std::vector<core::SetEntry> &done = seat.log().done();
    size_t &before = m_logged[seat.id()];
    if (done.size() > before && isOnRack(done.back().variation, m_roster.variations()))
        m_onBarKg[seat.rack()] = done.back().loadKg;
    before = done.size();
    Q_EMIT changed();
}

void Room::keepUp()
{
    for (Seat *seat : m_seats)
        seat->log().keepUp();
}

void Room::remember(const QString &rosterPath)
{
    m_rosterPath = rosterPath;
    for (const RoomPlace &place : rememberedRoom(rosterPath, m_roster.today().date()))
        if (m_roster.lifter(place.lifter) && !holds(place.lifter))
            add(place);
    if (!m_seats.empty())
        Q_EMIT seatsChanged();
}

void Room::keep() const
{
    if (m_rosterPath.isEmpty())
        return;
    std::vector<RoomPlace> places;
    for (const Seat *seat : m_seats)
        places.push_back({seat->id(), seat->rack()});
    rememberRoom(m_rosterPath, m_roster.today().date(), places);
}

} // namespace ui
