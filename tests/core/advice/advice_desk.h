#pragma once

#include "core/advice/advisor_terms.h"
#include "tests/core/plan/plan_rows.h"

/// What the tests of the advisor's reasons share.
namespace tests {

/// A slot of a lifter on a day, with what was planned, done and said before it.
struct AdviceDesk
{
    core::Lifter lifter;
    std::vector<core::Card> cards;
    std::vector<core::LoggedSession> sessions;
    std::optional<core::CheckIn> checkIn; ///< of the day, whatever its own says
    std::optional<core::LiftEstimate> estimate;
    core::Slot slot;
    QDate day{2026, 3, 4}; ///< a Wednesday

    /// The check-in of the day, if there is one.
    [[nodiscard]] std::vector<core::CheckIn> said() const
    {
        if (!checkIn)
            return {};
        std::vector<core::CheckIn> said{*checkIn};
        said.front().day = day;
        return said;
    }
    [[nodiscard]] core::Situation situation() const
    {
        const std::vector<core::CheckIn> checkIns = said();
        return core::situationOf(slot,
            {lifter, core::builtInCatalogue(), day, cards, sessions, checkIns,
                estimate ? &*estimate : nullptr});
    }
    [[nodiscard]] double points(
        core::AdviceTerm::About about, const core::Variation &variation, int leadReps = 0) const
    {
        double points = 0.0;
        for (const core::AdviceTerm &term : core::termsFor({variation, leadReps}, situation()))
            points += term.about == about ? term.points : 0.0;
        return points;
    }
    [[nodiscard]] double points(
        core::AdviceTerm::About about, const char *code, int leadReps = 0) const
    {
        return points(about, *core::find(core::builtInCatalogue(), idOf(code)), leadReps);
    }
    void did(int daysAgo, const char *code, int sets = 1, double rpe = 8.0)
    {
        sessions.push_back(sessionOf(day.addDays(-daysAgo),
            std::vector<core::SetEntry>(size_t(sets), setOf(idOf(code), 100, 3, rpe))));
    }
};

} // namespace tests
