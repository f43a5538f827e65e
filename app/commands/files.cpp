#include "app/commands/files.h"

#include "app/commands/text.h"
#include "core/csv/catalogue_csv.h"
#include "core/domain/storage_error.h"
#include "core/exchange/import_plan.h"
#include "core/loads/estimate_words.h"

#include <QFileInfo>
#include <QSaveFile>

namespace app {

namespace {

constexpr size_t kShownProblems = 100;
const QString kConsole = QStringLiteral("-");

void writeAll(QFileDevice &file, const QByteArray &contents)
{
    if (!file.isOpen() || file.write(contents) != contents.size() || !file.flush())
        throw core::StorageError(
            Text::tr("%1 cannot be written: %2").arg(file.fileName(), file.errorString()));
}

} // namespace

Input::Input(const QString &path, Console &console)
    : m_name(path == kConsole ? Text::tr("(standard input)") : path)
    , m_file(path)
    , m_device(path == kConsole ? &console.in : &m_file)
{
    if (m_device == &m_file && !m_file.open(QIODevice::ReadOnly))
        throw core::StorageError(Text::tr("%1 cannot be read: %2").arg(path, m_file.errorString()));
}

core::LogTable readLogFile(const QString &path, const Moment &moment, Console &console)
{
    if (path.isEmpty())
        return {};
    Input input(path, console);
    if (!moment.asOf)
        return core::readLog(input.device(), input.name(), moment.today());
    // What is not looked at cannot be wrong: no day is too late to be read.
    core::LogTable log = core::readLog(input.device(), input.name(), QDate(9999, 12, 30));
    std::erase_if(log.rows,
        [&moment](const core::LogRow &row) { return row.day.isValid() && row.day > *moment.asOf; });
    return log;
}

core::PeopleTable readPeopleFile(const QString &path, const Moment &moment, Console &console)
{
    if (path.isEmpty())
        return {};
    Input input(path, console);
    return core::readPeople(input.device(), input.name(), moment.today());
}

core::ReturnSheet readReturnFile(const QString &path, const Moment &moment, Console &console)
{
    Input input(path, console);
    return core::readReturnSheet(input.device(), input.name(), moment.today());
}

std::optional<core::Edit> readAlone(
    const QString &log, const QString &people, const Moment &moment, Console &console)
{
    const core::PeopleTable lifters = readPeopleFile(people, moment, console);
    core::ImportPlan plan = core::planImport(readLogFile(log, moment, console), lifters,
        {{}, core::builtInCatalogue(), {}}, core::countingIds());
    report(plan.problems, console);
    return plan.isClean() ? std::optional(std::move(plan.edit)) : std::nullopt;
}

void writeOutput(const QString &path, const QByteArray &contents, Console &console)
{
    if (path == kConsole) {
        if (console.out.write(contents) != contents.size())
            throw core::StorageError(
                Text::tr("The output cannot be written: %1").arg(console.out.errorString()));
        return;
    }
    const QFileInfo target(path);
    if (target.exists() && !target.isFile()) { // a device or a pipe is written, never replaced
        QFile file(path);
        (void)file.open(QIODevice::WriteOnly);
        writeAll(file, contents);
        return;
    }
    QSaveFile file(path);
    (void)file.open(QIODevice::WriteOnly);
    writeAll(file, contents);
    if (!file.commit())
        throw core::StorageError(
            Text::tr("%1 cannot be written: %2").arg(path, file.errorString()));
}

void say(QIODevice &device, const QString &line)
{
    device.write(line.toUtf8() + '\n');
}

void warnOfClock(
    const Moment &moment, std::span<const core::LoggedSession> sessions, Console &console)
{
    if (moment.asOf)
        return;
    const QString trouble = core::clockTrouble(moment.today(), core::lastDayOf(sessions));
    if (!trouble.isEmpty())
        say(console.err, QStringLiteral("benchwright: ") + trouble);
}

void report(const core::ProblemList &problems, Console &console)
{
    size_t shown = 0;
    for (const core::Problem &problem : problems.items()) {
        if (shown++ == kShownProblems)
            break;
        say(console.err, core::oneLine(problem));
    }
    if (problems.count() > kShownProblems)
        say(console.err,
            Text::tr("... and %1 more; %2 problems in all.")
                .arg(problems.count() - kShownProblems)
                .arg(problems.count()));
}

} // namespace app
