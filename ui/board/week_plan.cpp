#include "ui/board/week_plan.h"

#include "core/plan/plan_edits.h"
#include "ui/session/estimates.h"
#include "ui/session/roster_session.h"
#include "ui/session/selection.h"

#include <algorithm>

namespace ui {

namespace {
/// How far back a suggested set line is looked for.
constexpr int kSuggestionDays = 12 * kDays;
} // namespace

WeekPlan::WeekPlan(
    RosterSession &session, Estimates &estimates, Selection &selection, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_estimates(estimates)
    , m_selection(selection)
{
    connect(&selection, &Selection::lifterChanged, this, &WeekPlan::reload);
    connect(&selection, &Selection::weekChanged, this, &WeekPlan::reload);
    connect(
        &session, &RosterSession::cardsChanged, this, [this](const QSet<core::LifterId> &lifters) {
            if (lifters.contains(m_selection.lifter()))
                reload();
        });
    connect(&session, &RosterSession::liftersChanged, this, &WeekPlan::reload);
    connect(&session, &RosterSession::variationsChanged, this, &WeekPlan::rebuild);
    connect(&estimates, &Estimates::changed, this, &WeekPlan::rebuild);
    reload();
}

const core::Lifter *WeekPlan::lifter() const
{
    return m_session.lifter(m_selection.lifter());
}

QDate WeekPlan::monday() const
{
    return m_selection.monday();
}

CardCounts WeekPlan::counts() const
{
    CardCounts counts{};
    for (size_t day = 0; day < kDays; ++day)
        counts[day] = int(m_view.days[day].cards.size());
    return counts;
}

core::CardId WeekPlan::cardAt(BoardPlace place) const
{
    const std::vector<CardView> &cards = m_view.days[size_t(place.day)].cards;
    return place.position < int(cards.size()) ? cards[size_t(place.position)].id : core::CardId{};
}

std::optional<BoardPlace> WeekPlan::placeOf(core::CardId card) const
{
    for (int day = 0; day < kDays; ++day)
        for (int position = 0; position < counts()[size_t(day)]; ++position)
            if (cardAt({day, position}) == card)
                return BoardPlace{day, position};
    return std::nullopt;
}

core::CardId WeekPlan::add(core::VariationId variation, BoardPlace place)
{
    const core::Variation *chosen = m_session.variation(variation);
    if (!lifter() || !chosen)
        return {};
    const QDate day = monday().addDays(place.day);
    core::Card card;
    card.variation = variation;
    card.setLine = core::suggestedSetLine(
        *chosen, m_session.cards(lifter()->id, day.addDays(-kSuggestionDays), day), day);
    return addCard(named(tr("Add %1"), variation), card, place);
}

core::CardId WeekPlan::duplicate(core::CardId card, BoardPlace place)
{
    const core::Card *original = find(card);
    if (!original)
        return {};
    return addCard(named(tr("Copy %1"), original->variation), *original, place);
}

void WeekPlan::move(core::CardId card, BoardPlace place)
{
    if (const core::Card *moved = find(card))
        m_session.perform(named(tr("Move %1"), moved->variation),
            core::moveCard(m_cards, card, monday().addDays(place.day), place.position));
}

void WeekPlan::remove(core::CardId card)
{
    if (const core::Card *removed = find(card))
        m_session.perform(
            named(tr("Remove %1"), removed->variation), core::removeCard(m_cards, card));
}

void WeekPlan::setSetLine(core::CardId card, const QString &setLine)
{
    if (const core::Card *edited = find(card))
        m_session.perform(named(tr("Change sets of %1"), edited->variation),
            core::changeSetLine(m_cards, card, setLine));
}

void WeekPlan::setNote(core::CardId card, const QString &note)
{
    if (const core::Card *edited = find(card))
        m_session.perform(named(tr("Change note of %1"), edited->variation),
            core::changeNote(m_cards, card, note));
}

core::CardId WeekPlan::addCard(const QString &name, core::Card card, BoardPlace place)
{
    card.id = m_session.newId<core::CardTag>();
    card.lifter = lifter()->id;
    card.day = monday().addDays(place.day);
    card.position = place.position;
    const core::CardId added = card.id;
    return m_session.perform(name, core::addCard(m_cards, card)) ? added : core::CardId{};
}

QString WeekPlan::named(const QString &pattern, core::VariationId variation) const
{
    const core::Variation *known = m_session.variation(variation);
    return pattern.arg(known ? known->name : tr("card"));
}

const core::Card *WeekPlan::find(core::CardId id) const
{
    const auto it = std::find_if(
        m_cards.begin(), m_cards.end(), [id](const core::Card &c) { return c.id == id; });
    return it == m_cards.end() ? nullptr : &*it;
}

void WeekPlan::reload()
{
    m_cards.clear();
    if (lifter())
        m_cards = m_session.cards(lifter()->id, monday(), monday().addDays(kDays - 1));
    rebuild();
}

void WeekPlan::rebuild()
{
    m_view = {};
    if (const core::Lifter *shown = lifter()) {
        const core::PlanSources sources{*shown, m_session.variations(),
            [this, shown](core::Lift lift) { return m_estimates.of(shown->id, lift); }};
        m_view = weekView(m_cards, sources, monday());
    }
    Q_EMIT changed();
}

} // namespace ui
