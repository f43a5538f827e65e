#pragma once

#include <QString>

class QMainWindow;
class QWidget;

/// Help texts and the boxes that show them.
namespace ui {

/// A table of every action of the window that has a shortcut, and of the keys inside the pages.
[[nodiscard]] QString shortcutsHtml(const QMainWindow &window);
[[nodiscard]] QString safetyNote();
[[nodiscard]] QString aboutHtml();

void showShortcuts(const QMainWindow &window, QWidget *parent);
void showSafetyNote(QWidget *parent);
void showAbout(QWidget *parent);

} // namespace ui
