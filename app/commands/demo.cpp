#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/text.h"
#include "app/demo/demo_roster.h"
#include "core/domain/storage_error.h"
#include "core/storage/roster_file.h"

#include <QDir>

namespace app {

namespace {

/// Clears the place of the demo roster, or throws where it is taken.
void clear(const QString &path, bool force, const Moment &moment)
{
    if (!QFile::exists(path))
        return;
    if (!force)
        throw core::StorageError(
            Text::tr("%1 is there already. Give --force to replace it.").arg(path));
    (void)core::RosterFile::open(
        path, moment.clock); // a roster of ours that no window holds, or it throws
    if (!QFile::remove(path))
        throw core::StorageError(Text::tr("%1 cannot be replaced.").arg(path));
}

} // namespace

int demo(const DemoOptions &options, const Moment &moment, Console &console)
{
    const QDir folder(options.folder);
    if (!folder.mkpath(QStringLiteral(".")))
        throw core::StorageError(Text::tr("The folder %1 cannot be made.").arg(options.folder));
    const QString path = folder.filePath(QStringLiteral("demo.benchwright"));
    clear(path, options.force, moment);

    core::RosterFile roster = core::RosterFile::create(path);
    const core::Edit edit = ::demo::demoRoster(roster.variations(), moment.today(),
        {[&] { return roster.newId<core::Lifter>(); },
            [&] { return roster.newId<core::LoggedSession>(); },
            [&] { return roster.newId<core::Card>(); }, [&] { return roster.newId<core::Block>(); },
            [&] { return roster.newId<core::CheckIn>(); }});
    roster.apply(edit);

    const std::vector<core::Lifter> lifters = roster.lifters();
    writeOutput(folder.filePath(QStringLiteral("people.csv")), core::writePeople(lifters), console);
    writeOutput(folder.filePath(QStringLiteral("log.csv")),
        core::writeLog(lifters, roster.variations(), roster.sessions()), console);
    say(console.out,
        Text::tr("The demo roster is %1, its log and lifters are beside it.").arg(path));
    return exitFine;
}

} // namespace app
