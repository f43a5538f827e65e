#include "ui/log/log_table_model.h"

#include "ui/log/log_desk.h"
#include "ui/look/colours.h"

#include <QGuiApplication>

namespace ui {

namespace {

/// A mark beside the words, so that the state is seen down the column at a glance, and its colour.
std::pair<QString, QColor> lookOf(LineState state)
{
    const Colours &look = colours(QGuiApplication::palette());
    switch (state) {
    case LineState::asPlanned:
        return {QStringLiteral("\u2713 "), look.goodText};
    case LineState::different:
        return {QStringLiteral("\u2260 "), look.text};
    case LineState::missed:
        return {QStringLiteral("\u2717 "), look.dangerText};
    case LineState::extra:
        return {QStringLiteral("+ "), look.text};
    case LineState::withheld:
        return {QStringLiteral("! "), look.dangerText};
    case LineState::open:
    case LineState::leftOut:
        break;
    }
    return {{}, look.mutedText};
}

} // namespace

void LogTableModel::follow(LogDesk &desk)
{
    connect(&desk, &LogDesk::changed, this, [this, &desk] { setLines(desk.lines()); });
    setLines(desk.lines());
}

void LogTableModel::setLines(std::vector<LogLine> lines)
{
    if (lines == m_lines)
        return;
    const int before = rowCount();
    const int after = int(lines.size());
    // A set more or less comes and goes alone; the rest stays where the eye is.
    if (after > before)
        beginInsertRows({}, before, after - 1);
    else if (after < before)
        beginRemoveRows({}, after, before - 1);
    m_lines = std::move(lines);
    if (after > before)
        endInsertRows();
    else if (after < before)
        endRemoveRows();
    if (after > 0)
        Q_EMIT dataChanged(index(0, 0), index(after - 1, kColumns - 1));
}

int LogTableModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_lines.size());
}

int LogTableModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : kColumns;
}

QVariant LogTableModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const LogLine &line = m_lines[size_t(index.row())];
    if (role == Qt::ForegroundRole && index.column() == said)
        return lookOf(line.state).second;
    if (role == Qt::ToolTipRole && index.column() == said)
        return line.said;
    if (role != Qt::DisplayRole)
        return {};
    const QVariant inOrder[kColumns] = {index.row() + 1, line.variation, line.asked, line.did,
        lookOf(line.state).first + line.said};
    return inOrder[index.column()];
}

QVariant LogTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return QStringList{
        tr("Set"), tr("Variation"), tr("Planned"), tr("Done"), tr("Against the plan")}
        .value(section);
}

} // namespace ui
