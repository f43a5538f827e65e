#pragma once

#include "ui/board/shelf_rows.h"

#include <QAbstractListModel>

namespace ui {

/// The rows of the variation shelf; variations can be dragged.
class ShelfModel : public QAbstractListModel
{
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    void setRows(std::vector<ShelfRow> rows);
    [[nodiscard]] const ShelfRow &row(const QModelIndex &index) const;
    /// First row that holds a variation; invalid on an empty shelf.
    [[nodiscard]] QModelIndex firstVariation() const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;
    [[nodiscard]] QStringList mimeTypes() const override;
    [[nodiscard]] QMimeData *mimeData(const QModelIndexList &indexes) const override;
    [[nodiscard]] Qt::DropActions supportedDragActions() const override { return Qt::CopyAction; }

private:
    std::vector<ShelfRow> m_rows;
};

} // namespace ui
