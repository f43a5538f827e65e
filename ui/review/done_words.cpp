#include "ui/review/done_words.h"

#include "ui/look/text.h"

#include <QLocale>
#include <cmath>

namespace ui {

namespace {

/// Fewer sets of all lifters say nothing of a chance.
constexpr int kFewest = 10;

QString percent(double share)
{
    return QLocale().toString(int(std::lround(100.0 * share)));
}

} // namespace

QString adherenceWords(const core::Adherence &done, int weeks)
{
    QStringList parts;
    if (const std::optional<double> share = done.share())
        parts << Text::tr("Of the sets planned in the last %1 weeks %2 of %3 were done (%4 %).")
                     .arg(weeks)
                     .arg(done.done)
                     .arg(done.sets)
                     .arg(percent(*share));
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
        lines << Text::tr("%1\u2013%2 %: %3 of %4 made; all lifters %5 of %6 (%7 %)")
                     .arg(10 * i)
                     .arg(10 * (i + 1))
                     .arg(lifter[i].made)
                     .arg(lifter[i].sets)
                     .arg(roster[i].made)
                     .arg(roster[i].sets)
                     .arg(percent(double(roster[i].made) / roster[i].sets));
    }
    return lines.join(u'\n');
}

} // namespace ui
