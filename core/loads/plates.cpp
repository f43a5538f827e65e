#include "core/loads/plates.h"

#include "core/domain/text.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

namespace core {

namespace {

constexpr double kMicrogramsPerKg = 1e9;
constexpr std::int64_t kGram = 1'000'000;
/// No bar is loaded beyond this; it bounds the table for gyms with very many plates.
constexpr std::int64_t kMostPerSide = 500'000 * kGram;

std::int64_t micrograms(double kg)
{
    return std::llround(kg * kMicrogramsPerKg);
}

/// Kinds with their pairs added up, heaviest first.
std::vector<PlatePairs> kindsOf(const Gear &gear)
{
    std::map<std::int64_t, PlatePairs, std::greater<>> kinds;
    for (const PlatePairs &p : gear.plates) {
        PlatePairs &kind = kinds[micrograms(p.plateKg)];
        kind = {p.plateKg, kind.pairs + p.pairs};
    }
    std::vector<PlatePairs> sorted;
    for (const auto &[weight, kind] : kinds)
        sorted.push_back(kind);
    return sorted;
}

} // namespace

PlateTable::PlateTable(const Gear &gear)
    : m_bar(micrograms(gear.barKg) + micrograms(gear.collarsKg))
{
    if (!problems(gear).isEmpty())
        throw std::invalid_argument(problems(gear).join(u' ').toStdString());

    const std::vector<PlatePairs> kinds = kindsOf(gear);
    std::map<std::int64_t, Side> reached; // by the gram
    reached.emplace(0, Side{0, 0, std::vector<int>(kinds.size(), 0)});
    for (size_t kind = 0; kind < kinds.size(); ++kind) {
        m_kindsKg.push_back(kinds[kind].plateKg);
        const std::int64_t plate = micrograms(kinds[kind].plateKg);
        const std::map<std::int64_t, Side> before = reached;
        for (const auto &[gram, start] : before) {
            Side side = start;
            for (int pair = 1; pair <= kinds[kind].pairs; ++pair) {
                side.sum += plate;
                if (side.sum > kMostPerSide)
                    break;
                ++side.plates;
                ++side.counts[kind];
                const auto [it, isNew] = reached.try_emplace((side.sum + kGram / 2) / kGram, side);
                if (!isNew && isHandier(side, it->second))
                    it->second = side;
            }
        }
    }
    for (auto &[gram, side] : reached)
        m_sides.push_back(std::move(side));
}

bool PlateTable::isHandier(const Side &a, const Side &b)
{
    return a.plates != b.plates ? a.plates < b.plates : a.counts > b.counts;
}

double PlateTable::loadKg(size_t side) const
{
    return double(m_bar + 2 * m_sides[side].sum) / kMicrogramsPerKg;
}

BarLoad PlateTable::round(double targetKg, Rounding rounding) const
{
    // Within a gram counts as met: a target that went through lb and back is not rounded down.
    const std::int64_t target = micrograms(std::clamp(targetKg, lightestKg(), heaviestKg()));
    const auto sumOf = [this](const Side &side) { return m_bar + 2 * side.sum; };
    const auto over = std::ranges::find_if(
        m_sides, [&](const Side &side) { return sumOf(side) > target + kGram; });
    auto best = over == m_sides.begin() ? over : over - 1;
    if (rounding == Rounding::nearest && over != m_sides.end()
        && sumOf(*over) - target < target - sumOf(*best))
        best = over;

    BarLoad load{loadKg(size_t(best - m_sides.begin())), {}};
    for (size_t kind = 0; kind < m_kindsKg.size(); ++kind)
        if (best->counts[kind] > 0)
            load.plates.push_back({m_kindsKg[kind], best->counts[kind]});
    return load;
}

std::optional<double> PlateTable::above(double kg) const
{
    for (size_t i = 0; i < m_sides.size(); ++i)
        if (micrograms(loadKg(i)) > micrograms(kg) + kGram)
            return loadKg(i);
    return std::nullopt;
}

std::optional<double> PlateTable::below(double kg) const
{
    for (size_t i = m_sides.size(); i-- > 0;)
        if (micrograms(loadKg(i)) < micrograms(kg) - kGram)
            return loadKg(i);
    return std::nullopt;
}

std::optional<double> PlateTable::smallestJumpKg() const
{
    std::optional<double> jump;
    for (size_t i = 1; i < m_sides.size(); ++i) {
        const double step = loadKg(i) - loadKg(i - 1);
        jump = jump ? std::min(*jump, step) : step;
    }
    return jump;
}

QString platesWords(const std::vector<PlatePairs> &plates, Unit unit)
{
    if (plates.empty())
        return Text::tr("empty bar");
    QStringList parts;
    for (const PlatePairs &kind : plates) {
        const QString plate = formatLoadNumber(kind.plateKg, unit);
        parts << (kind.pairs > 1 ? Text::tr("%1 x %2").arg(kind.pairs).arg(plate) : plate);
    }
    return parts.join(QStringLiteral(" + "));
}

} // namespace core
