#include "ui/room/room_page.h"

#include "ui/log/entry_panel.h"
#include "ui/look/form_parts.h"
#include "ui/look/page_help.h"
#include "ui/room/lifter_field.h"
#include "ui/room/rack_words.h"
#include "ui/room/seat.h"
#include "ui/room/seat_column.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <algorithm>
#include <utility>

namespace ui {

namespace {

constexpr int kFieldWidth = 230;
constexpr int kNumberKeys = 9;

SeatColumn::Content contentOf(const Seat &seat, int number, bool isAtHand)
{
    const core::Lifter &lifter = *seat.lifter();
    QStringList notices = seat.log().advice().words;
    const QString stop =
        seat.log().advice().stop && !notices.isEmpty() ? notices.takeFirst() : QString();
    for (const QString &name : seat.log().unreadable())
        notices << RoomPage::tr("The sets of %1 cannot be read.").arg(name);
    return {number, lifter.name, seat.rack(),
        seatWords(seat.desk().lines(), seat.log().planned(), lifter), stop, notices.join(u'\n'),
        isAtHand ? QString() : seat.desk().text().trimmed(), isAtHand};
}

} // namespace

RoomPage::RoomPage(OpenRoster &roster, Estimates &estimates, Insights &insights,
    Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_selection(selection)
    , m_room(new Room(roster, estimates, insights, this))
    , m_add(named("addToRoom", new LifterField([this] {
        LifterField::Names names;
        for (const core::Lifter &lifter : m_roster.lifters())
            if (!lifter.archived && !m_room->holds(lifter.id))
                names.emplace_back(lifter.id, lifter.name);
        return names;
    })))
    , m_day(named("roomDay", label(Type::heading)))
    , m_racks(named("racks", plainWords()))
    , m_empty(named("roomEmpty",
          centredWords(tr("Nobody is in the room yet. Write a part of a "
                          "name into the field above and press Enter, "
                          "once for every lifter who trains now."))))
    , m_entries(new QStackedWidget)
    , m_area(new QScrollArea)
    , m_columns(boxed(rowLayout({Stretch{}}, space::gap)))
{
    auto *add = new QLabel(tr("Add &lifter"));
    add->setBuddy(m_add);
    m_add->setFixedWidth(kFieldWidth);
    m_add->setPlaceholderText(tr("part of a name"));
    m_add->setAccessibleName(tr("Add a lifter to the room"));
    setUpForScrolling(*m_area, m_columns);
    m_area->setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    m_area->setFocusPolicy(Qt::NoFocus);
    fill(this,
        columnLayout({rowLayout({{m_day, 1}, add, m_add}, space::gap), m_racks, m_entries,
                         {m_area, 1}, {m_empty, 1}},
            space::gap),
        {space::gap, space::gap, space::gap, space::gap});

    addKeys();
    addHelp();
    connect(m_add, &LifterField::taken, m_room, &Room::enter);
    connect(m_add, &LifterField::left, this, &RoomPage::focusAtHand);
    connect(m_add, &LifterField::notFound, this, [this](const QString &typed) {
        Q_EMIT said(tr("No lifter outside the room is called %1.").arg(typed));
    });
    connect(m_room, &Room::seatsChanged, this, &RoomPage::showSeats);
    connect(m_room, &Room::changed, this, &RoomPage::showSoon);
    connect(m_room, &Room::atHandChanged, this, &RoomPage::showAtHand);
    connect(m_area->horizontalScrollBar(), &QScrollBar::rangeChanged, this,
        &RoomPage::scrollToAtHand); // a column has come or gone
    // Check-in, board and review are then those of the lifter at hand.
    connect(m_room, &Room::atHandChanged, this, [this] {
        if (const Seat *seat = m_room->atHand())
            m_selection.setLifter(seat->id());
    });
    connect(&selection, &Selection::lifterChanged, m_room, &Room::go);
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Lifter, core::Variation>())
            showSoon();
    });
    showSeats();
}

