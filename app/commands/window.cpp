#include "app/commands/commands.h"

#include "ui/look/theme.h"
#include "ui/window/main_window.h"

#include <QApplication>

namespace app {

int window(const QString &path, Console &)
{
    ui::Theme theme(*qApp);
    ui::MainWindow window(theme);
    window.show();
    if (!path.isEmpty())
        window.openFile(path); // on failure the window says why
    return QApplication::exec();
}

} // namespace app
