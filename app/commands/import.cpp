#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/roster_copy.h"
#include "app/commands/text.h"
#include "core/domain/storage_error.h"
#include "core/exchange/import_plan.h"
#include "core/storage/roster_file.h"

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>
#include <optional>

namespace app {

namespace {

core::ImportPlan planFor(
    core::RosterFile &roster, const core::LogTable &log, const core::PeopleTable &people)
{
    const core::IdSource ids{[&roster] { return roster.newId<core::Lifter>(); },
        [&roster] { return roster.newId<core::LoggedSession>(); }};
    return core::planImport(log, people, core::rowsFor(log, roster), ids);
}

void tell(const core::ImportCounts &counts, bool dryRun, QIODevice &out)
{
    say(out,
        dryRun ? Text::tr("Nothing was changed. An import would find:") : Text::tr("Imported:"));
    for (const core::CountLine &line : core::countLines(counts))
        say(out, QStringLiteral("  %1: %2").arg(line.what).arg(line.count));
}

/// The roster that the import goes into: the file itself, for a dry run a copy, and a new one grows
/// in a folder beside its place and moves there when it is whole.
class Target
{
public:
    Target(const ImportOptions &options, const Moment &moment)
        : m_path(options.roster)
    {
        if (options.create)
            startNew();
        else if (options.dryRun)
            m_roster.emplace(m_copy.emplace(m_path, Moment{moment.clock, {}}).open());
        else
            m_roster.emplace(core::RosterFile::open(m_path, moment.clock));
    }

    [[nodiscard]] core::RosterFile &roster() { return *m_roster; }

    void settle()
    {
        m_roster.reset(); // closed before it is moved
        if (m_nest && !QFile::rename(newPath(), m_path))
            throw core::StorageError(Text::tr("%1 cannot be written.").arg(m_path));
    }

private:
    void startNew()
    {
        const QFileInfo info(m_path);
        if (info.exists())
            throw core::StorageError(
                Text::tr("%1 is there already. Leave --create out to import into "
                         "it, or name another file.")
                    .arg(m_path));
        m_nest.emplace(info.absoluteDir().filePath(QStringLiteral(".benchwright-XXXXXX")));
        if (!m_nest->isValid())
            throw core::StorageError(
                Text::tr("%1 cannot be written: %2").arg(m_path, m_nest->errorString()));
        m_roster.emplace(core::RosterFile::create(newPath()));
    }
    [[nodiscard]] QString newPath() const
    {
        return m_nest->filePath(QStringLiteral("new.benchwright"));
    }

    QString m_path;
    std::optional<QTemporaryDir> m_nest; // this and the copy outlive the roster in them
    std::optional<RosterCopy> m_copy;
    std::optional<core::RosterFile> m_roster;
};

} // namespace

int import(const ImportOptions &options, const Moment &moment, Console &console)
{
    const core::PeopleTable people = readPeopleFile(options.people, moment, console);
    const core::LogTable log = readLogFile(options.log, moment, console);

    Target target(options, moment);
    warnOfClock(moment, target.roster().sessions(), console);
    const core::ImportPlan plan = planFor(target.roster(), log, people);
    if (!plan.isClean()) {
        report(plan.problems, console);
        say(console.err, Text::tr("Nothing was imported."));
        return exitProblems;
    }
    for (const QString &load : plan.farLoads)
        say(console.err, load);
    if (!options.dryRun) {
        target.roster().apply(plan.edit);
        target.settle();
    }
    tell(plan.counts, options.dryRun, console.out);
    return exitFine;
}

} // namespace app
