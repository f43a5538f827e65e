#pragma once

#include <QStringList>

class QWidget;

/// Qt's file dialogs, made to read none of the files that they list: an icon by content opens each
/// file and closes it, and that drops the locks which SQLite holds on a roster that is open
/// ("How To Corrupt An SQLite Database File", section 2.2, sqlite.org). Empty where cancelled.
namespace ui {

/// @param start  the folder to begin with
[[nodiscard]] QString askForFile(
    QWidget *parent, const QString &title, const QString &start, const QString &filters);
[[nodiscard]] QStringList askForFiles(
    QWidget *parent, const QString &title, const QString &start, const QString &filters);
[[nodiscard]] QString askForFolder(QWidget *parent, const QString &title, const QString &start);

enum class Taken { isAskedAbout, isLeftToCaller }; ///< a name to write to that is taken

[[nodiscard]] QString askForFileToWrite(QWidget *parent, const QString &title, const QString &path,
    const QString &filters, Taken taken = Taken::isAskedAbout);

} // namespace ui
