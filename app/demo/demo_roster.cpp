#include "app/demo/demo_roster.h"

#include "app/demo/training.h"

#include <span>
#include <stdexcept>

namespace demo {

namespace {

constexpr quint64 kSeed = 20240817;
constexpr int kBlockWeeks = 5;
constexpr int kBlockWeeksDone = 2;

/// A planned card of the demo week, by touch style.
struct Planned
{
    int day; ///< 0 = Monday
    const char *soft;
    const char *sinking;
    int sets;
    int reps;
    double rpe;

    [[nodiscard]] const char *code(const core::Lifter &lifter) const
    {
        return lifter.touchStyle == core::TouchStyle::sinking ? sinking : soft;
    }
    [[nodiscard]] QString setLine() const
    {
        return QStringLiteral("%1x%2 @%3").arg(sets).arg(reps).arg(rpe);
    }
};

constexpr Planned kWeek[] = {
    {0, "comp", "comp", 1, 1, 8},
    {0, "off_chest_pause", "long_pause", 4, 3, 8},
    {2, "squat", "squat", 4, 5, 8},
    {2, "feet_up", "feet_up", 3, 6, 7.5},
    {4, "tempo_4_2_0", "tempo_4_2_0", 2, 2, 7},
    {4, "comp", "comp", 4, 5, 8},
    {4, "deadlift", "deadlift", 3, 4, 8},
};

constexpr Planned kSoreWeek[] = {
    {0, "feet_up", "feet_up", 4, 5, 8},
    {2, "close_grip", "close_grip", 3, 8, 8},
    {4, "comp", "comp", 4, 4, 7},
};

core::VariationId idOf(const Codes &codes, const char *code)
{
    const auto it = codes.find(QString::fromLatin1(code));
    if (it == codes.end())
        throw std::invalid_argument(std::string("The catalogue has no variation ") + code + '.');
    return it->second;
}

void addWeek(std::span<const Planned> week, const core::Lifter &lifter, QDate monday,
    const Codes &codes, const Ids &ids, std::vector<core::Card> &cards)
{
    int position = 0;
    int day = -1;
    for (const Planned &planned : week) {
        position = planned.day == day ? position + 1 : 0;
        day = planned.day;
        cards.push_back({ids.card(), lifter.id, monday.addDays(day), position,
            idOf(codes, planned.code(lifter)), planned.setLine(), {}});
    }
}

/// The days of the week that lie before `today`, but for a missed Monday.
std::vector<WorkDay> daysBefore(
    QDate today, std::span<const Planned> week, const Person &person, QDate monday)
{
    constexpr double kMostRpe = 10.0;
    std::vector<WorkDay> days;
    for (const Planned &planned : week) {
        const QDate day = monday.addDays(planned.day);
        if (day >= today || (planned.day == 0 && person.story.missedMonday))
            continue;
        if (days.empty() || days.back().day != day)
            days.push_back({day, {}});
        const char *code = planned.code(person.lifter);
        days.back().work.push_back(
            {code, ratioOf(person, code), planned.sets, planned.reps, kMostRpe - planned.rpe});
    }
    return days;
}

} // namespace

core::Edit demoRoster(const std::vector<core::Variation> &catalogue, QDate today, const Ids &ids)
{
    Codes codes;
    for (const core::Variation &v : catalogue)
        codes.emplace(v.code, v.id);
    for (const char *code : {"comp", "off_chest_pause", "long_pause", "feet_up", "close_grip",
             "tempo_4_2_0", "squat", "deadlift"})
        (void)idOf(codes, code);

    const QDate monday = today.addDays(1 - today.dayOfWeek());
    std::mt19937_64 random(kSeed);
    core::Edit edit;
    for (Person &person : people(monday)) {
        person.lifter.id = ids.lifter();
        const bool sore = person.story.soreWeek == kWeeks - 1;
        const std::span<const Planned> week = sore ? std::span<const Planned>(kSoreWeek) : kWeek;
        for (core::LoggedSession &session : trainingLog(person, codes, monday.addDays(-7 * kWeeks),
                 daysBefore(today, week, person, monday), random)) {
            session.id = ids.session();
            session.lifter = person.lifter.id;
            edit.sessions.after.push_back(std::move(session));
        }
        addWeek(week, person.lifter, monday, codes, ids, edit.cards.after);
        addWeek(kWeek, person.lifter, monday.addDays(7), codes, ids, edit.cards.after);
        core::Block block;
        block.id = ids.block();
        block.lifter = person.lifter.id;
        block.name = QStringLiteral("Strength");
        block.purpose = QStringLiteral("Heavy singles, and the touch kept under load");
        block.start = monday.addDays(-7 * kBlockWeeksDone);
        block.weeks = kBlockWeeks;
        block.deloadWeeks = {kBlockWeeks};
        edit.blocks.after.push_back(block);
        if (person.today) {
            core::CheckIn checkIn = *person.today;
            checkIn.id = ids.checkIn();
            checkIn.lifter = person.lifter.id;
            checkIn.day = today;
            edit.checkIns.after.push_back(checkIn);
        }
        edit.lifters.after.push_back(std::move(person.lifter));
    }
    return edit;
}

} // namespace demo
