#pragma once

#include "ui/room/room.h"

#include <QWidget>

class QLabel;
class QScrollArea;
class QStackedWidget;

namespace ui {

class EntryPanel;
class LifterField;
class SeatColumn;
class Selection;

/// The lifters who train at once, side by side, and the field that logs for the one at hand.
class RoomPage : public QWidget
{
    Q_OBJECT

public:
    RoomPage(OpenRoster &roster, Estimates &estimates, Insights &insights, Selection &selection,
        QWidget *parent = nullptr);

    [[nodiscard]] Room &room() { return *m_room; }

Q_SIGNALS:
    /// Why something that was asked for was not done.
    void said(const QString &words);

protected:
    bool event(QEvent *event) override;

private:
    /// What a seat is shown by.
    struct Shown
    {
        Seat *seat;
        SeatColumn *column;
        EntryPanel *entry;
    };

    void addKeys();
    void addHelp();
    void leave(core::LifterId lifter);
    void showSeats();
    [[nodiscard]] Shown shownAs(Seat &seat);
    void showAtHand();
    void scrollToAtHand();
    /// Columns and racks, once control returns: a set of one lifter may touch several.
    void showSoon();
    void showDays();
    [[nodiscard]] QString racks() const;
    void focusAtHand();

    OpenRoster &m_roster;
    Selection &m_selection;
    Room *m_room;
    LifterField *m_add;
    QLabel *m_day;
    QLabel *m_racks;
    QLabel *m_empty;
    QStackedWidget *m_entries;
    QScrollArea *m_area;
    QWidget *m_columns;
    std::vector<Shown> m_shown;
    bool m_isDue = false;
};

} // namespace ui
