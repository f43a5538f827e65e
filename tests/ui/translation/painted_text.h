#pragma once

#include <QStringList>

class QWidget;

namespace tests {

/// What a widget and those in it write on the screen, whoever paints it: labels, delegates, charts.
/// Line by line.
[[nodiscard]] QStringList paintedText(QWidget &widget);

} // namespace tests
