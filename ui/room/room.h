#pragma once

#include "core/notation/set_entry_text.h"
#include "ui/room/room_memory.h"

#include <QObject>
#include <map>
#include <optional>
#include <vector>

namespace ui {

class Estimates;
class Insights;
class OpenRoster;
class Seat;

/// Racks that can be shared, besides each lifter's own.
inline constexpr int kSharedRacks = 2;

/// The lifters who train at once, each with a seat, and the one at hand.
class Room : public QObject
{
    Q_OBJECT

public:
    Room(OpenRoster &roster, Estimates &estimates, Insights &insights, QObject *parent = nullptr);

    [[nodiscard]] const std::vector<Seat *> &seats() const { return m_seats; }
    /// Null while nobody is in the room.
    [[nodiscard]] Seat *atHand() const;
    [[nodiscard]] bool holds(core::LifterId lifter) const { return placeOf(lifter).has_value(); }

    /// Puts the lifter into the room, or goes to the seat that they have there.
    void enter(core::LifterId lifter);
    /// Takes the lifter out. What is half typed there is saved first; why not, where it is refused.
    std::optional<core::EntryError> leave(core::LifterId lifter);
    /// Makes the lifter's seat the one at hand; nothing happens where there is none.
    void go(core::LifterId lifter);
    /// To the seat at a place from 0, and to the one so many further.
    void goTo(size_t place);
    void step(int seats);
    /// The seat at hand on the next rack: one alone, then each of those that can be shared.
    void turnRack();

    /// What is on the bar of a shared rack, as far as the sets logged here say; else the empty bar.
    [[nodiscard]] double onBarKg(int rack) const;

    /// Goes on to today.
    void keepUp();
    /// Everybody who was in the room of this roster today, and from now on remembers who is.
    void remember(const QString &rosterPath);

Q_SIGNALS:
    /// Somebody has come or gone. Seats that have gone are there until control returns.
    void seatsChanged();
    void atHandChanged();
    /// A day, a rack or the racks' bars read differently.
    void changed();

private:
    [[nodiscard]] std::optional<size_t> placeOf(core::LifterId lifter) const;
    void add(const RoomPlace &place);
    void remove(size_t place);
    void follow(Seat &seat);
    void dropUnknown();
    void keep() const;

    OpenRoster &m_roster;
    Estimates &m_estimates;
    Insights &m_insights;
    std::vector<Seat *> m_seats;
    size_t m_place = 0;
    std::map<core::LifterId, size_t> m_logged; ///< sets of today, to see which lifter did one more
    std::map<int, double> m_onBarKg;           ///< by rack
    QString m_rosterPath;
};

} // namespace ui
