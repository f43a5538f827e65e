#pragma once

#include "core/domain/session.h"
#include "core/domain/units.h"

#include <QString>
#include <optional>

/// What a coach types about one set while logging. Only what differs is written, in any order:
///
///     100  100kg  225lb    load on the bar, in the lifter's unit unless one is written
///     +2.5  -5             that much heavier or lighter than planned
///     x4                   reps that went up; 100x4 and 4x100 are both
///     x1+2                 of a lead-rep set: lead reps, then the others
///     @8.5  8.5            RPE; a bare number up to 10 is one, since no bar is so light
///     2RIR                 reps left in reserve, kept as the RPE
///     t3                   touch, 1 to 5
///     miss                 the rep after those was tried and missed; of a single that is x0
///     made  @-  t-         takes back a miss, a rating, a touch
///     ; words              note, to the end of the line; nothing behind it takes the note back
///
/// Decimals take a point or a comma, whatever the locale: there is no thousand to mistake it for.
namespace core {

struct EntryError
{
    int position = 0; ///< character, from 0
    QString words;    ///< what is wrong and what to write instead
};

struct EntryReading
{
    SetEntry entry;                  ///< sound when there is no error
    std::optional<EntryError> error; ///< the first one
};

/// @param start     the set as planned or as logged so far; blank text is the set itself. A loadKg
///                  of 0 or repsDone of 0 without a miss: not known, has to be typed
/// @param plannedKg what + and - count from; empty = from the load of `start`
[[nodiscard]] EntryReading readEntry(
    const QString &text, const SetEntry &start, Unit unit, std::optional<double> plannedKg = {});

} // namespace core
