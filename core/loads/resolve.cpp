#include "core/loads/resolve.h"

#include "core/domain/text.h"
#include "core/loads/effort_words.h"
#include "core/loads/estimate_words.h"
#include "core/loads/manner_cost.h"
#include "core/loads/odds.h"
#include "core/strength/hard_sets.h"
#include "core/strength/interval.h"
#include "core/strength/prescription.h"

#include <algorithm>
#include <cmath>

namespace core {

namespace {

constexpr int kRounds = 3;

/// Reps of a set in one variation: a whole set has one part, a lead-rep set two.
struct Part
{
    int row = -1; ///< of the estimate
    int reps = 1;
    double factor = 1.0; ///< on the variation's max, for tempo and pause
};

double middle(double from, const std::optional<double> &to)
{
    return to ? (from + *to) / 2.0 : from;
}

/// Reps in reserve that the target asks for; empty for other targets.
std::optional<double> reserveAsked(const Target &target)
{
    if (const auto *rpe = std::get_if<RpeTarget>(&target))
        return 10.0 - middle(rpe->rpe, rpe->to);
    if (const auto *rir = std::get_if<ReserveTarget>(&target))
        return middle(rir->rir, rir->to);
    return std::nullopt;
}

strength::Band scaled(const strength::Band &band, double factor)
{
    return {band.kg * factor, band.low90 * factor, band.high90 * factor};
}

/// Resolves the lines of one card in order.
class CardResolver
{
public:
    CardResolver(VariationId variation, const LoadBasis &basis)
        : m_basis(basis)
        , m_variation(variation)
    {
    }

    ResolvedLine resolve(const SetLine &line, double hardSetsBefore)
    {
        ResolvedLine resolved;
        resolved.line = line;
        resolved.hardSetsAfter = hardSetsBefore + line.sets;
        const std::vector<Part> parts = partsOf(line);
        // How hard the sets before the last one are depends on the load, and the load on them. The
        // first round takes them all for hard; each further one is nearer, and two are enough.
        std::vector<double> before;
        for (int set = 0; set < line.sets; ++set)
            before.push_back(hardSetsBefore + set);
        for (int round = 0; round < kRounds; ++round) {
            resolved.target = target(line, parts, before.back(), resolved.why);
            if (!resolved.target)
                return resolved;
            resolved.load = m_basis.plates.round(resolved.target->kg);
            if (!canCarry(parts))
                break;
            resolved.hardSetsAfter = countHardSets(parts.back(), resolved.load->loadKg, before);
        }
        m_topKg = std::max(m_topKg.value_or(0.0), resolved.load->loadKg);
        if (canCarry(parts)) {
            const double loadKg = resolved.load->loadKg;
            resolved.firstReserve = reserveAt(parts.back(), before.front(), loadKg);
            resolved.lastReserve = reserveAt(parts.back(), before.back(), loadKg);
            resolved.firstMade = chance({before.front()}, parts, loadKg);
            resolved.allMade = line.sets == 1 ? resolved.firstMade : chance(before, parts, loadKg);
        }
        resolved.caution = caution(resolved);
        return resolved;
    }

private:
    // What is lifted

    [[nodiscard]] int rowOf(VariationId id) const
    {
        return m_basis.estimate ? m_basis.estimate->rowOf(id) : -1;
    }

    [[nodiscard]] Part partOf(VariationId id, int reps, const Manner &manner) const
    {
        const Variation *variation = find(m_basis.catalogue, id);
        const double factor = variation ? mannerFactor(*variation, manner) : 1.0;
        return {rowOf(id), reps, factor};
    }

    /// Lead reps first. Tempo and pause of a lead-rep set are those of the lead reps.
    [[nodiscard]] std::vector<Part> partsOf(const SetLine &line) const
    {
        if (line.leadReps == 0)
            return {partOf(m_variation, expectedReps(line), line.manner)};
        return {
            partOf(m_variation, line.leadReps, line.manner), Part{rowOfRest(line), line.reps, 1.0}};
    }

    [[nodiscard]] int rowOfRest(const SetLine &line) const
    {
        if (line.restCode.isEmpty())
            return m_basis.estimate && !m_basis.estimate->rows.empty() ? 0 : -1;
        const Variation *rest = withCode(m_basis.catalogue, line.restCode);
        return rest ? rowOf(rest->id) : -1;
    }

