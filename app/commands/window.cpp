#include "app/commands/commands.h"

#include "ui/look/theme.h"
#include "ui/roster/today.h"
#include "ui/window/main_window.h"

#include <QApplication>

namespace app {

int window(const QString &path, const std::function<QDateTime()> &clock, Console &)
{
    ui::Theme theme(*qApp);
    ui::Today today(clock);
    ui::MainWindow window(theme, today);
    window.show();
    if (!path.isEmpty())
        window.openFile(path); // on failure the window says why
    return QApplication::exec();
}

} // namespace app
