#pragma once

#include <QLabel>

namespace ui {

/// The values of the point that is read, in a small box beside it that lets the mouse through.
class ValueBox final : public QLabel
{
public:
    explicit ValueBox(QWidget *parent);

    /// @param at  in the pixels of the parent
    void showBeside(const QPointF &at, const QString &words);
    void applyLook(const QPalette &ofChart);
};

} // namespace ui
