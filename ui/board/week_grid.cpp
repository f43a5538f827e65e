#include "ui/board/week_grid.h"

#include "core/notation/set_line.h"
#include "core/notation/set_line_completion.h"
#include "ui/board/card_editor.h"
#include "ui/board/card_widget.h"
#include "ui/board/landing_note.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QDrag>
#include <QDropEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QToolButton>
#include <algorithm>

namespace ui {

namespace {

constexpr int kScrollMargin = 40; ///< around the pointer, so that a long day scrolls under a drag

std::optional<CardEditor::Refusal> checkSets(const QString &text)
{
    const core::ParsedSetLines parsed = core::parseSetLines(text);
    if (!parsed.error)
        return std::nullopt;
    const QStringList rows = text.split(u'\n');
    int position = parsed.error->column - 1;
    for (int row = 0; row + 1 < parsed.error->line; ++row)
        position += int(rows[row].size()) + 1;
    return CardEditor::Refusal{position, parsed.error->words};
}

std::optional<CardEditor::Refusal> checkNote(const QString &)
{
    return std::nullopt;
}

} // namespace

WeekGrid::WeekGrid(WeekPlan &plan, QWidget *parent)
    : QWidget(parent)
    , m_plan(plan)
    , m_drop(plan)
    , m_landingNote(new LandingNote(this))
{
    setAcceptDrops(true);
    setAccessibleName(tr("Week board"));
    for (QToolButton *&slot : m_slots) {
        slot = new QToolButton(this);
        slot->setText(tr("+ add"));
        slot->setToolTip(tr("Add a variation here (Insert)"));
        slot->setAutoRaise(true);
        slot->setFocusPolicy(Qt::ClickFocus);
        slot->installEventFilter(this);
        connect(slot, &QToolButton::clicked, this, [this] { Q_EMIT addRequested({}); });
    }
    connect(&plan, &WeekPlan::changed, this, &WeekGrid::follow);
    connect(&plan, &WeekPlan::settling, this, [this] {
        if (m_editor)
            m_editor->takeAsItStands();
    });
    follow();
    setCurrent({});
}

BoardPlace WeekGrid::placeToAdd() const
{
    const BoardPlace at = clamped(m_current);
    const bool onCard = m_plan.cardAt(at).isValid();
    return {at.day, at.position + (onCard ? 1 : 0)};
}

void WeekGrid::focusPlace(BoardPlace place)
{
    setCurrent(clamped(place));
    widgetAt(m_current)->setFocus();
    Q_EMIT lookAt(widgetAt(m_current)->geometry());
}

void WeekGrid::focusCard(core::CardId card)
{
    if (const auto place = m_plan.placeOf(card))
        focusPlace(*place);
}

void WeekGrid::follow()
{
    const bool hadFocus = isAncestorOf(QApplication::focusWidget());
    const bool editing = m_editor && m_editor->hasFocus();
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
    if (m_editor && !m_cards.contains(m_edited))
        m_editor->deleteLater();
    choose(m_chosen);

    nameSlots();
    arrange();
    const BoardPlace place = m_plan.placeOf(m_currentCard).value_or(clamped(m_current));
    setCurrent(place);
    if (hadFocus && !editing)
        focusPlace(place);
    update();
}

void WeekGrid::arrange()
{
    std::array<std::vector<int>, core::kWeekDays> heights;
    const int cardsWidth = cardWidth(width());
    for (size_t day = 0; day < core::kWeekDays; ++day)
        for (const CardView &card : m_plan.view().days[day].cards)
            heights[day].push_back(m_cards.at(card.id)->heightForWidth(cardsWidth));
    m_layout = boardLayout(width(), height(), heights);
    for (size_t day = 0; day < core::kWeekDays; ++day) {
        const std::vector<CardView> &cards = m_plan.view().days[day].cards;
        for (size_t i = 0; i < cards.size(); ++i)
            m_cards.at(cards[i].id)->setGeometry(m_layout.cards[day][i]);
        m_slots[day]->setGeometry(m_layout.slots[day]);
    }
    setMinimumHeight(m_layout.height);
    placeEditor();
    update();
}

void WeekGrid::setCurrent(BoardPlace place)
{
    // Only the current widget is a Tab stop, so that Tab leaves the grid.
    widgetAt(clamped(m_current))->setFocusPolicy(Qt::ClickFocus);
    for (const auto &[id, card] : m_cards)
        card->setFocusPolicy(Qt::ClickFocus);
    m_current = clamped(place);
    m_currentCard = m_plan.cardAt(m_current);
    widgetAt(m_current)->setFocusPolicy(Qt::StrongFocus);
    Q_EMIT currentChanged();
}

std::vector<core::CardId> WeekGrid::chosen() const
{
    if (!m_chosen.empty())
        return {m_chosen.begin(), m_chosen.end()};
    return m_currentCard.isValid() ? std::vector{m_currentCard} : std::vector<core::CardId>();
}

void WeekGrid::choose(std::set<core::CardId> cards)
{
    std::erase_if(cards, [this](core::CardId id) { return !m_cards.contains(id); });
    m_chosen = std::move(cards);
    for (const auto &[id, card] : m_cards)
        card->setChosen(m_chosen.contains(id));
}

QWidget *WeekGrid::widgetAt(BoardPlace place) const
{
    const core::CardId card = m_plan.cardAt(place);
    if (card.isValid())
        return m_cards.at(card);
    return m_slots[size_t(place.day)];
}

BoardPlace WeekGrid::clamped(BoardPlace place) const
{
    place.day = std::clamp(place.day, 0, core::kWeekDays - 1);
    place.position = std::clamp(place.position, 0, m_plan.counts()[size_t(place.day)]);
    return place;
}

CardWidget *WeekGrid::makeCard(const CardView &card)
{
    auto *widget = new CardWidget(card, this);
    widget->installEventFilter(this);
    connect(widget, &CardWidget::dragged, this, &WeekGrid::drag);
    connect(widget, &CardWidget::doubleClicked, this,
        [this](core::CardId id) { edit(id, Field::sets, {}); });
    connect(widget, &CardWidget::chooseToggled, this, [this](core::CardId id) {
        std::set<core::CardId> cards = m_chosen;
        if (cards.empty() && m_currentCard.isValid() && m_currentCard != id)
            cards.insert(m_currentCard);
        if (!cards.insert(id).second)
            cards.erase(id);
        choose(cards);
    });
    widget->QWidget::show();
    return widget;
}

void WeekGrid::nameSlots()
{
    for (size_t day = 0; day < core::kWeekDays; ++day) {
        const DayView &view = m_plan.view().days[day];
        QStringList said{view.name, view.date};
        for (const QString &total : {view.lifts, view.tonnage})
            if (!total.isEmpty())
                said << total;
        said << tr("add a variation");
        m_slots[day]->setAccessibleName(said.join(QStringLiteral(", ")));
        m_slots[day]->setEnabled(m_plan.lifter());
    }
}

bool WeekGrid::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::FocusIn)
        for (int day = 0; day < core::kWeekDays; ++day)
            for (int position = 0; position <= m_plan.counts()[size_t(day)]; ++position)
                if (widgetAt({day, position}) == watched)
                    setCurrent({day, position});
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
    if (std::holds_alternative<ChooseNone>(*command) && m_chosen.empty())
        return false; // Escape is somebody else's then
    std::visit([this](const auto &c) { run(c); }, *command);
    return true;
}

