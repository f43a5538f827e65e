#pragma once

#include <QLabel>

namespace ui {

/// The note at the gap under a drag: what would stand there, with its loads. Lies over whatever
/// card is there, as it is gone with the next move.
class LandingNote : public QLabel
{
    Q_OBJECT

public:
    explicit LandingNote(QWidget *board);

    /// Hides where there is nothing to say.
    void showBelow(const QRect &marker, const QString &words);
};

} // namespace ui