void RoomPage::addKeys()
{
    const auto add = [this](const QKeySequence &keys, const QString &words, const auto &act) {
        auto *shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        shortcut->setWhatsThis(words);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    for (int number = 1; number <= kNumberKeys; ++number)
        add(QKeySequence(Qt::ALT | Qt::Key(Qt::Key_0 + number)), tr("to the lifter of this number"),
            [this, number] {
                m_room->goTo(size_t(number - 1));
                focusAtHand();
            });
    add(QKeySequence(Qt::ALT | Qt::Key_K), tr("another rack for the lifter at hand"),
        [this] { m_room->turnRack(); });
    add(QKeySequence(Qt::ALT | Qt::Key_Delete), tr("take the lifter at hand out of the room"),
        [this] {
            if (const Seat *seat = m_room->atHand())
                leave(seat->id());
        });
}

void RoomPage::addHelp()
{
    new HelpSection(
        tr("Room"),
        [] {
            return HelpRows{keyRow({Qt::Key_Left, Qt::Key_Right},
                                tr("in the empty entry: to the lifter beside")),
                keyRow({Qt::Key_Return}, tr("in Add lifter: the lifter found comes in")),
                keyRow({Qt::Key_Escape}, tr("in Add lifter: back to the sets"))};
        },
        this);
}

void RoomPage::leave(core::LifterId lifter)
{
    if (const auto refused = m_room->leave(lifter))
        Q_EMIT said(tr("What is typed cannot be saved, so the lifter stays in the room. %1")
                        .arg(refused->words));
    else
        focusAtHand();
}

void RoomPage::showSeats()
{
    const std::vector<Seat *> &seats = m_room->seats();
    const auto hasGone = [&seats](const Shown &shown) {
        return std::ranges::find(seats, shown.seat) == seats.end();
    };
    bool isFocusGone = false;
    for (const Shown &shown : m_shown)
        if (hasGone(shown)) {
            isFocusGone |= shown.entry->isAncestorOf(focusWidget());
            m_entries->removeWidget(shown.entry);
            shown.column->hide();
            shown.column->deleteLater(); // its button may be in the middle of its click
            shown.entry->deleteLater();
        }
    std::erase_if(m_shown, hasGone);
    for (size_t place = m_shown.size(); place < seats.size(); ++place)
        m_shown.push_back(shownAs(*seats[place]));
    for (QWidget *widget : std::initializer_list<QWidget *>{m_entries, m_area})
        widget->setVisible(!seats.empty());
    m_empty->setVisible(seats.empty());
    showAtHand();
    if (isFocusGone)
        focusAtHand();
}

RoomPage::Shown RoomPage::shownAs(Seat &seat)
{
    Shown shown{&seat, new SeatColumn, new EntryPanel(seat.desk())};
    m_entries->addWidget(shown.entry);
    auto *row = static_cast<QHBoxLayout *>(m_columns->layout());
    row->insertWidget(row->count() - 1, shown.column, 1);
    connect(shown.column, &SeatColumn::chosen, this, [this, id = seat.id()] {
        m_room->go(id);
        focusAtHand();
    });
    connect(shown.column, &SeatColumn::rackWanted, this, [this, id = seat.id()] {
        m_room->go(id);
        m_room->turnRack();
    });
    connect(shown.column, &SeatColumn::leaveWanted, this, [this, id = seat.id()] { leave(id); });
    // At once: what is typed next belongs to the next set.
    const auto showEntry = [this, entry = shown.entry, &seat] {
        const core::Lifter *lifter = seat.lifter();
        entry->show(m_roster.variations(), lifter ? lifter->name : QString());
    };
    connect(&seat.desk(), &LogDesk::changed, shown.entry, showEntry);
    showEntry();
    connect(shown.entry, &EntryPanel::sideways, this, [this](int seats) {
        m_room->step(seats);
        focusAtHand();
    });
    return shown;
}

void RoomPage::showAtHand()
{
    const Seat *seat = m_room->atHand();
    const auto shown = std::ranges::find(m_shown, seat, &Shown::seat);
    setFocusProxy(shown == m_shown.end() ? static_cast<QWidget *>(m_add) : shown->entry);
    if (shown != m_shown.end())
        m_entries->setCurrentWidget(shown->entry);
    showDays();
    // A column that has just come has its place once the layout has been asked.
    QTimer::singleShot(0, this, &RoomPage::scrollToAtHand);
}

void RoomPage::scrollToAtHand()
{
    const auto shown = std::ranges::find(m_shown, m_room->atHand(), &Shown::seat);
    if (shown == m_shown.end())
        return;
    // Sideways only: the names and the next sets on top stay in sight.
    const int top = m_area->verticalScrollBar()->value();
    m_area->ensureWidgetVisible(shown->column, 0, 0);
    m_area->verticalScrollBar()->setValue(top);
}

void RoomPage::showSoon()
{
    if (std::exchange(m_isDue, true))
        return;
    QMetaObject::invokeMethod(this, &RoomPage::showDays, Qt::QueuedConnection);
}

void RoomPage::showDays()
{
    m_isDue = false;
    m_day->setText(
        tr("In the room, %1")
            .arg(QLocale().toString(m_roster.today().date(), QStringLiteral("dddd d MMMM yyyy"))));
    for (int number = 1; const Shown &shown : m_shown) {
        if (!shown.seat->lifter())
            return; // the room is about to hear of it
        shown.column->show(contentOf(*shown.seat, number++, shown.seat == m_room->atHand()));
    }
    const QString racks = this->racks();
    m_racks->setText(racks);
    m_racks->setVisible(!racks.isEmpty());
}

QString RoomPage::racks() const
{
    QStringList all;
    for (int rack = 1; rack <= kSharedRacks; ++rack) {
        std::vector<RackSeat> sharing;
        for (const Shown &shown : m_shown)
            if (shown.seat->rack() == rack)
                sharing.push_back(rackSeat(*shown.seat->lifter(), shown.seat->desk().lines(),
                    shown.seat->log().planned(), m_roster.variations()));
        if (!sharing.empty())
            all << rackWords(rack, sharing, m_room->onBarKg(rack));
    }
    return all.join(u'\n');
}

void RoomPage::focusAtHand()
{
    setFocus(Qt::OtherFocusReason);
}

bool RoomPage::event(QEvent *event)
{
    if (event->type() == QEvent::Show || event->type() == QEvent::WindowActivate)
        m_room->keepUp();
    return QWidget::event(event);
}

} // namespace ui
