#pragma once

#include "core/domain/touch_style.h"

#include <QSortFilterProxyModel>
#include <optional>

namespace ui {

/// The rows of a LifterListModel that the coach wants to see. Keeps the model's order.
class LifterListFilter final : public QSortFilterProxyModel
{
    Q_OBJECT

public:
    using QSortFilterProxyModel::QSortFilterProxyModel;

    /// Words that all occur in name, groups or notes, without case and accents.
    void setQuery(const QString &query);
    /// Empty: any group.
    void setGroup(const QString &group);
    /// Empty: any style.
    void setTouchStyle(std::optional<core::TouchStyle> style);
    void setShowArchived(bool show);

    /// Whether anything is hidden besides archived lifters.
    [[nodiscard]] bool isNarrowed() const;

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex &parent) const override;

private:
    QString m_query; ///< folded
    QString m_group;
    std::optional<core::TouchStyle> m_style;
    bool m_showArchived = false;
};

} // namespace ui
