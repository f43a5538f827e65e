#include "ui/log/log_table_model.h"

#include "ui/look/colours.h"

#include <QGuiApplication>

namespace ui {

namespace {

/// A mark beside the words, so that the state is seen down the column at a glance.
QString mark(LineState state)
{
    switch (state) {
    case LineState::asPlanned:
        return QStringLiteral("\u2713 ");
    case LineState::different:
        return QStringLiteral("\u2260 ");
    case LineState::missed:
        return QStringLiteral("\u2717 ");
    case LineState::extra:
        return QStringLiteral("+ ");
    case LineState::withheld:
        return QStringLiteral("! ");
    case LineState::open:
    case LineState::leftOut:
        break;
    }
    return QString();
}

QColor inkOf(LineState state)
{
    const Colours &look = colours(QGuiApplication::palette());
    switch (state) {
    case LineState::asPlanned:
        return look.goodText;
    case LineState::missed:
    case LineState::withheld:
        return look.dangerText;
    case LineState::open:
    case LineState::leftOut:
        return look.mutedText;
    case LineState::different:
    case LineState::extra:
        break;
    }
    return look.text;
}

} // namespace

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
        return inkOf(line.state);
    if (role == Qt::ToolTipRole && index.column() == said)
        return line.said;
    if (role != Qt::DisplayRole)
        return {};
    switch (Column(index.column())) {
    case number:
        return index.row() + 1;
    case variation:
        return line.variation;
    case asked:
        return line.asked;
    case did:
        return line.did;
    case said:
        return mark(line.state) + line.said;
    case kColumns:
        break;
    }
    return {};
}

QVariant LogTableModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (Column(section)) {
    case number:
        return tr("Set");
    case variation:
        return tr("Variation");
    case asked:
        return tr("Planned");
    case did:
        return tr("Done");
    case said:
        return tr("Against the plan");
    case kColumns:
        break;
    }
    return {};
}

} // namespace ui
