#pragma once

#include "ui/board/board_keys.h"
#include "ui/board/board_layout.h"
#include "ui/board/drop_target.h"

#include <QPointer>
#include <QWidget>
#include <array>
#include <map>
#include <set>

class QToolButton;

namespace ui {

class CardEditor;
class CardWidget;
class LandingNote;

/// The seven days with their cards: follows a WeekPlan, and turns keys, drops and edited text into
/// calls of it. Each card, and the empty slot below a day's cards, can have the focus; Tab enters
/// and leaves the grid, arrow keys go about in it.
class WeekGrid : public QWidget
{
    Q_OBJECT

public:
    explicit WeekGrid(WeekPlan &plan, QWidget *parent = nullptr);

    /// Where the focus is, or was last.
    [[nodiscard]] BoardPlace current() const { return m_current; }
    /// Where a card added now goes: below the current card, or into the empty slot.
    [[nodiscard]] BoardPlace placeToAdd() const;

    void focusPlace(BoardPlace place);
    void focusCard(core::CardId card);

    /// What an action is for: the cards chosen, else the current one.
    [[nodiscard]] std::vector<core::CardId> chosen() const;

Q_SIGNALS:
    /// A variation is wanted at placeToAdd(); `typed` begins the search.
    void addRequested(const QString &typed);
    /// A card is being dragged, or not any more.
    void cardDragged(bool active);
    /// Why something was not done.
    void said(const QString &words);
    /// The current place or card is another.
    void currentChanged();
    /// Scroll so that this can be seen.
    void lookAt(const QRect &rect);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void contextMenuEvent(QContextMenuEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void changeEvent(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dragMoveEvent(QDragMoveEvent *event) override;
    void dragLeaveEvent(QDragLeaveEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    enum class Field { sets, note };

    void follow();
    void arrange();
    void setCurrent(BoardPlace place);
    [[nodiscard]] QWidget *widgetAt(BoardPlace place) const;
    [[nodiscard]] BoardPlace clamped(BoardPlace place) const;
    [[nodiscard]] CardWidget *makeCard(const CardView &card);
    void nameSlots();
    bool takeKey(const QKeyEvent &key);

    void run(const GoTo &command);
    void run(const MoveCardTo &command);
    void run(const EditSets &command);
    void run(const EditNote &command);
    void run(const RemoveCard &command);
    void run(const DuplicateCard &command);
    void run(const AddCard &command);
    void run(const ExtendTo &command);
    void run(const ChooseAll &command);
    void run(const ChooseNone &command);
    void run(const CopyCards &command);
    void run(const CutCards &command);
    void run(const PasteCards &command);
    void choose(std::set<core::CardId> cards);

    void edit(core::CardId card, Field field, const QString &typed);
    void placeEditor();
    void drag(core::CardId card);
    /// The marker and the note of where what is dragged would land, if it would.
    void showGap();

    WeekPlan &m_plan;
    std::map<core::CardId, CardWidget *> m_cards; ///< children
    std::array<QToolButton *, core::kWeekDays> m_slots{};
    BoardLayout m_layout;
    BoardPlace m_current;
    core::CardId m_currentCard; ///< the card at m_current, so that the focus follows it
    QPointer<CardEditor> m_editor;
    core::CardId m_edited;
    Field m_editedField = Field::sets;
    std::set<core::CardId> m_chosen; ///< besides the current card, for actions on several
    DropTarget m_drop;
    LandingNote *m_landingNote;
};

} // namespace ui
