#include "app/command_line.h"

#include "app/commands/commands.h"
#include "app/commands/files.h"
#include "core/domain/storage_error.h"
#include "core/domain/visible_text.h"

#include <CLI/CLI.hpp>
#include <QFile>
#include <algorithm>
#include <sstream>

namespace app {

namespace {

QString fromArgument(const std::string &text)
{
    return QFile::decodeName(QByteArray::fromStdString(text));
}

/// An option whose value goes into a QString.
CLI::Option *addText(CLI::App &app, const char *name, QString &value, const char *help)
{
    return app.add_option_function<std::string>(
        name, [&value](const std::string &text) { value = fromArgument(text); }, help);
}

/// An option whose value is a day.
void addDay(CLI::App &command, const std::string &name, const std::function<void(QDate)> &set,
    const std::string &help)
{
    command.add_option_function<std::string>(
        name,
        [name, set](const std::string &text) {
            const QDate day = QDate::fromString(QString::fromStdString(text), Qt::ISODate);
            if (!day.isValid())
                throw CLI::ValidationError(name, text + " is not a day such as 2026-03-31");
            set(day);
        },
        help);
}

/// For every command whose answer follows the clock.
void addAsOf(CLI::App &command, Moment &moment,
    const std::string &help = "Answer as on this day, such as 2026-03-31: what is later is not "
                              "seen; else today by the computer's clock")
{
    addDay(
        command, "--as-of", [&moment](QDate day) { moment.asOf = day; }, help);
}

void addPaper(CLI::App &command, ui::PaperSize &paper)
{
    paper = ui::usualPaper();
    command
        .add_option_function<std::string>(
            "--paper",
            [&paper](const std::string &text) {
                paper = text == "A4" ? ui::PaperSize::a4 : ui::PaperSize::letter;
            },
            "Size of the paper; else what is usual in this country")
        ->check(CLI::IsMember({"A4", "Letter"}));
}

template <class Command, class Options>
std::function<int(Console &)> runs(Command command, const Options &options, const Moment &moment)
{
    return [=](Console &console) { return command(options, moment, console); };
}

/// What a plan is written by: print and handout.
void addPlan(CLI::App &command, HandOutOptions &options, Moment &moment, Request &request)
{
    addText(command, "ROSTER", options.roster, "Roster file")->required();
    addText(command, "--lifter", options.lifter, "One lifter by name; else all with a plan");
    addDay(
        command, "--week", [&options](QDate day) { options.day = day; },
        "Any day of the week, such as 2026-03-31; else this week");
    addAsOf(command, moment);
    addPaper(command, options.paper);
    CLI::Option *draft = command.add_flag("--draft", options.isDraft,
        "Give nothing: the roster does not keep the loads, and may be open in a window; what the "
        "plan checks stop is printed");
    addText(command, "--accept", options.accepted,
        "Accept what the plan checks stop, with this note on why it is right; the roster keeps it. "
        "Without it nothing is written that they stop")
        ->excludes(draft)
        ->check(CLI::Validator(
            [](const std::string &note) {
                return core::hasVisibleText(fromArgument(note)) ? "" : "a note has words";
            },
            "NOTE"));
    command.callback([&] {
        request.needs = Request::Needs::painting;
        request.run = runs(handOut, options, moment);
    });
}

/// Everything that the arguments may set; it lives as long as the parse.
struct Options
{
    Moment moment;
    LogOptions estimate;
    ExportOptions exported;
    HandOutOptions handOut;
    ImportOptions import;
    DemoOptions demo;
    PictureOptions picture;
    HandOutOptions print;
    ReturnOptions returns;
    LogOptions score;
    QString checked;
    QString opened;
};

void addEstimate(CLI::App &app, Options &all, Request &request)
{
    LogOptions &options = all.estimate;
    CLI::App &command = *app.add_subcommand("estimate", "Estimate every lifter's bench-press max");
    addText(command, "--log", options.log, "Training log CSV, - for standard input")->required();
    addText(command, "--people", options.people, "People CSV: sex and bodyweight of the lifters");
    addText(command, "--out", options.out, "Estimates CSV to write, - for standard output")
        ->required();
    addAsOf(command, all.moment,
        "Estimate as on this day, such as 2026-03-31: what is later is not seen; else as on the "
        "last day of the log");
    command.footer(
        "One line a lifter, a view and a week: what was known then (filtered) and what is\n"
        "known now (smoothed), with the 90 % interval. A lifter without a set of late has one\n"
        "line more: what the weeks since have left, by the last Sunday before that day.\n\n"
        "Example: benchwright estimate --log log.csv --people people.csv "
        "--out estimates.csv");
    command.callback([&] { request.run = runs(estimate, options, all.moment); });
}

void addImport(CLI::App &app, Options &all, Request &request)
{
    ImportOptions &options = all.import;
    CLI::App &command = *app.add_subcommand("import", "Import a log and people into a roster");
    addText(command, "ROSTER", options.roster, "Roster file")->required();
    addText(command, "--log", options.log, "Training log CSV, - for standard input");
    addText(command, "--people", options.people, "People CSV");
    command.add_flag("--create", options.create, "Make the roster, which must not be there yet");
    command.add_flag("--dry-run", options.dryRun, "Tell what would happen, change nothing");
    addAsOf(command, all.moment,
        "Import nothing later than this day, such as 2026-03-31; else the whole log, in which a "
        "set after tomorrow by the computer's clock is a problem");
    command.footer("All or nothing: with one bad line nothing is imported, and every bad line is\n"
                   "listed. A file imported twice adds nothing.\n\n"
                   "Example: benchwright import club.benchwright --log log.csv --dry-run");
    command.callback([&] {
        if (options.log.isEmpty() && options.people.isEmpty())
            throw CLI::RequiredError("--log or --people");
        request.run = runs(import, options, all.moment);
    });
}

void addExport(CLI::App &app, Options &all, Request &request)
{
    ExportOptions &options = all.exported;
    CLI::App &command = *app.add_subcommand("export", "Write the training log of a roster as CSV");
    addText(command, "ROSTER", options.roster, "Roster file")->required();
    addText(command, "--log", options.log, "CSV to write, - for standard output")->required();
    command.footer("Example: benchwright export club.benchwright --log log.csv");
    command.callback([&] { request.run = runs(exportLog, options, all.moment); });
}

void addCheck(CLI::App &app, Options &all, Request &request)
{
    CLI::App &command =
        *app.add_subcommand("check", "Say what a file is and everything that is wrong with it");
    addText(command, "FILE", all.checked, "Roster, training log CSV or people CSV")->required();
    addAsOf(command, all.moment);
    command.footer("Example: benchwright check log.csv");
    command.callback([&] { request.run = runs(check, all.checked, all.moment); });
}

void addDemo(CLI::App &app, Options &all, Request &request)
{
    DemoOptions &options = all.demo;
    CLI::App &command =
        *app.add_subcommand("demo", "Write the demo roster and its CSV files into a folder");
    addText(command, "FOLDER", options.folder, "Where to")->required();
    command.add_flag("--force", options.force, "Replace an earlier demo roster");
    addAsOf(command, all.moment,
        "Make it the roster of this day, such as 2026-03-31; else of today by the computer's "
        "clock");
    command.footer("Example: benchwright demo ~/benchwright-demo");
    command.callback([&] { request.run = runs(demo, options, all.moment); });
}

void addScore(CLI::App &app, Options &all, Request &request)
{
    LogOptions &options = all.score;
    CLI::App &command =
        *app.add_subcommand("score", "Measure how well each week could be foretold");
    addText(command, "--log", options.log, "Training log CSV, - for standard input")->required();
    addText(command, "--people", options.people, "People CSV: sex and bodyweight of the lifters");
    addAsOf(command, all.moment,
        "Score up to this day, such as 2026-03-31: what is later is not seen; else the whole log");
    command.footer("Every bench-press set is forecast from the weeks before its own: the reps in\n"
                   "reserve that are said, and the misses.\n\n"
                   "Example: benchwright score --log log.csv");
    command.callback([&] { request.run = runs(score, options, all.moment); });
}

void addPrint(CLI::App &app, Options &all, Request &request)
{
    HandOutOptions &options = all.print;
    options.kinds = {false, true, false};
    options.by = core::GivenBy::print;
    CLI::App &command =
        *app.add_subcommand("print", "Write the plan of a week as one PDF a lifter");
    addPlan(command, options, all.moment, request);
    addText(command, "--out", options.folder, "Folder for the PDFs, made where it is not there")
        ->required();
    command.footer("What is printed is given: the roster keeps its loads, whatever the estimates\n"
                   "become. Close the window that has the roster open, or print a --draft.\n\n"
                   "Example: benchwright print club.benchwright --week 2026-03-31 --paper A4 "
                   "--out plans");
}

void addHandOut(CLI::App &app, Options &all, Request &request)
{
    HandOutOptions &options = all.handOut;
    CLI::App &command = *app.add_subcommand(
        "handout", "Write what the lifters get for a week: a page for the phone, PDF, calendar");
    addPlan(command, options, all.moment, request);
    command.add_flag("--pdf", options.kinds.pdf, "The plan as a PDF too");
    command.add_flag("--calendar", options.kinds.calendar, "The sessions as iCalendar too");
    addText(command, "--out", options.folder, "Folder for the files, made where it is not there")
        ->required();
    command.footer("The page works without a network; what the lifter gives back from it is read\n"
                   "by benchwright return. What is written is given: the roster keeps its loads,\n"
                   "whatever the estimates become. Close the window that has the roster open, or\n"
                   "write a --draft.\n\n"
                   "Example: benchwright handout club.benchwright --week 2026-03-31 --out plans");
}

void addReturn(CLI::App &app, Options &all, Request &request)
{
    ReturnOptions &options = all.returns;
    CLI::App &command =
        *app.add_subcommand("return", "Read what lifters gave back into a roster's log");
    addText(command, "ROSTER", options.roster, "Roster file")->required();
    command
        .add_option_function<std::vector<std::string>>(
            "SHEET",
            [&options](const std::vector<std::string> &paths) {
                for (const std::string &path : paths)
                    options.sheets << fromArgument(path);
            },
            "Return sheets as the hand-out page saved them")
        ->required();
    command.add_flag("--dry-run", options.dryRun, "Tell what would happen, change nothing");
    command.add_flag("--accept-mismatched", options.acceptMismatched,
        "Accept also sheets of an old plan, a renamed lifter or another roster file");
    addAsOf(command, all.moment,
        "Take this day, such as 2026-03-31, for today: sets of a later one have not come yet; "
        "else today by the computer's clock");
    command.footer("Tells what was done otherwise than planned, pain first. A sheet read twice\n"
                   "adds nothing; one that cannot be used does not hold up the others.\n\n"
                   "Example: benchwright return club.benchwright returns/*.csv --dry-run");
    command.callback([&] { request.run = runs(returnSheets, options, all.moment); });
}

void addPicture(CLI::App &app, Options &all, Request &request)
{
    PictureOptions &options = all.picture;
    CLI::App &command = *app.add_subcommand("picture", "Save the window on a roster as a PNG");
    addText(command, "ROSTER", options.roster, "Roster file")->required();
    addText(command, "--out", options.out, "PNG to write, - for standard output")->required();
    addText(command, "--lifter", options.lifter, "Name; the first of the list without it");
    command.add_option("--page", options.page, "Page of the window, from 1")->capture_default_str();
    const auto pixels = CLI::Range(400, 8000);
    command.add_option("--width", options.size.rwidth(), "Pixels")
        ->check(pixels)
        ->capture_default_str();
    command.add_option("--height", options.size.rheight(), "Pixels")
        ->check(pixels)
        ->capture_default_str();
    command.add_flag("--dark", options.dark, "Dark colours");
    addAsOf(command, all.moment);
    command.footer("Example: benchwright picture club.benchwright --out window.png");
    command.callback([&] {
        request.needs = Request::Needs::painting;
        request.run = runs(picture, options, all.moment);
    });
}

/// Prints `text` and ends.
Request printing(std::string text, int code)
{
    return {
        Request::Needs::core, [text = std::move(text), code](Console &console) {
            (code == exitFine ? console.out : console.err).write(QByteArray::fromStdString(text));
            return code;
        }};
}

} // namespace

Request parseCommandLine(
    std::vector<std::string> arguments, const std::function<QDateTime()> &clock)
{
    CLI::App app("A strength coach's workbench for programming the bench press", "benchwright");
    app.set_version_flag("--version", "benchwright " BENCHWRIGHT_VERSION);
    app.require_subcommand(0, 1);
    app.footer(
        "Exit codes: 0 fine, 1 problems in the input, 2 usage, 3 a file or the disk failed.");
    Options options;
    options.moment.clock = clock();
    Request request;
    addText(app, "FILE", options.opened, "Roster to open in the window");
    addEstimate(app, options, request);
    addImport(app, options, request);
    addExport(app, options, request);
    addPrint(app, options, request);
    addHandOut(app, options, request);
    addReturn(app, options, request);
    addCheck(app, options, request);
    addScore(app, options, request);
    addDemo(app, options, request);
    addPicture(app, options, request);
    try {
        std::reverse(arguments.begin(), arguments.end()); // the order that CLI11 takes
        app.parse(std::move(arguments));
    } catch (const CLI::ParseError &error) {
        std::ostringstream out, err;
        const int code = app.exit(error, out, err) == 0 ? exitFine : exitUsage;
        return printing(code == exitFine ? out.str() : err.str(), code);
    }
    if (app.get_subcommands().empty())
        return {Request::Needs::window, [path = options.opened, clock](Console &console) {
                    return window(path, clock, console);
                }};
    return request;
}

int runRequest(const Request &request, Console &console)
{
    try {
        return request.run(console);
    } catch (const core::StorageError &error) {
        say(console.err, QStringLiteral("benchwright: ") + error.words());
        if (!error.detail().isEmpty())
            say(console.err, error.detail());
    } catch (const std::exception &error) {
        say(console.err, QStringLiteral("benchwright: ") + QString::fromLocal8Bit(error.what()));
    }
    return exitFailed;
}

} // namespace app
