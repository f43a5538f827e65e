#include "app/demo/demo_roster.h"

#include "app/demo/training.h"

#include <span>
#include <stdexcept>

namespace demo {

namespace {

constexpr quint64 kSeed = 20240817;
constexpr int kBlockWeeks = 5;
constexpr int kBlockWeeksDone = 2;
constexpr double kMostRpe = 10.0;

/// A planned card of the demo week, by touch style.
struct Planned
{
    int day; ///< 0 = Monday
    const char *soft;
    const char *sinking;
    int sets;
    int reps;
    double rpe;
};

/// Stands for tempoLead() where the touch is soft.
constexpr const char *kTempoLead = "tempo_4_2_0";

constexpr Planned kWeek[] = {
    {0, "comp", "comp", 1, 1, 8},
    {0, "off_chest_pause", "long_pause", 4, 3, 8},
    {2, "squat", "squat", 4, 5, 8},
    {2, "feet_up", "feet_up", 3, 6, 7.5},
    {2, "supported_row", "supported_row", 3, 10, 8},
    {4, kTempoLead, "slow_lowering", 3, 3, 7},
    {4, "comp", "comp", 4, 5, 8},
    {4, "deadlift", "deadlift", 3, 4, 7.5},
};

constexpr Planned kMinorsWeek[] = {
    {0, "comp", "comp", 3, 3, 6.5},
    {0, "long_pause", "long_pause", 4, 3, 6.5},
    {2, "squat", "squat", 4, 5, 6.5},
    {2, "feet_up", "feet_up", 3, 6, 6.5},
    {2, "supported_row", "supported_row", 3, 10, 6.5},
    {4, "slow_lowering", "slow_lowering", 3, 3, 6},
    {4, "comp", "comp", 4, 5, 6.5},
    {4, "deadlift", "deadlift", 3, 4, 6.5},
};

/// A knee that hurts: nothing that the legs work in.
constexpr Planned kKneeWeek[] = {
    {0, "feet_up", "feet_up", 4, 4, 7},
    {2, "feet_up", "feet_up", 3, 8, 7},
    {2, "supported_row", "supported_row", 3, 10, 7},
    {4, "feet_up", "feet_up", 4, 5, 7},
};

constexpr Planned kSoreWeek[] = {
    {0, "feet_up", "feet_up", 4, 5, 7},
    {2, "feet_up", "feet_up", 3, 8, 7},
    {4, "comp", "comp", 4, 4, 7},
};

std::span<const Planned> usualWeek(const Person &person)
{
    if (person.story.isMinor)
        return kMinorsWeek;
    return person.story.kneeHurts ? std::span<const Planned>(kKneeWeek) : kWeek;
}

core::VariationId idOf(const Codes &codes, const char *code)
{
    const auto it = codes.find(QString::fromLatin1(code));
    if (it == codes.end())
        throw std::invalid_argument(std::string("The catalogue has no variation ") + code + '.');
    return it->second;
}

std::vector<WorkDay> daysOf(std::span<const Planned> week, const Person &person, QDate monday)
{
    const bool isSinking = person.lifter.touchStyle == core::TouchStyle::sinking;
    std::vector<WorkDay> days;
    for (const Planned &planned : week) {
        const QDate day = monday.addDays(planned.day);
        if (days.empty() || days.back().day != day)
            days.push_back({day, {}});
        const char *code = isSinking ? planned.sinking : planned.soft;
        const double reserve = kMostRpe - planned.rpe;
        days.back().work.push_back(code == kTempoLead
                ? tempoLead(planned.sets, reserve)
                : Work{code, ratioOf(person, code), planned.sets, planned.reps, reserve});
    }
    return days;
}

/// Those that lie before `today`, but for a missed Monday.
std::vector<WorkDay> doneOf(std::vector<WorkDay> days, QDate today, const Person &person)
{
    std::erase_if(days, [&](const WorkDay &day) {
        return day.day >= today || (person.story.missedMonday && day.day.dayOfWeek() == 1);
    });
    return days;
}

void addCards(const std::vector<WorkDay> &days, core::LifterId lifter, const Codes &codes,
    const Ids &ids, std::vector<core::Card> &cards)
{
    for (const WorkDay &day : days)
        for (int position = 0; const Work &work : day.work)
            cards.push_back({ids.card(), lifter, day.day, position++,
                idOf(codes, work.lead ? work.lead : work.code),
                QStringLiteral("%1x%2 @%3")
                    .arg(work.sets)
                    .arg(work.lead ? QStringLiteral("1+%1").arg(work.reps - 1)
                                   : QString::number(work.reps))
                    .arg(kMostRpe - work.reserve),
                {}});
}

} // namespace

core::Edit demoRoster(const std::vector<core::Variation> &catalogue, QDate today, const Ids &ids)
{
    Codes codes;
    for (const core::Variation &v : catalogue)
        codes.emplace(v.code, v.id);
    for (const char *code : {"comp", "off_chest_pause", "long_pause", "feet_up", "close_grip",
             "tempo_4_2_0", "slow_lowering", "supported_row", "squat", "deadlift"})
        (void)idOf(codes, code);

    const QDate monday = today.addDays(1 - today.dayOfWeek());
    std::mt19937_64 random(kSeed);
    core::Edit edit;
    for (Person &person : people(monday)) {
        person.lifter.id = ids.lifter();
        const std::span<const Planned> usual = usualWeek(person);
        const bool sore = person.story.soreWeek == kWeeks - 1;
        const std::span<const Planned> week = sore ? std::span<const Planned>(kSoreWeek) : usual;
        const std::vector<WorkDay> underWay = daysOf(week, person, monday);
        for (core::LoggedSession &session : trainingLog(person, codes, monday.addDays(-7 * kWeeks),
                 doneOf(underWay, today, person), random)) {
            session.id = ids.session();
            session.lifter = person.lifter.id;
            edit.sessions.after.push_back(std::move(session));
        }
        for (int ago = kBlockWeeksDone; ago > 0; --ago)
            addCards(plannedWeek(person, kWeeks - ago, monday.addDays(-7 * ago)), person.lifter.id,
                codes, ids, edit.cards.after);
        addCards(underWay, person.lifter.id, codes, ids, edit.cards.after);
        addCards(daysOf(usual, person, monday.addDays(7)), person.lifter.id, codes, ids,
            edit.cards.after);
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
