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
    const QVariant inOrder[columns] = {problem.file,
        problem.line > 0 ? QVariant(problem.line) : QVariant(), problem.field, problem.words,
        problem.remedy};
    return inOrder[index.column()];
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
    return QStringList{tr("File"), tr("Line"), tr("Field"), tr("What is wrong"), tr("What to do")}
        .value(section);
}

} // namespace ui
