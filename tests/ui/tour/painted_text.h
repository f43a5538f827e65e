#pragma once

#include <QRectF>
#include <QString>
#include <QStringList>
#include <QWidget>
#include <vector>

namespace tests {

/// One line of text as it is painted, in the coordinates of what is rendered.
struct PaintedLine
{
    QString text;
    QRectF rect; ///< from the ascent to the descent
    QRectF clip; ///< what the painter lets through; null = everything
};

/// What a widget writes on the screen, whoever paints it: labels, delegates, charts.
[[nodiscard]] std::vector<PaintedLine> paintedLines(
    QWidget &widget, QWidget::RenderFlags flags = QWidget::DrawChildren);
/// The texts alone, of a widget and those in it.
[[nodiscard]] QStringList paintedText(QWidget &widget);

} // namespace tests
