#include "ui/lifters/lifter_edits.h"

namespace ui {

core::Edit addLifter(const core::Lifter &lifter)
{
    core::Edit edit;
    edit.lifters.after = {lifter};
    return edit;
}

core::Edit changeLifter(const core::Lifter &before, const core::Lifter &after)
{
    core::Edit edit;
    if (before != after)
        edit.lifters = {{before}, {after}};
    return edit;
}

core::Edit setArchived(const core::Lifter &lifter, bool archived)
{
    core::Lifter after = lifter;
    after.archived = archived;
    return changeLifter(lifter, after);
}

} // namespace ui
