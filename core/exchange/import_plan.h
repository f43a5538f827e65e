#pragma once

#include "core/domain/edit.h"
#include "core/exchange/import_basis.h"
#include "core/exchange/people_csv.h"

#include <functional>

namespace core {

/// Ids for rows to be added.
struct IdSource
{
    std::function<LifterId()> lifter;
    std::function<SessionId()> session;
};

/// Ids from 1 up, for rows that will not be stored.
[[nodiscard]] IdSource countingIds();

struct ImportCounts
{
    int newLifters = 0;
    int changedLifters = 0;
    int newSessions = 0;
    int changedSessions = 0; ///< known ones that get sets, readiness or a detail of a set
    int newSets = 0;
    int knownSets = 0; ///< in the roster already

    friend bool operator==(const ImportCounts &, const ImportCounts &) = default;
};

struct CountLine
{
    QString what; ///< "New lifters"
    int count = 0;
};

/// Every count with its words, in the order they are shown.
[[nodiscard]] std::vector<CountLine> countLines(const ImportCounts &counts);

/// What an import would do. All or nothing: with a problem there is no edit.
struct ImportPlan
{
    Edit edit;
    ImportCounts counts;
    ProblemList problems; ///< those of the tables too, by file and line
    QStringList farLoads; ///< to be looked at before it is done, see farLoads()

    [[nodiscard]] bool isClean() const { return problems.isEmpty(); }
};

/// Plans the import of a log and of people; either may be empty.
///
/// A lifter is known by the name, without regard to case; one who is new gets the usual gear of the
/// unit. A session is known by lifter, day and number. What a file says holds, and a blank field
/// leaves what the roster knows. A line of the log that agrees with a set of its session is that
/// set, each set once; others are appended in the order of the file. So a file imported twice adds
/// nothing, and a log that grows from week to week adds what is new in it.
/// @param stop  ends the planning; the plan is of no use then
[[nodiscard]] ImportPlan planImport(const LogTable &log, const PeopleTable &people,
    const RosterRows &roster, const IdSource &ids, const std::stop_token &stop = {});

} // namespace core
