#pragma once

#include "core/log/outcome.h"
#include "core/review/squad.h"

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>

namespace ui {

/// All lifters, one row each. Raw values under SortRole; empty ones sort last in rising order.
class SquadModel final : public QAbstractTableModel
{
    Q_OBJECT

public:
    enum Column {
        lifterColumn,
        attentionColumn,
        trendColumn,
        maxColumn,
        lastColumn,
        plannedColumn,
        missedColumn,
        doneColumn,
        painColumn,
        readinessColumn,
        meetColumn,
        surpriseColumn,
        columns
    };
    enum Role { SortRole = Qt::UserRole, TrendRole };

    /// One lifter as the table shows them.
    struct Shown : core::SquadRow
    {
        core::Unit unit = core::Unit::kilogram;
        std::optional<core::Adherence> adherence; ///< of late; empty until it is worked out
    };

    using QAbstractTableModel::QAbstractTableModel;

    /// @param lifters  for the units
    void setRows(std::vector<core::SquadRow> rows, std::span<const core::Lifter> lifters);
    /// It comes later than the rows, and is kept for the next ones.
    void setAdherence(std::map<core::LifterId, core::Adherence> adherence);
    [[nodiscard]] const core::SquadRow &row(int row) const { return m_rows[size_t(row)]; }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(
        int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] std::optional<core::Adherence> adherenceOf(core::LifterId lifter) const;

    std::vector<Shown> m_rows;
    std::map<core::LifterId, core::Adherence> m_adherence;
};

/// What the coach wants to see of the squad.
class SquadFilter final : public QSortFilterProxyModel
{
    Q_OBJECT

public:
    enum class Show { all, attention, pain, unplanned, meetSoon };

    explicit SquadFilter(QObject *parent = nullptr);

    void setQuery(const QString &query);
    void setShow(Show show);

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex &parent) const override;
    [[nodiscard]] bool lessThan(const QModelIndex &left, const QModelIndex &right) const override;

private:
    QString m_query; ///< folded
    Show m_show = Show::all;
};

} // namespace ui
