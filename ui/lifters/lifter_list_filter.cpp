#include "ui/lifters/lifter_list_filter.h"

#include "core/domain/search_text.h"
#include "ui/lifters/lifter_list_model.h"

namespace ui {

void LifterListFilter::setQuery(const LifterQuery &query)
{
    m_query = query;
    m_query.words = core::folded(query.words);
    invalidateFilter();
}

void LifterListFilter::setShowArchived(bool show)
{
    m_showArchived = show;
    invalidateFilter();
}

bool LifterListFilter::filterAcceptsRow(int row, const QModelIndex &parent) const
{
    const QModelIndex index = sourceModel()->index(row, 0, parent);
    if (!m_showArchived && index.data(LifterListModel::ArchivedRole).toBool())
        return false;
    if (m_query.style && index.data(LifterListModel::TouchStyleRole).toInt() != int(*m_query.style))
        return false;
    if (!m_query.group.isEmpty()
        && !index.data(LifterListModel::GroupsRole).toStringList().contains(m_query.group))
        return false;
    return core::matchesWords(index.data(LifterListModel::SearchRole).toString(), m_query.words);
}

} // namespace ui
