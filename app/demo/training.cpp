#include "app/demo/training.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace demo {

namespace {

constexpr double kFatiguePerSet = 0.006; // share of the max
constexpr double kFormSd = 0.018;        // share of the max, from day to day
constexpr double kTempoRatio = 0.92;     // of the 4-2-0 to the bench max
constexpr double kCoachRounding = 2.5;   // kg; 5 lb plates for a lifter in pounds

/// Normal deviate by Box and Muller, so that the log is the same under every standard library.
double normal(std::mt19937_64 &random)
{
    const auto uniform = [&random] { return (double(random() >> 11) + 0.5) * 0x1p-53; };
    const double radius = std::sqrt(-2.0 * std::log(uniform()));
    return radius * std::cos(2.0 * std::numbers::pi * uniform());
}

bool chance(std::mt19937_64 &random, double probability)
{
    return double(random() >> 11) * 0x1p-53 < probability;
}

/// Three days a week; the fourth week of each four is light.
std::vector<Work> plan(const Person &person, int week, int day)
{
    const bool soft = person.lifter.touchStyle != core::TouchStyle::sinking;
    const bool sore = week == person.story.soreWeek;
    const bool light = week % 4 == 3;
    const int wave = week % 4; // reps fall as the weeks go by
    const int sets = light ? 2 : 4;
    const auto work = [&person](const char *code, int count, int reps, double reserve) {
        return Work{code, ratioOf(person, code), count, reps, reserve};
    };
    const double easiest = person.story.isMinor ? 3.0 : 2.0;
    switch (day) {
    case 0:
        if (sore)
            return {work("feet_up", 4, 5, 2.0)};
        if (person.story.isMinor)
            return {work("comp", 3, 3, 3.0), work("long_pause", sets, 3, 3.0)};
        return {work("comp", 1, light ? 3 : 1 + (wave == 0), light ? 3.0 : 1.0),
            work(soft ? "off_chest_pause" : "long_pause", sets, 3 - (wave == 2), 2.0)};
    case 1:
        if (sore)
            return {work("close_grip", 3, 8, 3.0)};
        return {work("squat", sets, 6 - wave, easiest), work("feet_up", 3, 6 - wave / 2, easiest),
            work("supported_row", 3, 10, easiest)};
    default:
        if (sore)
            return {work("comp", 3, 4, 3.0)};
        return {soft ? tempoLead(light ? 2 : 3, 2.0) : work("slow_lowering", 3, 3, easiest),
            work("comp", sets, 6 - wave,
                light                      ? 4.0
                    : person.story.isMinor ? easiest
                                           : 1.5),
            work("deadlift", light ? 1 : 3, 5 - wave / 2, easiest)};
    }
}

double maxAt(const Person &person, int week)
{
    const int layoffFrom = person.story.layoffFrom;
    const int layoffWeeks = person.story.layoffWeeks;
    double share = 1.0 + person.truth.gainPerWeek * week
        + 0.012 * std::sin(2.0 * std::numbers::pi * week / 8.0);
    if (layoffFrom >= 0 && week >= layoffFrom + layoffWeeks) {
        const int back = week - layoffFrom - layoffWeeks;
        share -= 0.07 * std::exp(-back / 4.0);
    }
    return person.truth.benchKg * share;
}

double onTheBar(double kg, core::Unit unit)
{
    const double step = unit == core::Unit::pound ? 5.0 * core::kKgPerPound : kCoachRounding;
    return std::max(std::round(kg / step) * step, 20.0);
}

/// What the coach writes on the bar for a reserve, by a plain table of 2.8 % a rep.
double coachLoad(double guessKg, const Work &work, core::Unit unit)
{
    const auto shareFor = [&work](int reps) { return 1.0 - 0.028 * (reps - 1 + work.reserve); };
    double load = guessKg * work.ratio * shareFor(work.reps);
    if (work.lead)
        load = std::min(load, guessKg * kTempoRatio * shareFor(1));
    return onTheBar(load, unit);
}

/// Touch score of a heavy set: past the touch hold it slips a step for each further 4 %.
int touchScore(const Person &person, double share, std::mt19937_64 &random)
{
    const int wanted = person.lifter.touchStyle == core::TouchStyle::sinking ? 2 : 1;
    const double slip = (share - person.truth.touchHold) / 0.04 + 0.5 * normal(random);
    return std::clamp(wanted + int(std::ceil(std::max(slip, 0.0))), 1, 5);
}

/// What the touch is judged of.
bool isFlatBench(const Work &work)
{
    return work.ratio >= 0.9 && work.ratio <= 1.0;
}

core::SetEntry perform(const Person &person, const Work &work, core::VariationId variation,
    core::VariationId lead, double loadKg, double maxKg, int setsBefore, std::mt19937_64 &random)
{
    const Truth &truth = person.truth;
    const double cap = maxKg * work.ratio * (1.0 - kFatiguePerSet * setsBefore);
    const double capacity = 1.0 + (cap / loadKg - 1.0) / truth.repDrop;

    core::SetEntry set;
    set.variation = variation;
    if (lead.isValid())
        set.lead = core::LeadReps{lead, 1};
    set.loadKg = loadKg;
    set.repsPlanned = work.reps;
    set.repsDone = std::clamp(int(std::floor(capacity)), 0, work.reps);
    set.failed = set.repsDone < work.reps;
    const double reserve = capacity - set.repsDone;
    const double said = reserve + truth.ratingBias
        + truth.ratingNoise * (0.6 + 0.25 * std::max(reserve, 0.0)) * normal(random);
    const double rpe = std::clamp(std::round((10.0 - said) * 2.0) / 2.0, 5.0, 10.0);
    // Easy sets go unrated more often.
    if (!set.failed && !chance(random, rpe < 7.0 ? 0.35 : 0.06))
        set.rpe = rpe;
    if (!set.failed && loadKg / (maxKg * work.ratio) > 0.75 && isFlatBench(work)
        && chance(random, 0.7))
        set.touch = touchScore(person, loadKg / (maxKg * work.ratio), random);
    return set;
}

/// What the coach believes of a person's max, and the sessions that came of it.
class Coach
{
public:
    Coach(const Person &person, const Codes &codes, std::mt19937_64 &random)
        : m_person(person)
        , m_codes(codes)
        , m_random(random)
        , m_guess(0.97 * maxAt(person, person.story.firstWeek))
    {
    }

