#pragma once

#include "core/plan/block_edits.h"

#include <QObject>
#include <vector>

class QAction;
class QMenu;

namespace ui {

class Estimates;
class LifterHistory;
class OpenRoster;
class Selection;

/// What a coach does to blocks, weeks and days of the selected lifter, as actions with dialogs;
/// each is one undo step.
class BlockDesk : public QObject
{
    Q_OBJECT

public:
    /// @param window  over which dialogs open; the actions' keys work in it
    BlockDesk(OpenRoster &roster, Estimates &estimates, LifterHistory &history,
        Selection &selection, QWidget *window);

    [[nodiscard]] QMenu *menu() const { return m_menu; }

    /// Edits the block, or begins a new one in the week shown where there is none.
    void editBlock(core::BlockId id);

Q_SIGNALS:
    /// Why something was not done, or what came of it.
    void said(const QString &words);

private:
    void newBlock();
    void shiftBlock();
    void copyBlock();
    void removeBlock();
    void saveTemplate();
    void layTemplate();
    void carryForward();
    void copyWeek();
    /// What cannot be done now is greyed in the menu, and its keys are somebody else's.
    void refresh();

    template <class Slot>
    void add(const QString &text, const QKeySequence &keys, Slot slot, bool needsBlock);
    [[nodiscard]] core::LifterId lifter() const;
    [[nodiscard]] std::vector<core::Block> blocks() const;
    [[nodiscard]] std::optional<core::Block> current() const;
    [[nodiscard]] std::vector<core::Card> cards(QDate from, QDate to) const;
    bool perform(const QString &name, const core::BlockEdit &done);
    void openBlockDialog(const QString &title, const QString &step, const core::Block &block);
    [[nodiscard]] core::NewCardId newCardId();

    OpenRoster &m_roster;
    Estimates &m_estimates;
    LifterHistory &m_history;
    Selection &m_selection;
    QWidget *m_window;
    QMenu *m_menu;
    std::vector<QAction *> m_ofBlock; ///< that need a block in the week shown
};

} // namespace ui
