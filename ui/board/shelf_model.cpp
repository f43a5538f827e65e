#include "ui/board/shelf_model.h"

#include "ui/board/board_drag.h"

namespace ui {

void ShelfModel::setRows(std::vector<ShelfRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

const ShelfRow &ShelfModel::row(const QModelIndex &index) const
{
    Q_ASSERT(checkIndex(index, CheckIndexOption::IndexIsValid));
    return m_rows[size_t(index.row())];
}

QModelIndex ShelfModel::firstVariation() const
{
    for (size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].variation)
            return index(int(i));
    return {};
}

int ShelfModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

QVariant ShelfModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const ShelfRow &shown = row(index);
    switch (role) {
    case Qt::DisplayRole:
        return shown.variation ? shown.variation->name : shown.head;
    case Qt::ToolTipRole:
        return shown.variation ? shelfToolTip(*shown.variation) : QVariant();
    case Qt::AccessibleTextRole:
        if (!shown.variation)
            return shown.head;
        return QStringList{shown.variation->name, core::words(shown.variation->serves),
            shown.variation->purpose, shelfDetails(*shown.variation)}
            .join(QStringLiteral(", "));
    default:
        return {};
    }
}

Qt::ItemFlags ShelfModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    if (!row(index).variation)
        return Qt::ItemIsEnabled | Qt::ItemNeverHasChildren;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled
        | Qt::ItemNeverHasChildren;
}

QStringList ShelfModel::mimeTypes() const
{
    return {variationMimeType()};
}

QMimeData *ShelfModel::mimeData(const QModelIndexList &indexes) const
{
    for (const QModelIndex &index : indexes)
        if (const auto &variation = row(index).variation)
            return mimeOf(variation->id).release();
    return nullptr;
}

} // namespace ui
