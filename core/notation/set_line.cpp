#include "core/notation/set_line.h"

#include "core/domain/units.h"
#include "core/notation/set_line_reader.h"

#include <QStringList>
#include <cmath>

namespace core {

namespace {

/// At most two decimals, always with a point.
QString plain(double value)
{
    return QString::number(std::round(value * 100.0) / 100.0, 'g', 10);
}

QString range(double from, const std::optional<double> &to)
{
    return to ? plain(from) + u'-' + plain(*to) : plain(from);
}

struct TargetPrinter
{
    QString operator()(std::monostate) const { return {}; }
    QString operator()(const RpeTarget &t) const
    {
        return QStringLiteral(" @") + range(t.rpe, t.to);
    }
    QString operator()(const ReserveTarget &t) const
    {
        return u' ' + range(t.rir, t.to) + QStringLiteral("RIR");
    }
    QString operator()(const ShareTarget &t) const { return u' ' + plain(t.percent) + u'%'; }
    QString operator()(const LoadTarget &t) const
    {
        const Unit unit = t.inPounds ? Unit::pound : Unit::kilogram;
        return u' ' + plain(fromKg(t.loadKg, unit)) + symbol(unit);
    }
    QString operator()(const DropTarget &t) const
    {
        const QString in = t.in == DropTarget::In::percent
            ? QStringLiteral("%")
            : symbol(t.in == DropTarget::In::pound ? Unit::pound : Unit::kilogram);
        return QStringLiteral(" -") + plain(t.amount) + in;
    }
};

struct MannerPrinter
{
    QString operator()(std::monostate) const { return {}; }
    QString operator()(const Tempo &t) const
    {
        return QStringLiteral(" tempo %1-%2-%3").arg(t.lowering).arg(t.pause).arg(t.lifting);
    }
    QString operator()(const Pause &p) const { return QStringLiteral(" pause %1").arg(p.counts); }
};

QString printRest(int seconds)
{
    return seconds % 60 == 0 ? QStringLiteral(" rest %1min").arg(seconds / 60)
                             : QStringLiteral(" rest %1s").arg(seconds);
}

} // namespace

ParsedSetLines parseSetLines(const QString &text)
{
    ParsedSetLines parsed;
    int rowNumber = 0;
    for (const QStringView row : QStringView(text).split(u'\n')) {
        ++rowNumber;
        for (const RowLine &line : linesOf(row)) {
            if (line.text.trimmed().isEmpty())
                continue;
            LineReading reading = readSetLine(line.text);
            if (reading.stop) {
                parsed.error = SetLineError{
                    rowNumber, int(line.from + reading.stop->at) + 1, reading.stop->words};
                return parsed;
            }
            parsed.lines.push_back(std::move(reading.line));
        }
    }
    return parsed;
}

QString printReps(const SetLine &line)
{
    if (line.leadReps > 0) {
        const QString reps =
            QStringLiteral("%1+%2").arg(line.leadReps).arg(line.reps - line.leadReps);
        return line.restCode.isEmpty() ? reps : reps + u'(' + line.restCode + u')';
    }
    if (line.asManyAsPossible) {
        const QString reps =
            line.reps == 1 ? QStringLiteral("AMRAP") : QString::number(line.reps) + u'+';
        return line.mostReps ? reps + QStringLiteral(" max %1").arg(*line.mostReps) : reps;
    }
    const QString reps = QString::number(line.reps);
    return line.mostReps ? reps + u'-' + QString::number(*line.mostReps) : reps;
}

QString setLineText(const SetLine &line)
{
    QString text = QString::number(line.sets) + u'x' + printReps(line)
        + std::visit(TargetPrinter{}, line.target) + std::visit(MannerPrinter{}, line.manner);
    if (line.restSeconds)
        text += printRest(*line.restSeconds);
    if (!line.note.isEmpty())
        text += QStringLiteral(" ; ") + line.note;
    return text;
}

QString setLineText(const std::vector<SetLine> &lines)
{
    QStringList rows;
    for (const SetLine &line : lines)
        rows << setLineText(line);
    return rows.join(u'\n');
}

QString onOneRow(const QString &setLines)
{
    const ParsedSetLines parsed = parseSetLines(setLines);
    if (parsed.error)
        return setLines.simplified();
    QString row;
    bool afterNote = false;
    for (const SetLine &line : parsed.lines) {
        if (!row.isEmpty())
            row += afterNote ? QStringLiteral("\nthen ") : QStringLiteral(" then ");
        row += setLineText(line);
        afterNote = !line.note.isEmpty();
    }
    return row;
}

int expectedReps(const SetLine &line)
{
    return line.mostReps && !line.asManyAsPossible ? (line.reps + *line.mostReps) / 2 : line.reps;
}

} // namespace core
