#include "ui/board/landing_note.h"

#include "ui/look/metrics.h"

namespace ui {

LandingNote::LandingNote(QWidget *board)
    : QLabel(board)
{
    setFrameShape(QFrame::Box);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    setForegroundRole(QPalette::ToolTipText);
    setMargin(space::tight);
    setWordWrap(true);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    hide();
}

void LandingNote::showBelow(const QRect &marker, const QString &words)
{
    setVisible(!words.isEmpty());
    if (words.isEmpty())
        return;
    setText(words);
    setFixedWidth(marker.width());
    adjustSize();
    move(marker.left(), marker.bottom() + space::tight);
    raise();
}

} // namespace ui
