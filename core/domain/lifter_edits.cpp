#include "core/domain/lifter_edits.h"

namespace core {

Edit addLifter(const Lifter &lifter)
{
    Edit edit;
    edit.lifters.after = {lifter};
    return edit;
}

Edit changeLifter(const Lifter &before, const Lifter &after)
{
    Edit edit;
    if (before != after)
        edit.lifters = {{before}, {after}};
    return edit;
}

Edit setArchived(const Lifter &lifter, bool archived)
{
    Lifter after = lifter;
    after.archived = archived;
    return changeLifter(lifter, after);
}

} // namespace core
