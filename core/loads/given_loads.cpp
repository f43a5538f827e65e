#include "core/loads/given_loads.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace core {

namespace {

constexpr double kSameLoad = 1e-6; ///< kg

std::optional<Figure> figureOf(const std::optional<strength::Band> &band)
{
    return band ? std::optional(Figure{band->kg, band->low90, band->high90}) : std::nullopt;
}

std::optional<Figure> figureOf(const std::optional<strength::Interval> &interval)
{
    return interval ? std::optional(Figure{interval->value, interval->low90, interval->high90})
                    : std::nullopt;
}

std::optional<strength::Interval> intervalOf(const std::optional<Figure> &figure)
{
    return figure ? std::optional(strength::Interval{figure->value, figure->low90, figure->high90})
                  : std::nullopt;
}

GivenLine givenLine(const ResolvedLine &line)
{
    GivenLine given;
    if (line.load) {
        given.loadKg = line.load->loadKg;
        given.plates = line.load->plates;
    }
    given.targetKg = figureOf(line.target);
    given.firstReserve = figureOf(line.firstReserve);
    given.lastReserve = figureOf(line.lastReserve);
    given.allMade = line.allMade;
    given.firstMade = line.firstMade;
    given.hardSetsAfter = line.hardSetsAfter;
    given.why = line.why;
    given.caution = line.caution;
    return given;
}

ResolvedLine resolvedLine(const SetLine &line, const GivenLine &given)
{
    ResolvedLine resolved;
    resolved.line = line;
    if (given.loadKg)
        resolved.load = BarLoad{*given.loadKg, given.plates};
    if (given.targetKg)
        resolved.target =
            strength::Band{given.targetKg->value, given.targetKg->low90, given.targetKg->high90};
    resolved.firstReserve = intervalOf(given.firstReserve);
    resolved.lastReserve = intervalOf(given.lastReserve);
    resolved.allMade = given.allMade;
    resolved.firstMade = given.firstMade;
    resolved.hardSetsAfter = given.hardSetsAfter;
    resolved.why = given.why;
    resolved.caution = given.caution;
    return resolved;
}

std::optional<GivenEstimate> estimateBehind(const LiftEstimate *lift, QDate day)
{
    if (!lift || lift->readings.empty())
        return std::nullopt;
    const std::optional<strength::Band> max = lift->estimate.maxOn(engineDay(day));
    if (!max)
        return std::nullopt;
    return GivenEstimate{*figureOf(max), lift->readings.back().day};
}

GivenCard givenCard(const ResolvedCard &card, const PlanSources &sources)
{
    GivenCard given{card.card.id, card.card.variation, card.card.setLine, {}, {}};
    if (card.given)
        given.from = card.given->from;
    else if (const Variation *variation = find(sources.variations, card.card.variation))
        given.from = estimateBehind(sources.estimateOf(variation->lift), card.card.day);
    for (const ResolvedLine &line : card.lines)
        given.lines.push_back(givenLine(line));
    return given;
}

/// Whether a load of the card is only missing because no fit has ended yet.
bool waitsForEstimate(const ResolvedCard &card, const PlanSources &sources)
{
    const Variation *variation = find(sources.variations, card.card.variation);
    return !card.given && variation && !sources.estimateOf(variation->lift)
        && std::ranges::any_of(card.lines, [](const ResolvedLine &line) {
               return !line.load && !std::holds_alternative<std::monostate>(line.line.target);
           });
}

} // namespace

void takeGiven(ResolvedCard &card, const GivenDay &day, const PlateTable &plates, bool isAhead)
{
    const auto given = std::ranges::find(day.cards, card.card.id, &GivenCard::card);
    if (given == day.cards.end())
        return;
    card.changedSinceGiven = given->variation != card.card.variation
        || given->setLine != card.card.setLine
        || given->lines.size() != (card.parsed.error ? 0 : card.parsed.lines.size());
    if (card.changedSinceGiven)
        return;
    card.given = GivenMark{day.by, day.at, given->from};
    const std::vector<ResolvedLine> now = std::exchange(card.lines, {});
    for (size_t i = 0; i < given->lines.size(); ++i) {
        ResolvedLine line = resolvedLine(card.parsed.lines[i], given->lines[i]);
        const double plate = plates.smallestJumpKg().value_or(0.0);
        if (isAhead && i < now.size() && now[i].load && line.load
            && std::abs(now[i].load->loadKg - line.load->loadKg) > plate + kSameLoad)
            line.now = now[i].load;
        card.lines.push_back(std::move(line));
    }
}

std::vector<GivenDay> give(std::span<const ResolvedCard> cards, const PlanSources &sources,
    std::span<const GivenDay> before, const Giving &giving)
{
    std::map<QDate, std::vector<const ResolvedCard *>> days;
    for (const ResolvedCard &card : cards)
        days[card.card.day].push_back(&card);
    std::vector<GivenDay> rows;
    for (const auto &[day, ofDay] : days) {
        if (std::ranges::any_of(ofDay,
                [&sources](const ResolvedCard *card) { return waitsForEstimate(*card, sources); }))
            continue;
        std::vector<GivenCard> given;
        for (const ResolvedCard *card : ofDay)
            given.push_back(givenCard(*card, sources));
        const GivenDay *last = givenOn(before, sources.lifter.id, day);
        if (!last || last->cards != given)
            rows.push_back({giving.newId(), sources.lifter.id, day, last ? last->number + 1 : 1,
                giving.by, giving.at, std::move(given)});
    }
    return rows;
}

} // namespace core
