#pragma once

#include <QStringList>

/// Rosters opened lately, kept in QSettings.
namespace ui {

inline constexpr int kRecentFiles = 8;

/// The list with `path` first, without doubles, cut to `kRecentFiles`.
[[nodiscard]] QStringList withRecent(QStringList paths, const QString &path);

/// The latest first. Files that are gone stay listed: a stick may come back.
[[nodiscard]] QStringList recentFiles();
void rememberRecent(const QString &path);
void forgetRecentFiles();

} // namespace ui
