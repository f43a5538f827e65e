#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/roster_copy.h"
#include "app/commands/text.h"
#include "core/csv/catalogue_csv.h"
#include "core/domain/storage_error.h"
#include "core/exchange/file_kind.h"
#include "core/exchange/import_plan.h"

#include <QFileInfo>
#include <algorithm>

namespace app {

namespace {

int judge(
    const QString &path, const QString &words, const core::ProblemList &problems, Console &console)
{
    report(problems, console);
    say(console.out,
        QStringLiteral("%1: %2 %3")
            .arg(path, words,
                problems.isEmpty() ? Text::tr("Nothing is wrong with it.")
                                   : Text::tr("Problems: %1.").arg(problems.count())));
    return problems.isEmpty() ? exitFine : exitProblems;
}

core::ProblemList judgedAlone(const core::LogTable &log, const core::PeopleTable &people)
{
    return core::planImport(log, people, {{}, core::builtInCatalogue(), {}}, core::countingIds())
        .problems;
}

int checkLog(const QString &path, const Moment &moment, Console &console)
{
    const core::LogTable log = readLogFile(path, moment, console);
    QString words = Text::tr("A training log of %1 sets.").arg(log.rows.size());
    if (!log.rows.empty() && log.problems.isEmpty()) {
        const auto [first, last] = std::minmax_element(log.rows.begin(), log.rows.end(),
            [](const core::LogRow &a, const core::LogRow &b) { return a.day < b.day; });
        words = Text::tr("A training log of %1 sets from %2 to %3.")
                    .arg(log.rows.size())
                    .arg(first->day.toString(Qt::ISODate), last->day.toString(Qt::ISODate));
    }
    return judge(path, words, judgedAlone(log, {}), console);
}

int checkReturn(const QString &path, const Moment &moment, Console &console)
{
    const core::ReturnSheet sheet = readReturnFile(path, moment, console);
    return judge(path,
        Text::tr("A return sheet of %1 for the week of %2.")
            .arg(sheet.lifter, sheet.monday.toString(Qt::ISODate)),
        sheet.problems, console);
}

int checkPeople(const QString &path, const Moment &moment, Console &console)
{
    const core::PeopleTable people = readPeopleFile(path, moment, console);
    return judge(path, Text::tr("A list of %1 lifters.").arg(people.rows.size()),
        judgedAlone({}, people), console);
}

using core::ProblemList;

ProblemList rosterProblems(const QString &path, const core::RosterFile &roster,
    const std::vector<core::LoggedSession> &sessions)
{
    ProblemList found;
    const auto add = [&](const QString &row, const QStringList &wrong) {
        for (const QString &words : wrong)
            found.add({path, 0, row, words, Text::tr("Mend it in the roster.")});
    };
    for (const core::Variation &variation : roster.variations())
        add(variation.code, core::problems(variation));
    QHash<core::LifterId, QString> nameOf;
    for (const core::Lifter &lifter : roster.lifters()) {
        nameOf.insert(lifter.id, lifter.name);
        add(lifter.name, core::problems(lifter));
    }
    for (const core::LoggedSession &session : sessions)
        for (const core::SetEntry &set : session.sets)
            add(nameOf.value(session.lifter) + u' ' + session.day.toString(Qt::ISODate),
                core::problems(set));
    return found;
}

int checkRoster(const QString &path, const Moment &moment, Console &console)
{
    const RosterCopy copy(path, moment);
    try {
        const core::RosterFile roster = copy.open();
        const std::vector<core::LoggedSession> sessions = roster.sessions();
        warnOfClock(moment, sessions, console);
        return judge(path,
            Text::tr("A roster of %1 lifters and %2 sessions.")
                .arg(roster.lifters().size())
                .arg(sessions.size()),
            rosterProblems(path, roster, sessions), console);
    } catch (const core::StorageError &error) {
        core::ProblemList found;
        found.add({path, 0, {}, error.words(), {}});
        return judge(path, Text::tr("A roster that cannot be opened."), found, console);
    }
}

int refuse(const QString &path, const QString &words, Console &console)
{
    core::ProblemList found;
    found.add({path, 0, {}, words,
        Text::tr("A log begins with the line %1,... and a list of lifters with %2,...")
            .arg(core::logColumns().first(8).join(u','),
                core::peopleColumns().first(3).join(u','))});
    report(found, console);
    return exitProblems;
}

} // namespace

int check(const QString &path, const Moment &moment, Console &console)
{
    const core::FileKind kind = [&] {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            throw core::StorageError(
                Text::tr("%1 cannot be read: %2").arg(path, file.errorString()));
        return core::fileKind(file);
    }();
    switch (kind) {
    case core::FileKind::roster:
        return checkRoster(path, moment, console);
    case core::FileKind::log:
        return checkLog(path, moment, console);
    case core::FileKind::people:
        return checkPeople(path, moment, console);
    case core::FileKind::estimates:
        say(console.out, Text::tr("%1: Estimates, as written by the command estimate.").arg(path));
        return exitFine;
    case core::FileKind::returnSheet:
        return checkReturn(path, moment, console);
    case core::FileKind::empty:
        return refuse(path, Text::tr("The file is empty."), console);
    case core::FileKind::unknown:
        break;
    }
    return refuse(path,
        Text::tr("The file is neither a roster nor a log, a list of lifters or a return sheet."),
        console);
}

} // namespace app
