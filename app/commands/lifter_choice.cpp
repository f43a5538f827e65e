#include "app/commands/lifter_choice.h"

#include "app/commands/files.h"
#include "app/commands/text.h"
#include "core/csv/nearest_word.h"

namespace app {

std::optional<std::vector<core::Lifter>> chosenLifters(const QString &roster, const QString &name,
    const std::vector<core::Lifter> &all, Console &console)
{
    std::vector<core::Lifter> found;
    QStringList names;
    for (const core::Lifter &lifter : all) {
        names << lifter.name;
        const bool isMeant =
            name.isEmpty() ? !lifter.archived : lifter.name.compare(name, Qt::CaseInsensitive) == 0;
        if (isMeant)
            found.push_back(lifter);
    }
    if (!found.empty() || name.isEmpty())
        return found;
    const QString nearest = core::nearestWord(name, names);
    core::ProblemList problems;
    problems.add({roster, 0, {}, Text::tr("It has no lifter named \"%1\".").arg(name),
        nearest.isEmpty() ? Text::tr("Its lifters are: %1.").arg(names.join(QStringLiteral(", ")))
                          : Text::tr("Did you mean %1?").arg(nearest)});
    report(problems, console);
    return std::nullopt;
}

} // namespace app
