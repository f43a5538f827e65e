#include "core/exchange/return_sheet.h"

#include "core/csv/csv_table.h"
#include "core/domain/text.h"
#include "core/domain/week.h"
#include "core/exchange/name_cell.h"
#include "core/exchange/set_cells.h"

#include <QIODevice>
#include <algorithm>
#include <array>
#include <set>
#include <tuple>

namespace core {

namespace {

enum Cell : size_t {
    row,
    format,
    lifterId,
    lifter,
    week,
    plan,
    plannedDate,
    card,
    set,
    plannedVariation,
    plannedKg,
    repsPlanned,
    plannedRpe,
    date,
    variation,
    leadVariation,
    leadReps,
    loadKg,
    repsDone,
    rpe,
    failed,
    touch,
    note,
    sleep,
    stress,
    motivation,
    soreBack,
    soreLegs,
    soreChest,
    soreShoulders,
    soreElbows,
    soreWrists,
    pain,
    painWords,
    rows
};

constexpr std::array kColumns{Column{"row", true}, Column{"format", true},
    Column{"lifter_id", true}, Column{"lifter", true}, Column{"week", true}, Column{"plan", true},
    Column{"planned_date", true}, Column{"card", true}, Column{"set", true},
    Column{"planned_variation", true}, Column{"planned_kg", true}, Column{"reps_planned", true},
    Column{"planned_rpe", true}, Column{"date", true}, Column{"variation", true},
    Column{"lead_variation"}, Column{"lead_reps"}, Column{"load_kg", true},
    Column{"reps_done", true}, Column{"rpe", true}, Column{"failed", true}, Column{"touch", true},
    Column{"note"}, Column{"sleep"}, Column{"stress"}, Column{"motivation"}, Column{"sore_back"},
    Column{"sore_legs"}, Column{"sore_chest"}, Column{"sore_shoulders"}, Column{"sore_elbows"},
    Column{"sore_wrists"}, Column{"pain"}, Column{"pain_words"}, Column{"rows", true}};

constexpr std::pair<Cell, BodyArea> kSoreCells[] = {{soreBack, BodyArea::back},
    {soreLegs, BodyArea::legs}, {soreChest, BodyArea::chest}, {soreShoulders, BodyArea::shoulders},
    {soreElbows, BodyArea::elbows}, {soreWrists, BodyArea::wrists}};

constexpr SetCells kSetCells{loadKg, repsPlanned, repsDone, rpe, failed, touch, note};

const QString kElsewhere = QStringLiteral("elsewhere");
const QString kNoPain = QStringLiteral("no");
constexpr int kMostDaysOff = 28; ///< a session may be made up this long before or after its week
constexpr int kMostRows = 2000;  ///< a week of ten sets a day on ten cards holds fewer
constexpr qint64 kMostBytes = 1'000'000;

QString askAgain()
{
    return Text::tr("Ask the lifter to save the sheet once more and to send the file as it is.");
}

/// Reads the rows in order. What is wrong becomes a problem; the rest is still read, so that all
/// is told at once.
class SheetReader
{
public:
    SheetReader(QIODevice &device, ReturnSheet &sheet, QDate today)
        : m_sheet(sheet)
        , m_table(device, sheet.file, kColumns, sheet.problems)
        , m_today(today)
    {
    }

    void read()
    {
        while (m_table.next()) {
            if (m_ended) {
                complain(row, Text::tr("There are rows behind the end of the sheet."), askAgain());
                return;
            }
            const std::string_view kind = m_table.cell(row);
            if (kind == "end") {
                readEnd();
                continue;
            }
            if (++m_rows > kMostRows) {
                complain(row, Text::tr("The sheet has more rows than any week."), askAgain());
                return;
            }
            if ((kind == "sheet") != (m_rows == 1))
                complain(row,
                    m_rows == 1 ? Text::tr("The first row is not the one that names the lifter.")
                                : Text::tr("The sheet names its lifter twice."),
                    askAgain());
            else if (!readRow(kind))
                complain(row, Text::tr("There is no row of this kind."), askAgain());
        }
        if (!m_ended && m_sheet.problems.isEmpty())
            m_sheet.problems.add({m_sheet.file, 0, {},
                Text::tr("The end of the sheet is missing: the file was cut on its way."),
                askAgain()});
    }

private:
    bool readRow(std::string_view kind)
    {
        if (kind == "sheet")
            readSheet();
        else if (kind == "check_in")
            readCheckIn();
        else if (kind == "set")
            readDone();
        else if (kind == "skipped")
            keep(readPlace(ReturnedSet::State::skipped));
        else if (kind == "open")
            keep(readPlace(ReturnedSet::State::open));
        else
            return false;
        return true;
    }

