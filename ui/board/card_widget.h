#pragma once

#include "ui/board/card_layout.h"

#include <QWidget>

namespace ui {

struct Colours;

/// One card on the board: paints what it is given and tells what the mouse does to it. Keys go to
/// the board.
class CardWidget : public QWidget
{
    Q_OBJECT

public:
    CardWidget(const CardView &card, QWidget *parent);

    void show(const CardView &card);
    using QWidget::show;
    [[nodiscard]] const CardView &card() const { return m_card; }
    /// One of several that an action is for.
    void setChosen(bool chosen);

    [[nodiscard]] int heightForWidth(int width) const override;
    /// Where the set lines and the note are, for an editor above them.
    [[nodiscard]] QRect setsField() const;
    [[nodiscard]] QRect noteField() const;

Q_SIGNALS:
    void dragged(core::CardId card);
    void doubleClicked(core::CardId card);
    /// Pressed by either button.
    void pressed(core::CardId card, Qt::MouseButton button, Qt::KeyboardModifiers held);

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;

private:
    void describe();
    void paintTick(QPainter &painter, const Colours &look) const;

    CardView m_card;
    bool m_chosen = false;
    QPoint m_pressed;
};

} // namespace ui