    // The load asked for

    std::optional<strength::Band> target(
        const SetLine &line, const std::vector<Part> &parts, double beforeLast, QString &why) const
    {
        if (std::holds_alternative<std::monostate>(line.target)) {
            why = Text::tr("No target yet: add @8 for RPE, 75% of the max, or a load.");
            return std::nullopt;
        }
        if (const auto *asked = std::get_if<LoadTarget>(&line.target))
            return strength::Band{asked->loadKg, asked->loadKg, asked->loadKg};
        if (const auto *drop = std::get_if<DropTarget>(&line.target))
            return belowTop(*drop, why);
        if (why = whyNoEstimate(line, parts); !why.isEmpty())
            return std::nullopt;
        const std::optional<double> reserve = reserveAsked(line.target);
        if (reserve && line.asManyAsPossible && line.reps == 1) {
            why = Text::tr(
                "As many as possible needs a load, a share of the max or a drop: how hard the "
                "last rep shall be does not say how heavy the bar is.");
            return std::nullopt;
        }
        std::optional<strength::Band> lightest;
        for (const Part &part : parts) {
            const std::optional<strength::Band> load = reserve
                ? loadFor(part, *reserve, beforeLast)
                : shareOfMax(part, std::get<ShareTarget>(line.target).percent / 100.0);
            if (!load) {
                why = advice(strength::Standing::noData);
                return std::nullopt;
            }
            if (!lightest || load->kg < lightest->kg)
                lightest = load;
        }
        return lightest;
    }

    std::optional<strength::Band> belowTop(const DropTarget &drop, QString &why) const
    {
        if (!m_topKg) {
            why = Text::tr("There is no line with a load above to drop from.");
            return std::nullopt;
        }
        double kg = *m_topKg;
        if (drop.in == DropTarget::In::percent)
            kg *= 1.0 - drop.amount / 100.0;
        else
            kg -=
                toKg(drop.amount, drop.in == DropTarget::In::pound ? Unit::pound : Unit::kilogram);
        if (kg <= 0.0) {
            why = Text::tr("The drop is larger than the top set.");
            return std::nullopt;
        }
        return strength::Band{kg, kg, kg};
    }

    [[nodiscard]] QString whyNoEstimate(const SetLine &line, const std::vector<Part> &parts) const
    {
        if (!m_basis.estimate)
            return Text::tr("The estimate is being worked out.");
        if (const Variation *v = find(m_basis.catalogue, m_variation); v && v->assistance)
            return Text::tr("Assistance work: the lifter takes the load that fits the effort.");
        if (parts.front().row < 0)
            return Text::tr("This variation has no competition lift to be measured against.");
        if (parts.back().row < 0)
            return Text::tr("The catalogue has no variation %1 of this lift.").arg(line.restCode);
        const strength::LifterEstimate &estimate = m_basis.estimate->estimate;
        return carriesLoads(estimate.standing) ? QString() : advice(estimate);
    }

    [[nodiscard]] bool canCarry(const std::vector<Part> &parts) const
    {
        return m_basis.estimate && carriesLoads(m_basis.estimate->estimate.standing)
            && std::ranges::all_of(parts, [](const Part &p) { return p.row >= 0; });
    }

    // The engine

    [[nodiscard]] std::optional<strength::Band> loadFor(
        const Part &part, double reserve, double hardSetsBefore) const
    {
        std::optional<strength::Band> load =
            strength::loadFor(m_basis.estimate->estimate, engineDay(m_basis.day),
                m_basis.estimate->priors, {part.row, part.reps, reserve, hardSetsBefore});
        return load ? std::optional(scaled(*load, part.factor)) : std::nullopt;
    }

    [[nodiscard]] std::optional<strength::Band> shareOfMax(const Part &part, double share) const
    {
        const auto max = loadFor({part.row, 1, part.factor}, 0.0, 0);
        return max ? std::optional(scaled(*max, share)) : std::nullopt;
    }

    [[nodiscard]] std::optional<strength::Interval> reserveAt(
        const Part &part, double hardSetsBefore, double loadKg) const
    {
        return strength::reserveAt(m_basis.estimate->estimate, engineDay(m_basis.day),
            m_basis.estimate->priors, {part.row, part.reps, 0.0, hardSetsBefore},
            loadKg / part.factor);
    }

