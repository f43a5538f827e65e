#include "core/exchange/import_plan.h"

#include "core/domain/merged_sets.h"
#include "core/domain/nearest_word.h"
#include "core/domain/text.h"
#include "core/exchange/far_loads.h"

#include <QHash>
#include <map>
#include <memory>
#include <tuple>

namespace core {

namespace {

Lifter updated(Lifter lifter, const PersonRow &row)
{
    lifter.sex = row.sex.value_or(lifter.sex);
    lifter.touchStyle = row.touchStyle.value_or(lifter.touchStyle);
    if (row.bodyweightKg)
        lifter.bodyweightKg = row.bodyweightKg;
    if (row.birthYear)
        lifter.birthYear = row.birthYear;
    if (row.trainingSince)
        lifter.trainingSince = row.trainingSince;
    if (row.unit && *row.unit != lifter.unit) {
        if (lifter.gear == usualGear(lifter.unit))
            lifter.gear = usualGear(*row.unit);
        lifter.unit = *row.unit;
    }
    return lifter;
}

class Planner
{
public:
    Planner(const RosterRows &roster, const IdSource &ids, std::stop_token stop)
        : m_roster(roster)
        , m_ids(ids)
        , m_stop(std::move(stop))
    {
        for (const Lifter &lifter : roster.lifters)
            m_lifters.insert(lifter.name.toCaseFolded(), lifter);
        for (const Variation &variation : roster.variations)
            m_variations.insert(variation.code, variation.id);
        for (const LoggedSession &session : roster.sessions)
            m_sessions.emplace(SessionKey{session.lifter, session.day, session.number}, &session);
    }

    void take(const PeopleTable &people);
    void take(const LogTable &log);
    [[nodiscard]] ImportPlan result();

private:
    using SessionKey = std::tuple<LifterId, QDate, int>;
    /// A session as the file has it.
    struct Told
    {
        std::vector<SetEntry> sets;
        std::optional<int> readiness;
    };

    [[nodiscard]] LifterId lifterNamed(const QString &name);
    /// @param field  that the code stands in
    [[nodiscard]] std::optional<VariationId> variationOf(const QString &code, const char *field,
        int line, ProblemList &problems, const QString &file) const;
    void settle(const SessionKey &key, const Told &told);

