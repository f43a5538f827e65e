#pragma once

#include <QString>

class QMainWindow;
class QWidget;

/// Help texts and the boxes that show them.
namespace ui {

/// What is on the screen that help is wanted on.
struct HelpOn
{
    const QWidget *page = nullptr; ///< null on the start page
    QString pageName = {};
    const QWidget *list = nullptr; ///< the lifter list beside it
};

/// A table of the keys and the notation of the page, and of every action of the menus that has a
/// shortcut. Keys are read from the actions, shortcuts, mnemonics and HelpSections that are there.
[[nodiscard]] QString helpHtml(const QMainWindow &window, const HelpOn &on);
[[nodiscard]] QString safetyNote();
[[nodiscard]] QString aboutHtml();

void showHelp(const QMainWindow &window, const HelpOn &on, QWidget *parent);
void showSafetyNote(QWidget *parent);
void showAbout(QWidget *parent);

} // namespace ui
