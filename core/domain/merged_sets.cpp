#include "core/domain/merged_sets.h"

#include <cmath>

namespace core {

namespace {

constexpr double kSameLoadKg = 0.005;

template <class Value> bool agree(const std::optional<Value> &a, const std::optional<Value> &b)
{
    return !a || !b || *a == *b;
}

bool agree(const SetEntry &a, const SetEntry &b)
{
    return a.variation == b.variation && agree(a.lead, b.lead)
        && std::abs(a.loadKg - b.loadKg) < kSameLoadKg && a.repsPlanned == b.repsPlanned
        && a.repsDone == b.repsDone && a.rpe == b.rpe && a.failed == b.failed
        && agree(a.velocityMs, b.velocityMs) && agree(a.touch, b.touch)
        && (a.note.isEmpty() || b.note.isEmpty() || a.note == b.note);
}

void fillBlanks(SetEntry &set, const SetEntry &told)
{
    if (!set.velocityMs)
        set.velocityMs = told.velocityMs;
    if (!set.touch)
        set.touch = told.touch;
    if (!set.lead)
        set.lead = told.lead;
    if (!set.answers)
        set.answers = told.answers;
    if (set.note.isEmpty())
        set.note = told.note;
}

} // namespace

SetsMerged mergeSets(const std::vector<SetEntry> &present, const std::vector<SetEntry> &told)
{
    SetsMerged merged{present, std::vector<bool>(present.size(), false)};
    std::vector<bool> &taken = merged.isTold;
    std::vector<bool> settled(told.size(), false);
    const auto pair = [&](auto &&same) {
        for (size_t t = 0; t < told.size(); ++t)
            for (size_t p = 0; p < present.size() && !settled[t]; ++p)
                if (!taken[p] && same(present[p], told[t])) {
                    taken[p] = settled[t] = true;
                    fillBlanks(merged.sets[p], told[t]);
                    ++merged.known;
                }
    };
    // Equal ones first, so that a set that merely agrees does not take the place of an equal one.
    pair([](const SetEntry &a, const SetEntry &b) { return a == b; });
    pair([](const SetEntry &a, const SetEntry &b) { return agree(a, b); });
    for (size_t t = 0; t < told.size(); ++t)
        if (!settled[t]) {
            merged.sets.push_back(told[t]);
            ++merged.added;
        }
    return merged;
}

} // namespace core
