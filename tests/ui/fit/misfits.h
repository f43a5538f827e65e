#pragma once

#include <QStringList>

class QWidget;

namespace tests {

/// What of the visible widgets in `root` does not fit, each by its place and what is wrong with it:
/// a widget that lies outside the one it is in, a page that cannot be scrolled to, text that is cut
/// off, and text that is elided without a tip that says it in full.
[[nodiscard]] QStringList misfits(QWidget &root);

} // namespace tests
