#include "core/domain/given_day.h"

#include "core/domain/text.h"

#include <algorithm>

namespace core {

namespace {

bool isChance(const std::optional<double> &chance)
{
    return !chance || (*chance >= 0.0 && *chance <= 1.0);
}

bool isSoundLine(const GivenLine &line)
{
    return line.hardSetsAfter >= 0.0 && (!line.loadKg || *line.loadKg > 0.0)
        && isChance(line.allMade) && isChance(line.firstMade)
        && std::ranges::all_of(line.plates,
            [](const PlatePairs &plates) { return plates.plateKg > 0.0 && plates.pairs >= 1; });
}

} // namespace

QDateTime toSeconds(const QDateTime &moment)
{
    return QDateTime::fromSecsSinceEpoch(moment.toSecsSinceEpoch(), Qt::UTC);
}

QStringList problems(const GivenDay &given)
{
    QStringList wrong;
    if (!given.day.isValid() || !given.at.isValid())
        wrong << Text::tr("What was given needs its day and the time of giving.");
    else if (given.at.timeSpec() != Qt::UTC || given.at.time().msec() != 0)
        wrong << Text::tr("The time of giving is in UTC and whole seconds.");
    if (given.number < 1)
        wrong << Text::tr("What was given is counted from 1.");
    if (given.cards.empty())
        wrong << Text::tr("A day without cards gives nothing.");
    for (const GivenCard &card : given.cards)
        if (!card.variation.isValid() || !std::ranges::all_of(card.lines, isSoundLine)) {
            wrong << Text::tr("A given load is above 0, and its chance lies between 0 and 1.");
            break;
        }
    return wrong;
}

const GivenDay *givenOn(std::span<const GivenDay> given, LifterId lifter, QDate day)
{
    const GivenDay *last = nullptr;
    for (const GivenDay &one : given)
        if (one.lifter == lifter && one.day == day && (!last || one.number > last->number))
            last = &one;
    return last;
}

} // namespace core
