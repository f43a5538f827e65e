#include "core/plan/resolve.h"

#include "core/plan/estimate_words.h"
#include "core/strength/prescription.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace core {

namespace {

/// Resolves the lines of one card in order.
class CardResolver
{
    Q_DECLARE_TR_FUNCTIONS(Resolve)
public:
    CardResolver(VariationId variation, const LoadBasis &basis)
        : m_basis(basis)
        , m_row(basis.estimate ? basis.estimate->rowOf(variation) : -1)
    {
    }

    ResolvedLine resolve(const SetLine &line, int hardSetsBefore) const
    {
        ResolvedLine resolved;
        resolved.line = line;
        const int beforeLast = hardSetsBefore + line.sets - 1;
        if (std::holds_alternative<std::monostate>(line.target)) {
            resolved.why = tr("No target yet: add @8 for RPE, 75% of the max, or a load.");
            return resolved;
        }
        if (const auto *asked = std::get_if<LoadTarget>(&line.target)) {
            resolved.target = strength::Band{asked->loadKg, asked->loadKg, asked->loadKg};
        } else if (resolved.why = whyNoEstimate(); !resolved.why.isEmpty()) {
            return resolved;
        } else if (const auto *rpe = std::get_if<RpeTarget>(&line.target)) {
            resolved.target = loadFor({m_row, line.reps, 10.0 - rpe->rpe, beforeLast});
        } else {
            resolved.target = shareOfMax(std::get<ShareTarget>(line.target).percent / 100.0);
        }
        if (!resolved.target) {
            resolved.why = advice(strength::Standing::noData);
            return resolved;
        }
        resolved.load = m_basis.plates.round(resolved.target->kg);
        resolved.firstReserve = reserveAt(line.reps, hardSetsBefore, resolved.load->loadKg);
        resolved.lastReserve = reserveAt(line.reps, beforeLast, resolved.load->loadKg);
        resolved.caution = caution(resolved);
        return resolved;
    }

private:
    [[nodiscard]] bool hasEstimate() const
    {
        return m_row >= 0 && carriesLoads(m_basis.estimate->estimate.standing);
    }

    [[nodiscard]] QString whyNoEstimate() const
    {
        if (!m_basis.estimate)
            return tr("The estimate is being worked out.");
        if (m_row < 0)
            return tr("This variation has no competition lift to be measured against.");
        const strength::Standing standing = m_basis.estimate->estimate.standing;
        return carriesLoads(standing) ? QString() : advice(standing);
    }

    [[nodiscard]] std::optional<strength::Band> loadFor(const strength::PlannedSet &set) const
    {
        return strength::loadFor(
            m_basis.estimate->estimate, engineDay(m_basis.day), m_basis.estimate->priors, set);
    }

    [[nodiscard]] std::optional<strength::Band> shareOfMax(double share) const
    {
        std::optional<strength::Band> load = loadFor({m_row, 1, 0.0, 0});
        if (load)
            *load = {load->kg * share, load->low90 * share, load->high90 * share};
        return load;
    }

    [[nodiscard]] std::optional<strength::Interval> reserveAt(
        int reps, int hardSetsBefore, double loadKg) const
    {
        if (!hasEstimate())
            return std::nullopt;
        return strength::reserveAt(m_basis.estimate->estimate, engineDay(m_basis.day),
            m_basis.estimate->priors, {m_row, reps, 0.0, hardSetsBefore}, loadKg);
    }

    [[nodiscard]] QString caution(const ResolvedLine &line) const
    {
        QStringList said;
        const PlateTable &plates = m_basis.plates;
        const auto load = [this](double kg) { return formatLoad(kg, m_basis.unit); };
        const double halfJump = plates.smallestJumpKg().value_or(0.0) / 2.0;
        if (line.target->kg < plates.lightestKg() - halfJump)
            said
                << tr("The empty bar is heavier than the %1 asked for.").arg(load(line.target->kg));
        else if (line.target->kg > plates.heaviestKg() + halfJump)
            said << tr("The plates at hand end at %1; %2 was asked for.")
                        .arg(load(plates.heaviestKg()), load(line.target->kg));
        else if (std::holds_alternative<LoadTarget>(line.line.target)
            && std::abs(line.load->loadKg - line.target->kg) > 1e-3)
            said << tr("%1 cannot be loaded with the plates at hand.").arg(load(line.target->kg));
        if (line.lastReserve && line.lastReserve->value < 0.0)
            said << tr("The last set is likely to be missed.");
        if (hasEstimate() && m_basis.estimate->estimate.standing != strength::Standing::enough)
            said << advice(m_basis.estimate->estimate.standing);
        return said.join(u' ');
    }

    const LoadBasis &m_basis;
    int m_row;
};

} // namespace

std::vector<ResolvedLine> resolve(const std::vector<SetLine> &lines, VariationId variation,
    const LoadBasis &basis, int hardSetsBefore)
{
    const CardResolver resolver(variation, basis);
    std::vector<ResolvedLine> resolved;
    for (const SetLine &line : lines) {
        resolved.push_back(resolver.resolve(line, hardSetsBefore));
        hardSetsBefore += line.sets;
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
        lifts += line.sets * line.reps;
    return lifts;
}

double tonnageKg(std::span<const ResolvedLine> lines)
{
    double kg = 0.0;
    for (const ResolvedLine &line : lines)
        if (line.load)
            kg += line.load->loadKg * line.line.sets * line.line.reps;
    return kg;
}

double rpeFromReserve(double reserve)
{
    return std::clamp(10.0 - reserve, 1.0, 10.0);
}

} // namespace core
