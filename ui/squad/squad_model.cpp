#include "ui/squad/squad_model.h"

#include "core/domain/language.h"
#include "core/domain/search_text.h"

#include <QLocale>
#include <cmath>

namespace ui {

namespace {

constexpr int kMeetSoonDays = 56;
/// From these points on a lifter needs the coach (common practice, no source).
constexpr double kNeedsAttention = 10.0;

using core::SquadRow;
using Shown = SquadModel::Shown;

/// A dash where there is nothing.
QString none()
{
    return QString(QChar(0x2013));
}

template <class Value> QVariant orNothing(const std::optional<Value> &value)
{
    return value ? QVariant(*value) : QVariant();
}

/// What the column says; a dash where the log is still being read.
QString doneText(const std::optional<core::Adherence> &adherence)
{
    if (!adherence)
        return none();
    const std::optional<double> share = adherence->share();
    return share ? SquadModel::tr("%1 %").arg(QLocale().toString(int(std::lround(100.0 * *share))))
                 : SquadModel::tr("no plan");
}

QString doneTip(const std::optional<core::Adherence> &adherence)
{
    if (!adherence)
        return SquadModel::tr("What was done is being worked out.");
    QStringList parts{adherence->sets > 0
            ? SquadModel::tr("Sets done in the last four weeks that are over: %1 of %2 planned.")
                  .arg(adherence->done)
                  .arg(adherence->sets)
            : SquadModel::tr("Nothing was planned in the last four weeks that are over.")};
    if (adherence->extra > 0)
        parts << SquadModel::tr("Beside the plan: %1.").arg(adherence->extra);
    return parts.join(u' ');
}

QString plannedTip(const SquadRow &row)
{
    return row.plannedWeeks == 0 ? SquadModel::tr("Nothing is planned.")
        : row.plannedFrom
        ? SquadModel::tr("Planned weeks: %1, from %2 on.")
              .arg(row.plannedWeeks)
              .arg(QLocale().toString(*row.plannedFrom, QLocale::ShortFormat))
        : SquadModel::tr("Planned weeks: %1, from this one on.").arg(row.plannedWeeks);
}

struct ColumnLook
{
    const char *title;
    const char *tip;
    bool isNumeric;
    QString (*words)(const Shown &row);
    QVariant (*sortValue)(const Shown &row);
};

/// In the order of SquadModel::Column.
const ColumnLook kLooks[SquadModel::columns] = {
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Lifter"), nullptr, false,
        [](const Shown &row) { return row.name; },
        [](const Shown &row) { return QVariant(row.name); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Why"),
        QT_TRANSLATE_NOOP("ui::SquadModel",
            "Ordered by points: pain 100; low readiness 25; each missed day 10, up to 40; "
            "nothing planned 20; ten days without a session 15; a falling max up to 40; a "
            "meet within four weeks 10 to 24; a set far from its forecast up to 15; sets "
            "that disagree 6. They order the table and mean nothing else."),
        false,
        [](const Shown &row) {
            return row.terms.empty() ? SquadModel::tr("Nothing stands out.")
                                     : row.terms.front().words;
        },
        [](const Shown &row) { return QVariant(row.attention); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Bench, 12 weeks"),
        QT_TRANSLATE_NOOP("ui::SquadModel",
            "Estimated max, twelve weeks as a line, the change of the last four in words."),
        false, [](const Shown &row) { return row.trendWords; },
        [](const Shown &row) { return orNothing(row.fourWeekChange); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Est. max"), nullptr, true,
        [](const Shown &row) {
            return row.max ? core::formatLoad(row.max->kg, row.unit, 1) : none();
        },
        [](const Shown &row) { return row.max ? QVariant(row.max->kg) : QVariant(); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Trained"), nullptr, false,
        [](const Shown &row) {
            return row.lastSession ? core::dateWords(*row.lastSession, QStringLiteral("d MMM"))
                                   : none();
        },
        [](const Shown &row) { return orNothing(row.lastSession); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Planned"),
        QT_TRANSLATE_NOOP("ui::SquadModel",
            "Weeks planned without a gap, from this one on, or from the first that is planned."),
        true, [](const Shown &row) { return SquadModel::tr("%n wk", nullptr, row.plannedWeeks); },
        [](const Shown &row) { return QVariant(row.plannedWeeks); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Missed"), nullptr, true,
        [](const Shown &row) { return QLocale().toString(row.missed); },
        [](const Shown &row) { return QVariant(row.missed); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Done"),
        QT_TRANSLATE_NOOP("ui::SquadModel",
            "Sets done of those planned in the last four weeks that are over, percent; "
            "assistance work aside."),
        true, [](const Shown &row) { return doneText(row.adherence); },
        [](const Shown &row) {
            return row.adherence ? orNothing(row.adherence->share()) : QVariant();
        }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Pain"), nullptr, false,
        [](const Shown &row) {
            return !row.pain     ? none()
                : row.pain->area ? core::words(*row.pain->area)
                                 : row.pain->words;
        },
        [](const Shown &row) { return QVariant(row.pain ? 1 : 0); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Readiness"), nullptr, true,
        [](const Shown &row) {
            return row.readiness ? QLocale().toString(*row.readiness, 'f', 1) : none();
        },
        [](const Shown &row) { return orNothing(row.readiness); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Meet in"), nullptr, true,
        [](const Shown &row) {
            return row.daysToMeet ? SquadModel::tr("%n d", nullptr, *row.daysToMeet) : none();
        },
        [](const Shown &row) { return orNothing(row.daysToMeet); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Furthest from forecast"), nullptr, false,
        [](const Shown &row) {
            return !row.surprise       ? none()
                : row.surprise->sd > 0 ? SquadModel::tr("better: %1").arg(row.surprise->done)
                                       : SquadModel::tr("worse: %1").arg(row.surprise->done);
        },
        [](const Shown &row) {
            return row.surprise ? QVariant(std::abs(row.surprise->sd)) : QVariant();
        }},
};

} // namespace

void SquadModel::setRows(std::vector<core::SquadRow> rows, std::span<const core::Lifter> lifters)
{
    std::map<core::LifterId, core::Unit> units;
    for (const core::Lifter &lifter : lifters)
        units.emplace(lifter.id, lifter.unit);
    beginResetModel();
    m_rows.clear();
    for (core::SquadRow &row : rows) {
        Shown &shown = m_rows.emplace_back(Shown{std::move(row), core::Unit::kilogram, {}});
        if (const auto unit = units.find(shown.lifter); unit != units.end())
            shown.unit = unit->second;
        shown.adherence = adherenceOf(shown.lifter);
    }
    endResetModel();
}

void SquadModel::setAdherence(std::map<core::LifterId, core::Adherence> adherence)
{
    m_adherence = std::move(adherence);
    for (Shown &shown : m_rows)
        shown.adherence = adherenceOf(shown.lifter);
    if (!m_rows.empty())
        Q_EMIT dataChanged(index(0, doneColumn), index(int(m_rows.size()) - 1, doneColumn));
}

std::optional<core::Adherence> SquadModel::adherenceOf(core::LifterId lifter) const
{
    const auto found = m_adherence.find(lifter);
    return found == m_adherence.end() ? std::nullopt : std::optional(found->second);
}

int SquadModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

int SquadModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : columns;
}

QVariant SquadModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Shown &row = m_rows[size_t(index.row())];
    const ColumnLook &look = kLooks[size_t(index.column())];
    switch (role) {
    case Qt::DisplayRole:
        return look.words(row);
    case Qt::ToolTipRole:
        switch (index.column()) {
        case plannedColumn:
            return plannedTip(row);
        case doneColumn:
            return doneTip(row.adherence);
        case surpriseColumn:
            return row.surprise ? row.surprise->words : row.why();
        default:
            return row.why();
        }
    case Qt::TextAlignmentRole:
        return headerData(index.column(), Qt::Horizontal, role);
    case SortRole:
        return look.sortValue(row);
    case TrendRole:
        return QVariant::fromValue(QList<double>(row.trendKg.begin(), row.trendKg.end()));
    default:
        return {};
    }
}

QVariant SquadModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columns)
        return {};
    const ColumnLook &look = kLooks[size_t(section)];
    switch (role) {
    case Qt::DisplayRole:
        return tr(look.title);
    case Qt::ToolTipRole:
        return look.tip ? tr(look.tip) : tr(look.title);
    case Qt::TextAlignmentRole:
        return QVariant((look.isNumeric ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

SquadFilter::SquadFilter(QObject *parent)
    : QSortFilterProxyModel(parent)
{
    setSortRole(SquadModel::SortRole);
    setSortLocaleAware(true);
}

void SquadFilter::setQuery(const QString &query)
{
    m_query = core::folded(query);
    invalidateFilter();
}

void SquadFilter::setShow(Show show)
{
    m_show = show;
    invalidateFilter();
}

bool SquadFilter::filterAcceptsRow(int row, const QModelIndex &) const
{
    const auto *squad = qobject_cast<const SquadModel *>(sourceModel());
    const core::SquadRow &lifter = squad->row(row);
    if (!core::matchesWords(core::folded(lifter.name), m_query))
        return false;
    switch (m_show) {
    case Show::attention:
        return lifter.attention >= kNeedsAttention;
    case Show::pain:
        return lifter.pain.has_value();
    case Show::unplanned:
        return !lifter.isThisWeekPlanned();
    case Show::meetSoon:
        return lifter.daysToMeet && *lifter.daysToMeet <= kMeetSoonDays;
    case Show::all:
        break;
    }
    return true;
}

bool SquadFilter::lessThan(const QModelIndex &left, const QModelIndex &right) const
{
    const QVariant a = left.data(SquadModel::SortRole), b = right.data(SquadModel::SortRole);
    // Whoever has no value comes last whichever way the column is sorted.
    if (!a.isValid() || !b.isValid())
        return sortOrder() == Qt::AscendingOrder ? a.isValid() && !b.isValid()
                                                 : !a.isValid() && b.isValid();
    return QSortFilterProxyModel::lessThan(left, right);
}

} // namespace ui
