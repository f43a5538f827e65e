#include "ui/board/week_plan.h"

#include "core/notation/card_text.h"
#include "core/plan/plan_edits.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <algorithm>
#include <limits>

namespace ui {

WeekPlan::WeekPlan(OpenRoster &roster, Estimates &estimates, Selection &selection, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_selection(selection)
{
    connect(&selection, &Selection::lifterChanged, this, &WeekPlan::reload);
    connect(&selection, &Selection::weekChanged, this, &WeekPlan::reload);
    connect(&roster, &OpenRoster::changed, this, &WeekPlan::follow);
    connect(&roster, &OpenRoster::settling, this, &WeekPlan::settling);
    connect(&roster.today(), &Today::changed, this, &WeekPlan::changed);
    connect(&estimates, &Estimates::changed, this, [this](const QSet<core::LifterId> &lifters) {
        if (lifters.contains(m_selection.lifter()))
            rebuild();
    });
    reload();
}

const core::Lifter *WeekPlan::lifter() const
{
    return m_roster.lifter(m_selection.lifter());
}

QDate WeekPlan::monday() const
{
    return m_selection.monday();
}

QDate WeekPlan::today() const
{
    return m_roster.today().date();
}

const std::vector<core::Variation> &WeekPlan::catalogue() const
{
    return m_roster.variations();
}

DayCards WeekPlan::newCards(core::VariationId variation) const
{
    DayCards cards;
    const core::Variation *chosen = m_roster.variation(variation);
    if (!lifter() || !chosen)
        return cards;
    const std::vector<core::Card> earlier = m_roster.cards(lifter()->id,
        monday().addDays(-core::kSuggestionDays), monday().addDays(core::kWeekDays - 1));
    for (int day = 0; day < core::kWeekDays; ++day) {
        core::Card &card = cards[size_t(day)];
        card.variation = variation;
        card.setLine = core::suggestedSetLine(*chosen, earlier, monday().addDays(day));
    }
    return cards;
}

core::CardId WeekPlan::add(const core::Card &card, BoardPlace place)
{
    if (!lifter() || !m_roster.variation(card.variation))
        return {};
    return addCard(named(tr("Add %1"), card.variation), card, place);
}

core::CardId WeekPlan::add(core::VariationId variation, BoardPlace place, const QString &setLine)
{
    core::Card card = newCards(variation)[size_t(place.day)];
    if (!setLine.isEmpty())
        card.setLine = setLine;
    return add(card, place);
}

core::CardId WeekPlan::duplicate(core::CardId card, BoardPlace place)
{
    const core::Card *original = find(card);
    if (!original)
        return {};
    return addCard(named(tr("Copy %1"), original->variation), *original, place);
}

void WeekPlan::move(core::CardId card, BoardPlace place, MovedBy by)
{
    if (const core::Card *moved = find(card))
        m_roster.perform(named(tr("Move %1"), moved->variation),
            core::moveCard(m_cards, card, monday().addDays(place.day), place.position),
            by == MovedBy::key ? QStringLiteral("move card %1").arg(card.value) : QString());
}

void WeekPlan::remove(const std::vector<core::CardId> &cards)
{
    takeOut(tr("Remove %1"), tr("Remove %1 cards"), cards);
}

void WeekPlan::cut(const std::vector<core::CardId> &cards)
{
    takeOut(tr("Cut %1"), tr("Cut %1 cards"), cards);
}

void WeekPlan::takeOut(
    const QString &one, const QString &several, const std::vector<core::CardId> &ids)
{
    const std::vector<core::Card> gone = chosen(ids);
    if (gone.empty())
        return;
    std::vector<core::CardId> there;
    for (const core::Card &card : gone)
        there.push_back(card.id);
    m_roster.perform(
        gone.size() == 1 ? named(one, gone.front().variation) : several.arg(gone.size()),
        core::removeCards(m_cards, there));
}

QString WeekPlan::text(const std::vector<core::CardId> &cards) const
{
    return core::cardText(chosen(cards), m_roster.variations());
}

WeekPlan::Pasted WeekPlan::paste(const QString &text, BoardPlace place)
{
    Pasted pasted;
    if (!lifter())
        return pasted;
    const core::ParsedCardText parsed = core::parseCardText(text, m_roster.variations());
    if (parsed.error) {
        pasted.refused = tr("The clipboard cannot be read as cards. Line %1, column %2: %3")
                             .arg(parsed.error->line)
                             .arg(parsed.error->column)
                             .arg(parsed.error->words);
        return pasted;
    }
    const QDate first = monday().addDays(place.day);
    std::vector<core::Card> added;
    QDate last = first;
    for (const core::CardRow &row : parsed.rows) {
        last = first.addDays(row.offset);
        // On the first day one below the other from the place on, on further days at the end.
        const int position =
            row.offset == 0 ? place.position + int(added.size()) : std::numeric_limits<int>::max();
        added.push_back({m_roster.newId<core::Card>(), lifter()->id, last, position, row.variation,
            row.setLine, row.note});
        pasted.cards.push_back(added.back().id);
    }
    if (added.empty())
        return pasted;
    const QString name = added.size() == 1 ? named(tr("Paste %1"), added.front().variation)
                                           : tr("Paste %1 cards").arg(added.size());
    if (!m_roster.perform(name, core::addCards(m_roster.cards(lifter()->id, first, last), added)))
        pasted.cards.clear();
    return pasted;
}

QString WeekPlan::landing(core::CardId card, BoardPlace place) const
{
    const core::Card *moved = find(card);
    return moved ? landing(*moved, place) : QString();
}

QString WeekPlan::landing(core::Card card, BoardPlace place) const
{
    if (!lifter())
        return {};
    const QDate day = monday().addDays(place.day);
    card.day = day;
    card.position = place.position;
    const std::vector<core::Card> cards =
        core::cardsOn(core::withCard(core::withoutCard(m_cards, card.id), card), day);
    const std::vector<core::ResolvedCard> resolved = core::resolveCards(cards, sources());
    const auto landed = std::find_if(resolved.begin(), resolved.end(),
        [&card](const core::ResolvedCard &c) { return c.card.id == card.id; });
    QStringList lines;
    for (const LineView &line : cardView(*landed, sources()).lines)
        lines << (line.load.isEmpty() ? line.sets : tr("%1: %2").arg(line.sets, line.load));
    return lines.join(u'\n');
}

std::vector<core::Card> WeekPlan::chosen(const std::vector<core::CardId> &ids) const
{
    std::vector<core::Card> cards;
    for (const core::CardId id : ids)
        if (const core::Card *card = find(id))
            cards.push_back(*card);
    return cards;
}

void WeekPlan::setSetLine(core::CardId card, const QString &setLine)
{
    if (const core::Card *edited = find(card))
        m_roster.perform(named(tr("Change sets of %1"), edited->variation),
            core::changeSetLine(m_cards, card, setLine));
}

void WeekPlan::setNote(core::CardId card, const QString &note)
{
    if (const core::Card *edited = find(card))
        m_roster.perform(named(tr("Change note of %1"), edited->variation),
            core::changeNote(m_cards, card, note));
}

core::CardId WeekPlan::addCard(const QString &name, core::Card card, BoardPlace place)
{
    card.id = m_roster.newId<core::Card>();
    card.lifter = lifter()->id;
    card.day = monday().addDays(place.day);
    card.position = place.position;
    const core::CardId added = card.id;
    return m_roster.perform(name, core::addCard(m_cards, card)) ? added : core::CardId{};
}

QString WeekPlan::named(const QString &pattern, core::VariationId variation) const
{
    const core::Variation *known = m_roster.variation(variation);
    return pattern.arg(known ? known->name : tr("card"));
}

const core::Card *WeekPlan::find(core::CardId id) const
{
    const auto it = std::find_if(
        m_cards.begin(), m_cards.end(), [id](const core::Card &c) { return c.id == id; });
    return it == m_cards.end() ? nullptr : &*it;
}

void WeekPlan::follow(const core::RosterChange &change)
{
    const core::LifterId shown = m_selection.lifter();
    const QDate sunday = monday().addDays(core::kWeekDays - 1);
    if (change.has<core::Lifter>(shown)) {
        reload();
        return;
    }
    const bool hasCards = change.has<core::Card>(shown) && change.isWithin(monday(), sunday);
    if (hasCards)
        core::carryOut(
            m_cards, change.rows<core::Card>(), [this, shown, sunday](const core::Card &card) {
                return card.lifter == shown && card.day >= monday() && card.day <= sunday;
            });
    if (hasCards || change.has<core::Variation>())
        rebuild();
}

void WeekPlan::reload()
{
    m_cards.clear();
    if (lifter())
        m_cards = m_roster.cards(lifter()->id, monday(), monday().addDays(core::kWeekDays - 1));
    rebuild();
}

core::PlanSources WeekPlan::sources() const
{
    return {*lifter(), m_roster.variations(),
        [this, id = lifter()->id](core::Lift lift) { return m_estimates.of(id, lift); }};
}

void WeekPlan::rebuild()
{
    m_resolved.clear();
    m_view = {};
    m_places = {};
    if (lifter()) {
        m_resolved = core::resolveCards(m_cards, sources());
        m_view = weekView(m_resolved, sources(), monday());
    }
    for (size_t day = 0; day < core::kWeekDays; ++day)
        for (const CardView &card : m_view.days[day].cards)
            m_places.days[day].push_back(card.id);
    Q_EMIT changed();
}

} // namespace ui
