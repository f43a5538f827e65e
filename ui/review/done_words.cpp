#include "ui/review/done_words.h"

#include "ui/look/text.h"

#include <QLocale>
#include <cmath>
#include <numeric>

namespace ui {

namespace {

/// Fewer sets of all lifters say nothing of a chance.
constexpr int kFewest = 10;

QString percent(double share)
{
    return QLocale().toString(int(std::lround(100.0 * share)));
}

} // namespace

QString adherenceWords(const core::Adherence &done)
{
    QStringList parts;
    if (const std::optional<double> share = done.share())
        parts << Text::tr("Sets done in the last %1 weeks that are over: %2 of %3 planned (%4 %).")
                     .arg(core::kAdherenceWeeks)
                     .arg(done.done)
                     .arg(done.sets)
                     .arg(percent(*share));
    else
        parts << Text::tr("Nothing was planned in the last %1 weeks that are over.")
                     .arg(core::kAdherenceWeeks);
    if (done.extra > 0)
        parts << Text::tr("Beside the plan: %1.").arg(done.extra);
    return parts.join(u' ');
}

QString scoreWords(const core::GivenScore &lifter, const core::GivenScore &roster)
{
    QStringList lines;
    for (size_t i = 0; i < roster.size(); ++i) {
        if (roster[i].sets < kFewest)
            continue;
        const QString chance = Text::tr("%1\u2013%2 %").arg(10 * i).arg(10 * (i + 1));
        const QString all = percent(double(roster[i].made) / roster[i].sets);
        lines << (lifter[i].sets == 0 ? Text::tr("%1: none so far; all lifters %2 % of %3")
                                            .arg(chance, all)
                                            .arg(roster[i].sets)
                                      : Text::tr("%1: made %2 of %3; all lifters %4 % of %5")
                                            .arg(chance)
                                            .arg(lifter[i].made)
                                            .arg(lifter[i].sets)
                                            .arg(all)
                                            .arg(roster[i].sets));
    }
    if (!lines.isEmpty())
        return Text::tr("First sets made, by the chance they were given with:\n%1")
            .arg(lines.join(u'\n'));
    const int tried = std::accumulate(roster.begin(), roster.end(), 0,
        [](int sum, const core::GivenTenth &tenth) { return sum + tenth.sets; });
    return Text::tr("How far the chances given hold cannot be said yet: that takes %1 first sets "
                    "with a like chance, and all lifters together have tried %2 of any.")
        .arg(kFewest)
        .arg(tried);
}

} // namespace ui
