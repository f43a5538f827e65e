#pragma once

#include "core/csv/problem.h"

#include <QAbstractTableModel>

namespace ui {

/// The problems of an import, one a row, as far as they are worth scrolling through.
class ProblemModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column { fileColumn, lineColumn, fieldColumn, wordsColumn, remedyColumn, columns };

    static constexpr size_t kShown = 500;

    using QAbstractTableModel::QAbstractTableModel;

    void setProblems(const core::ProblemList &problems);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(
        const QModelIndex &index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(
        int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;

private:
    std::vector<core::Problem> m_rows;
};

} // namespace ui
