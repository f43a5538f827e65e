#include "ui/lifters/lifter_list_model.h"

#include "core/domain/search_text.h"
#include "core/loads/estimate_words.h"

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
    if (const QString band = bandText(row.bench, row.unit); !band.isEmpty())
        parts << LifterListModel::tr("bench %1").arg(band);
    if (const QString standing = standingText(row.bench); !standing.isEmpty())
        parts << standing;
    if (!row.meet.isEmpty())
        parts << row.meet;
    parts << row.groups;
    if (row.archived)
        parts << LifterListModel::tr("archived");
    return parts.join(QStringLiteral(", "));
}

} // namespace

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
        if (m_rows[size_t(target)] != row) {
            m_rows[size_t(target)] = row;
            m_search[size_t(target)] = searchText(row);
            Q_EMIT dataChanged(index(target), index(target));
        }
    }
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
        return bandText(row.bench, row.unit);
    case StandingRole:
        return standingText(row.bench);
    case TrustedRole:
        return core::carriesLoads(row.bench.standing);
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
