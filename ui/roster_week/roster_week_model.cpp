#include "ui/roster_week/roster_week_model.h"

#include "core/domain/language.h"
#include "core/domain/variation.h"
#include "core/domain/week.h"
#include "core/loads/far_above_max.h"
#include "core/loads/given_words.h"
#include "core/loads/limited_lines.h"
#include "core/log/eased_lines.h"
#include "core/notation/card_text.h"
#include "core/plan/paste_cards.h"
#include "core/plan/plan_edits.h"
#include "ui/planning/copied_day.h"
#include "ui/roster/estimates.h"
#include "ui/roster/insights.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <algorithm>

namespace ui {

namespace {

/// "Feet-up bench 3x6 @7.5: 117.5 kg"
QString cardWords(const core::ResolvedCard &card, const core::Variation *variation, core::Unit unit)
{
    QStringList lines;
    for (const core::ResolvedLine &line : card.lines)
        lines << (line.load ? RosterWeekModel::tr("%1: %2").arg(
                      core::setLineText(line.line), core::formatLoad(line.load->loadKg, unit))
                            : core::setLineText(line.line));
    if (card.parsed.error)
        lines << card.card.setLine.simplified();
    if (const QStringList held = core::withheldWords(card, unit); !held.isEmpty())
        lines << RosterWeekModel::tr("held back: %1").arg(held.join(u' '));
    lines << core::easedWords(card, unit);
    QString words = (variation ? variation->name : QStringLiteral("?")) + u' '
        + lines.join(QStringLiteral(" then "));
    if (const QString badge = core::givenBadge(card); !badge.isEmpty())
        words += QStringLiteral(" (%1)").arg(badge);
    return words;
}

} // namespace

RosterWeekModel::RosterWeekModel(OpenRoster &roster, Estimates &estimates, const Insights &insights,
    Selection &selection, QObject *parent)
    : QAbstractTableModel(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_insights(insights)
    , m_selection(selection)
{
    connect(&roster, &OpenRoster::changed, this, &RosterWeekModel::follow);
    connect(&estimates, &Estimates::changed, this, &RosterWeekModel::rewordRows);
    connect(&insights, &Insights::changed, this, &RosterWeekModel::rewordAll);
    connect(&roster.today(), &Today::changed, this, &RosterWeekModel::rewordAll);
    connect(&selection, &Selection::weekChanged, this, &RosterWeekModel::rebuild);
    reload();
}

void RosterWeekModel::follow(const core::RosterChange &change)
{
    const QDate monday = m_selection.monday();
    if (change.has<core::Lifter>())
        reload();
    else if (change.has<core::Variation>()
        || (change.has<core::Card, core::GivenDay>()
            && change.isWithin(monday, monday.addDays(core::kWeekDays - 1)))
        || change.has<core::CheckIn>()) // an old pain, or its answer, may bear on the week
        rebuild();
}

void RosterWeekModel::rewordRows(const QSet<core::LifterId> &lifters)
{
    for (size_t i = 0; i < m_rows.size(); ++i)
        if (lifters.contains(m_rows[i].lifter) && !m_rows[i].days.empty()) {
            m_rows[i].days.clear(); // worded anew when it is looked at
            Q_EMIT dataChanged(index(int(i), 0), index(int(i), core::kWeekDays - 1));
        }
}

void RosterWeekModel::rewordAll()
{
    QSet<core::LifterId> all;
    for (const Row &row : m_rows)
        all << row.lifter;
    rewordRows(all);
}

void RosterWeekModel::reload()
{
    beginResetModel();
    m_rows.clear();
    for (const core::Lifter &lifter : m_roster.lifters())
        if (!lifter.archived)
            m_rows.push_back({lifter.id, lifter.name, {}, {}, {}});
    endResetModel();
    rebuild();
}

void RosterWeekModel::rebuild()
{
    const QDate monday = m_selection.monday();
    for (Row &row : m_rows) {
        row.cards.clear();
        row.given.clear();
        row.days.clear();
    }
    m_checkIns = m_roster.checkInsFor(monday, monday.addDays(core::kWeekDays - 1));
    const auto rowOf = [this](core::LifterId lifter) {
        return std::find_if(m_rows.begin(), m_rows.end(),
            [lifter](const Row &row) { return row.lifter == lifter; });
    };
    for (core::Card &card : m_roster.cards(monday, monday.addDays(core::kWeekDays - 1)))
        if (const auto row = rowOf(card.lifter); row != m_rows.end())
            row->cards.push_back(std::move(card));
    for (core::GivenDay &day : m_roster.given(monday, monday.addDays(core::kWeekDays - 1)))
        if (const auto row = rowOf(day.lifter); row != m_rows.end())
            row->given.push_back(std::move(day));
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, core::kWeekDays - 1);
    if (!m_rows.empty())
        Q_EMIT dataChanged(index(0, 0), index(int(m_rows.size()) - 1, core::kWeekDays - 1));
}

void RosterWeekModel::wordRow(Row &row) const
{
    row.days.assign(core::kWeekDays, QString());
    const core::Lifter *lifter = m_roster.lifter(row.lifter);
    if (!lifter)
        return;
    const core::PlanSources sources = this->sources(*lifter, row);
    std::vector<core::ResolvedCard> cards = core::resolveCards(row.cards, sources);
    core::easeToday(cards, sources, m_insights.readiness(row.lifter));
    for (const core::ResolvedCard &card : cards) {
        QString &day = row.days[size_t(m_selection.monday().daysTo(card.card.day))];
        if (!day.isEmpty())
            day += u'\n';
        day +=
            cardWords(card, core::find(m_roster.variations(), card.card.variation), lifter->unit);
    }
}

core::PlanSources RosterWeekModel::sources(const core::Lifter &lifter, const Row &row) const
{
    return {lifter, m_roster.variations(),
        [this, id = row.lifter](core::Lift lift) { return m_estimates.of(id, lift); }, m_checkIns,
        row.given, m_roster.today().date()};
}

int RosterWeekModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

int RosterWeekModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : core::kWeekDays;
}

