#include "core/loads/effort_words.h"

#include "core/domain/text.h"
#include "core/loads/odds.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace core {

namespace {

constexpr double kLowestTellingRpe = 5.0;
constexpr double kSameLoadKg = 1e-3;

double toHalves(double rpe)
{
    return std::round(rpe * 2.0) / 2.0;
}

QString number(double value)
{
    return QLocale().toString(value, 'g', 3);
}

/// The efforts asked for, from easier to harder; one is both ends of itself.
struct Asked
{
    double low = 0.0;
    double high = 0.0;
};

std::optional<Asked> askedOf(const Target &target)
{
    if (const auto *rpe = std::get_if<RpeTarget>(&target))
        return Asked{rpe->rpe, rpe->to.value_or(rpe->rpe)};
    if (const auto *rir = std::get_if<ReserveTarget>(&target))
        return Asked{10.0 - rir->to.value_or(rir->rir), 10.0 - rir->rir};
    return std::nullopt;
}

QString words(const Asked &asked)
{
    return asked.low == asked.high
        ? number(asked.low)
        : Text::tr("%1\u2013%2").arg(number(asked.low), number(asked.high));
}

QString chanceWords(double chance)
{
    if (chance >= kLeastEven && chance <= kMostEven)
        return Text::tr("about an even chance");
    const int inTen = int(std::lround(chance * 10.0));
    if (inTen == 0)
        return Text::tr("likely missed, less than a chance of 1 in 10");
    return chance < kLeastEven ? Text::tr("likely missed, a chance of about %1 in 10").arg(inTen)
                               : Text::tr("a chance of about %1 in 10").arg(inTen);
}

/// A single at or above the most that is expected to go up.
bool isMaxSingle(const ResolvedLine &line)
{
    const SetLine &set = line.line;
    if (set.sets != 1 || set.reps != 1 || set.mostReps || set.asManyAsPossible)
        return false;
    const auto *share = std::get_if<ShareTarget>(&set.target);
    const auto asked = askedOf(set.target);
    return (asked && asked->high >= 10.0) || (share && share->percent >= 100.0)
        || line.lastReserve->value < 0.0;
}

/// From set `from` to set `to` of the line.
class EffortWriter
{
public:
    EffortWriter(const ResolvedLine &line, int from, int to)
        : m_line(line)
        , m_to(to)
        , m_first(expectedRpe(line, from).value_or(0.0))
        , m_last(expectedRpe(line, to).value_or(0.0))
        , m_asked(askedOf(line.line.target))
    {
    }

    [[nodiscard]] QString write() const
    {
        if (!m_line.load || !m_line.firstReserve || !m_line.lastReserve)
            return {};
        if (isMaxSingle(m_line) && m_line.allMade)
            return Text::tr("a max single: %1").arg(chanceWords(*m_line.allMade));
        if (m_line.lastReserve->value < 0.0 && m_line.allMade && *m_line.allMade < kLeastEven)
            return Text::tr("all reps: %1").arg(chanceWords(*m_line.allMade));
        if (m_line.line.asManyAsPossible)
            return openEnded();
        if (!m_asked)
            return m_last < kLowestTellingRpe ? Text::tr("expected to be easy")
                                              : Text::tr("expected RPE %1").arg(expected());
        if (isAsAsked())
            return m_first == m_last ? Text::tr("RPE %1, as asked").arg(number(m_last))
                                     : Text::tr("RPE %1, as asked of the last set").arg(expected());
        const QString said =
            Text::tr("asked RPE %1, expected about %2").arg(words(*m_asked), expected());
        const QString why = reasons().join(QStringLiteral(", "));
        return why.isEmpty() ? said : Text::tr("%1: %2").arg(said, why);
    }

private:
    [[nodiscard]] bool isAsAsked() const
    {
        return m_last >= m_asked->low && m_last <= m_asked->high;
    }

    /// "7", "6 rising to 7.5", "easy"
    [[nodiscard]] QString expected() const
    {
        return m_first == m_last || m_last < kLowestTellingRpe
            ? rpeWords(m_last)
            : Text::tr("%1 rising to %2").arg(rpeWords(m_first), number(m_last));
    }

    [[nodiscard]] QString openEnded() const
    {
        const int reps = expectedReps(m_line);
        return m_line.line.mostReps && reps >= *m_line.line.mostReps
            ? Text::tr("the %1 reps of the cap are expected").arg(reps)
            : Text::tr("about %1 reps are expected").arg(reps);
    }

    [[nodiscard]] QStringList reasons() const
    {
        QStringList why;
        const SetLine &line = m_line.line;
        const bool isEasier = m_last < m_asked->low;
        const double roundedBy = m_line.target ? m_line.load->loadKg - m_line.target->kg : 0.0;
        if (isEasier && m_to + 1 < line.sets)
            why << Text::tr("the last set is meant");
        if (isEasier && line.leadReps > 0)
            why << Text::tr("the lead reps decide the load");
        if (isEasier && roundedBy < -kSameLoadKg)
            why << Text::tr("rounded down to the plates");
        if (!isEasier && roundedBy > kSameLoadKg)
            why << Text::tr("rounded up to the plates");
        if (line.mostReps)
            why << Text::tr("reckoned for %1 reps").arg(expectedReps(m_line));
        return why;
    }

    const ResolvedLine &m_line;
    int m_to;
    double m_first;
    double m_last;
    std::optional<Asked> m_asked;
};

} // namespace

int expectedReps(const ResolvedLine &line)
{
    const SetLine &set = line.line;
    if (!set.asManyAsPossible || !line.load || !line.firstReserve || !line.lastReserve)
        return expectedReps(set);
    const double reserve = (line.firstReserve->value + line.lastReserve->value) / 2.0;
    const int beyond = int(std::clamp(std::floor(reserve), 0.0, double(kMostReps)));
    return std::min(set.reps + beyond, set.mostReps.value_or(kMostReps));
}

int liftCount(std::span<const ResolvedLine> lines)
{
    int lifts = 0;
    for (const ResolvedLine &line : lines)
        lifts += line.line.sets * expectedReps(line);
    return lifts;
}

std::optional<double> expectedRpe(const ResolvedLine &line, int set)
{
    if (!line.firstReserve || !line.lastReserve)
        return std::nullopt;
    const double along = line.line.sets > 1 ? double(set) / (line.line.sets - 1) : 0.0;
    const double reserve =
        line.firstReserve->value + along * (line.lastReserve->value - line.firstReserve->value);
    return toHalves(rpeFromReserve(reserve));
}

QString rpeWords(double rpe)
{
    return rpe < kLowestTellingRpe ? Text::tr("easy") : number(rpe);
}

QString effortWords(const ResolvedLine &line)
{
    return EffortWriter(line, 0, line.line.sets - 1).write();
}

QString effortWords(const ResolvedLine &line, int set)
{
    return EffortWriter(line, set, set).write();
}

} // namespace core
