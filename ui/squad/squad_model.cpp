#include "ui/squad/squad_model.h"

#include "core/domain/language.h"
#include "core/domain/search_text.h"

#include <QLocale>

namespace ui {

namespace {

constexpr int kMeetSoonDays = 56;
/// From these points on a lifter needs the coach (common practice, no source).
constexpr double kNeedsAttention = 10.0;

using core::SquadRow;
using core::Unit;

/// A dash where there is nothing.
QString none()
{
    return QString(QChar(0x2013));
}

template <class Value> QVariant orNothing(const std::optional<Value> &value)
{
    return value ? QVariant(*value) : QVariant();
}

struct ColumnLook
{
    const char *title;
    const char *tip;
    bool isNumeric;
    QString (*words)(const SquadRow &row, Unit unit);
    QVariant (*sortValue)(const SquadRow &row);
};

/// In the order of SquadModel::Column.
const ColumnLook kLooks[SquadModel::columns] = {
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Lifter"), nullptr, false,
        [](const SquadRow &row, Unit) { return row.name; },
        [](const SquadRow &row) { return QVariant(row.name); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Why"),
        QT_TRANSLATE_NOOP("ui::SquadModel",
            "Ordered by points: pain 100; low readiness 25; each missed day 10, up to 40; "
            "nothing planned 20; ten days without a session 15; a falling max up to 40; a "
            "meet within four weeks 10 to 24; a set far from its forecast up to 15; sets "
            "that disagree 6. They order the table and mean nothing else."),
        false,
        [](const SquadRow &row, Unit) {
            return row.terms.empty() ? SquadModel::tr("Nothing stands out.")
                                     : row.terms.front().words;
        },
        [](const SquadRow &row) { return QVariant(row.attention); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Bench, 12 weeks"),
        QT_TRANSLATE_NOOP("ui::SquadModel",
            "Estimated max, twelve weeks as a line, the change of the last four in words."),
        false, [](const SquadRow &row, Unit) { return row.trendWords; },
        [](const SquadRow &row) { return orNothing(row.fourWeekChange); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Est. max"), nullptr, true,
        [](const SquadRow &row, Unit unit) {
            return row.max ? core::formatLoad(row.max->kg, unit, 1) : none();
        },
        [](const SquadRow &row) { return row.max ? QVariant(row.max->kg) : QVariant(); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Trained"), nullptr, false,
        [](const SquadRow &row, Unit) {
            return row.lastSession ? core::dateWords(*row.lastSession, QStringLiteral("d MMM"))
                                   : none();
        },
        [](const SquadRow &row) { return orNothing(row.lastSession); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Planned"), nullptr, true,
        [](const SquadRow &row, Unit) {
            return SquadModel::tr("%n wk", nullptr, row.plannedWeeks);
        },
        [](const SquadRow &row) { return QVariant(row.plannedWeeks); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Missed"), nullptr, true,
        [](const SquadRow &row, Unit) { return QLocale().toString(row.missed); },
        [](const SquadRow &row) { return QVariant(row.missed); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Pain"), nullptr, false,
        [](const SquadRow &row, Unit) {
            return !row.pain     ? none()
                : row.pain->area ? core::words(*row.pain->area)
                                 : row.pain->words;
        },
        [](const SquadRow &row) { return QVariant(row.pain ? 1 : 0); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Readiness"), nullptr, true,
        [](const SquadRow &row, Unit) {
            return row.readiness ? QLocale().toString(*row.readiness, 'f', 1) : none();
        },
        [](const SquadRow &row) { return orNothing(row.readiness); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Meet in"), nullptr, true,
        [](const SquadRow &row, Unit) {
            return row.daysToMeet ? SquadModel::tr("%n d", nullptr, *row.daysToMeet) : none();
        },
        [](const SquadRow &row) { return orNothing(row.daysToMeet); }},
    {QT_TRANSLATE_NOOP("ui::SquadModel", "Furthest from forecast"), nullptr, false,
        [](const SquadRow &row, Unit) {
            return !row.surprise       ? none()
                : row.surprise->sd > 0 ? SquadModel::tr("better: %1").arg(row.surprise->done)
                                       : SquadModel::tr("worse: %1").arg(row.surprise->done);
        },
        [](const SquadRow &row) {
            return row.surprise ? QVariant(std::abs(row.surprise->sd)) : QVariant();
        }},
};

} // namespace

void SquadModel::setRows(std::vector<core::SquadRow> rows, std::span<const core::Lifter> lifters)
{
    beginResetModel();
    m_rows = std::move(rows);
    m_units.clear();
    for (const core::Lifter &lifter : lifters)
        m_units.emplace(lifter.id, lifter.unit);
    endResetModel();
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
    const core::SquadRow &row = m_rows[size_t(index.row())];
    const ColumnLook &look = kLooks[size_t(index.column())];
    switch (role) {
    case Qt::DisplayRole: {
        const auto unit = m_units.find(row.lifter);
        return look.words(row, unit == m_units.end() ? core::Unit::kilogram : unit->second);
    }
    case Qt::ToolTipRole:
        return index.column() == surpriseColumn && row.surprise ? row.surprise->words : row.why();
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
        return look.tip ? tr(look.tip) : QVariant();
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
        return lifter.plannedWeeks == 0;
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
