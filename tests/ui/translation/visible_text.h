#pragma once

#include <QStringList>
#include <vector>

class QWidget;

namespace tests {

/// One text that somebody may see or hear.
struct VisibleText
{
    QString where; ///< "QLabel words, toolTip"
    QString text;  ///< without markup
};

/// Every text of a widget and those in it: what is painted, the texts of widgets and actions, and
/// what item models hold beyond the rows on the screen.
[[nodiscard]] std::vector<VisibleText> visibleText(QWidget &root);

/// Those with a Latin letter in them, each behind its place. Under a PseudoTranslator, in a locale
/// and with a roster that have none, these are the texts that no translator can reach. Symbols
/// are no words: sets ("3x5") and units; nor is what files say, given as `fileWords`.
[[nodiscard]] QStringList latinText(
    const std::vector<VisibleText> &visible, const QStringList &data = {});

} // namespace tests
