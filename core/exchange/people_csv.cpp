#include "core/exchange/people_csv.h"

#include "core/csv/csv_table.h"
#include "core/csv/csv_writer.h"
#include "core/domain/text.h"
#include "core/exchange/name_cell.h"

#include <QHash>
#include <array>

namespace core {

namespace {

enum Cell : size_t { lifter, sex, bodyweightKg, birthYear, touchStyle, unit, trainingSince };

constexpr std::array kColumns{Column{"lifter", true}, Column{"sex", true},
    Column{"bodyweight_kg", true}, Column{"birth_year"}, Column{"touch_style"}, Column{"unit"},
    Column{"training_since"}};

/// A word of a short list.
template <class Value>
std::optional<Value> readWord(CsvTable &table, Cell cell, const QString &choices)
{
    if (table.isBlank(cell))
        return std::nullopt;
    const std::optional<Value> value = fromFileWord<Value>(table.text(cell));
    if (!value)
        table.complain(cell, Text::tr("\"%1\" is not one of: %2.").arg(table.text(cell), choices),
            Text::tr("Write one of these, or leave the field blank."));
    return value;
}

/// Lays what problems(Lifter) finds at the door of the field that is to blame.
void judgeFields(CsvTable &table, const PersonRow &row, QDate today)
{
    Lifter probe;
    probe.name = QStringLiteral("-");
    probe.gear = usualGear(Unit::kilogram);
    probe.bodyweightKg = row.bodyweightKg;
    for (const QString &words : problems(probe))
        table.complain(bodyweightKg, words, Text::tr("Write kg, or leave the field blank."));
    probe.bodyweightKg.reset();
    probe.birthYear = row.birthYear;
    for (const QString &words : problems(probe, today))
        table.complain(birthYear, words, Text::tr("Write four digits, or leave the field blank."));
}

} // namespace

QStringList peopleColumns()
{
    return columnNames(kColumns);
}

PeopleTable readPeople(
    QIODevice &device, const QString &file, QDate today, const std::stop_token &stop)
{
    PeopleTable people{file, {}, {}};
    CsvTable table(device, file, kColumns, people.problems);
    QHash<QString, int> lineOf;
    while (!stop.stop_requested() && table.next()) {
        PersonRow row;
        row.line = table.line();
        if (table.demand(lifter, Text::tr("Write the lifter's name."))) {
            row.lifter = readName(table, lifter);
            const QString key = row.lifter.toCaseFolded();
            if (const int earlier = lineOf.value(key); earlier > 0)
                table.complain(lifter,
                    Text::tr("%1 is on line %2 already.").arg(row.lifter).arg(earlier),
                    Text::tr("Keep one line for each lifter."));
            else
                lineOf.insert(key, row.line);
        }
        row.sex = readWord<Sex>(table, sex, QStringLiteral("f, m"));
        row.bodyweightKg = table.number(bodyweightKg);
        row.birthYear = table.wholeNumber(birthYear);
        row.trainingSince = table.date(trainingSince);
        row.touchStyle =
            readWord<TouchStyle>(table, touchStyle, QStringLiteral("soft, sinking, undecided"));
        row.unit = readWord<Unit>(table, unit, QStringLiteral("kg, lb"));
        judgeFields(table, row, today);
        people.rows.push_back(std::move(row));
    }
    return people;
}

QByteArray writePeople(const std::vector<Lifter> &lifters)
{
    QByteArray text = csvLine(
        {"lifter", "sex", "bodyweight_kg", "birth_year", "touch_style", "unit", "training_since"});
    for (const Lifter &one : lifters)
        text += csvLine({csvField(one.name), fileWord(one.sex).toLatin1(),
            one.bodyweightKg ? csvNumber(*one.bodyweightKg) : QByteArray(),
            one.birthYear ? QByteArray::number(*one.birthYear) : QByteArray(),
            fileWord(one.touchStyle).toLatin1(), symbol(one.unit).toLatin1(),
            one.trainingSince ? one.trainingSince->toString(Qt::ISODate).toLatin1()
                              : QByteArray()});
    return text;
}

} // namespace core
