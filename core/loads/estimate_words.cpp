#include "core/loads/estimate_words.h"

#include "core/domain/text.h"

namespace core {

using strength::Standing;

bool carriesLoads(Standing standing)
{
    return standing != Standing::noData && standing != Standing::priorOnly;
}

QString words(Standing standing)
{
    switch (standing) {
    case Standing::noData:
        return Text::tr("no sets yet");
    case Standing::priorOnly:
        return Text::tr("no data of their own");
    case Standing::thin:
        return Text::tr("wide interval");
    case Standing::stale:
        return Text::tr("out of date");
    case Standing::conflicting:
        return Text::tr("sets disagree");
    case Standing::enough:
        break;
    }
    return Text::tr("enough sets");
}

QString advice(Standing standing)
{
    switch (standing) {
    case Standing::noData:
        return Text::tr(
            "No set of this lift is logged. Log a few rated sets of 3 to 6 reps, or write the "
            "load by hand.");
    case Standing::priorOnly:
        return Text::tr(
            "Only lifters like this one speak for it so far. Log a few rated sets before "
            "you go by it.");
    case Standing::thin:
        return Text::tr(
            "The interval is wide: take the load as a first guess and let the first sets set it "
            "right. A rated set of three at RPE 8 would narrow it.");
    case Standing::stale:
        return Text::tr(
            "The last set of this lift is long ago. Start lighter and let the first sets "
            "set it right.");
    case Standing::conflicting:
        return Text::tr(
            "The sets contradict each other more than usual. Check the log for a wrong load "
            "or rating before you go by it.");
    case Standing::enough:
        break;
    }
    return Text::tr("There are enough recent sets to prescribe from.");
}

} // namespace core
