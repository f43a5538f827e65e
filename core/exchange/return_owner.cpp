#include "core/exchange/return_owner.h"

#include "core/domain/text.h"
#include "core/exchange/plan_mark.h"

namespace core {

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
    if (byId && isMarkOf(sheet.mark, byId->id, sheet.monday, basis.cards, basis.variations))
        return {byId, false,
            Text::tr("The sheet names %1; number and plan are those of %2. Was the lifter renamed?")
                .arg(sheet.lifter, byId->name)};
    return {nullptr, false,
        Text::tr(
            "The roster has no lifter named %1. If the lifter is new, add the name first; if it is "
            "a slip, ask who the sheet is from.")
            .arg(sheet.lifter)};
}

} // namespace core
