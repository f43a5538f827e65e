#include "core/exchange/log_csv.h"

#include "core/csv/csv_table.h"
#include "core/csv/csv_writer.h"
#include "core/domain/text.h"
#include "core/exchange/name_cell.h"
#include "core/exchange/set_cells.h"

#include <QHash>
#include <QIODevice>
#include <array>
#include <map>
#include <tuple>

namespace core {

namespace {

enum Cell : size_t {
    lifter,
    date,
    variation,
    loadKg,
    repsPlanned,
    repsDone,
    rpe,
    failed,
    session,
    velocityMs,
    touch,
    note,
    readiness,
    leadVariation,
    leadReps
};

constexpr std::array kColumns{Column{"lifter", true}, Column{"date", true},
    Column{"variation", true}, Column{"load_kg", true}, Column{"reps_planned", true},
    Column{"reps_done", true}, Column{"rpe", true}, Column{"failed", true}, Column{"session"},
    Column{"velocity_ms"}, Column{"touch"}, Column{"note"}, Column{"readiness"},
    Column{"lead_variation"}, Column{"lead_reps"}};

constexpr int kEarliestYear = 1950;
constexpr int kMostSessionsADay = 20;

constexpr SetCells kSetCells{loadKg, repsPlanned, repsDone, rpe, failed, touch, note, velocityMs};

QDate readDay(CsvTable &table, QDate today)
{
    if (!table.demand(date, Text::tr("Write the day of the session, such as 2026-03-31.")))
        return {};
    const QDate day = table.date(date).value_or(QDate());
    if (day.isValid() && day > today.addDays(1))
        table.complain(date, Text::tr("%1 has not come yet.").arg(day.toString(Qt::ISODate)),
            Text::tr("Write the day the session took place on."));
    else if (day.isValid() && day.year() < kEarliestYear)
        table.complain(date,
            Text::tr("%1 is before %2.").arg(day.toString(Qt::ISODate)).arg(kEarliestYear),
            Text::tr("Write the year with four digits."));
    return day;
}

int readNumber(CsvTable &table)
{
    return table
        .wholeNumber(session, 1, kMostSessionsADay,
            Text::tr("Sessions of a day are numbered 1 to %1.").arg(kMostSessionsADay),
            Text::tr("Write 1 for the first session of the day, 2 for the second."))
        .value_or(1);
}

/// Both columns are filled, or neither.
void readLead(CsvTable &table, LogRow &row)
{
    row.leadVariation = table.text(leadVariation);
    const std::optional<int> reps = table.wholeNumber(leadReps);
    if (row.leadVariation.isEmpty() == !reps.has_value()) {
        row.leadReps = reps.value_or(0);
        if (reps && (*reps < 1 || *reps > 100))
            table.complain(leadReps, Text::tr("Lead reps are 1 to 100."),
                Text::tr("Write how many reps came first in the lead variation."));
    } else if (reps) {
        table.complain(leadVariation, Text::tr("Lead reps without their variation."),
            Text::tr("Write the code of the variation of the first reps, or leave both blank."));
    } else if (table.cell(leadReps).empty()) {
        table.complain(leadReps, Text::tr("A lead variation without its reps."),
            Text::tr("Write how many reps came first in it, or leave both blank."));
    }
}

/// Readiness is said once a session: the lines of a session have the same, or none.
class ReadinessCheck
{
public:
    void take(CsvTable &table, const LogRow &row)
    {
        if (!row.readiness)
            return;
        const auto [said, isFirst] = m_said.try_emplace(
            {row.lifter.toCaseFolded(), row.day, row.number}, Said{*row.readiness, row.line});
        if (!isFirst && said->second.value != *row.readiness)
            table.complain(readiness,
                Text::tr("Line %1 has %2 for the same session.")
                    .arg(said->second.line)
                    .arg(said->second.value),
                Text::tr("Write one value for the session, or number the sessions of the day."));
    }

private:
    struct Said
    {
        int value = 0;
        int line = 0;
    };
    std::map<std::tuple<QString, QDate, int>, Said> m_said;
};

} // namespace

QStringList logColumns()
{
    return columnNames(kColumns);
}

LogTable readLog(QIODevice &device, const QString &file, QDate today, const Watch &watch)
{
    const double bytes = std::max(1.0, double(device.size())); // a pipe has none
    LogTable log{file, {}, {}};
    CsvTable table(device, file, kColumns, log.problems);
    ReadinessCheck readinessCheck;
    while (watch.goesOn(double(device.pos()) / bytes) && table.next()) {
        LogRow row;
        row.line = table.line();
        if (table.demand(lifter, Text::tr("Write the lifter's name.")))
            row.lifter = readName(table, lifter);
        row.day = readDay(table, today);
        if (table.demand(variation, Text::tr("Write the code of a variation, such as comp.")))
            row.variation = table.text(variation);
        row.number = readNumber(table);
        row.readiness = table.wholeNumber(readiness, 1, 5, Text::tr("Readiness is 1 to 5."),
            Text::tr("Write 1 for the worst up to 5 for the best, or leave it blank."));
        row.set = readSet(table, kSetCells, log.problems);
        readLead(table, row);
        readinessCheck.take(table, row);
        log.rows.push_back(std::move(row));
    }
    return log;
}

QByteArray writeLog(const std::vector<Lifter> &lifters, const std::vector<Variation> &variations,
    const std::vector<LoggedSession> &sessions)
{
    QHash<LifterId, QByteArray> nameOf;
    for (const Lifter &one : lifters)
        nameOf.insert(one.id, csvField(one.name));
    QHash<VariationId, QByteArray> codeOf;
    for (const Variation &one : variations)
        codeOf.insert(one.id, csvField(one.code));

    const auto whole = [](std::optional<int> value) {
        return value ? QByteArray::number(*value) : QByteArray();
    };
    const auto decimal = [](std::optional<double> value) {
        return value ? csvNumber(*value) : QByteArray();
    };
    QByteArray text = csvLine(
        {"lifter", "date", "session", "variation", "load_kg", "reps_planned", "reps_done", "rpe",
            "failed", "velocity_ms", "touch", "readiness", "note", "lead_variation", "lead_reps"});
    for (const LoggedSession &one : sessions)
        for (const SetEntry &set : one.sets)
            text += csvLine({nameOf.value(one.lifter), one.day.toString(Qt::ISODate).toLatin1(),
                QByteArray::number(one.number), codeOf.value(set.variation), csvNumber(set.loadKg),
                whole(set.repsPlanned), QByteArray::number(set.repsDone), decimal(set.rpe),
                set.failed ? "1" : "0", decimal(set.velocityMs), whole(set.touch),
                whole(one.readiness), csvField(set.note),
                set.lead ? codeOf.value(set.lead->variation) : QByteArray(),
                set.lead ? QByteArray::number(set.lead->reps) : QByteArray()});
    return text;
}

} // namespace core