    /// Hard sets before each set at this load, from before.front() on.
    /// @return those after the last one
    double countHardSets(const Part &part, double loadKg, std::vector<double> &before) const
    {
        double count = before.front();
        for (double &each : before) {
            each = count;
            const auto reserve = reserveAt(part, count, loadKg);
            count = strength::hardSetsAfter(count, reserve ? reserve->value : 0.0);
        }
        return count;
    }

    [[nodiscard]] std::optional<double> chance(
        const std::vector<double> &before, const std::vector<Part> &parts, double loadKg) const
    {
        std::vector<Margin> margins;
        for (const double hardSets : before)
            for (const Part &part : parts) {
                const auto limit = loadFor(part, 0.0, hardSets);
                const auto max = loadFor({part.row, 1, part.factor}, 0.0, hardSets);
                if (!limit || !max)
                    return std::nullopt;
                const double curveSd = kCurveDoubt * std::log(max->kg / limit->kg);
                const double formSd = m_basis.estimate->estimate.formSd;
                const double sd = strength::sdOfLn(limit->low90, limit->high90);
                const double ofMax = std::sqrt(std::max(sd * sd - formSd * formSd, 0.0));
                margins.push_back(
                    {std::log(limit->kg / loadKg), std::hypot(ofMax, curveSd), formSd});
            }
        return chanceOfAll(margins);
    }

    // Words

    [[nodiscard]] QString caution(const ResolvedLine &line) const
    {
        QStringList said;
        const PlateTable &plates = m_basis.plates;
        const auto load = [this](double kg) { return formatLoad(kg, m_basis.unit); };
        const double halfJump = plates.smallestJumpKg().value_or(0.0) / 2.0;
        if (line.target->kg < plates.lightestKg() - halfJump)
            said << Text::tr("The empty bar is heavier than the %1 asked for.")
                        .arg(load(line.target->kg));
        else if (line.target->kg > plates.heaviestKg() + halfJump)
            said << Text::tr("The plates at hand end at %1; %2 was asked for.")
                        .arg(load(plates.heaviestKg()), load(line.target->kg));
        else if (std::holds_alternative<LoadTarget>(line.line.target)
            && std::abs(line.load->loadKg - line.target->kg) > 1e-3)
            said << Text::tr("%1 cannot be loaded with the plates at hand.")
                        .arg(load(line.target->kg));
        // A max single is an even chance, and said to be one: no reason to be warned.
        if (line.lastReserve && line.lastReserve->value < 0.0
            && line.allMade.value_or(0.0) < kLeastEven)
            said << Text::tr("The last set is likely to be missed.");
        if (line.lastReserve && m_basis.estimate->estimate.standing != strength::Standing::enough)
            said << advice(m_basis.estimate->estimate);
        return said.join(u' ');
    }

    const LoadBasis &m_basis;
    VariationId m_variation;
    std::optional<double> m_topKg; ///< the heaviest line so far
};

} // namespace

std::vector<ResolvedLine> resolve(const std::vector<SetLine> &lines, VariationId variation,
    const LoadBasis &basis, double hardSetsBefore)
{
    CardResolver resolver(variation, basis);
    std::vector<ResolvedLine> resolved;
    for (const SetLine &line : lines) {
        resolved.push_back(resolver.resolve(line, hardSetsBefore));
        hardSetsBefore = resolved.back().hardSetsAfter;
    }
    return resolved;
}

int setCount(const std::vector<SetLine> &lines)
{
    int sets = 0;
    for (const SetLine &line : lines)
        sets += line.sets;
    return sets;
}

int liftCount(const std::vector<SetLine> &lines)
{
    int lifts = 0;
    for (const SetLine &line : lines)
        lifts += line.sets
            * (line.asManyAsPossible ? line.mostReps.value_or(line.reps) : expectedReps(line));
    return lifts;
}

double tonnageKg(std::span<const ResolvedLine> lines)
{
    double kg = 0.0;
    for (const ResolvedLine &line : lines)
        if (line.load)
            kg += line.load->loadKg * line.line.sets * expectedReps(line);
    return kg;
}

double rpeFromReserve(double reserve)
{
    return std::clamp(10.0 - reserve, 1.0, 10.0);
}

} // namespace core
