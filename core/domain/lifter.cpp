#include "core/domain/lifter.h"

#include "core/domain/text.h"
#include "core/domain/visible_text.h"

namespace core {

namespace {
constexpr int kEarliestBirthYear = 1900, kLatestBirthYear = 2100;
constexpr double kLightestKg = 20.0;
constexpr double kHeaviestKg = 400.0;

} // namespace

bool mayBeMinor(const Lifter &lifter, QDate day)
{
    return lifter.birthYear && day.year() - *lifter.birthYear <= 18;
}

bool isAgeUnknown(const Lifter &lifter)
{
    return !lifter.birthYear && !lifter.isAdult;
}

bool isNovice(const Lifter &lifter, QDate day)
{
    return lifter.trainingSince && day < lifter.trainingSince->addYears(1);
}

QStringList problems(const Lifter &lifter)
{
    QStringList wrong;
    if (lifter.name.trimmed().isEmpty())
        wrong << Text::tr("A lifter needs a name.");
    else if (hasHiddenSigns(lifter.name))
        wrong << Text::tr("The name has signs that cannot be seen: type it anew.");
    if (lifter.birthYear
        && (*lifter.birthYear < kEarliestBirthYear || *lifter.birthYear > kLatestBirthYear))
        wrong << Text::tr("Birth year %1 is not between %2 and %3.")
                     .arg(*lifter.birthYear)
                     .arg(kEarliestBirthYear)
                     .arg(kLatestBirthYear);
    if (lifter.trainingSince && !lifter.trainingSince->isValid())
        wrong << Text::tr("The first day of training is no date.");
    if (lifter.bodyweightKg
        && !(*lifter.bodyweightKg >= kLightestKg && *lifter.bodyweightKg <= kHeaviestKg))
        wrong << Text::tr("Bodyweight is not between %1 and %2.")
                     .arg(formatLoad(kLightestKg, lifter.unit, 0),
                         formatLoad(kHeaviestKg, lifter.unit, 0));
    QStringList groups = lifter.groups;
    groups.sort();
    groups.removeDuplicates();
    if (groups != lifter.groups || (!groups.isEmpty() && groups.front().trimmed().isEmpty()))
        wrong << Text::tr("Groups have names, are sorted, and each is named once.");
    wrong << problems(lifter.gear);
    return wrong;
}

QStringList problems(const Lifter &lifter, QDate today)
{
    QStringList wrong = problems(lifter);
    if (lifter.birthYear && *lifter.birthYear > today.year()
        && *lifter.birthYear <= kLatestBirthYear)
        wrong << Text::tr("The birth year %1 has not come yet.").arg(*lifter.birthYear);
    return wrong;
}

} // namespace core
