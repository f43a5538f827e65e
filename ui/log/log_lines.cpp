#include "ui/log/log_lines.h"

#include "core/domain/touch_score.h"
#include "core/domain/variation.h"
#include "ui/look/text.h"

#include <QLocale>
#include <algorithm>

namespace ui {

namespace {

QString nameOf(const std::vector<core::Variation> &catalogue, core::VariationId id)
{
    const core::Variation *variation = core::find(catalogue, id);
    return variation ? variation->name : QStringLiteral("?");
}

QString leadName(const core::SetEntry &entry, const std::vector<core::Variation> &catalogue)
{
    return entry.lead ? nameOf(catalogue, entry.lead->variation) : QString();
}

core::SetAsked asked(const core::DaySet *planned, const std::vector<core::Variation> &catalogue)
{
    return planned ? core::askedOf(*planned, catalogue) : core::SetAsked{};
}

QString didWords(
    const core::SetEntry &entry, const std::vector<core::Variation> &catalogue, core::Unit unit)
{
    QString words =
        core::doneWords(entry, unit, leadName(entry, catalogue), entry.lead ? entry.lead->reps : 0);
    if (entry.failed)
        words += Text::tr(", then a miss");
    return words;
}

} // namespace

std::vector<LogLine> logLines(const std::vector<core::SessionRow> &rows,
    const std::vector<core::DaySet> &planned, const std::vector<core::SetEntry> &done,
    const std::vector<core::Variation> &catalogue, core::Unit unit, bool isOver)
{
    std::vector<LogLine> lines;
    size_t answered = 0; // sets logged so far
    for (const core::SessionRow &row : rows) {
        LogLine line{row.planned, row.done, {}, {}, {}, LineState::open, {}};
        const core::DaySet *set = row.planned ? &planned[*row.planned] : nullptr;
        if (set) {
            line.variation = nameOf(catalogue, set->variation);
            line.asked = askedWords(*set, catalogue, unit);
        }
        if (!row.done) {
            const bool isPast = isOver || answered < done.size();
            line.state = isPast           ? LineState::leftOut
                : set->withheld.isEmpty() ? LineState::open
                                          : LineState::withheld;
            line.said = isPast                      ? Text::tr("left out")
                : line.state == LineState::withheld ? Text::tr("held back")
                : set->eased.isEmpty()              ? Text::tr("to do")
                                                    : Text::tr("to do, %1").arg(set->eased);
            lines.push_back(std::move(line));
            continue;
        }
        ++answered;
        const core::SetEntry &entry = done[*row.done];
        line.variation = nameOf(catalogue, entry.variation);
        line.did = didWords(entry, catalogue, unit);
        QStringList said =
            core::differenceWords(asked(set, catalogue), line.variation, entry, unit);
        line.state = entry.failed ? LineState::missed
            : !set                ? LineState::extra
            : said.isEmpty()      ? LineState::asPlanned
                                  : LineState::different;
        if (said.isEmpty())
            said << Text::tr("as planned");
        line.said = said.join(QStringLiteral(", "));
        if (!entry.note.isEmpty())
            line.said += QStringLiteral("; ") + entry.note;
        lines.push_back(std::move(line));
    }
    return lines;
}

QString askedWords(
    const core::DaySet &set, const std::vector<core::Variation> &catalogue, core::Unit unit)
{
    QString words = set.loadKg
        ? Text::tr("%1 x %2").arg(set.repsText, core::formatLoad(*set.loadKg, unit))
        : Text::tr("%1 reps, load open").arg(set.repsText);
    if (set.lead)
        words += Text::tr(", the first %1 as %2")
                     .arg(set.lead->reps)
                     .arg(nameOf(catalogue, set.lead->variation));
    if (set.loadKg && set.loadKg == set.planKg && !set.effort.isEmpty())
        words += Text::tr(", %1").arg(set.effort);
    else if (set.rpe && set.loadKg)
        words += Text::tr(", RPE %1").arg(QLocale().toString(*set.rpe));
    return words;
}

QString entryWords(const core::SetEntry &entry, const core::DaySet *planned,
    const std::vector<core::Variation> &catalogue, core::Unit unit)
{
    QString words = didWords(entry, catalogue, unit);
    if (entry.touch)
        words += QStringLiteral(" (%1)").arg(core::touchWord(*entry.touch));
    if (!planned)
        return words;
    QStringList differences = core::differenceWords(
        asked(planned, catalogue), nameOf(catalogue, entry.variation), entry, unit);
    return Text::tr("%1: %2").arg(words,
        differences.isEmpty() ? Text::tr("as planned") : differences.join(QStringLiteral(", ")));
}

std::optional<size_t> nextOpen(const std::vector<LogLine> &lines, size_t from)
{
    for (size_t i = from; i < lines.size(); ++i)
        if (!lines[i].done)
            return i;
    return std::nullopt;
}

size_t lineToBegin(const std::vector<LogLine> &lines)
{
    size_t from = 0;
    for (size_t i = 0; i < lines.size(); ++i)
        if (lines[i].done)
            from = i + 1;
    return nextOpen(lines, from).value_or(lines.size());
}

} // namespace ui
