#include "tests/simulators/program_coach.h"

#include "core/loads/lift_estimate.h"
#include "tests/simulators/bench_variations.h"

#include <cmath>

namespace simulators {

namespace {

/// The lifter as the program knows one: grown up, without pain, with the usual plates.
core::Lifter someLifter()
{
    core::Lifter lifter;
    lifter.id = {1};
    lifter.name = QStringLiteral("Simulated");
    lifter.isAdult = true;
    lifter.gear = core::usualGear(core::Unit::kilogram);
    return lifter;
}

/// Lead reps are done in the card's variation, the rest in the one that follows.
core::VariationId cardVariation(const Work &work)
{
    return idOfRow(work.leadReps > 0 ? work.leadVariation : work.variation);
}

class ByProgram final : public Coach
{
public:
    ByProgram(std::unique_ptr<Coach> before, ProgramCoaching coaching, Random luck)
        : m_before(std::move(before))
        , m_coaching(std::move(coaching))
        , m_luck(luck)
    {
        m_lift.priors = benchVariations();
        for (size_t row = 0; row < m_lift.priors.size(); ++row)
            m_lift.rows.push_back(idOfRow(int(row)));
    }

    void startSession(const PlannedSession &plan, int day, const strength::LifterLog &log) override
    {
        m_loads.clear();
        m_next = 0;
        if (day < m_coaching.from)
            return;
        m_lift.estimate = strength::estimateLifter(log, m_lift.priors, m_coaching.learnt, day);
        std::vector<core::Card> cards;
        for (const Work &work : plan.works)
            cards.push_back(card(work, day, int(cards.size())));
        if (m_luck.chance(1.0 / 3.0))
            writeFirstByHand(cards.front());
        for (core::ResolvedCard &resolved : resolve(std::move(cards))) {
            for (const core::ResolvedLine &line : resolved.lines)
                m_loads.insert(m_loads.end(), size_t(line.line.sets),
                    line.load ? std::optional(line.load->loadKg) : std::nullopt);
            resolved.given = core::GivenMark{core::GivenBy::firstSet, {}, {}};
            m_coaching.given->push_back(std::move(resolved));
        }
    }

    /// Where the program has no load yet, the coach before it still has one.
    double load(const Work &work) const override
    {
        const bool has = m_next < m_loads.size() && m_loads[m_next];
        return has ? *m_loads[m_next] : m_before->load(work);
    }

    void read(const Work &work, const strength::TrainingSet &set) override
    {
        m_before->read(work, set);
        ++m_next;
    }

    void passWeek() override { m_before->passWeek(); }

private:
    core::Card card(const Work &work, int day, int position)
    {
        core::SetLine line;
        line.sets = work.sets;
        line.reps = work.reps;
        line.leadReps = work.leadReps;
        if (work.leadReps > 0 && work.variation != competition)
            line.restCode = benchCatalogue()[size_t(work.variation)].code;
        line.target = core::ReserveTarget{std::round(2.0 * work.rir) / 2.0};
        return {{++m_cards}, {1}, dateOf(day), position, cardVariation(work),
            core::setLineText(line), {}};
    }

    /// The first set alone, and the others as they were asked for.
    void writeFirstByHand(core::Card &card)
    {
        std::vector<core::SetLine> lines = core::parseSetLines(card.setLine).lines;
        core::SetLine first = lines.front();
        first.sets = 1;
        first.target = core::ReserveTarget{0.0};
        core::Card hardest = card;
        hardest.setLine = core::setLineText(first);
        const std::optional<core::BarLoad> load = resolve({hardest}).front().lines.front().load;
        if (!load)
            return;
        const double aim = load->loadKg * m_luck.uniform(0.93, 1.05);
        first.target = core::LoadTarget{std::max(2.5 * std::round(aim / 2.5), 20.0)};
        lines.insert(lines.begin(), first);
        if (--lines.back().sets == 0)
            lines.pop_back();
        card.setLine = core::setLineText(lines);
    }

    std::vector<core::ResolvedCard> resolve(std::vector<core::Card> cards) const
    {
        return core::resolveCards(std::move(cards),
            {m_lifter, benchCatalogue(), [this](core::Lift) { return &m_lift; }, core::noCheckIns(),
                {}, cards.front().day});
    }

    std::unique_ptr<Coach> m_before;
    ProgramCoaching m_coaching;
    Random m_luck;
    core::Lifter m_lifter = someLifter();
    core::LiftEstimate m_lift;
    std::vector<std::optional<double>> m_loads; ///< of the session, one a set
    size_t m_next = 0;
    qint64 m_cards = 0;
};

} // namespace

const std::vector<core::Variation> &benchCatalogue()
{
    static const std::vector<core::Variation> catalogue = [] {
        std::vector<core::Variation> rows;
        for (const strength::VariationPrior &prior : benchVariations()) {
            core::Variation row;
            row.id = idOfRow(int(rows.size()));
            row.code = QStringLiteral("v%1").arg(row.id.value);
            row.name = row.code;
            row.competition = rows.empty();
            row.ratio = prior.ratio;
            row.ratioSpread = prior.spread;
            row.repCost = prior.repCost;
            rows.push_back(row);
        }
        return rows;
    }();
    return catalogue;
}

core::VariationId idOfRow(int row)
{
    return {row + 1};
}

QDate dateOf(int day)
{
    return core::fromEngineDay(day);
}

std::unique_ptr<Coach> coachByProgram(
    std::unique_ptr<Coach> before, ProgramCoaching coaching, Random luck)
{
    return std::make_unique<ByProgram>(std::move(before), std::move(coaching), luck);
}

} // namespace simulators
