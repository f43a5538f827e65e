#pragma once

#include "ui/room/seat_words.h"

#include <QWidget>

class QLabel;
class QToolButton;

namespace ui {

class FieldNote;

/// One lifter of the room: name, the next set with its plates, what is left, and the last set done.
class SeatColumn : public QWidget
{
    Q_OBJECT

public:
    explicit SeatColumn(QWidget *parent = nullptr);

    struct Content
    {
        int number = 1; ///< place in the room, from 1
        QString name;
        int rack = 0; ///< see Seat::rack()
        SeatWords words;
        QString stop;    ///< pain that stands; mostly empty
        QString notice;  ///< what readiness makes of the day, cards that cannot be read
        QString untaken; ///< half typed, not saved
        bool isAtHand = false;
    };
    void show(const Content &content);
    using QWidget::show;

Q_SIGNALS:
    void chosen();
    void rackWanted();
    void leaveWanted();

protected:
    void mousePressEvent(QMouseEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    QLabel *m_name;
    QLabel *m_progress;
    QToolButton *m_rack;
    FieldNote *m_stop;
    FieldNote *m_notice;
    QLabel *m_next;
    QLabel *m_asked;
    QLabel *m_plates;
    FieldNote *m_said;
    FieldNote *m_untaken;
    QLabel *m_last;
    QLabel *m_left;
    bool m_isAtHand = false;
};

} // namespace ui
