#include "core/advice/readiness_advice.h"

#include "core/domain/text.h"
#include "core/domain/variation.h"

#include <QLocale>
#include <algorithm>
#include <cmath>
#include <limits>

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

QString painWords(const PainFlag &pain)
{
    const QString where = pain.area ? words(*pain.area) : pain.words.trimmed();
    return Text::tr("Pain (%1): stop what hurts, and refer to a physician or physiotherapist. "
                    "Nothing heavier and no maximal attempt today.")
        .arg(where);
}

/// The sore areas of the check-in that the variation works.
std::vector<BodyArea> soreAndWorked(const CheckIn &checkIn, const Variation &variation)
{
    std::vector<BodyArea> areas = soreAreas(checkIn);
    std::erase_if(areas, [&](BodyArea area) { return !works(variation, area); });
    return areas;
}

/// Works none of the areas; nearest in load, those for the lifter's touch first.
/// @param mostRatio  to the competition lift: with pain nothing heavier is offered
const Variation *spareFor(const Variation &planned, const std::vector<BodyArea> &areas,
    double mostRatio, const Lifter &lifter, std::span<const Variation> catalogue)
{
    const Variation *best = nullptr;
    const auto rank = [&](const Variation &v) {
        return std::pair(!suits(v.serves, lifter.touchStyle), std::abs(v.ratio - planned.ratio));
    };
    for (const Variation &v : catalogue) {
        const bool fits = v.lift == planned.lift && !v.retired && v.id != planned.id
            && v.ratio <= mostRatio
            && std::ranges::none_of(areas, [&v](BodyArea area) { return works(v, area); });
        if (fits && (!best || rank(v) < rank(*best)))
            best = &v;
    }
    return best;
}

std::vector<SoreSwap> swapsFor(const CheckIn &checkIn, const Lifter &lifter,
    std::span<const Card> cards, std::span<const Variation> catalogue)
{
    std::vector<SoreSwap> swaps;
    for (const Card &card : cards) {
        const Variation *planned = find(catalogue, card.variation);
        if (!planned
            || (checkIn.pain && checkIn.pain->area && works(*planned, *checkIn.pain->area)))
            continue; // for pain there is no swap
        const std::vector<BodyArea> areas = soreAndWorked(checkIn, *planned);
        if (areas.empty())
            continue;
        std::vector<BodyArea> spared = areas;
        if (checkIn.pain && checkIn.pain->area)
            spared.push_back(*checkIn.pain->area);
        const double mostRatio =
            checkIn.pain ? planned->ratio : std::numeric_limits<double>::infinity();
        if (const Variation *spare = spareFor(*planned, spared, mostRatio, lifter, catalogue))
            swaps.push_back({card.id, spare->id,
                Text::tr("Sore: %1. %2 instead of %3 spares it.")
                    .arg(listed(areas), spare->name, planned->name)});
    }
    return swaps;
}

void shiftLoads(ReadinessAdvice &advice, double readiness, const strength::ReadinessEffect *effect)
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
        advice.loadFactor = factor.low90;
        advice.words << Text::tr("On days like this the lifter is stronger than usual, by %1 % at "
                                 "least: bench loads heavier by no more than that.")
                            .arg(percentOff(factor.low90));
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

ReadinessAdvice adviseOnReadiness(const CheckIn &checkIn, const strength::ReadinessEffect *effect,
    const Lifter &lifter, std::span<const Card> cards, std::span<const Variation> catalogue)
{
    ReadinessAdvice advice;
    if (checkIn.pain) {
        advice.stop = true;
        advice.mayGoMaximal = false;
        advice.words << painWords(*checkIn.pain);
    }
    if (const auto said = readiness(checkIn)) {
        shiftLoads(advice, *said, effect);
        if (*said < kLowReadiness && advice.mayGoMaximal) {
            advice.mayGoMaximal = false;
            advice.words << Text::tr("Low readiness: leave the maximal attempt for another day.");
        }
    }
    if (advice.stop && advice.loadFactor > 1.0) {
        advice.loadFactor = 1.0;
        advice.words.erase(advice.words.begin() + 1, advice.words.end());
    }
    advice.swaps = swapsFor(checkIn, lifter, cards, catalogue);
    for (const SoreSwap &swap : advice.swaps)
        advice.words << swap.words;
    return advice;
}

} // namespace core
