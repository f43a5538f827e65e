#include "core/notation/set_line_check.h"

#include "core/domain/nearest_word.h"
#include "core/domain/text.h"
#include "core/notation/set_line_reader.h"

namespace core {

namespace {

/// Why the code cannot stand there, and what to write; empty where it can.
QString whyNot(const QString &code, Lift lift, std::span<const Variation> catalogue)
{
    if (const Variation *named = withCode(catalogue, code))
        return named->lift == lift
            ? QString()
            : Text::tr("%1 is another lift. The reps after the lead are of the same one.")
                  .arg(named->name);
    QStringList codes;
    for (const Variation &v : catalogue)
        if (v.lift == lift && !v.retired)
            codes << v.code << v.name.toLower();
    const QString nearest = nearestWord(code, codes);
    const QString lacks = Text::tr("The catalogue has no variation %1 of this lift.").arg(code);
    if (nearest.isEmpty())
        return Text::tr("%1 Type the bracket anew to choose from its codes.").arg(lacks);
    // Names and codes stand in turn.
    const qsizetype at = codes.indexOf(nearest);
    return Text::tr("%1 Did you mean %2?").arg(lacks, codes[at - at % 2]);
}

} // namespace

ParsedSetLines parseSetLines(const QString &text, Lift lift, std::span<const Variation> catalogue)
{
    ParsedSetLines parsed = parseSetLines(text);
    int rowNumber = 0;
    for (const QStringView row : QStringView(text).split(u'\n')) {
        ++rowNumber;
        for (const RowLine &line : linesOf(row)) {
            const LineReading reading = readSetLine(line.text);
            if (parsed.error || reading.stop || reading.line.restCode.isEmpty())
                continue;
            if (const QString why = whyNot(reading.line.restCode, lift, catalogue); !why.isEmpty())
                parsed.error =
                    SetLineError{rowNumber, int(line.from + line.text.indexOf(u'(')) + 2, why};
        }
    }
    return parsed;
}

} // namespace core