void WeekGrid::run(const GoTo &command)
{
    choose({});
    focusPlace(stepped(m_current, command.step, m_plan.counts()));
}

void WeekGrid::run(const ExtendTo &command)
{
    std::set<core::CardId> cards = m_chosen;
    cards.insert(m_currentCard); // an empty slot has no id; choose() leaves it out
    focusPlace(stepped(m_current, command.step, m_plan.counts()));
    cards.insert(m_currentCard);
    choose(cards);
}

void WeekGrid::run(const ChooseAll &)
{
    std::set<core::CardId> cards;
    for (const auto &[id, card] : m_cards)
        cards.insert(id);
    choose(cards);
}

void WeekGrid::run(const ChooseNone &)
{
    choose({});
}

void WeekGrid::run(const CopyCards &)
{
    if (const std::vector<core::CardId> cards = chosen(); !cards.empty())
        QApplication::clipboard()->setText(m_plan.text(cards));
}

void WeekGrid::run(const CutCards &)
{
    const std::vector<core::CardId> cards = chosen();
    if (cards.empty())
        return;
    QApplication::clipboard()->setText(m_plan.text(cards));
    m_plan.cut(cards);
}

void WeekGrid::run(const PasteCards &)
{
    const WeekPlan::Pasted pasted = m_plan.paste(QApplication::clipboard()->text(), placeToAdd());
    if (!pasted.refused.isEmpty()) {
        Q_EMIT said(pasted.refused);
    } else if (!pasted.cards.empty()) {
        focusCard(pasted.cards.front());
        choose({pasted.cards.begin(), pasted.cards.end()});
    }
}

void WeekGrid::run(const MoveCardTo &command)
{
    const core::CardId card = m_currentCard;
    const auto to = cardStepped(m_current, command.step, m_plan.counts());
    if (!card.isValid() || !to)
        return;
    m_plan.move(card, *to, WeekPlan::MovedBy::key);
    focusCard(card);
}

void WeekGrid::run(const EditSets &command)
{
    if (m_currentCard.isValid())
        edit(m_currentCard, Field::sets, command.typed);
    else
        Q_EMIT addRequested(command.typed);
}

void WeekGrid::run(const EditNote &)
{
    if (m_currentCard.isValid())
        edit(m_currentCard, Field::note, {});
}

