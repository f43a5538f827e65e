#include "core/exchange/return_match.h"

#include "core/exchange/import_sets.h"
#include "core/exchange/plan_mark.h"

#include <QCoreApplication>
#include <algorithm>

namespace core {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ReturnMatch", text);
}

/// Index of the `ordinal`-th set of a variation, from 0; none where there are fewer.
std::optional<size_t> nthOf(
    VariationId variation, int ordinal, const std::vector<SetEntry> &sets, size_t among)
{
    for (size_t i = 0; i < among; ++i)
        if (sets[i].variation == variation && ordinal-- == 0)
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
            tr("The sheet names %1 but carries the number of %2. Ask who it is from.")
                .arg(byName->name, byId->name)};
    if (byName)
        return {byName, false,
            tr("The name is that of %1, the number is not: the hand-out may come from another "
               "roster file.")
                .arg(byName->name)};
    if (byId && planMark(byId->id, sheet.monday, basis.cards, basis.variations) == sheet.mark)
        return {byId, false,
            tr("The sheet names %1; number and plan are those of %2. Was the lifter renamed?")
                .arg(sheet.lifter, byId->name)};
    return {nullptr, false,
        tr("The roster has no lifter named %1. If the lifter is new, add the name first; if it is "
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

SetsBooked book(const std::vector<SetEntry> &present, const std::vector<SetEntry> &told)
{
    SetsMerged merged = mergeSets(present, told);
    if (merged.added == 0)
        return {std::move(merged.sets), 0, 0, merged.known};
    SetsBooked booked{present, 0, 0, 0};
    std::map<VariationId, int> seen;
    for (const SetEntry &set : told) {
        const int ordinal = seen[set.variation]++;
        const auto place = nthOf(set.variation, ordinal, booked.sets, present.size());
        if (!place) {
            booked.sets.push_back(set);
            ++booked.added;
            continue;
        }
        const SetsMerged same = mergeSets({booked.sets[*place]}, {set});
        if (same.added == 0) {
            booked.sets[*place] = same.sets.front();
            ++booked.known;
        } else {
            const std::optional<double> velocityMs = booked.sets[*place].velocityMs;
            booked.sets[*place] = set;
            booked.sets[*place].velocityMs = velocityMs; // no sheet tells it
            ++booked.corrected;
        }
    }
    return booked;
}

} // namespace core
