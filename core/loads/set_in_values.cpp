#include "core/loads/set_in_values.h"

#include "core/domain/variation.h"
#include "core/loads/effort_words.h"

namespace core {

std::vector<SetInValues> setsInValues(
    const ResolvedLine &resolved, const Variation &variation, std::span<const Variation> catalogue)
{
    const SetLine &line = resolved.line;
    SetInValues values{variation.code, expectedReps(line)};
    values.isExact = !line.asManyAsPossible && !line.mostReps;
    values.isOpenEnded = line.asManyAsPossible;
    if (resolved.load)
        values.loadKg = resolved.load->loadKg;
    values.isMaximal = resolved.isMaximal;
    values.withheld = resolved.withheld;
    if (resolved.lighter)
        values.lighterKg = resolved.lighter->loadKg;
    if (line.leadReps > 0) {
        values.leadReps = line.leadReps;
        values.leadCode = variation.code;
        const Variation *competition = competitionOf(catalogue, variation.lift);
        if (!line.restCode.isEmpty())
            values.code = line.restCode;
        else if (competition)
            values.code = competition->code;
    }
    std::vector<SetInValues> sets(size_t(line.sets), values);
    for (int i = 0; i < line.sets; ++i) {
        sets[size_t(i)].rpe = expectedRpe(resolved, i);
        sets[size_t(i)].effort = effortWords(resolved, i);
    }
    return sets;
}

} // namespace core
