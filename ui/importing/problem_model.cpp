#include "ui/importing/problem_model.h"

#include <algorithm>

namespace ui {

void ProblemModel::setProblems(const core::ProblemList &problems)
{
    beginResetModel();
    const auto &items = problems.items();
    m_rows.assign(items.begin(), items.begin() + std::ptrdiff_t(std::min(items.size(), kShown)));
    endResetModel();
}

int ProblemModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

int ProblemModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : columns;
}

QVariant ProblemModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(
            (index.column() == lineColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop);
    if (role != Qt::DisplayRole)
        return {};
    const core::Problem &problem = m_rows[size_t(index.row())];
    switch (index.column()) {
    case fileColumn:
        return problem.file;
    case lineColumn:
        return problem.line > 0 ? QVariant(problem.line) : QVariant();
    case fieldColumn:
        return problem.field;
    case wordsColumn:
        return problem.words;
    case remedyColumn:
        return problem.remedy;
    default:
        return {};
    }
}

QVariant ProblemModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(
            (section == lineColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case fileColumn:
        return tr("File");
    case lineColumn:
        return tr("Line");
    case fieldColumn:
        return tr("Field");
    case wordsColumn:
        return tr("What is wrong");
    case remedyColumn:
        return tr("What to do");
    default:
        return {};
    }
}

} // namespace ui
