#include "core/loads/rack_order.h"

#include <algorithm>
#include <stdexcept>
#include <tuple>
#include <utility>

namespace core {

namespace {

/// The plates of one side from the inside out.
std::vector<double> sleeve(const BarLoad &load)
{
    std::vector<double> plates;
    for (const PlatePairs &kind : load.plates)
        plates.insert(plates.end(), size_t(kind.pairs), kind.plateKg);
    return plates;
}

/// What is still to come of an order.
struct Cost
{
    int plates = 0;
    int inARow = 0;

    friend bool operator<(const Cost &a, const Cost &b)
    {
        return std::tie(a.plates, a.inARow) < std::tie(b.plates, b.inARow);
    }
};

/// The sets of all lifters, and the plates moved between any two of them.
class Sets
{
public:
    Sets(const std::vector<std::vector<double>> &loadsKg, double onBarKg, const PlateTable &plates)
    {
        std::vector<BarLoad> loads{plates.round(onBarKg)};
        for (const std::vector<double> &own : loadsKg) {
            m_first.push_back(loads.size());
            m_count.push_back(std::min(own.size(), kMostAhead));
            for (size_t set = 0; set < m_count.back(); ++set)
                loads.push_back(plates.round(own[set]));
        }
        m_moved.assign(loads.size(), std::vector<int>(loads.size()));
        for (size_t from = 0; from < loads.size(); ++from)
            for (size_t to = 0; to < loads.size(); ++to)
                m_moved[from][to] = platesMoved(loads[from], loads[to]);
    }

    [[nodiscard]] size_t lifters() const { return m_count.size(); }
    [[nodiscard]] size_t count(size_t lifter) const { return m_count[lifter]; }
    /// A set by its number among all, which 0 stands before: what is on the bar at first.
    [[nodiscard]] size_t set(size_t lifter, size_t of) const { return m_first[lifter] + of; }
    [[nodiscard]] int moved(size_t from, size_t to) const { return m_moved[from][to]; }

private:
    std::vector<size_t> m_first;
    std::vector<size_t> m_count;
    std::vector<std::vector<int>> m_moved;
};

/// How far everybody is, and who did the last set; nobody yet where `last` is no lifter.
struct State
{
    std::vector<size_t> done;
    size_t last;
};

/// Costs to the end, for every state.
class Costs
{
public:
    explicit Costs(const Sets &sets)
        : m_sets(sets)
    {
        size_t states = 1;
        for (size_t lifter = 0; lifter < sets.lifters(); ++lifter) {
            m_stride.push_back(states);
            states *= sets.count(lifter) + 1;
        }
        m_costs.assign(states * sets.lifters(), Cost{});
        // A state comes before all that it leads to, so the last one is known first.
        State state;
        state.done.resize(sets.lifters());
        for (size_t at = states; at-- > 0;) {
            for (size_t lifter = 0; lifter < sets.lifters(); ++lifter)
                state.done[lifter] = at / m_stride[lifter] % (sets.count(lifter) + 1);
            for (state.last = 0; state.last < sets.lifters(); ++state.last)
                if (state.done[state.last] > 0)
                    m_costs[at * sets.lifters() + state.last] = best(state).second;
        }
    }

    /// Who goes next, and what it all costs from there; no lifter where nothing is left. Of equals
    /// the one whose turn it is.
    [[nodiscard]] std::pair<size_t, Cost> best(const State &state) const
    {
        const size_t lifters = m_sets.lifters();
        const bool isFirst = state.last == lifters;
        const size_t onBar = isFirst ? 0 : m_sets.set(state.last, state.done[state.last] - 1);
        std::pair<size_t, Cost> found{lifters, {}};
        for (size_t turn = 0; turn < lifters; ++turn) {
            const size_t next = isFirst ? turn : (state.last + 1 + turn) % lifters;
            if (state.done[next] == m_sets.count(next))
                continue;
            Cost cost = after(state.done, next);
            cost.plates += m_sets.moved(onBar, m_sets.set(next, state.done[next]));
            cost.inARow += next == state.last;
            if (found.first == lifters || cost < found.second)
                found = {next, cost};
        }
        return found;
    }

private:
    /// What is to come once the lifter has done a set more.
    [[nodiscard]] Cost after(const std::vector<size_t> &done, size_t next) const
    {
        size_t at = m_stride[next];
        for (size_t lifter = 0; lifter < done.size(); ++lifter)
            at += done[lifter] * m_stride[lifter];
        return m_costs[at * done.size() + next];
    }

    const Sets &m_sets;
    std::vector<size_t> m_stride;
    std::vector<Cost> m_costs; ///< by sets done and last lifter
};

/// The order with its price.
RackOrder priced(std::vector<size_t> order, const Sets &sets)
{
    RackOrder priced{std::move(order), 0, 0};
    std::vector<size_t> done(sets.lifters());
    size_t onBar = 0;
    for (size_t at = 0; at < priced.lifters.size(); ++at) {
        const size_t lifter = priced.lifters[at];
        const size_t set = sets.set(lifter, done[lifter]++);
        priced.plates += sets.moved(onBar, set);
        priced.inARow += at > 0 && priced.lifters[at - 1] == lifter;
        onBar = set;
    }
    return priced;
}

} // namespace

int platesMoved(const BarLoad &from, const BarLoad &to)
{
    const std::vector<double> before = sleeve(from);
    const std::vector<double> after = sleeve(to);
    const auto stays = std::ranges::mismatch(before, after).in1 - before.begin();
    return 2 * int(std::ssize(before) + std::ssize(after) - 2 * stays);
}

RackOrder fewestPlates(
    const std::vector<std::vector<double>> &loadsKg, double onBarKg, const PlateTable &plates)
{
    if (loadsKg.size() > kMostOnRack)
        throw std::invalid_argument("more lifters than share a rack");
    const Sets sets(loadsKg, onBarKg, plates);
    const Costs costs(sets);
    std::vector<size_t> order;
    State state{std::vector<size_t>(sets.lifters()), sets.lifters()};
    for (;;) {
        state.last = order.empty() ? sets.lifters() : order.back();
        const size_t next = costs.best(state).first;
        if (next == sets.lifters())
            return priced(std::move(order), sets);
        order.push_back(next);
        ++state.done[next];
    }
}

RackOrder takingTurns(
    const std::vector<std::vector<double>> &loadsKg, double onBarKg, const PlateTable &plates)
{
    const Sets sets(loadsKg, onBarKg, plates);
    std::vector<size_t> order;
    for (size_t round = 0; round < kMostAhead; ++round)
        for (size_t lifter = 0; lifter < sets.lifters(); ++lifter)
            if (round < sets.count(lifter))
                order.push_back(lifter);
    return priced(std::move(order), sets);
}

} // namespace core
