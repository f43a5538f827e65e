#include "tests/simulators/season_plan.h"

#include "tests/simulators/bench_variations.h"

#include <algorithm>
#include <array>

namespace simulators {

namespace {

constexpr std::array<std::array<int, 4>, 3> kWeekdays{{{0, 3, 0, 0}, {0, 2, 4, 0}, {0, 2, 4, 5}}};

bool isLayoff(const PlanTraits &traits, int week)
{
    return std::any_of(traits.layoffs.begin(), traits.layoffs.end(), [week](const auto &layoff) {
        return week >= layoff.week && week < layoff.week + layoff.weeks;
    });
}

/// Reps and effort by the place in the block, 0 at its start and 1 in the last hard week.
Work mainWork(int variation, double progress, Random &random)
{
    const int reps = std::clamp(int(6.5 - 4.5 * progress + random.normal(0.0, 0.8)), 1, 8);
    return {variation, random.whole(2, 4), reps, std::max(3.0 - 2.0 * progress, 0.5)};
}

Work otherWork(double progress, Random &random)
{
    constexpr std::array kOthers{touchAndGo, offChestPause, tempo420, feetUp, feetUp, longPause,
        closeGrip, closeGrip, deadStop, incline};
    const int variation = kOthers[size_t(random.whole(0, int(kOthers.size()) - 1))];
    const bool fewReps = variation == offChestPause || variation == tempo420;
    const int most = fewReps ? 3 : 9;
    const int reps = std::clamp(int(8.0 - 4.0 * progress + random.normal(0.0, 1.5)), 2, most);
    return {variation, random.whole(2, 4), reps, random.uniform(1.0, 4.0)};
}

} // namespace

PlanTraits drawPlanTraits(Random &random)
{
    PlanTraits traits;
    traits.sessionsPerWeek = random.whole(2, 4);
    traits.blockWeeks = random.whole(4, 6);
    traits.singles = random.uniform(0.1, 0.6);
    traits.skipped = random.uniform(0.0, 0.12);
    traits.competitionShare = random.uniform(0.4, 0.8);
    return traits;
}

std::vector<PlannedSession> planWeek(const PlanTraits &traits, int week, Random &random)
{
    std::vector<PlannedSession> sessions;
    if (isLayoff(traits, week))
        return sessions;
    const int weekOfBlock = week % traits.blockWeeks;
    const bool deload = weekOfBlock == traits.blockWeeks - 1;
    const double progress = deload ? 0.3 : double(weekOfBlock) / (traits.blockWeeks - 2);
    const bool single = !deload && random.chance(traits.singles);
    for (int i = 0; i < traits.sessionsPerWeek; ++i) {
        PlannedSession session;
        session.weekday = kWeekdays[size_t(traits.sessionsPerWeek - 2)][size_t(i)];
        const bool competitionDay = i == 0 || random.chance(traits.competitionShare);
        if (competitionDay && single && i == 0)
            session.works.push_back({competition, 1, 1, random.uniform(0.5, 2.0)});
        session.works.push_back(
            competitionDay ? mainWork(competition, progress, random) : otherWork(progress, random));
        if (random.chance(0.7))
            session.works.push_back(otherWork(progress, random));
        if (Work &main = session.works.front(); traits.leadReps && main.reps > 2) {
            main.leadVariation = tempo420;
            main.leadReps = 1;
        }
        if (deload)
            for (Work &work : session.works) {
                work.sets = std::max(work.sets - 1, 1);
                work.rir += 2.0;
            }
        if (!random.chance(traits.skipped))
            sessions.push_back(std::move(session));
    }
    return sessions;
}

} // namespace simulators
