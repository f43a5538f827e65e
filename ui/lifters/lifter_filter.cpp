#include "ui/lifters/lifter_filter.h"

#include "ui/lifters/lifter_list_model.h"
#include "ui/lifters/search_text.h"

namespace ui {

void LifterFilter::setQuery(const QString &query)
{
    m_query = folded(query);
    invalidateFilter();
}

void LifterFilter::setGroup(const QString &group)
{
    m_group = group;
    invalidateFilter();
}

void LifterFilter::setTouchStyle(std::optional<core::TouchStyle> style)
{
    m_style = style;
    invalidateFilter();
}

void LifterFilter::setShowArchived(bool show)
{
    m_showArchived = show;
    invalidateFilter();
}

bool LifterFilter::isNarrowed() const
{
    return !m_query.trimmed().isEmpty() || !m_group.isEmpty() || m_style;
}

bool LifterFilter::filterAcceptsRow(int row, const QModelIndex &parent) const
{
    const QModelIndex index = sourceModel()->index(row, 0, parent);
    if (!m_showArchived && index.data(LifterListModel::ArchivedRole).toBool())
        return false;
    if (m_style && index.data(LifterListModel::TouchStyleRole).toInt() != int(*m_style))
        return false;
    if (!m_group.isEmpty()
        && !index.data(LifterListModel::GroupsRole).toStringList().contains(m_group))
        return false;
    return matchesWords(index.data(LifterListModel::SearchRole).toString(), m_query);
}

} // namespace ui
