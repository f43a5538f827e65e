#pragma once

#include "core/domain/roster_change.h"
#include "core/loads/resolved_cards.h"

#include <QAbstractTableModel>
#include <QDate>
#include <QStringList>
#include <vector>

namespace ui {

struct CopiedDay;
class Estimates;
class Insights;
class OpenRoster;
class Selection;

/// The week shown of every lifter who is not archived: a row a lifter, a column a day. A cell reads
/// its cards with their loads and is edited as text, see core/notation/card_text.h.
class RosterWeekModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    RosterWeekModel(OpenRoster &roster, Estimates &estimates, const Insights &insights,
        Selection &selection, QObject *parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(
        int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex &index) const override;
    /// The cards of the text in place of those of the day: one undo step. False, with said(), where
    /// it cannot be read.
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;

    [[nodiscard]] core::LifterId lifterAt(int row) const { return m_rows[size_t(row)].lifter; }
    [[nodiscard]] QDate dayAt(int column) const;
    /// The text of a cell to be edited or copied.
    [[nodiscard]] QString textAt(const QModelIndex &index) const;
    /// Why the text cannot be a cell's; empty when it can.
    [[nodiscard]] QString whyNot(const QString &text) const;
    /// Whether a load that the text brings to the cell is far above the max, see
    /// core/loads/far_above_max.h.
    [[nodiscard]] QString whyFarAbove(const QModelIndex &index, const QString &text) const;

    struct Pasted
    {
        QString text;        ///< of the cell
        QStringList remarks; ///< what the lifter does not get, or gets lighter, and why
    };
    /// The cell with the cards of one day below what is there, as core::pasteCards() lays them.
    [[nodiscard]] Pasted pasted(const QModelIndex &index, const CopiedDay &day) const;

Q_SIGNALS:
    void said(const QString &words);

private:
    struct Row
    {
        core::LifterId lifter;
        QString name;
        std::vector<core::Card> cards;     ///< of the week
        std::vector<core::GivenDay> given; ///< for the week
        std::vector<QString> days;         ///< in words, one a day; worked out when first shown
    };

    void follow(const core::RosterChange &change);
    void rewordRows(const QSet<core::LifterId> &lifters);
    void rewordAll();
    void reload();
    void rebuild();
    void wordRow(Row &row) const;
    [[nodiscard]] std::vector<core::Card> cardsAt(const QModelIndex &index) const;
    /// What the text makes of the cell; new cards get their ids from `newId`.
    [[nodiscard]] std::vector<core::Card> cardsOf(const QModelIndex &index, const QString &text,
        const std::function<core::CardId()> &newId) const;
    [[nodiscard]] core::PlanSources sources(const core::Lifter &lifter, const Row &row) const;

    OpenRoster &m_roster;
    Estimates &m_estimates;
    const Insights &m_insights;
    Selection &m_selection;
    std::vector<core::CheckIn> m_checkIns; ///< of all lifters, as far as they bear on the week
    mutable std::vector<Row> m_rows;       ///< the words of a row are filled in by data()
};

} // namespace ui
