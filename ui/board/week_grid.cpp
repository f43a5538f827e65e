#include "ui/board/week_grid.h"

#include "ui/board/board_ground.h"
#include "ui/board/board_menu.h"
#include "ui/board/card_widget.h"
#include "ui/board/day_slot.h"
#include "ui/board/landing_note.h"
#include "ui/look/colours.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QDrag>
#include <QDropEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>

namespace ui {

namespace {
constexpr int kScrollMargin = 40; ///< around the pointer, so that a long day scrolls under a drag
}

WeekGrid::WeekGrid(WeekPlan &plan, QWidget *parent)
    : QWidget(parent)
    , m_plan(plan)
    , m_editing(plan, *this)
    , m_drop(plan)
    , m_landingNote(new LandingNote(this))
{
    setAcceptDrops(true);
    setAccessibleName(tr("Week board"));
    for (DaySlot *&slot : m_slots) {
        slot = new DaySlot(this);
        slot->installEventFilter(this);
        connect(
            slot, &DaySlot::clicked, this, [this] { Q_EMIT commandGiven({BoardAct::addCard}); });
    }
    connect(&plan, &WeekPlan::changed, this, &WeekGrid::follow);
    connect(&m_editing, &CardEditing::left, this, &WeekGrid::focusCard);
    follow();
}

void WeekGrid::choose(const std::set<core::CardId> &cards)
{
    m_choice.choose(cards);
    showChosen();
}

void WeekGrid::chooseAll()
{
    m_choice.chooseAll();
    showChosen();
}

void WeekGrid::extendTo(BoardPlace place)
{
    m_choice.extendTo(place);
    focusPlace(place);
    showChosen();
}

void WeekGrid::showChosen()
{
    for (const auto &[id, card] : m_cards)
        card->setChosen(m_choice.chosen().contains(id));
}

void WeekGrid::focusPlace(BoardPlace place)
{
    setCurrent(place);
    m_choice.startHere();
    QWidget *current = widgetAt(m_choice.place());
    current->setFocus();
    Q_EMIT lookAt(current->geometry());
}

void WeekGrid::focusCard(core::CardId card)
{
    if (const auto place = m_plan.places().placeOf(card))
        focusPlace(*place);
}

void WeekGrid::setCurrent(BoardPlace place)
{
    m_choice.goTo(place);
    // Only the current widget is a Tab stop, so that Tab leaves the grid.
    for (const auto &[id, card] : m_cards)
        card->setFocusPolicy(Qt::ClickFocus);
    for (DaySlot *slot : m_slots)
        slot->setFocusPolicy(Qt::ClickFocus);
    widgetAt(m_choice.place())->setFocusPolicy(Qt::StrongFocus);
    Q_EMIT currentChanged();
}

void WeekGrid::edit(core::CardId card, CardEditing::Field field, const QString &typed)
{
    if (!m_editing.finish())
        return;
    const auto place = m_plan.places().placeOf(card);
    if (!place)
        return;
    setCurrent(*place);
    m_editing.open(*m_cards.at(card), field, typed);
}

void WeekGrid::follow()
{
    const bool hadFocus = isAncestorOf(QApplication::focusWidget());
    const bool editing = m_editing.hasFocus();
    m_choice.follow(m_plan.places());
    followCards();
    showChosen();
    for (size_t day = 0; day < core::kWeekDays; ++day) {
        m_slots[day]->show(m_plan.view().days[day]);
        m_slots[day]->setEnabled(m_plan.lifter());
    }
    arrange();
    setCurrent(m_choice.place());
    if (hadFocus && !editing)
        focusPlace(m_choice.place());
    update();
}

void WeekGrid::followCards()
{
    std::map<core::CardId, CardWidget *> old;
    old.swap(m_cards);
    for (const DayView &day : m_plan.view().days)
        for (const CardView &card : day.cards) {
            const auto known = old.find(card.id);
            if (known == old.end()) {
                m_cards.emplace(card.id, makeCard(card));
                continue;
            }
            if (known->second->card() != card)
                known->second->show(card);
            m_cards.insert(*known);
            old.erase(known);
        }
    for (const auto &[id, gone] : old) {
        gone->hide();
        gone->deleteLater(); // one of them may be in the middle of its mouse event
    }
}

CardWidget *WeekGrid::makeCard(const CardView &card)
{
    auto *widget = new CardWidget(card, this);
    widget->installEventFilter(this);
    connect(widget, &CardWidget::dragged, this, &WeekGrid::drag);
    connect(widget, &CardWidget::doubleClicked, this,
        [this](core::CardId id) { edit(id, CardEditing::Field::sets, {}); });
    connect(widget, &CardWidget::pressed, this, &WeekGrid::takePress);
    widget->QWidget::show();
    return widget;
}

void WeekGrid::takePress(core::CardId card, Qt::MouseButton button, Qt::KeyboardModifiers held)
{
    const bool isChosen = m_choice.chosen().contains(card);
    if (button == Qt::LeftButton && held.testFlag(Qt::ControlModifier)) {
        m_choice.toggle(card);
    } else if (button == Qt::LeftButton && held.testFlag(Qt::ShiftModifier)) {
        m_choice.chooseUpTo(card);
    } else {
        // The menu of one of several is for all of them, and so is a drag's begin.
        if (!isChosen || button == Qt::LeftButton)
            m_choice.choose({});
        m_choice.startHere();
    }
    showChosen();
}

void WeekGrid::arrange()
{
    const WeekCards &places = m_plan.places();
    std::array<std::vector<int>, core::kWeekDays> heights;
    const int cardsWidth = cardWidth(width());
    for (size_t day = 0; day < core::kWeekDays; ++day)
        for (const core::CardId card : places.days[day])
            heights[day].push_back(m_cards.at(card)->heightForWidth(cardsWidth));
    m_layout = boardLayout(width(), height(), heights);
    for (size_t day = 0; day < core::kWeekDays; ++day) {
        for (size_t i = 0; i < places.days[day].size(); ++i)
            m_cards.at(places.days[day][i])->setGeometry(m_layout.cards[day][i]);
        m_slots[day]->setGeometry(m_layout.slots[day]);
    }
    setMinimumHeight(m_layout.height);
    if (const auto edited = m_cards.find(m_editing.card()); edited != m_cards.end())
        m_editing.moveOver(*edited->second);
    update();
}

QWidget *WeekGrid::widgetAt(BoardPlace place) const
{
    const core::CardId card = m_plan.places().at(place);
    if (card.isValid())
        return m_cards.at(card);
    return m_slots[size_t(place.day)];
}

bool WeekGrid::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::FocusIn) {
        const CardCounts counts = m_plan.places().counts();
        for (int day = 0; day < core::kWeekDays; ++day)
            for (int position = 0; position <= counts[size_t(day)]; ++position)
                if (widgetAt({day, position}) == watched)
                    setCurrent({day, position});
    }
    // The window has Alt with an arrow key for its own; on a card it moves the card.
    if (event->type() == QEvent::ShortcutOverride && m_choice.card().isValid())
        if (const auto command = boardCommand(*static_cast<QKeyEvent *>(event));
            command && command->act == BoardAct::moveCard) {
            event->accept();
            return true;
        }
    // Before the child sees it: a button would take arrow keys for its own.
    if (event->type() == QEvent::KeyPress)
        return takeKey(*static_cast<QKeyEvent *>(event));
    return QWidget::eventFilter(watched, event);
}

