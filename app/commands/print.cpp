#include "app/commands/print.h"

#include "app/commands/files.h"
#include "app/commands/lifter_choice.h"
#include "app/commands/roster_copy.h"
#include "app/commands/text.h"
#include "core/domain/storage_error.h"
#include "core/loads/week_sheet.h"
#include "ui/print/plan_preview.h"
#include "ui/print/sheet_painter.h"

#include <QDir>

namespace app {

namespace {

/// The sheet's name in the folder, with a number where two lifters' names read the same in it.
QString freeName(const core::WeekSheet &sheet, QStringList &taken)
{
    const QString name = ui::suggestedPdfName(sheet);
    QString free = name;
    for (int number = 2; taken.contains(free, Qt::CaseInsensitive); ++number)
        free = name.chopped(4) + QStringLiteral(" %1.pdf").arg(number);
    taken << free;
    return free;
}

} // namespace

int print(const PrintOptions &options, Console &console)
{
    const RosterCopy copy(options.roster);
    const core::RosterFile roster = copy.open();
    const std::vector<core::Lifter> all = roster.lifters();
    const auto lifters = chosenLifters(options.roster, options.lifter, all, console);
    if (!lifters)
        return exitProblems;

    const QDate monday = options.day.addDays(1 - options.day.dayOfWeek());
    const std::vector<core::Variation> variations = roster.variations();
    const auto estimates = core::estimateAll(all, variations, roster.sessions());
    std::vector<core::WeekSheet> sheets;
    for (const core::Lifter &lifter : *lifters) {
        const std::vector<core::Card> cards = roster.cards(lifter.id, monday, monday.addDays(6));
        if (cards.empty())
            continue;
        const core::EstimateOf estimateOf = [&](core::Lift lift) {
            const auto found = estimates.find({lifter.id, lift});
            return found == estimates.end() ? nullptr : &found->second;
        };
        sheets.push_back(core::weekSheet(lifter, monday,
            core::resolveCards(cards, {lifter, variations, estimateOf}), variations));
    }
    if (sheets.empty()) {
        core::ProblemList problems;
        problems.add({options.roster, 0, {},
            Text::tr("Nothing is planned in the week of %1.").arg(monday.toString(Qt::ISODate)),
            Text::tr("Plan the week first, or name another with --week.")});
        report(problems, console);
        return exitProblems;
    }

    const QDir folder(options.folder);
    if (!folder.mkpath(QStringLiteral(".")))
        throw core::StorageError(Text::tr("The folder %1 cannot be made.").arg(options.folder));
    QStringList names;
    for (const core::WeekSheet &sheet : sheets) {
        const QString path = folder.filePath(freeName(sheet, names));
        ui::writePlanPdf(path, ui::layOut(sheet, options.paper));
        say(console.out, path);
    }
    return exitFine;
}

} // namespace app
