#pragma once

#include "ui/look/words_label.h"

namespace ui {

/// The values of the point that is read, in a small box beside it that lets the mouse through;
/// lines wider than the chart wrap.
class ValueBox final : public WrappedLabel
{
public:
    explicit ValueBox(QWidget *parent);

    /// @param at  in the pixels of the parent
    void showBeside(const QPointF &at, const QString &words);
    void applyLook(const QPalette &ofChart);
};

} // namespace ui
