#pragma once

#include "core/csv/csv_writer.h"
#include "core/exchange/plan_mark.h"
#include "core/exchange/return_sheet.h"
#include "tests/core/exchange/hand_out_rows.h"

#include <QBuffer>
#include <QMap>

/// Return sheets as a hand-out page writes them, row by row, so that a test can spoil any of them.
namespace tests {

inline const QDate kReadOn(2024, 5, 22);

using ReturnRow = QMap<QString, QString>;

/// What a lifter gives back who did the planned week of PlannedWeek as planned.
class ReturnFile
{
public:
    explicit ReturnFile(const PlannedWeek &week)
    {
        rows.append({{"row", "sheet"}, {"format", "1"},
            {"lifter_id", QString::number(week.lifter.id.value)}, {"lifter", week.lifter.name},
            {"week", kMonday.toString(Qt::ISODate)},
            {"plan", core::planMark(week.lifter.id, kMonday, week.cards, week.catalogue)}});
        const core::WeekSheet sheet = week.sheet();
        for (const core::SheetDay &day : sheet.days)
            for (size_t card = 0; card < day.cards.size(); ++card)
                for (size_t set = 0; set < day.cards[card].sets.size(); ++set)
                    add(day, int(card), int(set));
    }

    [[nodiscard]] QByteArray text() const
    {
        QByteArray text = core::returnColumns().join(u',').toUtf8() + "\r\n";
        for (const ReturnRow &row : rows)
            text += line(row);
        if (hasEnd)
            text += line({{"row", "end"}, {"rows", QString::number(rows.size())}});
        return text;
    }

    [[nodiscard]] core::ReturnSheet read(const QString &name = QStringLiteral("ada.csv")) const
    {
        return readText(text(), name);
    }

    [[nodiscard]] static core::ReturnSheet readText(
        const QByteArray &text, const QString &name = QStringLiteral("ada.csv"))
    {
        QBuffer buffer;
        buffer.setData(text);
        buffer.open(QIODevice::ReadOnly);
        return core::readReturnSheet(buffer, name, kReadOn);
    }

    /// Makes a set row one without an entry.
    void reopen(int row, const char *kind = "open")
    {
        rows[row]["row"] = QLatin1String(kind);
        for (const char *done : {"date", "variation", "load_kg", "reps_done", "rpe", "failed"})
            rows[row].remove(QLatin1String(done));
    }

    QList<ReturnRow> rows; ///< the first is the sheet's own
    bool hasEnd = true;

private:
    void add(const core::SheetDay &day, int card, int set)
    {
        const core::SetInValues &values = day.cards[size_t(card)].sets[size_t(set)].values;
        const QString load = QString::fromLatin1(core::csvNumber(values.loadKg.value_or(0.0)));
        const QString date = day.date.toString(Qt::ISODate);
        const QString reps = QString::number(values.reps);
        rows.append({{"row", "set"}, {"planned_date", date}, {"card", QString::number(card + 1)},
            {"set", QString::number(set + 1)}, {"planned_variation", values.code},
            {"planned_kg", load}, {"reps_planned", reps}, {"date", date},
            {"variation", values.code}, {"load_kg", load}, {"reps_done", reps}, {"rpe", "8"},
            {"failed", "0"}});
    }

    [[nodiscard]] static QByteArray line(const ReturnRow &row)
    {
        QByteArray line;
        for (const QString &column : core::returnColumns())
            line += (line.isNull() ? "" : ",") + core::csvField(row.value(column));
        return line + "\r\n";
    }
};

} // namespace tests
