#include "ui/lifters/lifter_list_filter.h"

#include "core/domain/search_text.h"
#include "ui/lifters/lifter_list_model.h"

namespace ui {

void LifterListFilter::setQuery(const QString &query)
{
    m_query = core::folded(query);
    invalidateFilter();
}

void LifterListFilter::setGroup(const QString &group)
{
    m_group = group;
    invalidateFilter();
}

void LifterListFilter::setTouchStyle(std::optional<core::TouchStyle> style)
{
    m_style = style;
    invalidateFilter();
}

void LifterListFilter::setShowArchived(bool show)
{
    m_showArchived = show;
    invalidateFilter();
}

bool LifterListFilter::isNarrowed() const
{
    return !m_query.trimmed().isEmpty() || !m_group.isEmpty() || m_style;
}

bool LifterListFilter::filterAcceptsRow(int row, const QModelIndex &parent) const
{
    const QModelIndex index = sourceModel()->index(row, 0, parent);
    if (!m_showArchived && index.data(LifterListModel::ArchivedRole).toBool())
        return false;
    if (m_style && index.data(LifterListModel::TouchStyleRole).toInt() != int(*m_style))
        return false;
    if (!m_group.isEmpty()
        && !index.data(LifterListModel::GroupsRole).toStringList().contains(m_group))
        return false;
    return core::matchesWords(index.data(LifterListModel::SearchRole).toString(), m_query);
}

} // namespace ui
