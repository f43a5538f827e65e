#include "core/exchange/return_match.h"

#include "core/domain/text.h"
#include "core/exchange/import_sets.h"
#include "core/exchange/plan_mark.h"

#include <algorithm>

namespace core {

namespace {

/// Of the sets that nothing told of, the first that `told` says anew. A set that was planned never
/// takes the place of one that the coach logged besides, nor the other way round.
std::optional<size_t> placeOf(
    const SetEntry &told, const std::vector<SetEntry> &sets, const std::vector<bool> &isTold)
{
    for (size_t i = 0; i < isTold.size(); ++i)
        if (!isTold[i] && sets[i].variation == told.variation
            && sets[i].repsPlanned == told.repsPlanned)
            return i;
    return std::nullopt;
}

} // namespace

SheetOwner ownerOf(const ReturnSheet &sheet, const ReturnBasis &basis)
{
    const Lifter *byId = nullptr;
    const Lifter *byName = nullptr;
    for (const Lifter &lifter : basis.lifters) {
        if (lifter.id == sheet.lifterId)
            byId = &lifter;
        if (lifter.name.toCaseFolded() == sheet.lifter.toCaseFolded())
            byName = &lifter;
    }
    if (byId && byId == byName)
        return {byId, true, {}};
    if (byId && byName)
        return {nullptr, false,
            Text::tr("The sheet names %1 but carries the number of %2. Ask who it is from.")
                .arg(byName->name, byId->name)};
    if (byName)
        return {byName, false,
            Text::tr(
                "The name is that of %1, the number is not: the hand-out may come from another "
                "roster file.")
                .arg(byName->name)};
    if (byId && planMark(byId->id, sheet.monday, basis.cards, basis.variations) == sheet.mark)
        return {byId, false,
            Text::tr("The sheet names %1; number and plan are those of %2. Was the lifter renamed?")
                .arg(sheet.lifter, byId->name)};
    return {nullptr, false,
        Text::tr(
            "The roster has no lifter named %1. If the lifter is new, add the name first; if it is "
            "a slip, ask who the sheet is from.")
            .arg(sheet.lifter)};
}

SetEntry entryOf(const ReturnedSet &returned, const std::map<QString, VariationId> &idOf)
{
    SetEntry entry = returned.set;
    entry.variation = idOf.at(returned.variation);
    if (returned.leadReps > 0)
        entry.lead = {idOf.at(returned.leadVariation), returned.leadReps};
    return entry;
}

SetsBooked bookSets(const std::vector<SetEntry> &present, const std::vector<SetEntry> &told)
{
    SetsMerged merged = mergeSets(present, told);
    const auto rest = merged.sets.begin() + std::ptrdiff_t(present.size());
    SetsBooked booked{{merged.sets.begin(), rest}, 0, 0, merged.known};
    for (auto set = rest; set != merged.sets.end(); ++set) {
        const auto place = placeOf(*set, booked.sets, merged.isTold);
        if (!place) {
            booked.sets.push_back(*set);
            ++booked.added;
            continue;
        }
        const std::optional<double> velocityMs = booked.sets[*place].velocityMs;
        booked.sets[*place] = *set;
        booked.sets[*place].velocityMs = velocityMs; // no sheet tells it
        merged.isTold[*place] = true;
        ++booked.corrected;
    }
    return booked;
}

} // namespace core
