#include "core/advice/open_stops.h"

#include "core/domain/text.h"

#include <QLocale>
#include <algorithm>

namespace core {

std::vector<OpenStop> openStops(const PlanToCheck &plan)
{
    return openStops(checkPlan(plan), plan.lifter, plan.cards);
}

std::vector<OpenStop> openStops(
    std::span<const Finding> findings, const Lifter &lifter, std::span<const ResolvedCard> cards)
{
    std::vector<OpenStop> stops;
    for (const Finding &finding : findings) {
        if (finding.severity != Severity::stop || finding.wavedThrough)
            continue;
        const auto card = std::ranges::find(
            cards, finding.key.card, [](const ResolvedCard &one) { return one.card.id; });
        stops.push_back({finding, lifter.name, card == cards.end() ? QDate() : card->card.day});
    }
    return stops;
}

std::vector<StopNote> stopNotes(std::span<const OpenStop> stops)
{
    std::vector<StopNote> notes;
    for (const OpenStop &stop : stops)
        notes.push_back({stop.day, Text::tr("Stop: %1").arg(stop.finding.words)});
    return notes;
}

QString words(const OpenStop &stop)
{
    if (!stop.day.isValid())
        return Text::tr("%1: %2").arg(stop.lifter, stop.finding.words);
    return Text::tr("%1, %2: %3")
        .arg(stop.lifter, QLocale().toString(stop.day, QStringLiteral("dddd d MMMM")),
            stop.finding.words);
}

Edit accept(std::span<const OpenStop> stops, const QString &note, std::span<const Waiver> waivers,
    const std::function<WaiverId()> &newId)
{
    Edit edit;
    for (const OpenStop &stop : stops) {
        const Edit one = waive(stop.finding, note, waivers, newId);
        std::ranges::copy(one.waivers.before, std::back_inserter(edit.waivers.before));
        std::ranges::copy(one.waivers.after, std::back_inserter(edit.waivers.after));
    }
    return edit;
}

} // namespace core
