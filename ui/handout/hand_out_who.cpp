#include "ui/handout/hand_out_who.h"

#include "ui/look/text.h"

#include <map>

namespace ui {

std::vector<HandOutWho> whoGetsOne(
    const std::vector<core::Lifter> &lifters, core::LifterId selected)
{
    std::vector<core::LifterId> all;
    std::map<QString, std::vector<core::LifterId>> groups;
    QString name;
    for (const core::Lifter &lifter : lifters) {
        if (lifter.archived)
            continue;
        all.push_back(lifter.id);
        for (const QString &group : lifter.groups)
            groups[group].push_back(lifter.id);
        if (lifter.id == selected)
            name = lifter.name;
    }
    std::vector<HandOutWho> answers;
    if (!all.empty())
        answers.push_back({Text::tr("All lifters (%1)").arg(all.size()), all});
    for (const auto &[group, members] : groups)
        answers.push_back({Text::tr("Group %1 (%2)").arg(group).arg(members.size()), members});
    if (!name.isEmpty())
        answers.push_back({Text::tr("Only %1").arg(name), {selected}});
    return answers;
}

} // namespace ui
