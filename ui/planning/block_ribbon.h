#pragma once

#include "ui/planning/ribbon.h"

#include <QWidget>

namespace ui {

class LifterHistory;
class OpenRoster;
class Selection;

/// The weeks around the one shown in a row, with the blocks above them; a click goes to a week, a
/// double click edits its block. Arrow keys turn the week. A week that is over shows by shapes what
/// was done of it: a disc with a tick, half a disc, a ring for nothing; a cross where a rep was
/// missed, a plus for sets beside the plan, an exclamation mark for pain.
class BlockRibbon : public QWidget
{
    Q_OBJECT

public:
    BlockRibbon(OpenRoster &roster, LifterHistory &history, Selection &selection,
        QWidget *parent = nullptr);

    [[nodiscard]] const Ribbon &ribbon() const { return m_ribbon; }
    [[nodiscard]] QRect weekRect(int week) const;
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void weekWanted(QDate monday);
    /// Invalid where the week is in no block.
    void blockActivated(core::BlockId block);

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void reload();
    [[nodiscard]] Ribbon read(const core::Lifter &lifter) const;
    [[nodiscard]] int weekAt(QPoint point) const; ///< -1 = none
    [[nodiscard]] const core::Block *blockOf(int week) const;
    void paintBlocks(QPainter &painter) const;
    void paintWeek(QPainter &painter, int week) const;

    OpenRoster &m_roster;
    LifterHistory &m_history;
    Selection &m_selection;
    QDate m_first;
    Ribbon m_ribbon;
};

} // namespace ui
