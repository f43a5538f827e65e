#pragma once

#include "core/domain/ids.h"

#include <QDate>
#include <QStringList>
#include <optional>
#include <span>
#include <vector>

namespace core {

/// The first reps of a lead-rep set, done in a variation of their own.
struct LeadReps
{
    VariationId variation;
    int reps = 1; ///< >= 1; counted in the reps of the set

    friend bool operator==(const LeadReps &, const LeadReps &) = default;
};

/// The planned set that a logged one answers, whatever became of the card.
struct PlannedSetRef
{
    CardId card;
    int set = 0; ///< of the card, counted through its lines from 0

    friend bool operator==(const PlannedSetRef &, const PlannedSetRef &) = default;
};

/// One set as the lifter did it. Plain data; the rules are in problems() and in the schema.
struct SetEntry
{
    VariationId variation;
    double loadKg = 0.0;              ///< on the bar, > 0
    std::optional<int> repsPlanned;   ///< >= 1
    int repsDone = 0;                 ///< >= 1, or 0 when the first rep was missed
    std::optional<double> rpe;        ///< 1..10 in halves; empty = not recorded
    bool failed = false;              ///< the rep after the last one done was tried and missed
    std::optional<double> velocityMs; ///< mean velocity of the fastest rep, m/s
    std::optional<int> touch;         ///< 1 (held off or feather-light) .. 5 (sinks and stops)
    QString note;
    std::optional<LeadReps> lead; ///< of a lead-rep set, whose other reps are in `variation`
    std::optional<PlannedSetRef> answers = {}; ///< empty for an extra set and where nobody said

    friend bool operator==(const SetEntry &, const SetEntry &) = default;
};

/// What is wrong, in words a coach can act on; empty when the entry is sound.
[[nodiscard]] QStringList problems(const SetEntry &entry);

/// Load times reps done; a missed rep does not count (common practice, no source).
[[nodiscard]] double tonnageKg(const SetEntry &entry);

/// One training session of one lifter with its sets in the order done.
struct LoggedSession
{
    SessionId id;
    LifterId lifter;
    QDate day;
    int number = 1;               ///< 1, 2 ... when a day holds several
    std::optional<int> readiness; ///< 1 (worst) .. 5 (best), as said before the session
    std::vector<SetEntry> sets;

    friend bool operator==(const LoggedSession &, const LoggedSession &) = default;
};

/// The same for a session and its sets, each of which is named by its place: "Set 2: ...".
[[nodiscard]] QStringList problems(const LoggedSession &session);

/// The day of the newest set; invalid without any.
[[nodiscard]] QDate lastDayOf(std::span<const LoggedSession> sessions);

} // namespace core
