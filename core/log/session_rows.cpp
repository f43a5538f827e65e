#include "core/log/session_rows.h"

#include "core/domain/variation.h"
#include "core/loads/limited_lines.h"
#include "core/loads/set_in_values.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace core {

namespace {

constexpr double kAboutSameLoad = 0.10; ///< share by which an answering load may differ

/// Readiness was measured on the bench press, and says nothing of the other lifts.
bool isBench(const DaySet &set, std::span<const Variation> catalogue)
{
    const Variation *variation = find(catalogue, set.variation);
    return variation && variation->lift == Lift::bench;
}

/// A drop may come down from a load by hand.
bool isByHand(const Target &target)
{
    return std::holds_alternative<LoadTarget>(target) || std::holds_alternative<DropTarget>(target);
}

PlannedSetRef refOf(const DaySet &set)
{
    return {set.card, set.set};
}

// Pairing: costs of leaving sets over and of pairs that are not quite what was planned

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kExtra = 2.0; ///< a logged set that answers no planned one
constexpr double kOpen = 0.0;  ///< a planned set without an answer: most are, while logging
constexpr double kOtherReps = 0.5;
constexpr double kOtherLead = 0.25;
constexpr double kSwapped = 1.0;

/// Pairs logged with planned sets, see sessionRows().
class Pairing
{
public:
    Pairing(std::span<const DaySet> planned, std::span<const SetEntry> done,
        std::span<const Variation> catalogue)
        : m_planned(planned)
        , m_done(done)
        , m_catalogue(catalogue)
        , m_saysPlanned(std::ranges::any_of(
              done, [](const SetEntry &entry) { return entry.repsPlanned.has_value(); }))
        , m_least((planned.size() + 1) * (done.size() + 1), 0.0)
    {
        for (size_t p = planned.size() + 1; p-- > 0;)
            for (size_t d = done.size() + 1; d-- > 0;)
                least(p, d) = std::min({byOpen(p, d), byExtra(p, d), byPair(p, d)});
    }

    [[nodiscard]] std::vector<SessionRow> rows()
    {
        std::vector<SessionRow> rows;
        size_t p = 0;
        size_t d = 0;
        while (p < m_planned.size() || d < m_done.size()) {
            // Of equal ways the one that answers the earlier set.
            if (byPair(p, d) <= least(p, d))
                rows.push_back({p++, d++});
            else if (byExtra(p, d) <= least(p, d))
                rows.push_back({std::nullopt, d++});
            else
                rows.push_back({p++, std::nullopt});
        }
        return rows;
    }

private:
    /// Least cost of the sets from p and from d on.
    double &least(size_t p, size_t d) { return m_least[p * (m_done.size() + 1) + d]; }

    double byOpen(size_t p, size_t d)
    {
        if (p == m_planned.size())
            return d == m_done.size() ? 0.0 : kNever;
        return kOpen + least(p + 1, d);
    }
    double byExtra(size_t p, size_t d)
    {
        return d == m_done.size() ? (p == m_planned.size() ? 0.0 : kNever)
                                  : kExtra + least(p, d + 1);
    }
    double byPair(size_t p, size_t d)
    {
        return p == m_planned.size() || d == m_done.size()
            ? kNever
            : pairCost(m_planned[p], m_done[d]) + least(p + 1, d + 1);
    }

    [[nodiscard]] double pairCost(const DaySet &planned, const SetEntry &done) const
    {
        if (done.answers && isPlanned(*done.answers))
            return refOf(planned) == *done.answers ? 0.0 : kNever;
        const bool isSame = planned.variation == done.variation;
        if (!done.repsPlanned) {
            const bool isNear =
                !planned.planKg || std::abs(done.loadKg / *planned.planKg - 1.0) <= kAboutSameLoad;
            return isSame && isNear && !m_saysPlanned ? 0.0 : kNever;
        }
        const bool sameReps = *done.repsPlanned == planned.reps;
        if (isSame)
            return (sameReps ? 0.0 : kOtherReps)
                + (planned.lead.has_value() == done.lead.has_value() ? 0.0 : kOtherLead);
        return sameReps && sameLift(planned.variation, done.variation) ? kSwapped : kNever;
    }

