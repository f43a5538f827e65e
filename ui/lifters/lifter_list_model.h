#pragma once

#include "ui/lifters/lifter_summary.h"

#include <QAbstractListModel>

namespace ui {

class Estimates;
class OpenRoster;

/// The lifters as rows. It holds copies and edits nothing; rows change by exact insert, move and
/// remove signals, so that the chosen row and the scroll bar stay.
class LifterListModel final : public QAbstractListModel
{
    Q_OBJECT

public:
    enum Role {
        IdRole = Qt::UserRole, ///< core::LifterId::value
        TouchStyleRole,        ///< core::TouchStyle as int
        GroupsRole,            ///< QStringList
        ArchivedRole,          ///< bool
        EstimateRole,          ///< "142 (137–148) kg" or empty
        StandingRole,          ///< words beside the estimate or empty
        TrustedRole,           ///< bool: the estimate carries loads
        MeetRole,              ///< "meet in 40 days" or empty
        SearchRole             ///< folded text that the search looks in
    };

    using QAbstractListModel::QAbstractListModel;

    /// Shows the lifters of a roster from now on, with their estimates of today.
    void follow(OpenRoster &roster, Estimates &estimates);
    /// Turns the old rows into these.
    void setRows(const std::vector<LifterRow> &rows);

    [[nodiscard]] QModelIndex indexOf(core::LifterId id) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    [[nodiscard]] int rowOf(core::LifterId id, int from = 0) const;
    void removeRowsNotIn(const std::vector<LifterRow> &rows);
    void setRow(int place, const LifterRow &row);

    std::vector<LifterRow> m_rows;
    std::vector<QString> m_search; ///< one a row, folded once
};

} // namespace ui
