#include "ui/board/week_plan.h"

#include "core/loads/far_above_max.h"
#include "core/loads/given_loads.h"
#include "core/log/eased_lines.h"
#include "core/notation/card_text.h"
#include "core/plan/paste_cards.h"
#include "core/plan/plan_edits.h"
#include "ui/roster/estimates.h"
#include "ui/roster/giving.h"
#include "ui/roster/insights.h"
#include "ui/roster/lifter_history.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <algorithm>
#include <limits>

namespace ui {

WeekPlan::WeekPlan(OpenRoster &roster, Estimates &estimates, const Insights &insights,
    const LifterHistory &history, Selection &selection, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_insights(insights)
    , m_history(history)
    , m_selection(selection)
{
    connect(&selection, &Selection::lifterChanged, this, &WeekPlan::reload);
    connect(&selection, &Selection::weekChanged, this, &WeekPlan::reload);
    connect(&roster, &OpenRoster::changed, this, &WeekPlan::follow);
    connect(&roster, &OpenRoster::settling, this, &WeekPlan::settling);
    connect(&roster.today(), &Today::changed, this, &WeekPlan::resolveAgain);
    connect(&insights, &Insights::changed, this, &WeekPlan::rebuild);
    connect(&estimates, &Estimates::changed, this, [this](const QSet<core::LifterId> &lifters) {
        if (lifters.contains(m_selection.lifter()))
            resolveAgain();
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
        const QDate on = monday().addDays(day);
        card.setLine = core::suggestedSetLine(
            *chosen, earlier, on, core::limitsOn(*lifter(), on, m_history.checkIns()));
    }
    return cards;
}

Landing WeekPlan::landing(const core::Card &newCard, BoardPlace place)
{
    Landing landing = adding(tr("Add %1"), newCard, place);
    landing.words = wordsOf(landing, place);
    return landing;
}

Landing WeekPlan::landing(core::CardId card, BoardPlace place)
{
    Landing landing = moving(card, place);
    landing.words = wordsOf(landing, place);
    return landing;
}

core::CardId WeekPlan::land(const Landing &landing)
{
    return m_roster.perform(landing.step, landing.edit) ? landing.card : core::CardId{};
}

core::CardId WeekPlan::add(core::VariationId variation, BoardPlace place, const QString &setLine)
{
    core::Card card = newCards(variation)[size_t(place.day)];
    if (!setLine.isEmpty())
        card.setLine = setLine;
    return land(adding(tr("Add %1"), card, place));
}

core::CardId WeekPlan::duplicate(core::CardId card, BoardPlace place)
{
    const core::Card *original = find(card);
    return original ? land(adding(tr("Copy %1"), *original, place)) : core::CardId{};
}

void WeekPlan::move(core::CardId card, BoardPlace place)
{
    const Landing moved = moving(card, place);
    m_roster.perform(moved.step, moved.edit, QStringLiteral("move card %1").arg(card.value));
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

WeekPlan::Pasted WeekPlan::paste(const QString &text, BoardPlace place, bool isMeant)
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
    if (!isMeant) {
        std::vector<core::Card> all = m_roster.cards(lifter()->id, first, last);
        all.insert(all.end(), added.begin(), added.end());
        pasted.question = whyFarAbove(std::move(all), pasted.cards);
        if (!pasted.question.isEmpty()) {
            pasted.cards.clear();
            return pasted;
        }
    }
    const QString name = added.size() == 1 ? named(tr("Paste %1"), added.front().variation)
                                           : tr("Paste %1 cards").arg(added.size());
    if (!m_roster.perform(name, core::addCards(m_roster.cards(lifter()->id, first, last), added)))
        pasted.cards.clear();
    return pasted;
}

QString WeekPlan::whyFarAbove(core::CardId card, const QString &setLine) const
{
    const core::Card *edited = find(card);
    if (!edited)
        return {};
    std::vector<core::Card> day = core::cardsOn(m_cards, edited->day);
    std::ranges::find(day, card, &core::Card::id)->setLine = setLine;
    return whyFarAbove(std::move(day), {card});
}

QString WeekPlan::whyFarAbove(
    std::vector<core::Card> cards, const std::vector<core::CardId> &meant) const
{
    for (const core::ResolvedCard &card : core::resolveCards(std::move(cards), sources()))
        if (std::ranges::find(meant, card.card.id) != meant.end())
            if (QString why = core::whyFarAboveMax(card, sources()); !why.isEmpty())
                return why;
    return {};
}

CopiedDay WeekPlan::copied() const
{
    return copiedDay(m_roster.variations(), m_roster.lifters());
}

WeekPlan::Pasted WeekPlan::pasteDay(const CopiedDay &copied, int day)
{
    if (!lifter() || !copied.refused.isEmpty())
        return {{}, copied.refused, {}};
    const QDate first = monday().addDays(day);
    const QDate last =
        first.addDays(std::ranges::max(copied.rows, {}, &core::CardRow::offset).offset);
    const core::PasteTarget target{
        *lifter(), first, m_roster.cards(lifter()->id, first, last), m_history.checkIns()};
    const core::PastedCards made =
        core::pasteCards(copied.rows, copied.from, {&target, 1}, core::OnOccupiedDays::keep,
            m_roster.variations(), [this] { return m_roster.newId<core::Card>(); });
    Pasted pasted{{}, made.remarks.join(u' '), {}};
    if (!made.edit.isEmpty() && m_roster.perform(tr("Paste a day"), made.edit))
        for (const core::Card &card : made.cards)
            pasted.cards.push_back(card.id);
    return pasted;
}

std::vector<core::Card> WeekPlan::chosen(const std::vector<core::CardId> &ids) const
{
    std::vector<core::Card> cards;
    for (const core::CardId id : ids)
        if (const core::Card *card = find(id))
            cards.push_back(*card);
    return cards;
}

bool WeekPlan::setSetLine(core::CardId card, const QString &setLine)
{
    const core::Card *edited = find(card);
    return !edited
        || m_roster.perform(named(tr("Change sets of %1"), edited->variation),
            core::changeSetLine(m_cards, card, setLine));
}

bool WeekPlan::setNote(core::CardId card, const QString &note)
{
    const core::Card *edited = find(card);
    return !edited
        || m_roster.perform(named(tr("Change note of %1"), edited->variation),
            core::changeNote(m_cards, card, note));
}

Landing WeekPlan::adding(const QString &pattern, core::Card card, BoardPlace place)
{
    if (!lifter() || !m_roster.variation(card.variation))
        return {};
    card.id = m_roster.newId<core::Card>();
    card.lifter = lifter()->id;
    card.day = monday().addDays(place.day);
    card.position = place.position;
    return {card.id, named(pattern, card.variation), core::addCard(m_cards, card), {}};
}

Landing WeekPlan::moving(core::CardId card, BoardPlace place) const
{
    const core::Card *moved = find(card);
    if (!moved)
        return {};
    return {card, named(tr("Move %1"), moved->variation),
        core::moveCard(m_cards, card, monday().addDays(place.day), place.position), {}};
}

QString WeekPlan::wordsOf(const Landing &landing, BoardPlace place)
{
    if (!landing.card.isValid())
        return {};
    std::vector<core::Card> cards = m_cards;
    core::carryOut(cards, landing.edit.cards, [](const core::Card &) { return true; });
    const auto &day = resolvedOn(monday().addDays(place.day), cards);
    const auto landed = std::find_if(day.begin(), day.end(),
        [&landing](const core::ResolvedCard &c) { return c.card.id == landing.card; });
    QStringList lines;
    const CardView view = cardView(*landed, sources());
    for (const LineView &line : view.lines)
        lines << (line.load.isEmpty() ? line.sets : tr("%1: %2").arg(line.sets, line.load));
    if (view.isWithheld)
        lines << view.caution;
    return lines.join(u'\n');
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
    const bool isWithin = change.isWithin(monday(), sunday);
    const bool hasCards = isWithin && change.has<core::Card>(shown);
    if (hasCards)
        core::carryOut(
            m_cards, change.rows<core::Card>(), [this, shown, sunday](const core::Card &card) {
                return card.lifter == shown && card.day >= monday() && card.day <= sunday;
            });
    // The history is told first, being there before whoever is given it.
    if (change.has<core::Variation>() || change.has<core::CheckIn>(shown)
        || (isWithin && change.has<core::GivenDay>(shown)))
        resolveAgain();
    else if (hasCards || (isWithin && change.has<core::LoggedSession>(shown)))
        rebuild();
}

void WeekPlan::reload()
{
    m_cards.clear();
    if (lifter())
        m_cards = m_roster.cards(lifter()->id, monday(), monday().addDays(core::kWeekDays - 1));
    resolveAgain();
}

core::PlanSources WeekPlan::sources() const
{
    return {*lifter(), m_roster.variations(),
        [this, id = lifter()->id](core::Lift lift) { return m_estimates.of(id, lift); },
        m_history.checkIns(), m_history.given(), m_roster.today().date()};
}

void WeekPlan::give(core::GivenBy by)
{
    if (!lifter())
        return;
    const core::PlanSources from = sources();
    std::vector<core::ResolvedCard> ahead;
    std::copy_if(m_resolved.begin(), m_resolved.end(), std::back_inserter(ahead),
        [&from](const core::ResolvedCard &card) { return card.card.day >= from.today; });
    keep(m_roster, core::give(ahead, from, from.given, giving(m_roster, by)));
}

QString WeekPlan::giveDay(int day)
{
    if (!lifter())
        return {};
    core::PlanSources from = sources();
    const QDate date = monday().addDays(day);
    if (date < from.today)
        return tr("This day is over: what was given for it stays.");
    const auto before = std::exchange(from.given, {});
    const auto cards = core::resolveCards(core::cardsOn(m_cards, date), from);
    std::vector<core::GivenDay> given =
        core::give(cards, from, before, giving(m_roster, core::GivenBy::word));
    if (given.empty())
        return cards.empty() ? tr("Nothing is planned for this day.")
                             : tr("The loads of this day are given already just as they are.");
    keep(m_roster, std::move(given));
    return {};
}

const std::vector<core::ResolvedCard> &WeekPlan::resolvedOn(
    QDate day, const std::vector<core::Card> &cards)
{
    std::vector<core::ResolvedCard> &known = m_days[size_t(monday().daysTo(day))];
    std::vector<core::Card> asked = core::cardsOn(cards, day);
    if (!std::ranges::equal(known, asked, {}, &core::ResolvedCard::card))
        known = core::resolveCards(std::move(asked), sources());
    return known;
}

void WeekPlan::resolveAgain()
{
    m_days = {};
    rebuild();
}

void WeekPlan::rebuild()
{
    m_resolved.clear();
    m_view = {};
    m_places = {};
    if (lifter()) {
        for (int day = 0; day < core::kWeekDays; ++day)
            std::ranges::copy(
                resolvedOn(monday().addDays(day), m_cards), std::back_inserter(m_resolved));
        core::easeToday(m_resolved, sources(), m_insights.readiness(lifter()->id));
        const core::DoneInput done{
            m_resolved, m_history.sessions(), m_history.checkIns(), catalogue(), today()};
        m_view = weekView(m_resolved, sources(), monday(),
            core::outcomes(done, monday(), monday().addDays(core::kWeekDays - 1)));
    }
    for (size_t day = 0; day < core::kWeekDays; ++day)
        for (const CardView &card : m_view.days[day].cards)
            m_places.days[day].push_back(card.id);
    Q_EMIT changed();
}

} // namespace ui
