#include "app/command_line.h"

#include <QApplication>
#include <QDateTime>
#include <QFile>
#include <QLoggingCategory>
#include <cstdio>
#include <memory>

namespace {

using Needs = app::Request::Needs;

bool hasDisplay()
{
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY")
        || qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

std::unique_ptr<QCoreApplication> makeApplication(Needs needs, int &argc, char **argv)
{
    if (needs == Needs::core)
        return std::make_unique<QCoreApplication>(argc, argv);
    if (needs == Needs::painting) { // on no screen, and silent about what that lacks
        qputenv("QT_QPA_PLATFORM", "offscreen");
        QLoggingCategory::setFilterRules(QStringLiteral("default.warning=false"));
    }
    return std::make_unique<QApplication>(argc, argv);
}

} // namespace

int main(int argc, char **argv)
{
    // The one place that reads the computer's clock; everybody else is told.
    const app::Request request =
        app::parseCommandLine({argv + 1, argv + argc}, [] { return QDateTime::currentDateTime(); });
    if (request.needs == Needs::window && !hasDisplay()) {
        std::fputs("benchwright: There is no display to open a window on. "
                   "benchwright --help lists the commands that need none.\n",
            stderr);
        return app::exitFailed;
    }
    const std::unique_ptr<QCoreApplication> application =
        makeApplication(request.needs, argc, argv);
    QCoreApplication::setOrganizationName(QStringLiteral("Benchwright"));
    QCoreApplication::setApplicationName(QStringLiteral("Benchwright"));
    QCoreApplication::setApplicationVersion(QStringLiteral(BENCHWRIGHT_VERSION));
    QGuiApplication::setDesktopFileName(QStringLiteral("benchwright"));

    QFile in, out, err;
    (void)in.open(stdin, QIODevice::ReadOnly);
    (void)out.open(stdout, QIODevice::WriteOnly);
    (void)err.open(stderr, QIODevice::WriteOnly | QIODevice::Unbuffered);
    app::Console console{in, out, err};
    return app::runRequest(request, console);
}
