#include "core/advice/readiness_advice.h"

#include "core/domain/text.h"
#include "core/domain/variation.h"
#include "core/safety/pain_place.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace core {

namespace {

constexpr int kFewestSessions = 10;   ///< of the lifter, before loads are moved by it
constexpr double kLeastShift = 0.005; ///< share; less no plate can show

QString percentOff(double factor)
{
    return QLocale().toString(std::abs(100.0 * (factor - 1.0)), 'f', 1);
}

QString listed(const std::vector<BodyArea> &areas)
{
    QStringList names;
    for (const BodyArea area : areas)
        names << words(area);
    return names.size() < 2
        ? names.join(QString())
        : Text::tr("%1 and %2")
              .arg(names.mid(0, names.size() - 1).join(QStringLiteral(", ")), names.last());
}

QString painWords(const std::vector<StandingPain> &pains)
{
    QStringList where;
    for (const StandingPain &pain : pains)
        where << words(pain.flag);
    return Text::tr("Pain (%1): stop what hurts, and refer to a physician or physiotherapist. "
                    "Nothing heavier and no maximal attempt until a check-in says that it is gone.")
        .arg(where.join(QStringLiteral(", ")));
}

/// The sore areas of the check-in that the variation works.
std::vector<BodyArea> soreAndWorked(const CheckIn &checkIn, const Variation &variation)
{
    std::vector<BodyArea> areas = soreAreas(checkIn);
    std::erase_if(areas, [&](BodyArea area) { return !works(variation, area); });
    return areas;
}

bool hurts(const DayLimits &limits, const Variation &variation)
{
    return std::ranges::any_of(limits.pains,
        [&variation](const StandingPain &pain) { return mayHurt(pain.flag, variation); });
}

/// What stands in for planned work.
class Swaps
{
public:
    Swaps(const DayLimits &limits, const Lifter &lifter, std::span<const Variation> catalogue,
        const std::function<bool(const Card &, VariationId)> &isHeavier)
        : m_limits(limits)
        , m_lifter(lifter)
        , m_catalogue(catalogue)
        , m_isHeavier(isHeavier)
    {
    }

    [[nodiscard]] std::vector<SoreSwap> forSoreness(
        const CheckIn &checkIn, std::span<const Card> cards) const
    {
        std::vector<SoreSwap> swaps;
        for (const Card &card : cards) {
            const Variation *planned = find(m_catalogue, card.variation);
            if (!planned || hurts(m_limits, *planned))
                continue; // for pain there is no swap
            const std::vector<BodyArea> areas = soreAndWorked(checkIn, *planned);
            if (areas.empty())
                continue;
            if (const Variation *spare = spareFor(card, *planned, areas))
                swaps.push_back({card.id, spare->id,
                    Text::tr("Sore: %1. %2 works it less than %3 does.")
                        .arg(listed(areas), spare->name, planned->name)});
        }
        return swaps;
    }

private:
    /// Nearest in load, those for the lifter's touch first; never heavier than planned.
    [[nodiscard]] const Variation *spareFor(
        const Card &card, const Variation &planned, const std::vector<BodyArea> &areas) const
    {
        const Variation *best = nullptr;
        const auto rank = [&](const Variation &v) {
            return std::pair(!suits(v.serves, m_lifter.touchStyle), planned.ratio - v.ratio);
        };
        for (const Variation &v : m_catalogue) {
            const bool fits = v.lift == planned.lift && v.assistance == planned.assistance
                && !v.retired && v.id != planned.id && v.ratio <= planned.ratio
                && !hurts(m_limits, v)
                && std::ranges::all_of(
                    areas, [&](BodyArea area) { return v.work[area] < planned.work[area]; })
                && !(m_isHeavier && m_isHeavier(card, v.id));
            if (fits && (!best || rank(v) < rank(*best)))
                best = &v;
        }
        return best;
    }

