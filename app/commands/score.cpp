#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/text.h"
#include "core/csv/catalogue_csv.h"
#include "core/loads/lift_estimate.h"
#include "core/strength/forecast.h"

#include <cmath>

namespace app {

namespace {

/// Right-aligned, "-" where there is nothing to measure.
QString figure(double value, int decimals, int width)
{
    return (std::isnan(value) ? QStringLiteral("-") : QString::number(value, 'f', decimals))
        .rightJustified(width);
}

void tell(const strength::Score &s, QIODevice &out)
{
    const auto line = [&out](const QString &words, const QString &value) {
        say(out, words.leftJustified(46) + value);
    };
    say(out, Text::tr("Reps in reserve said against those expected before the session"));
    line(Text::tr("  rated sets"), QString::number(s.rated).rightJustified(9));
    line(Text::tr("  mean error, reps"), figure(s.rirError, 3, 9));
    line(Text::tr("  mean error of the lifter's usual, reps"), figure(s.usualError, 3, 9));
    line(Text::tr("  said above expected, reps"), figure(s.rirBias, 3, 9));
    say(out, Text::tr("Missed sets against the chance given before the session"));
    line(Text::tr("  sets"), QString::number(s.sets).rightJustified(9));
    line(Text::tr("  missed"), QString::number(s.missed).rightJustified(9));
    line(Text::tr("  Brier score, 0 is perfect"), figure(s.brier, 4, 9));
    line(Text::tr("  Brier score of the log's own miss rate"), figure(s.baseBrier, 4, 9));
    say(out, Text::tr("  chance of a miss      sets    given  came true"));
    for (const strength::ReliabilityRow &row : s.reliability)
        say(out,
            QStringLiteral("  %1 - %2 %%3%4%%5%")
                .arg(figure(100 * row.from, 0, 3), figure(100 * row.to, 0, 3),
                    QString::number(row.sets).rightJustified(14),
                    figure(100 * row.meanChance, 1, 8), figure(100 * row.observed, 1, 10)));
}

} // namespace

int score(const LogOptions &options, const Moment &moment, Console &console)
{
    const std::optional<core::Edit> read = readAlone(options.log, options.people, moment, console);
    if (!read)
        return exitProblems;
    const core::LiftLogs bench = core::liftLogs(
        read->lifters.after, core::builtInCatalogue(), read->sessions.after, core::Lift::bench);
    tell(strength::score(strength::forecastSessions(bench.logs, bench.priors)), console.out);
    return exitFine;
}

} // namespace app
