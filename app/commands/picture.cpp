#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/roster_copy.h"
#include "app/commands/text.h"
#include "core/domain/storage_error.h"
#include "ui/look/theme.h"
#include "ui/roster/today.h"
#include "ui/window/main_window.h"
#include "ui/window/roster_view.h"

#include <QApplication>
#include <QBuffer>
#include <QEventLoop>
#include <QSettings>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTimer>
#include <chrono>

namespace app {

namespace {

constexpr auto kPatience = std::chrono::seconds(30);

/// Until what is worked out off the screen's thread is there.
template <typename Worker> void waitFor(const Worker &worker)
{
    QEventLoop loop;
    QObject::connect(&worker, &Worker::changed, &loop, &QEventLoop::quit);
    QTimer::singleShot(kPatience, &loop, &QEventLoop::quit);
    if (worker.isBusy())
        loop.exec();
}

/// Lets what the last signals asked for be laid out and drawn.
void settle()
{
    QEventLoop loop;
    QTimer::singleShot(200, &loop, &QEventLoop::quit);
    loop.exec();
}

void select(ui::RosterView &roster, const QString &name)
{
    for (const core::Lifter &lifter : roster.openRoster().lifters())
        if (name.isEmpty() ? !lifter.archived : lifter.name == name) {
            roster.selection().setLifter(lifter.id);
            return;
        }
    if (!name.isEmpty())
        throw core::StorageError(Text::tr("The roster has no lifter %1.").arg(name));
}

} // namespace

int picture(const PictureOptions &options, const Moment &moment, Console &console)
{
    const RosterCopy copy(options.roster, moment);
    warnOfClock(moment, copy.open().sessions(), console); // or it throws what is wrong
    // A picture leaves the coach's own settings and recent files alone.
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    ui::Theme theme(*qApp);
    theme.choose(options.dark ? ui::SchemeChoice::dark : ui::SchemeChoice::light);
    ui::Today today([now = moment.now()] { return now; });
    ui::MainWindow window(theme, today);
    window.resize(options.size);
    window.show();
    if (!window.openFile(copy.path()))
        return exitFailed;
    ui::RosterView &roster = *window.roster();
    select(roster, options.lifter);
    if (options.page < 1 || options.page > roster.pages().count())
        throw core::StorageError(
            Text::tr("The window has the pages 1 to %1.").arg(roster.pages().count()));
    roster.pages().setCurrentIndex(options.page - 1);
    waitFor(roster.estimates());
    waitFor(roster.insights());
    settle();

    QBuffer png;
    if (!window.grab().save(&png, "PNG"))
        throw core::StorageError(Text::tr("The picture could not be made."));
    writeOutput(options.out, png.data(), console);
    return exitFine;
}

} // namespace app
