#include "core/domain/block.h"

#include "core/domain/text.h"

#include <algorithm>

namespace core {

QStringList weekProblems(int weeks, const std::vector<int> &deloadWeeks)
{
    QStringList wrong;
    if (weeks < 1 || weeks > kMostBlockWeeks)
        wrong << Text::tr("A block has 1 to %1 weeks.").arg(kMostBlockWeeks);
    if (!std::ranges::is_sorted(deloadWeeks, std::less_equal<>())
        || (!deloadWeeks.empty() && (deloadWeeks.front() < 1 || deloadWeeks.back() > weeks)))
        wrong << Text::tr("Deload weeks are weeks of the block, each named once.");
    return wrong;
}

QStringList problems(const Block &block)
{
    QStringList wrong;
    if (!block.lifter.isValid())
        wrong << Text::tr("A block belongs to a lifter.");
    if (block.name.trimmed().isEmpty())
        wrong << Text::tr("A block needs a name.");
    if (!block.start.isValid())
        wrong << Text::tr("A block needs a first day.");
    return wrong + weekProblems(block.weeks, block.deloadWeeks);
}

} // namespace core