    const RosterRows &m_roster;
    const IdSource &m_ids;
    std::stop_token m_stop;
    QHash<QString, Lifter> m_lifters; ///< by folded name
    QHash<QString, VariationId> m_variations;
    std::map<SessionKey, const LoggedSession *> m_sessions;
    std::map<LifterId, Lifter> m_newLifters; ///< in the order of the files
    ImportPlan m_plan;
};

void Planner::take(const PeopleTable &people)
{
    m_plan.problems.add(people.problems);
    if (!people.problems.isEmpty())
        return;
    for (const PersonRow &row : people.rows) {
        const LifterId id = lifterNamed(row.lifter);
        if (const auto added = m_newLifters.find(id); added != m_newLifters.end()) {
            added->second = updated(added->second, row);
            continue;
        }
        const Lifter &before = m_lifters[row.lifter.toCaseFolded()];
        const Lifter after = updated(before, row);
        if (after == before)
            continue;
        m_plan.edit.lifters.before.push_back(before);
        m_plan.edit.lifters.after.push_back(after);
        ++m_plan.counts.changedLifters;
    }
}

LifterId Planner::lifterNamed(const QString &name)
{
    Lifter &lifter = m_lifters[name.toCaseFolded()];
    if (!lifter.id.isValid()) {
        lifter.id = m_ids.lifter();
        lifter.name = name;
        lifter.gear = usualGear(lifter.unit);
        m_newLifters.emplace(lifter.id, lifter);
    }
    return lifter.id;
}

std::optional<VariationId> Planner::variationOf(const QString &code, const char *field, int line,
    ProblemList &problems, const QString &file) const
{
    if (code.isEmpty())
        return std::nullopt;
    const auto known = m_variations.find(code);
    if (known != m_variations.end())
        return *known;
    const QString nearest = nearestWord(code, m_variations.keys());
    problems.add({file, line, QString::fromLatin1(field),
        Text::tr("The catalogue has no variation \"%1\".").arg(code.left(40)),
        nearest.isEmpty()
            ? Text::tr("Write the code of one it has, or add this one to the catalogue.")
            : Text::tr("Write %1, or add this one to the catalogue.").arg(nearest)});
    return std::nullopt;
}

void Planner::take(const LogTable &log)
{
    ProblemList problems = log.problems;
    std::map<SessionKey, Told> toldSessions;
    for (const LogRow &row : log.rows) {
        if (m_stop.stop_requested())
            return;
        const std::optional<VariationId> variation =
            variationOf(row.variation, "variation", row.line, problems, log.file);
        const std::optional<VariationId> lead =
            variationOf(row.leadVariation, "lead_variation", row.line, problems, log.file);
        if (!variation || !problems.isEmpty())
            continue;
        Told &told = toldSessions[{lifterNamed(row.lifter), row.day, row.number}];
        if (row.readiness)
            told.readiness = row.readiness;
        told.sets.push_back(row.set);
        told.sets.back().variation = *variation;
        if (lead)
            told.sets.back().lead = {*lead, row.leadReps};
    }
    problems.sortByLine();
    m_plan.problems.add(problems);
    if (!m_plan.isClean())
        return;
    for (const auto &[key, told] : toldSessions) {
        if (m_stop.stop_requested())
            return;
        settle(key, told);
    }
}

void Planner::settle(const SessionKey &key, const Told &told)
{
    const auto known = m_sessions.find(key);
    const bool isNew = known == m_sessions.end();
    LoggedSession session = isNew ? LoggedSession{m_ids.session(), std::get<LifterId>(key),
                                std::get<QDate>(key), std::get<int>(key), {}, {}}
                                  : *known->second;
    if (told.readiness)
        session.readiness = told.readiness;
    const SetsMerged merged = mergeSets(session.sets, told.sets);
    m_plan.counts.newSets += merged.added;
    m_plan.counts.knownSets += merged.known;
    session.sets = merged.sets;
    if (isNew) {
        ++m_plan.counts.newSessions;
    } else if (session != *known->second) {
        ++m_plan.counts.changedSessions;
        m_plan.edit.sessions.before.push_back(*known->second);
    } else {
        return;
    }
    m_plan.edit.sessions.after.push_back(std::move(session));
}

ImportPlan Planner::result()
{
    if (!m_plan.isClean()) {
        m_plan.edit = {};
        m_plan.counts = {};
        return std::move(m_plan);
    }
    m_plan.farLoads = farLoads(m_plan.edit.sessions.before, m_plan.edit.sessions.after, m_roster);
    for (auto &[id, lifter] : m_newLifters)
        m_plan.edit.lifters.after.push_back(std::move(lifter));
    m_plan.counts.newLifters = int(m_newLifters.size());
    return std::move(m_plan);
}

} // namespace

IdSource countingIds()
{
    return {[n = qint64(0)]() mutable { return LifterId{++n}; },
        [n = qint64(0)]() mutable { return SessionId{++n}; }};
}

std::vector<CountLine> countLines(const ImportCounts &counts)
{
    return {{Text::tr("New lifters"), counts.newLifters},
        {Text::tr("Lifters with new particulars"), counts.changedLifters},
        {Text::tr("New sessions"), counts.newSessions},
        {Text::tr("Known sessions that gain something"), counts.changedSessions},
        {Text::tr("New sets"), counts.newSets},
        {Text::tr("Sets that are in the roster already"), counts.knownSets}};
}

ImportPlan planImport(const LogTable &log, const PeopleTable &people, const RosterRows &roster,
    const IdSource &ids, const std::stop_token &stop)
{
    Planner planner(roster, ids, stop);
    planner.take(people);
    planner.take(log);
    return planner.result();
}

} // namespace core
