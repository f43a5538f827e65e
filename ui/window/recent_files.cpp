#include "ui/window/recent_files.h"

#include <QSettings>

namespace ui {

namespace {
const QString kKey = QStringLiteral("files/recent");
}

QStringList withRecent(QStringList paths, const QString &path)
{
    paths.removeAll(path);
    paths.prepend(path);
    return paths.mid(0, kRecentFiles);
}

QStringList recentFiles()
{
    return QSettings().value(kKey).toStringList();
}

void rememberRecent(const QString &path)
{
    QSettings().setValue(kKey, withRecent(recentFiles(), path));
}

void forgetRecentFiles()
{
    QSettings().remove(kKey);
}

} // namespace ui
