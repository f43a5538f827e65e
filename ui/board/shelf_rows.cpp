#include "ui/board/shelf_rows.h"

#include "ui/look/text.h"

#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <array>

namespace ui {

namespace {

std::array<core::Serves, 3> orderFor(core::TouchStyle style)
{
    using enum core::Serves;
    switch (style) {
    case core::TouchStyle::soft:
        return {soft, both, sinking};
    case core::TouchStyle::sinking:
        return {sinking, both, soft};
    case core::TouchStyle::undecided:
        break;
    }
    return {both, soft, sinking};
}

bool passes(const core::Variation &variation, const ShelfFilter &filter)
{
    if (variation.retired || (filter.only && variation.serves != *filter.only))
        return false;
    const QString all = QStringList{variation.code, variation.name, variation.purpose,
        core::words(variation.lift), core::words(variation.serves)}
                            .join(u' ');
    const QStringList wanted = filter.words.split(u' ', Qt::SkipEmptyParts);
    return std::all_of(wanted.begin(), wanted.end(),
        [&all](const QString &word) { return all.contains(word, Qt::CaseInsensitive); });
}

QString headOf(core::Lift lift, core::Serves serves, bool isAssistance)
{
    if (isAssistance)
        return Text::tr("%1 \u00b7 assistance").arg(core::words(lift));
    if (lift != core::Lift::bench && serves == core::Serves::both)
        return core::words(lift);
    return core::words(lift) + QStringLiteral(" \u00b7 ") + core::words(serves);
}

QString tempoText(const core::Tempo &tempo)
{
    if (tempo.lowering > 0)
        return Text::tr("%1-%2-%3 tempo").arg(tempo.lowering).arg(tempo.pause).arg(tempo.lifting);
    if (tempo.pause > 0)
        return Text::tr("%1-count pause").arg(tempo.pause);
    return {};
}

} // namespace

std::vector<ShelfRow> shelfRows(const std::vector<core::Variation> &catalogue,
    core::TouchStyle style, const ShelfFilter &filter)
{
    std::vector<ShelfRow> rows;
    const auto addGroup = [&](core::Lift lift, core::Serves serves, bool isAssistance) {
        bool isFirst = true;
        for (const core::Variation &v : catalogue) {
            if (v.lift != lift || v.assistance != isAssistance || v.serves != serves
                || !passes(v, filter))
                continue;
            if (isFirst)
                rows.push_back({headOf(lift, serves, isAssistance), std::nullopt});
            rows.push_back({{}, v});
            isFirst = false;
        }
    };
    for (const core::Lift lift : {core::Lift::bench, core::Lift::squat, core::Lift::deadlift})
        for (const bool isAssistance : {false, true})
            for (const core::Serves serves : orderFor(style))
                addGroup(lift, serves, isAssistance);
    return rows;
}

QString shelfDetails(const core::Variation &variation)
{
    QStringList parts;
    if (const QString tempo = tempoText(variation.tempo); !tempo.isEmpty())
        parts << tempo;
    parts << (variation.repsHigh == 1 ? Text::tr("single reps")
            : variation.repsLow == variation.repsHigh
            ? Text::tr("%1 reps").arg(variation.repsLow)
            : Text::tr("%1\u2013%2 reps").arg(variation.repsLow).arg(variation.repsHigh));
    if (variation.usualPercent)
        parts << Text::tr("%1 % of its max").arg(QLocale().toString(*variation.usualPercent));
    parts << core::words(variation.fatigue);
    return parts.join(QStringLiteral(", "));
}

QString shelfToolTip(const core::Variation &variation)
{
    QStringList rows{variation.name + QStringLiteral(" (") + variation.code + u')'};
    if (!variation.whenToUse.isEmpty())
        rows << Text::tr("When: %1").arg(variation.whenToUse);
    if (!variation.cautions.isEmpty())
        rows << Text::tr("Caution: %1").arg(variation.cautions);
    QString html;
    for (const QString &row : rows) // rich text, so that long rows wrap
        html += QStringLiteral("<p>") + row.toHtmlEscaped() + QStringLiteral("</p>");
    return html;
}

} // namespace ui