    void readSheet()
    {
        const std::optional<int> version = m_table.wholeNumber(format);
        if (version && *version > kReturnFormat)
            complain(format, Text::tr("The sheet comes from a hand-out of a newer program."),
                Text::tr("Update this program, or send the lifter a new hand-out."));
        else if (version != kReturnFormat)
            complain(format, Text::tr("The format of the sheet is not 1."), askAgain());
        if (m_table.demand(lifterId, askAgain()))
            m_sheet.lifterId = LifterId{m_table.wholeNumber(lifterId).value_or(0)};
        if (m_table.demand(lifter, askAgain()))
            m_sheet.lifter = comparableName(m_table.text(lifter));
        if (m_table.demand(week, askAgain()))
            m_sheet.monday = m_table.date(week).value_or(QDate());
        if (m_sheet.monday.isValid() && m_sheet.monday.dayOfWeek() != Qt::Monday)
            complain(week, Text::tr("The week does not begin on a Monday."), askAgain());
        if (m_table.demand(plan, askAgain()))
            m_sheet.mark = m_table.text(plan);
    }

    void readEnd()
    {
        m_ended = true;
        if (m_table.demand(rows, askAgain()))
            if (const auto count = m_table.wholeNumber(rows); count && *count != m_rows)
                complain(rows,
                    Text::tr("The sheet was sent with %1 rows, and %2 are there.")
                        .arg(*count)
                        .arg(m_rows),
                    askAgain());
    }

    [[nodiscard]] std::optional<QDate> readTrainedOn()
    {
        if (!m_table.demand(date, Text::tr("Write the day the session took place on.")))
            return std::nullopt;
        const std::optional<QDate> day = m_table.date(date);
        if (!day)
            return std::nullopt;
        if (*day > m_today.addDays(1))
            complain(date, Text::tr("%1 has not come yet.").arg(day->toString(Qt::ISODate)),
                Text::tr("Ask the lifter for the day the session took place on."));
        else if (m_sheet.monday.isValid()
            && std::abs(m_sheet.monday.daysTo(*day)) > kMostDaysOff + kWeekDays)
            complain(date,
                Text::tr("%1 is far from the week of the plan.").arg(day->toString(Qt::ISODate)),
                Text::tr("Ask the lifter for the day the session took place on."));
        return day;
    }

    void readCheckIn()
    {
        CheckIn said;
        const std::optional<QDate> day = readTrainedOn();
        said.sleep = readAnswer(sleep);
        said.stress = readAnswer(stress);
        said.motivation = readAnswer(motivation);
        for (const auto &[cell, area] : kSoreCells)
            if (const std::optional<int> answer = readAnswer(cell))
                said.soreness.emplace(area, *answer);
        said.isPainFree = m_table.text(pain) == kNoPain;
        if (!said.isPainFree)
            said.pain = readPain();
        if (!said.pain && !m_table.text(painWords).isEmpty())
            complain(painWords, Text::tr("A pain is told in words, but not where it is."),
                Text::tr("Ask the lifter where it hurts; a pain is never passed over."));
        said.note = m_table.text(note);
        if (!day)
            return;
        said.day = *day;
        // Two days of the plan may have been trained on one: what was said later holds.
        const auto earlier = std::ranges::find_if(
            m_sheet.checkIns, [&said](const CheckIn &one) { return one.day == said.day; });
        if (earlier == m_sheet.checkIns.end())
            m_sheet.checkIns.push_back(said);
        else
            *earlier = merged(*earlier, said);
    }

    [[nodiscard]] std::optional<int> readAnswer(Cell cell)
    {
        return m_table.wholeNumber(
            cell, 1, 5, Text::tr("The answers run from 1 (worst) to 5 (best)."), askAgain());
    }

    [[nodiscard]] std::optional<PainFlag> readPain()
    {
        const QString where = m_table.text(pain);
        if (where.isEmpty())
            return std::nullopt;
        PainFlag flag{fromFileWord<BodyArea>(where), m_table.text(painWords)};
        if (!flag.area && where != kElsewhere)
            complain(pain, Text::tr("The area of the pain is unknown."),
                Text::tr("Ask the lifter where it hurts; a pain is never passed over."));
        if (!flag.area && flag.words.isEmpty())
            flag.words = Text::tr("elsewhere, not said where");
        return flag;
    }

