#pragma once

#include "ui/board/card_editor.h"

#include "core/domain/ids.h"

#include <QPointer>

namespace ui {

class CardWidget;
class WeekPlan;

/// The text of a card being edited in a field over it, one at a time: its sets, checked and
/// completed as they are typed, or its note.
class CardEditing : public QObject
{
    Q_OBJECT

public:
    enum class Field { sets, note };

    /// @param board  on which the cards lie; outlives this
    CardEditing(WeekPlan &plan, QWidget &board);

    /// The card being edited; invalid while none is.
    [[nodiscard]] core::CardId card() const { return m_editor ? m_card : core::CardId{}; }
    [[nodiscard]] bool hasFocus() const { return m_editor && m_editor->hasFocus(); }

    /// Takes what is being edited. False where it is refused; then the field stays, and says why.
    [[nodiscard]] bool finish();
    /// @param typed  to begin with; empty keeps the text
    void open(const CardWidget &card, Field field, const QString &typed);
    /// The card lies here now.
    void moveOver(const CardWidget &card);

Q_SIGNALS:
    /// Ended by a key: the focus wants to go back to the card.
    void left(core::CardId card);

private:
    [[nodiscard]] bool store(const QString &text);
    /// Why the sets of the card cannot be taken, or have to be asked about.
    [[nodiscard]] std::optional<CardEditor::Refusal> check(
        const QString &text, const QString &kept, core::Lift lift) const;

    WeekPlan &m_plan;
    QWidget &m_board;
    QPointer<CardEditor> m_editor; ///< child of the board, deletes itself when it is done
    core::CardId m_card;
    Field m_field = Field::sets;
};

} // namespace ui
