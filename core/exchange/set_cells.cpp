#include "core/exchange/set_cells.h"

#include "core/domain/text.h"

namespace core {

namespace {

/// A set with nothing wrong, to try one field of another in.
SetEntry soundSet()
{
    SetEntry set;
    set.loadKg = 20.0;
    set.repsDone = 1;
    return set;
}

/// Lays what problems(SetEntry) finds at the door of the field that is to blame.
void judgeFields(CsvTable &table, const SetCells &cells, const SetEntry &set)
{
    const auto judge = [&table](size_t cell, const SetEntry &probe, const QString &remedy) {
        for (const QString &words : problems(probe))
            table.complain(cell, words, remedy);
    };
    SetEntry probe = soundSet();
    probe.loadKg = set.loadKg;
    judge(cells.loadKg, probe, Text::tr("Write the weight on the bar in kg, the bar included."));
    probe = soundSet();
    probe.repsPlanned = set.repsPlanned;
    judge(cells.repsPlanned, probe, Text::tr("Leave the field blank where none were planned."));
    probe = soundSet();
    probe.repsDone = set.repsDone;
    probe.failed = set.failed;
    judge(cells.repsDone, probe,
        set.repsDone == 0
            ? Text::tr("Write 1 under failed, or take the line out if the set was not done.")
            : Text::tr("Write the reps that were completed."));
    probe = soundSet();
    probe.rpe = set.rpe;
    judge(cells.rpe, probe, Text::tr("Leave the field blank where the set was not rated."));
    probe = soundSet();
    probe.velocityMs = set.velocityMs;
    if (cells.velocityMs)
        judge(*cells.velocityMs, probe,
            Text::tr("Write metres a second, such as 0.35, or leave it blank."));
    probe = soundSet();
    probe.touch = set.touch;
    judge(cells.touch, probe,
        Text::tr("Write 1 for the softest touch up to 5 for a bar that sinks and stops."));
}

bool readFailed(CsvTable &table, size_t failed)
{
    const std::string_view cell = table.cell(failed);
    if (cell != "" && cell != "0" && cell != "1")
        table.complain(failed, Text::tr("The field is neither 0 nor 1."),
            Text::tr("Write 1 if a rep was tried and missed, else 0."));
    return cell == "1";
}

} // namespace

SetEntry readSet(CsvTable &table, const SetCells &cells, const ProblemList &problemsOfTable)
{
    const size_t before = problemsOfTable.count();
    SetEntry set;
    if (table.demand(cells.loadKg, Text::tr("Write the weight on the bar in kg.")))
        set.loadKg = table.number(cells.loadKg).value_or(0.0);
    if (table.demand(cells.repsDone, Text::tr("Write the reps that were completed.")))
        set.repsDone = table.wholeNumber(cells.repsDone).value_or(0);
    set.repsPlanned = table.wholeNumber(cells.repsPlanned);
    set.rpe = table.number(cells.rpe);
    set.failed = readFailed(table, cells.failed);
    if (cells.velocityMs)
        set.velocityMs = table.number(*cells.velocityMs);
    set.touch = table.wholeNumber(cells.touch);
    set.note = table.text(cells.note);
    if (problemsOfTable.count() == before && !problems(set).isEmpty())
        judgeFields(table, cells, set);
    return set;
}

} // namespace core
