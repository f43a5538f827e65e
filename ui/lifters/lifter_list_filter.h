#pragma once

#include "ui/lifters/lifter_query.h"

#include <QSortFilterProxyModel>

namespace ui {

/// The rows of a LifterListModel that the coach wants to see. Keeps the model's order.
class LifterListFilter final : public QSortFilterProxyModel
{
    Q_OBJECT

public:
    using QSortFilterProxyModel::QSortFilterProxyModel;

    /// Case and accents do not matter.
    void setQuery(const LifterQuery &query);
    void setShowArchived(bool show);

    /// Whether anything is hidden besides archived lifters.
    [[nodiscard]] bool isNarrowed() const { return m_query.isNarrow(); }

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex &parent) const override;

private:
    LifterQuery m_query; ///< its words folded
    bool m_showArchived = false;
};

} // namespace ui