void WeekGrid::run(const RemoveCard &)
{
    m_plan.remove(chosen());
}

void WeekGrid::run(const DuplicateCard &)
{
    if (m_currentCard.isValid())
        focusCard(m_plan.duplicate(m_currentCard, placeToAdd()));
}

void WeekGrid::run(const AddCard &)
{
    Q_EMIT addRequested({});
}

void WeekGrid::edit(core::CardId card, Field field, const QString &typed)
{
    if (m_editor && !m_editor->take())
        return;
    const auto place = m_plan.placeOf(card);
    if (!place)
        return;
    setCurrent(*place);
    const CardView &view = m_cards.at(card)->card();
    const bool isSets = field == Field::sets;
    m_edited = card;
    m_editedField = field;
    m_editor = new CardEditor(isSets ? checkSets : checkNote,
        isSets ? tr("Sets of %1").arg(view.name) : tr("Note on %1").arg(view.name), this, window());
    connect(m_editor, &CardEditor::taken, this, [this, card, isSets](const QString &text) {
        if (isSets) {
            const core::ParsedSetLines parsed = core::parseSetLines(text);
            m_plan.setSetLine(card, parsed.error ? text : core::setLineText(parsed.lines));
        } else {
            m_plan.setNote(card, text.trimmed());
        }
    });
    connect(m_editor, &CardEditor::left, this, [this, card] { focusCard(card); });
    if (isSets)
        m_editor->setCompletions([this](const QString &text, int cursor) {
            return core::completions(text, cursor, m_plan.catalogue());
        });
    const QString kept = isSets ? view.setLine : view.note;
    placeEditor();
    m_editor->open(typed.isEmpty() ? kept : typed);
}

void WeekGrid::placeEditor()
{
    if (!m_editor || !m_cards.contains(m_edited))
        return;
    const CardWidget *card = m_cards.at(m_edited);
    const QRect field = m_editedField == Field::sets ? card->setsField() : card->noteField();
    m_editor->moveTo(field.translated(card->pos()).adjusted(-4, -3, 4, 3));
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

void WeekGrid::contextMenuEvent(QContextMenuEvent *event)
{
    if (!m_plan.lifter())
        return;
    QMenu menu(this);
    const auto offer = [&](const QString &text, const QString &keys, const BoardCommand &command) {
        menu.addAction(text + u'\t' + keys, this,
            [this, command] { std::visit([this](const auto &c) { run(c); }, command); });
    };
    if (m_currentCard.isValid()) {
        offer(tr("Edit sets"), tr("Enter"), EditSets{});
        offer(tr("Edit note"), tr("Shift+F2"), EditNote{});
        offer(tr("Copy below"), tr("Ctrl+D"), DuplicateCard{});
        menu.addSeparator();
        offer(tr("Cut"), tr("Ctrl+X"), CutCards{});
        offer(tr("Copy"), tr("Ctrl+C"), CopyCards{});
        offer(tr("Paste below"), tr("Ctrl+V"), PasteCards{});
        menu.addSeparator();
        offer(tr("Add a variation below"), tr("Insert"), AddCard{});
        menu.addSeparator();
        offer(m_chosen.size() > 1 ? tr("Remove %1 cards").arg(m_chosen.size()) : tr("Remove card"),
            tr("Delete"), RemoveCard{});
    } else {
        offer(tr("Add a variation"), tr("Insert"), AddCard{});
        offer(tr("Paste"), tr("Ctrl+V"), PasteCards{});
    }
    menu.exec(event->globalPos());
}

void WeekGrid::mousePressEvent(QMouseEvent *event)
{
    // Beside the cards: the day's empty slot is meant.
    for (int day = 0; day < core::kWeekDays; ++day)
        if (m_layout.columns[size_t(day)].contains(event->pos())) {
            choose({});
            focusPlace({day, m_plan.counts()[size_t(day)]});
        }
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
    const std::optional<BoardPlace> gap = m_drop.gap();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    for (int day = 0; day < core::kWeekDays; ++day) {
        const bool isTarget = gap && gap->day == day;
        painter.setBrush(isTarget ? look.chosen : look.sunken);
        painter.drawRoundedRect(m_layout.columns[size_t(day)], space::radius, space::radius);
    }
    if (m_plan.lifter() && m_plan.view().isEmpty() && !gap) {
        painter.setPen(look.mutedText);
        painter.setFont(ui::font(Type::heading, font()));
        const int top = m_layout.slots[0].bottom() + space::page;
        painter.drawText(rect().adjusted(space::page, top, -space::page, 0),
            Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
            tr("An empty week. Drag a variation from the shelf onto a day, or press Insert."));
    }
    if (gap) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.accent);
        const QRect marker = gapMarker(m_layout, *gap);
        painter.drawRoundedRect(marker, marker.height() / 2.0, marker.height() / 2.0);
    }
}

} // namespace ui