bool WeekGrid::takeKey(const QKeyEvent &key)
{
    const auto command = boardCommand(key);
    if (!command || !m_plan.lifter())
        return false;
    if (command->act == BoardAct::chooseNone && m_choice.chosen().empty())
        return false; // Escape is somebody else's then
    Q_EMIT commandGiven(*command);
    return true;
}

void WeekGrid::contextMenuEvent(QContextMenuEvent *event)
{
    openMenu(event->globalPos());
}

void WeekGrid::openDayMenu(int day, QPoint globalPos)
{
    choose({});
    focusPlace({day, m_plan.places().counts()[size_t(day)]});
    openMenu(globalPos);
}

void WeekGrid::openMenu(QPoint globalPos)
{
    if (!m_plan.lifter())
        return;
    QMenu menu(this);
    for (const BoardOffer &offer : boardMenu(m_choice.card().isValid(), m_choice.chosen().size())) {
        if (offer.beginsGroup)
            menu.addSeparator();
        menu.addAction(offer.words + u'\t' + offer.keys, this,
            [this, act = offer.act] { Q_EMIT commandGiven({act}); });
    }
    menu.exec(globalPos);
}

void WeekGrid::mousePressEvent(QMouseEvent *event)
{
    if (childAt(event->pos()))
        return; // a card or slot left it to us, which other buttons than the left do
    // Beside the cards: the day's empty slot is meant.
    for (int day = 0; day < core::kWeekDays; ++day)
        if (m_layout.columns[size_t(day)].contains(event->pos())) {
            choose({});
            focusPlace({day, m_plan.places().counts()[size_t(day)]});
        }
}

void WeekGrid::drag(core::CardId card)
{
    CardWidget *widget = m_cards.at(card);
    auto *drag = new QDrag(this);
    drag->setMimeData(mimeOf(card).release());
    drag->setPixmap(widget->grab());
    drag->setHotSpot(widget->mapFromGlobal(QCursor::pos()));
    Q_EMIT cardDragged(true);
    drag->exec(Qt::MoveAction | Qt::CopyAction, Qt::MoveAction);
    Q_EMIT cardDragged(false);
}

void WeekGrid::dragEnterEvent(QDragEnterEvent *event)
{
    if (m_drop.enter(event->mimeData()))
        event->acceptProposedAction();
}

void WeekGrid::dragMoveEvent(QDragMoveEvent *event)
{
    const QPoint at = event->position().toPoint();
    if (m_drop.moveTo(gapAt(m_layout, at)))
        showGap();
    Q_EMIT lookAt(
        QRect(at, QSize(1, 1)).adjusted(0, -kScrollMargin, 0, kScrollMargin).intersected(rect()));
    event->acceptProposedAction();
}

void WeekGrid::dragLeaveEvent(QDragLeaveEvent *)
{
    m_drop.leave();
    showGap();
}

void WeekGrid::dropEvent(QDropEvent *event)
{
    const bool copies = event->dropAction() == Qt::CopyAction;
    const core::CardId landed =
        m_drop.drop(copies ? DropTarget::Drop::copy : DropTarget::Drop::move);
    showGap();
    if (!landed.isValid())
        return;
    event->acceptProposedAction();
    focusCard(landed);
}

void WeekGrid::showGap()
{
    if (const auto gap = m_drop.gap())
        m_landingNote->showBelow(gapMarker(m_layout, *gap), m_drop.landing());
    else
        m_landingNote->hide();
    update();
}

void WeekGrid::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void WeekGrid::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        arrange();
}

void WeekGrid::paintEvent(QPaintEvent *)
{
    const Colours &look = colours(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintGround(painter, m_layout, m_drop.gap(), look);
    if (m_plan.lifter() && m_plan.view().isEmpty() && !m_drop.gap())
        paintInvitation(painter, m_layout, rect(), look);
}

} // namespace ui
