#include "core/loads/estimate_words.h"

#include "core/domain/language.h"
#include "core/domain/text.h"

#include <optional>

namespace core {

using strength::Standing;

namespace {

/// A span of three weeks and more as people say it.
QString spanWords(int days)
{
    constexpr int kDaysAWeek = 7;
    constexpr double kDaysAMonth = 365.25 / 12.0;
    if (days < 6 * kDaysAWeek)
        return Text::tr("%1 days").arg(days);
    const int months = int(days / kDaysAMonth);
    if (months < 4)
        return Text::tr("%1 weeks").arg(days / kDaysAWeek);
    return months < 24 ? Text::tr("%1 months").arg(months) : Text::tr("%1 years").arg(months / 12);
}

/// Since the last set, where that is why the estimate is out of date.
std::optional<QString> silence(const strength::LifterEstimate &estimate)
{
    if (estimate.standing != Standing::stale || !estimate.lastSet)
        return std::nullopt;
    return spanWords(estimate.asOf - *estimate.lastSet);
}

} // namespace

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

QString words(const strength::LifterEstimate &estimate)
{
    if (const auto span = silence(estimate))
        return Text::tr("out of date: last set %1 ago").arg(*span);
    return words(estimate.standing);
}

QString advice(const strength::LifterEstimate &estimate)
{
    if (const auto span = silence(estimate))
        return Text::tr("The last set of this lift was %1 ago. Start lighter and let the first "
                        "sets set it right.")
            .arg(*span);
    return advice(estimate.standing);
}

QString clockTrouble(QDate today, QDate newest)
{
    if (!newest.isValid() || newest <= today)
        return {};
    const auto date = [](QDate day) { return dateWords(day, QStringLiteral("d MMMM yyyy")); };
    return Text::tr("This computer's clock says %1, but the newest set is of %2. Set the clock "
                    "right, or correct the date of that set.")
        .arg(date(today), date(newest));
}

} // namespace core
