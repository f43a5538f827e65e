#include "ui/squad/squad_model.h"

#include "core/domain/search_text.h"

#include <QLocale>

namespace ui {

namespace {

constexpr int kMeetSoonDays = 56;
/// From these points on a lifter needs the coach (common practice, no source).
constexpr double kNeedsAttention = 10.0;

/// A dash where there is nothing.
QString none()
{
    return QString(QChar(0x2013));
}

QVariant sortValue(const core::SquadRow &row, int column)
{
    const auto number = [](const auto &value) {
        return value ? QVariant(double(*value)) : QVariant();
    };
    switch (column) {
    case SquadModel::lifterColumn:
        return row.name;
    case SquadModel::attentionColumn:
        return row.attention;
    case SquadModel::trendColumn:
        return number(row.fourWeekChange);
    case SquadModel::maxColumn:
        return row.max ? QVariant(row.max->kg) : QVariant();
    case SquadModel::lastColumn:
        return row.lastSession ? QVariant(*row.lastSession) : QVariant();
    case SquadModel::plannedColumn:
        return row.plannedWeeks;
    case SquadModel::missedColumn:
        return row.missed;
    case SquadModel::painColumn:
        return row.pain ? 1 : 0;
    case SquadModel::readinessColumn:
        return number(row.readiness);
    case SquadModel::meetColumn:
        return number(row.daysToMeet);
    case SquadModel::surpriseColumn:
        return row.surprise ? QVariant(std::abs(row.surprise->sd)) : QVariant();
    default:
        return {};
    }
}

bool isNumeric(int column)
{
    return column == SquadModel::maxColumn || column == SquadModel::plannedColumn
        || column == SquadModel::missedColumn || column == SquadModel::readinessColumn
        || column == SquadModel::meetColumn;
}

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

QString SquadModel::words(const core::SquadRow &row, int column) const
{
    const QLocale locale;
    switch (column) {
    case lifterColumn:
        return row.name;
    case attentionColumn:
        return row.terms.empty() ? tr("Nothing stands out.") : row.terms.front().words;
    case trendColumn:
        return row.trendWords;
    case maxColumn: {
        const auto unit = m_units.find(row.lifter);
        return row.max ? core::formatLoad(
                   row.max->kg, unit == m_units.end() ? core::Unit::kilogram : unit->second, 1)
                       : none();
    }
    case lastColumn:
        return row.lastSession ? locale.toString(*row.lastSession, QStringLiteral("d MMM"))
                               : none();
    case plannedColumn:
        return tr("%n wk", nullptr, row.plannedWeeks);
    case missedColumn:
        return locale.toString(row.missed);
    case painColumn:
        return !row.pain ? none() : row.pain->area ? core::words(*row.pain->area) : row.pain->words;
    case readinessColumn:
        return row.readiness ? locale.toString(*row.readiness, 'f', 1) : none();
    case meetColumn:
        return row.daysToMeet ? tr("%n d", nullptr, *row.daysToMeet) : none();
    case surpriseColumn:
        return !row.surprise       ? none()
            : row.surprise->sd > 0 ? tr("better: %1").arg(row.surprise->done)
                                   : tr("worse: %1").arg(row.surprise->done);
    default:
        return {};
    }
}

QVariant SquadModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const core::SquadRow &row = m_rows[size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return words(row, index.column());
    case Qt::ToolTipRole:
        return index.column() == surpriseColumn && row.surprise ? row.surprise->words : row.why();
    case Qt::TextAlignmentRole:
        return QVariant(
            (isNumeric(index.column()) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case SortRole:
        return sortValue(row, index.column());
    case TrendRole:
        return QVariant::fromValue(QList<double>(row.trendKg.begin(), row.trendKg.end()));
    default:
        return {};
    }
}

QVariant SquadModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant((isNumeric(section) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && section == attentionColumn)
        return tr("Ordered by points: pain 100; low readiness 25; each missed day 10, up to 40; "
                  "nothing planned 20; ten days without a session 15; a falling max up to 40; a "
                  "meet within four weeks 10 to 24; a set far from its forecast up to 15; sets "
                  "that disagree 6. They order the table and mean nothing else.");
    if (role == Qt::ToolTipRole && section == trendColumn)
        return tr("Estimated max, twelve weeks as a line, the change of the last four in words.");
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case lifterColumn:
        return tr("Lifter");
    case attentionColumn:
        return tr("Look here because");
    case trendColumn:
        return tr("Bench, 12 weeks");
    case maxColumn:
        return tr("Est. max");
    case lastColumn:
        return tr("Trained");
    case plannedColumn:
        return tr("Planned");
    case missedColumn:
        return tr("Missed");
    case painColumn:
        return tr("Pain");
    case readinessColumn:
        return tr("Ready");
    case meetColumn:
        return tr("Meet in");
    case surpriseColumn:
        return tr("Biggest surprise");
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