    [[nodiscard]] bool isPlanned(const PlannedSetRef &ref) const
    {
        return std::ranges::find(m_planned, ref, refOf) != m_planned.end();
    }

    [[nodiscard]] bool sameLift(VariationId a, VariationId b) const
    {
        const Variation *one = find(m_catalogue, a);
        const Variation *other = find(m_catalogue, b);
        return one && other && one->lift == other->lift;
    }

    std::span<const DaySet> m_planned;
    std::span<const SetEntry> m_done;
    std::span<const Variation> m_catalogue;
    bool m_saysPlanned;
    std::vector<double> m_least;
};

} // namespace

std::vector<DaySet> daySets(
    std::span<const ResolvedCard> cards, std::span<const Variation> catalogue, Unit unit)
{
    std::vector<DaySet> sets;
    for (const ResolvedCard &card : cards) {
        const Variation *variation = find(catalogue, card.card.variation);
        if (!variation)
            continue;
        int number = 0;
        for (size_t line = 0; line < card.lines.size(); ++line)
            for (const SetInValues &values :
                setsInValues(card.lines[line], *variation, catalogue)) {
                DaySet set;
                set.card = card.card.id;
                set.line = line;
                set.set = number++;
                set.isGiven = card.given.has_value();
                const Variation *done = withCode(catalogue, values.code);
                set.variation = done ? done->id : variation->id;
                if (values.leadReps > 0)
                    set.lead = {variation->id, values.leadReps};
                set.reps = values.reps;
                set.isExact = values.isExact;
                set.isOpenEnded = values.isOpenEnded;
                set.repsText = printReps(card.lines[line].line);
                set.isMaximal = values.isMaximal;
                set.isByHand = isByHand(card.lines[line].line.target);
                set.planKg = values.loadKg;
                set.withheld = withheldWords(card.lines[line], unit);
                if (set.withheld.isEmpty())
                    set.loadKg = values.loadKg;
                set.rpe = values.rpe;
                set.effort = values.effort;
                set.why = card.lines[line].why;
                sets.push_back(std::move(set));
            }
    }
    return sets;
}

std::vector<DaySet> shifted(std::vector<DaySet> sets, const ReadinessAdvice &advice,
    std::span<const Variation> catalogue, const PlateTable &plates)
{
    const bool isUp = advice.loadFactor > 1.0;
    for (DaySet &set : sets) {
        if (!set.loadKg || !isBench(set, catalogue)
            || (isUp && (set.reps == 1 || set.isMaximal || set.isByHand)))
            continue;
        set.loadKg =
            plates.round(*set.loadKg * advice.loadFactor, isUp ? Rounding::down : Rounding::nearest)
                .loadKg;
    }
    return sets;
}

std::vector<SessionRow> sessionRows(std::span<const DaySet> planned, std::span<const SetEntry> done,
    std::span<const Variation> catalogue)
{
    return Pairing(planned, done, catalogue).rows();
}

SetEntry asPlanned(const DaySet &set)
{
    SetEntry entry;
    entry.variation = set.variation;
    entry.lead = set.lead;
    entry.answers = refOf(set);
    entry.loadKg = set.loadKg.value_or(0.0);
    entry.repsPlanned = set.reps;
    entry.repsDone = set.isExact && set.withheld.isEmpty() ? set.reps : 0;
    return entry;
}

SetAsked askedOf(const DaySet &set, std::span<const Variation> catalogue)
{
    const Variation *variation = find(catalogue, set.variation);
    SetAsked asked;
    asked.variation = variation ? variation->name : QStringLiteral("?");
    asked.loadKg = set.loadKg;
    if (set.isExact)
        asked.reps = set.reps;
    asked.rpe = set.rpe;
    if (set.lead)
        asked.leadReps = set.lead->reps;
    return asked;
}

} // namespace core