    /// The planned columns.
    [[nodiscard]] ReturnedSet readPlace(ReturnedSet::State state)
    {
        ReturnedSet place;
        place.line = m_table.line();
        place.state = state;
        if (m_table.demand(plannedDate, askAgain()))
            place.plannedDay = m_table.date(plannedDate).value_or(QDate());
        if (place.plannedDay.isValid() && m_sheet.monday.isValid()
            && (place.plannedDay < m_sheet.monday
                || place.plannedDay >= m_sheet.monday.addDays(kWeekDays)))
            complain(plannedDate, Text::tr("The day is not of the sheet's week."), askAgain());
        place.card = readPosition(card);
        place.number = readPosition(set);
        place.plannedVariation = m_table.text(plannedVariation);
        place.plannedKg = m_table.number(plannedKg);
        place.plannedRpe = m_table.number(plannedRpe);
        place.set.repsPlanned = m_table.wholeNumber(repsPlanned);
        return place;
    }

    /// 0 after a complaint.
    [[nodiscard]] int readPosition(Cell cell)
    {
        if (!m_table.demand(cell, askAgain()))
            return 0;
        return m_table
            .wholeNumber(
                cell, 1, kMostRows, Text::tr("Cards and sets are numbered from 1."), askAgain())
            .value_or(0);
    }

    void readDone()
    {
        ReturnedSet done = readPlace(ReturnedSet::State::done);
        done.day = readTrainedOn().value_or(QDate());
        if (m_table.demand(variation, Text::tr("Write the code of a variation, such as comp.")))
            done.variation = m_table.text(variation);
        done.set = readSet(m_table, kSetCells, m_sheet.problems);
        done.leadVariation = m_table.text(leadVariation);
        done.leadReps = m_table.wholeNumber(leadReps).value_or(0);
        if (done.leadReps < 0 || done.leadReps > 100
            || (done.leadReps > 0) == done.leadVariation.isEmpty())
            complain(leadReps, Text::tr("Lead reps and their variation do not go together."),
                askAgain());
        keep(std::move(done));
    }

    void keep(ReturnedSet place)
    {
        const bool hasPlace = place.plannedDay.isValid() && place.card > 0 && place.number > 0;
        if (hasPlace && !m_places.insert({place.plannedDay, place.card, place.number}).second)
            complain(set, Text::tr("The sheet has this set twice."), askAgain());
        m_sheet.sets.push_back(std::move(place));
    }

    void complain(Cell cell, const QString &words, const QString &remedy)
    {
        m_table.complain(cell, words, remedy);
    }

    ReturnSheet &m_sheet;
    CsvTable m_table;
    QDate m_today;
    int m_rows = 0; ///< read before the end
    bool m_ended = false;
    std::set<std::tuple<QDate, int, int>> m_places;
};

} // namespace

QStringList returnColumns()
{
    return columnNames(kColumns);
}

ReturnSheet readReturnSheet(QIODevice &device, const QString &file, QDate today)
{
    ReturnSheet sheet;
    sheet.file = file;
    if (!device.isSequential() && device.size() > kMostBytes) {
        sheet.problems.add({file, 0, {}, Text::tr("The file is far larger than a return sheet."),
            Text::tr("See that it is the file that the lifter's page gave back.")});
        return sheet;
    }
    SheetReader(device, sheet, today).read();
    return sheet;
}

CheckIn merged(CheckIn earlier, const CheckIn &later)
{
    const auto take = [](auto &mine, const auto &theirs) {
        if (theirs)
            mine = theirs;
    };
    take(earlier.sleep, later.sleep);
    take(earlier.stress, later.stress);
    take(earlier.motivation, later.motivation);
    take(earlier.pain, later.pain);
    earlier.isPainFree = (earlier.isPainFree || later.isPainFree) && !earlier.pain;
    for (const auto &[area, answer] : later.soreness)
        earlier.soreness[area] = answer;
    if (earlier.note.isEmpty())
        earlier.note = later.note;
    else if (!earlier.note.contains(later.note))
        earlier.note += u'\n' + later.note;
    return earlier;
}

} // namespace core
