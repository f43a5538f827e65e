#pragma once

#include "ui/board/board_keys.h"
#include "ui/board/card_choice.h"
#include "ui/board/card_editing.h"
#include "ui/board/drop_target.h"

#include <QWidget>
#include <map>

namespace ui {

class CardWidget;
class DaySlot;
class LandingNote;

/// The seven days with their cards: follows a WeekPlan, tells what keys and menu ask for, and takes
/// drops and edited text. Each card, and the empty slot below a day's cards, can have the focus;
/// Tab enters and leaves the grid, arrow keys go about in it.
class WeekGrid : public QWidget
{
    Q_OBJECT

public:
    explicit WeekGrid(WeekPlan &plan, QWidget *parent = nullptr);

    /// Where the focus is, or was last, and what is chosen.
    [[nodiscard]] const CardChoice &choice() const { return m_choice; }
    void choose(const std::set<core::CardId> &cards);
    void chooseAll();
    /// The focus goes there too.
    void extendTo(BoardPlace place);

    void focusPlace(BoardPlace place);
    /// The menu of a day, as on its empty slot.
    void openDayMenu(int day, QPoint globalPos);
    void focusCard(core::CardId card);

    /// Opens a field over the card; what is being edited elsewhere is taken first.
    /// @param typed  to begin with; empty keeps the text
    void edit(core::CardId card, CardEditing::Field field, const QString &typed);

Q_SIGNALS:
    /// By key, by the menu or by a click on an empty slot.
    void commandGiven(const BoardCommand &command);
    /// A card is being dragged, or not any more.
    void cardDragged(bool active);
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
    void openMenu(QPoint globalPos);
    void follow();
    void followCards();
    void arrange();
    void setCurrent(BoardPlace place);
    void showChosen();
    [[nodiscard]] QWidget *widgetAt(BoardPlace place) const;
    [[nodiscard]] CardWidget *makeCard(const CardView &card);
    bool takeKey(const QKeyEvent &key);
    void takePress(core::CardId card, Qt::MouseButton button, Qt::KeyboardModifiers held);
    void drag(core::CardId card);
    /// The marker and the note of where what is dragged would land, if it would.
    void showGap();

    WeekPlan &m_plan;
    std::map<core::CardId, CardWidget *> m_cards; ///< children
    std::array<DaySlot *, core::kWeekDays> m_slots{};
    BoardLayout m_layout;
    CardChoice m_choice;
    CardEditing m_editing;
    DropTarget m_drop;
    LandingNote *m_landingNote;
};

} // namespace ui