    core::LoggedSession train(QDate day, int week, const std::vector<Work> &works)
    {
        const double form = std::exp(kFormSd * normal(m_random));
        core::LoggedSession session;
        session.day = day;
        session.readiness =
            std::clamp(int(std::lround(3.4 + 40.0 * (form - 1.0) + 0.6 * normal(m_random)
                           - (week == m_person.story.soreWeek ? 1.5 : 0.0))),
                1, 5);
        for (const Work &work : works) {
            double load = coachLoad(m_guess, work, m_person.lifter.unit);
            for (int i = 0; i < work.sets; ++i) {
                session.sets.push_back(perform(m_person, work, idOf(work.code),
                    work.lead ? idOf(work.lead) : core::VariationId{}, load,
                    maxAt(m_person, week) * form, int(session.sets.size()), m_random));
                if (session.sets.back().failed) { // back off, and trust the guess a little less
                    load = onTheBar(0.95 * load, m_person.lifter.unit);
                    m_guess *= 0.995;
                }
            }
        }
        return session;
    }

    /// Slowly.
    void learn(int week) { m_guess += 0.25 * (maxAt(m_person, week) * 0.995 - m_guess); }

private:
    [[nodiscard]] core::VariationId idOf(const char *code) const
    {
        return m_codes.at(QString::fromLatin1(code));
    }

    const Person &m_person;
    const Codes &m_codes;
    std::mt19937_64 &m_random;
    double m_guess;
};

} // namespace

double ratioOf(const Person &person, const char *code)
{
    const std::map<std::string_view, double> ratios{{"comp", 1.0}, {"off_chest_pause", 1.0},
        {"long_pause", 0.96}, {"feet_up", 0.95}, {"close_grip", 0.95}, {"slow_lowering", 0.95},
        {"supported_row", 0.55}, {"squat", person.truth.squatRatio},
        {"deadlift", person.truth.deadliftRatio}};
    return ratios.at(code);
}

Work tempoLead(int sets, double reserve)
{
    return {"comp", 1.0, sets, 3, reserve, "tempo_4_2_0"};
}

std::vector<WorkDay> plannedWeek(const Person &person, int week, QDate monday)
{
    constexpr int kWeekdays[] = {0, 2, 4};
    std::vector<WorkDay> days;
    for (int day = 0; day < 3; ++day)
        days.push_back({monday.addDays(kWeekdays[day]), plan(person, week, day)});
    return days;
}

std::vector<core::LoggedSession> trainingLog(const Person &person, const Codes &codes,
    QDate firstMonday, const std::vector<WorkDay> &underWay, std::mt19937_64 &random)
{
    std::vector<core::LoggedSession> log;
    const Story &story = person.story;
    Coach coach(person, codes, random);
    for (int week = story.firstWeek; week < kWeeks; ++week) {
        const bool away = story.layoffFrom >= 0 && week >= story.layoffFrom
            && week < story.layoffFrom + story.layoffWeeks;
        if (away)
            continue;
        for (const auto &[day, works] : plannedWeek(person, week, firstMonday.addDays(7 * week)))
            if (!chance(random, 0.04)) // life happens
                log.push_back(coach.train(day, week, works));
        coach.learn(week);
    }
    for (const auto &[day, works] : underWay)
        log.push_back(coach.train(day, kWeeks, works));
    return log;
}

} // namespace demo