QDate RosterWeekModel::dayAt(int column) const
{
    return m_selection.monday().addDays(column);
}

QVariant RosterWeekModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole: {
        Row &row = m_rows[size_t(index.row())];
        if (row.days.empty())
            wordRow(row);
        return row.days[size_t(index.column())];
    }
    case Qt::EditRole:
        return textAt(index);
    case Qt::AccessibleTextRole:
        return tr("%1, %2: %3")
            .arg(m_rows[size_t(index.row())].name,
                headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                data(index, Qt::DisplayRole).toString());
    case Qt::TextAlignmentRole:
        return int(Qt::AlignTop | Qt::AlignLeft);
    default:
        return {};
    }
}

QVariant RosterWeekModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role != Qt::DisplayRole)
        return {};
    if (orientation == Qt::Vertical)
        return m_rows[size_t(section)].name;
    return core::dateWords(dayAt(section), tr("ddd d MMM"));
}

Qt::ItemFlags RosterWeekModel::flags(const QModelIndex &index) const
{
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return index.isValid() ? flags | Qt::ItemIsEditable : flags;
}

std::vector<core::Card> RosterWeekModel::cardsAt(const QModelIndex &index) const
{
    return core::cardsOn(m_rows[size_t(index.row())].cards, dayAt(index.column()));
}

QString RosterWeekModel::textAt(const QModelIndex &index) const
{
    return core::cardText(cardsAt(index), m_roster.variations()).trimmed();
}

QString RosterWeekModel::whyNot(const QString &text) const
{
    const core::ParsedCardText parsed = core::parseCardText(text, m_roster.variations());
    if (parsed.error)
        return tr("Line %1, column %2: %3")
            .arg(parsed.error->line)
            .arg(parsed.error->column)
            .arg(parsed.error->words);
    for (const core::CardRow &row : parsed.rows)
        if (row.offset != 0)
            return tr("A cell holds one day; paste several days on the week board.");
    return {};
}

std::vector<core::Card> RosterWeekModel::cardsOf(
    const QModelIndex &index, const QString &text, const std::function<core::CardId()> &newId) const
{
    const std::vector<core::Card> before = cardsAt(index);
    std::vector<core::Card> after;
    // Cards that stay keep their ids, so that notes on findings stay with them.
    for (const core::CardRow &row : core::parseCardText(text, m_roster.variations()).rows) {
        const size_t position = after.size();
        const core::CardId id = position < before.size() ? before[position].id : newId();
        after.push_back({id, lifterAt(index.row()), dayAt(index.column()), int(position),
            row.variation, row.setLine, row.note});
    }
    return after;
}

QString RosterWeekModel::whyFarAbove(const QModelIndex &index, const QString &text) const
{
    const core::Lifter *lifter = m_roster.lifter(lifterAt(index.row()));
    if (!lifter)
        return {};
    const std::vector<core::Card> before = cardsAt(index);
    const core::PlanSources from = sources(*lifter, m_rows[size_t(index.row())]);
    for (const core::ResolvedCard &card :
        core::resolveCards(cardsOf(index, text, [] { return core::CardId{}; }), from)) {
        const bool wasThere = std::ranges::any_of(before, [&card](const core::Card &other) {
            return other.variation == card.card.variation && other.setLine == card.card.setLine;
        });
        if (!wasThere) // else it was asked about then
            if (QString why = core::whyFarAboveMax(card, from); !why.isEmpty())
                return why;
    }
    return {};
}

RosterWeekModel::Pasted RosterWeekModel::pasted(
    const QModelIndex &index, const CopiedDay &day) const
{
    const QString there = textAt(index);
    const core::Lifter *lifter = m_roster.lifter(lifterAt(index.row()));
    if (!lifter)
        return {there, {}};
    const core::PasteTarget target{*lifter, dayAt(index.column()), {}, m_checkIns};
    const core::PastedCards made = core::pasteCards(day.rows, day.from, {&target, 1},
        core::OnOccupiedDays::keep, m_roster.variations(), [] { return core::CardId{}; });
    const QString below = core::cardText(made.cards, m_roster.variations()).trimmed();
    const bool isBetween = !there.isEmpty() && !below.isEmpty();
    return {isBetween ? there + u'\n' + below : there + below, made.remarks};
}

bool RosterWeekModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid() || role != Qt::EditRole)
        return false;
    const QString text = value.toString();
    if (const QString why = whyNot(text); !why.isEmpty()) {
        Q_EMIT said(why);
        return false;
    }
    const std::vector<core::Card> before = cardsAt(index);
    const std::vector<core::Card> after =
        cardsOf(index, text, [this] { return m_roster.newId<core::Card>(); });
    return m_roster.perform(
        tr("Change %1 of %2")
            .arg(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                m_rows[size_t(index.row())].name),
        core::difference(before, after));
}

} // namespace ui