    const DayLimits &m_limits;
    const Lifter &m_lifter;
    std::span<const Variation> m_catalogue;
    const std::function<bool(const Card &, VariationId)> &m_isHeavier;
};

void shiftLoads(ReadinessAdvice &advice, double readiness, const DayLimits &limits,
    const strength::ReadinessEffect *effect)
{
    if (!effect || effect->sessions < kFewestSessions) {
        advice.words << Text::tr(
            "Not enough to say what readiness does to this lifter's loads; sessions with a "
            "check-in so far: %1. The loads stay; go by the first sets.")
                            .arg(effect ? effect->sessions : 0);
        return;
    }
    advice.measured = effect->factorAt(readiness);
    const strength::Interval &factor = *advice.measured;
    const bool isWeaker = factor.high90 < 1.0;
    if (isWeaker && factor.value <= 1.0 - kLeastShift) {
        advice.loadFactor = factor.value;
        advice.words << Text::tr("On days like this the lifter is %1 % weaker than usual (%2 to "
                                 "%3 %): bench loads lighter by that much.")
                            .arg(percentOff(factor.value), percentOff(factor.high90),
                                percentOff(factor.low90));
    } else if (factor.low90 >= 1.0 + kLeastShift) {
        if (!limits.pains.empty())
            return; // what was said of the pain is enough
        if (limits.isBeginner()) {
            advice.words << Text::tr(
                "On days like this the lifter is stronger than usual. The loads "
                "stay: minors and novices get nothing heavier for it.");
            return;
        }
        advice.loadFactor = std::min(factor.low90, kMostIncrease);
        advice.words << Text::tr("On days like this the lifter is stronger than usual, by %1 % at "
                                 "least. Bench loads may go up by %2 %; they stay until you switch "
                                 "that on.")
                            .arg(percentOff(factor.low90), percentOff(advice.loadFactor));
    } else if (isWeaker || factor.low90 > 1.0) {
        advice.words << Text::tr("What readiness like this does to this lifter's strength for "
                                 "sure is less than half a percent. The loads stay.");
    } else {
        advice.words << Text::tr("Readiness like this has not changed this lifter's strength so "
                                 "that it could be told from chance. The loads stay.");
    }
}

} // namespace

std::optional<double> readinessOf(const LoggedSession &session, std::span<const CheckIn> checkIns)
{
    for (const CheckIn &checkIn : checkIns)
        if (checkIn.lifter == session.lifter && checkIn.day == session.day)
            if (const auto said = readiness(checkIn))
                return said;
    return session.readiness ? std::optional<double>(*session.readiness) : std::nullopt;
}

std::map<QDate, double> readinessByDay(
    std::span<const LoggedSession> sessions, std::span<const CheckIn> checkIns)
{
    std::map<QDate, double> byDay;
    for (const LoggedSession &session : sessions)
        if (const auto said = readinessOf(session, checkIns))
            byDay[session.day] = *said;
    for (const CheckIn &checkIn : checkIns)
        if (const auto said = readiness(checkIn))
            byDay[checkIn.day] = *said;
    return byDay;
}

std::vector<strength::ReadinessReading> readinessReadings(
    const LiftEstimate &lift, std::span<const CheckIn> checkIns)
{
    std::map<int, double> said;
    for (const LoggedSession &session : lift.readings)
        if (session.readiness)
            said.emplace(engineDay(session.day), *session.readiness);
    for (const CheckIn &checkIn : checkIns)
        if (!lift.readings.empty() && checkIn.lifter == lift.readings.front().lifter)
            if (const auto answer = readiness(checkIn))
                said.insert_or_assign(engineDay(checkIn.day), *answer);
    std::vector<strength::ReadinessReading> readings;
    if (!(lift.estimate.formSd > 0.0))
        return readings;
    for (const strength::DayForm &form : lift.estimate.form)
        if (const auto it = said.find(form.day); it != said.end())
            readings.push_back({it->second, form.factor, lift.estimate.formSd});
    return readings;
}

ReadinessAdvice adviseOnReadiness(const CheckIn &checkIn, const DayLimits &limits,
    const strength::ReadinessEffect *effect, const Lifter &lifter, std::span<const Card> cards,
    std::span<const Variation> catalogue,
    const std::function<bool(const Card &, VariationId)> &isHeavier)
{
    ReadinessAdvice advice;
    if (!limits.pains.empty()) {
        advice.stop = true;
        advice.words << painWords(limits.pains);
    }
    if (const auto said = readiness(checkIn)) {
        shiftLoads(advice, *said, limits, effect);
        if (limits.noMaximal == std::vector{NoMaximal::lowReadiness})
            advice.words << Text::tr("Low readiness: leave the maximal attempt for another day.");
    }
    advice.swaps = Swaps(limits, lifter, catalogue, isHeavier).forSoreness(checkIn, cards);
    for (const SoreSwap &swap : advice.swaps)
        advice.words << swap.words;
    return advice;
}

} // namespace core
