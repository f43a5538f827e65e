#include "ui/lifters/lifter_list_model.h"

#include "core/domain/search_text.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/today.h"

#include <QSet>
#include <algorithm>

namespace ui {

namespace {

QString searchText(const LifterRow &row)
{
    return core::folded(row.name + u'\n' + row.groups.join(u'\n') + u'\n' + row.notes);
}

/// The whole row in a sentence, for tool tips and screen readers.
QString spoken(const LifterRow &row)
{
    QStringList parts{row.name, core::words(row.touchStyle)};
    if (!row.estimate.isEmpty())
        parts << LifterListModel::tr("bench %1").arg(row.estimate);
    if (!row.standing.isEmpty())
        parts << row.standing;
    if (!row.meet.isEmpty())
        parts << row.meet;
    parts << row.groups;
    if (row.archived)
        parts << LifterListModel::tr("archived");
    return parts.join(QStringLiteral(", "));
}

} // namespace

void LifterListModel::follow(OpenRoster &roster, Estimates &estimates)
{
    const auto rowFor = [&roster, &estimates](const core::Lifter &lifter) {
        return lifterRow(lifter, estimates.of(lifter.id, core::Lift::bench), roster.today().date());
    };
    const auto showAll = [this, &roster, rowFor] {
        std::vector<LifterRow> rows;
        std::transform(
            roster.lifters().begin(), roster.lifters().end(), std::back_inserter(rows), rowFor);
        setRows(rows);
    };
    connect(&roster, &OpenRoster::changed, this, [showAll](const core::RosterChange &change) {
        if (change.has<core::Lifter>())
            showAll();
    });
    connect(&estimates, &Estimates::changed, this,
        [this, &roster, rowFor](const QSet<core::LifterId> &lifters) {
            for (const core::LifterId id : lifters)
                if (const core::Lifter *lifter = roster.lifter(id))
                    if (const int row = rowOf(id); row >= 0)
                        setRow(row, rowFor(*lifter));
        });
    connect(&roster.today(), &Today::changed, this, showAll);
    showAll();
}

void LifterListModel::setRows(const std::vector<LifterRow> &rows)
{
    removeRowsNotIn(rows);
    for (int target = 0; target < int(rows.size()); ++target) {
        const LifterRow &row = rows[size_t(target)];
        const int found = rowOf(row.id, target);
        if (found < 0) {
            beginInsertRows({}, target, target);
            m_rows.insert(m_rows.begin() + target, row);
            m_search.insert(m_search.begin() + target, searchText(row));
            endInsertRows();
            continue;
        }
        if (found != target) {
            beginMoveRows({}, found, found, {}, target);
            std::rotate(
                m_rows.begin() + target, m_rows.begin() + found, m_rows.begin() + found + 1);
            std::rotate(
                m_search.begin() + target, m_search.begin() + found, m_search.begin() + found + 1);
            endMoveRows();
        }
        setRow(target, row);
    }
}

void LifterListModel::setRow(int place, const LifterRow &row)
{
    if (m_rows[size_t(place)] == row)
        return;
    m_rows[size_t(place)] = row;
    m_search[size_t(place)] = searchText(row);
    Q_EMIT dataChanged(index(place), index(place));
}

void LifterListModel::removeRowsNotIn(const std::vector<LifterRow> &rows)
{
    QSet<core::LifterId> kept;
    for (const LifterRow &row : rows)
        kept.insert(row.id);
    for (int i = int(m_rows.size()) - 1; i >= 0; --i)
        if (!kept.contains(m_rows[size_t(i)].id)) {
            beginRemoveRows({}, i, i);
            m_rows.erase(m_rows.begin() + i);
            m_search.erase(m_search.begin() + i);
            endRemoveRows();
        }
}

int LifterListModel::rowOf(core::LifterId id, int from) const
{
    const auto it = std::find_if(
        m_rows.begin() + from, m_rows.end(), [id](const LifterRow &row) { return row.id == id; });
    return it == m_rows.end() ? -1 : int(it - m_rows.begin());
}

QModelIndex LifterListModel::indexOf(core::LifterId id) const
{
    const int row = rowOf(id);
    return row < 0 ? QModelIndex() : index(row);
}

int LifterListModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant LifterListModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const LifterRow &row = m_rows[size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return row.name;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return spoken(row);
    case IdRole:
        return row.id.value;
    case TouchStyleRole:
        return int(row.touchStyle);
    case GroupsRole:
        return row.groups;
    case ArchivedRole:
        return row.archived;
    case EstimateRole:
        return row.estimate;
    case StandingRole:
        return row.standing;
    case TrustedRole:
        return row.trusted;
    case MeetRole:
        return row.meet;
    case SearchRole:
        return m_search[size_t(index.row())];
    default:
        return {};
    }
}

QHash<int, QByteArray> LifterListModel::roleNames() const
{
    QHash<int, QByteArray> names = QAbstractListModel::roleNames();
    names.insert({{IdRole, "lifterId"}, {TouchStyleRole, "touchStyle"}, {GroupsRole, "groups"},
        {ArchivedRole, "archived"}, {EstimateRole, "estimate"}, {StandingRole, "standing"},
        {TrustedRole, "trusted"}, {MeetRole, "meet"}, {SearchRole, "search"}});
    return names;
}

} // namespace ui
