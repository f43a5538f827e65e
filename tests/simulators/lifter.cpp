#include "tests/simulators/lifter.h"

#include "tests/simulators/typos.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace simulators {

namespace {

/// Reps times share of the max that make a usual session.
constexpr double kUsualWork = 20.0;

double roundToPlates(double kg)
{
    return std::max(2.5 * std::round(kg / 2.5), 20.0);
}

/// One session as it unfolds.
class Gym
{
public:
    Gym(Makeup &makeup, const Rater &rater, Random &random)
        : m_makeup(makeup)
        , m_rater(rater)
        , m_random(random)
        , m_fatigue(makeup.fatigue)
    {
    }

    strength::TrainingSession train(const PlannedSession &plan, int day, double logMaxToday)
    {
        strength::TrainingSession session;
        session.day = day;
        m_fatigue.startSession();
        m_work = 0.0;
        m_truths.clear();
        for (const Work &work : plan.works)
            for (int i = 0; i < work.sets; ++i) {
                strength::TrainingSet set = lift(work, logMaxToday);
                m_makeup.coach->read(work, set);
                if (m_random.chance(m_makeup.typos))
                    mistype(set, m_random);
                session.sets.push_back(set);
            }
        return session;
    }

    /// Of the last session.
    [[nodiscard]] double dose() const { return m_work / kUsualWork; }
    [[nodiscard]] const std::vector<SetTruth> &truths() const { return m_truths; }

private:
    strength::TrainingSet lift(const Work &work, double logMaxToday)
    {
        strength::TrainingSet set;
        set.variation = work.variation;
        set.leadVariation = work.leadVariation;
        set.leadReps = work.leadReps;
        set.repsPlanned = work.reps;
        set.loadKg = roundToPlates(m_makeup.coach->load(work));
        const double cap =
            logMaxToday - m_fatigue.level() + m_random.normal(0.0, m_makeup.setNoise);
        const double share = set.loadKg / std::exp(cap);

        const double possible = m_makeup.capacity.of(set, share);
        m_truths.push_back({possible, m_fatigue.level()});
        set.reps = std::min(int(possible), work.reps);
        if (set.reps < work.reps)
            set.missed = set.reps == 0 || !m_random.chance(m_makeup.stopsShort);
        const double reserve = std::max(possible - set.reps, 0.0);
        if (!set.missed)
            set.rpe = m_rater.rate(reserve, m_random);
        if (m_makeup.barSpeed && set.reps > 0) {
            const double shareOfOwn =
                share / m_makeup.capacity.variations[size_t(work.variation)].ratio;
            set.velocity = barSpeed(*m_makeup.barSpeed, shareOfOwn, m_random);
        }
        if (set.reps < set.leadReps)
            set.leadReps = set.reps;
        m_fatigue.addSet(set.missed ? 0.0 : reserve, m_random);
        m_work += std::max(set.reps, 1) * share;
        return set;
    }

    Makeup &m_makeup;
    const Rater &m_rater;
    Random &m_random;
    SetFatigue m_fatigue;
    double m_work = 0.0;
    std::vector<SetTruth> m_truths;
};

/// Turns the forms around zero and moves their mean into the level.
void centreForm(SimulatedLifter &lifter)
{
    if (lifter.formBySession.empty())
        return;
    const double mean =
        std::accumulate(lifter.formBySession.begin(), lifter.formBySession.end(), 0.0)
        / double(lifter.formBySession.size());
    for (double &form : lifter.formBySession)
        form -= mean;
    for (double &max : lifter.maxByDay)
        max *= std::exp(mean);
}

} // namespace

SimulatedLifter simulate(Makeup makeup, int weeks, Random random)
{
    // A stream each, so that a change in the training leaves the days' luck alone.
    Random levelLuck = random.fork();
    Random formLuck = random.fork();
    Random planLuck = random.fork();
    Random gymLuck = random.fork();
    Random raterLuck = random.fork();

    SimulatedLifter lifter;
    lifter.firstDay = kFirstDay;
    lifter.capacity = makeup.capacity;
    lifter.rater = makeup.rater;
    lifter.log.sex = makeup.sex;
    lifter.log.bodyweightKg = makeup.bodyweightKg;
    Rater rater(makeup.rater);
    DayForm form(makeup.form);
    Gym gym(makeup, rater, gymLuck);
    double dose = 0.0;
    for (int week = 0; week < weeks; ++week) {
        const std::vector<PlannedSession> plan = planWeek(makeup.plan, week, planLuck);
        for (int weekday = 0; weekday < 7; ++weekday) {
            const int day = kFirstDay + 7 * week + weekday;
            form.pass(dose);
            const double level = std::log(makeup.startKg) + makeup.level(dose, levelLuck);
            lifter.maxByDay.push_back(std::exp(level));
            dose = 0.0;
            for (const PlannedSession &session : plan)
                if (session.weekday == weekday) {
                    makeup.coach->startSession(session, day, lifter.log);
                    lifter.formBySession.push_back(form.draw(formLuck));
                    lifter.log.sessions.push_back(
                        gym.train(session, day, level + lifter.formBySession.back()));
                    lifter.sets.push_back(gym.truths());
                    dose = gym.dose();
                }
        }
        lifter.biasByWeek.push_back(rater.bias());
        rater.passWeek(raterLuck);
        makeup.coach->passWeek();
    }
    centreForm(lifter);
    return lifter;
}

} // namespace simulators
