#pragma once

#include "ui/log/log_lines.h"

#include <QAbstractTableModel>

namespace ui {

class LogDesk;

/// The lines of a day as a table.
class LogTableModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column { number, variation, asked, did, said, kColumns };

    using QAbstractTableModel::QAbstractTableModel;

    /// Shows the lines of the desk from now on.
    void follow(LogDesk &desk);
    void setLines(std::vector<LogLine> lines);
    [[nodiscard]] const std::vector<LogLine> &lines() const { return m_lines; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(
        int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<LogLine> m_lines;
};

} // namespace ui
