#include "ui/review/measure_series.h"

#include "core/advice/readiness_advice.h"
#include "core/csv/csv_writer.h"
#include "core/domain/touch_score.h"
#include "core/domain/variation.h"
#include "core/review/touch_review.h"
#include "core/review/variation_ratios.h"
#include "ui/look/text.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double kMidWeek = 3.5;

/// A line of one figure of every week that has it.
template <class Figure>
MeasureLine weekly(const QString &name, const std::vector<core::WeekMeasures> &weeks, Figure figure)
{
    MeasureLine line{name, {}};
    for (const core::WeekMeasures &week : weeks)
        if (const std::optional<double> value = figure(week))
            line.points.push_back({core::engineDay(week.done.monday) + kMidWeek, *value, {}, {}});
    return line;
}

std::vector<MeasureLine> zoneLines(const std::vector<core::WeekMeasures> &weeks)
{
    std::vector<MeasureLine> lines;
    const auto percent = [](double share) {
        return QString::number(int(std::lround(100 * share)));
    };
    for (size_t zone = 0; zone < core::kZones; ++zone) {
        const QString name = zone == 0
            ? Text::tr("below %1 %").arg(percent(core::kZoneBounds.front()))
            : zone + 1 == core::kZones
            ? Text::tr("%1 % and more").arg(percent(core::kZoneBounds.back()))
            : Text::tr("%1 to %2 %")
                  .arg(percent(core::kZoneBounds[zone - 1]),
                      percent(core::kZoneBounds[zone] - 0.01));
        lines.push_back(weekly(name, weeks,
            [zone](const auto &week) { return std::optional<double>(week.zones[zone]); }));
    }
    return lines;
}

std::vector<MeasureLine> monotonyLines(const std::vector<core::WeekMeasures> &weeks)
{
    return {weekly(Text::tr("Monotony"), weeks, [](const auto &week) { return week.monotony; }),
        weekly(Text::tr("Strain, 10 t"), weeks, [](const auto &week) {
            return week.strain ? std::optional(*week.strain / 10000.0) : std::nullopt;
        })};
}

std::vector<MeasureLine> plannedLines(const std::vector<core::WeekMeasures> &weeks)
{
    return {weekly(Text::tr("Done"), weeks,
                [](const auto &week) { return std::optional<double>(week.done.lifts); }),
        weekly(Text::tr("Planned"), weeks, [](const auto &week) {
            return week.plannedLifts > 0 ? std::optional<double>(week.plannedLifts) : std::nullopt;
        })};
}

std::vector<MeasureLine> ratioLines(const MeasureSources &sources)
{
    std::vector<MeasureLine> lines;
    for (const int row : core::trainedRows(sources.lift))
        if (const core::Variation *variation =
                core::find(sources.catalogue, sources.lift.rows[size_t(row)])) {
            MeasureLine line{variation->name, {}};
            for (const auto &[day, ratio] : core::ratiosOverTime(sources.lift, row))
                line.points.push_back({day, ratio.value, ratio.low90, ratio.high90});
            lines.push_back(std::move(line));
        }
    return lines;
}

MeasureLine touchLine(const MeasureSources &sources)
{
    const int wanted = core::wantedTouch(sources.style);
    MeasureLine line{Text::tr("\"%1\" or softer up to").arg(core::touchWord(wanted)), {}};
    for (const strength::TouchHoldPoint &point :
        strength::touchHoldOverTime(core::touchReadings(sources.lift), sources.touch, wanted))
        if (point.hold.standing == strength::TouchStanding::enough)
            line.points.push_back({double(point.day), 100.0 * point.hold.share.value,
                100.0 * point.hold.share.low90, 100.0 * point.hold.share.high90});
    return line;
}

MeasureLine readinessLine(const MeasureSources &sources)
{
    MeasureLine line{Text::tr("Readiness"), {}};
    for (const auto &[day, said] : core::readinessByDay(sources.lift.readings, sources.checkIns))
        line.points.push_back({double(core::engineDay(day)), said, {}, {}});
    return line;
}

std::vector<MeasureLine> comparedLines(const MeasureSources &sources)
{
    std::vector<MeasureLine> lines;
    for (const ComparedLifter &lifter : sources.compared) {
        MeasureLine line{lifter.name, {}};
        if (lifter.lift)
            for (const WeekPoint &week :
                strengthSeries(*lifter.lift, {}, sources.knowledge, sources.unit).weeks)
                line.points.push_back({week.day, week.value, week.low90, week.high90});
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace

MeasureWords words(Measure measure)
{
    const QString nothing = Text::tr("Nothing to show for this lift yet.");
    switch (measure) {
    case Measure::intensity:
        return {Text::tr("Average intensity"),
            Text::tr("Tonnage / (lifts x estimated competition max of the day), weekly."), nothing};
    case Measure::zones:
        return {Text::tr("Lifts by zone"),
            Text::tr("Lifts a week by their share of the variation's own max of the day."),
            nothing};
    case Measure::tension:
        return {Text::tr("Time under tension"),
            Text::tr("Minutes a week, one second a count of tempo and pause; a lowering without "
                     "a tempo counts two seconds, a fast lift one. An estimate, not a measured "
                     "time."),
            nothing};
    case Measure::monotony:
        // Foster (1998) has rating x minutes; on such measures Impellizzeri et al. (2020).
        return {Text::tr("Monotony and strain"),
            Text::tr("Mean daily tonnage / its standard deviation over the week, and tonnage x "
                     "monotony. Made for rating x minutes; the log holds no minutes, so tonnage "
                     "stands in. Disputed: it describes how alike the days were and foretells no "
                     "injury."),
            nothing};
    case Measure::planned:
        return {Text::tr("Planned and done"),
            Text::tr("Lifts on the week's cards, and lifts logged."), nothing};
    case Measure::ratios:
        return {Text::tr("Ratio of each variation"),
            Text::tr("What the rated sets of eight weeks say of each variation's max, as a share "
                     "of the competition max, with a 90 % interval."),
            Text::tr("No variation has four rated sets within eight weeks yet.")};
    case Measure::touchHold:
        return {Text::tr("Touch hold"),
            Text::tr("Share of the estimated max at which the touch is more often heavier than "
                     "wanted, from the scores of three months, with its 90 % interval."),
            Text::tr("Not enough to say where the touch breaks down. Score the touch of heavy "
                     "sets, a dozen over a range of loads in three months.")};
    case Measure::compare:
        return {Text::tr("Lifters compared"),
            Text::tr("Estimated competition max of the lifters chosen under Compare, in this "
                     "lifter's unit."),
            nothing};
    case Measure::readiness:
        break;
    }
    return {Text::tr("Readiness"),
        Text::tr("Said before training, 1 (worst) to 5 (best): mean of sleep, stress, motivation "
                 "and the sorest area."),
        Text::tr("No check-in and no session with a readiness yet.")};
}

MeasureContent measureContent(Measure measure, const MeasureSources &sources)
{
    const auto weeks = [&] {
        return core::weekMeasures(sources.lift, sources.catalogue, sources.cards);
    };
    const auto one = [&](auto figure) {
        return std::vector{weekly(words(measure).name, weeks(), figure)};
    };
    const auto content = [&]() -> MeasureContent {
        switch (measure) {
        case Measure::intensity:
            return {QStringLiteral("%"), 1, false, one([](const auto &week) {
                        return week.averageIntensity ? std::optional(100.0 * *week.averageIntensity)
                                                     : std::nullopt;
                    })};
        case Measure::zones:
            return {Text::tr("lifts"), 0, true, zoneLines(weeks())};
        case Measure::tension:
            return {Text::tr("min"), 1, true,
                one([](const auto &week) { return std::optional(week.tensionSeconds / 60.0); })};
        case Measure::monotony:
            return {{}, 2, true, monotonyLines(weeks())};
        case Measure::planned:
            return {Text::tr("lifts"), 0, true, plannedLines(weeks())};
        case Measure::ratios:
            return {{}, 3, false, ratioLines(sources)};
        case Measure::touchHold:
            return {Text::tr("% of max"), 0, false, {touchLine(sources)}};
        case Measure::compare:
            return {core::symbol(sources.unit), 1, false, comparedLines(sources)};
        case Measure::readiness:
            break;
        }
        return {{}, 1, true, {readinessLine(sources)}};
    };
    MeasureContent shown = content();
    std::erase_if(shown.lines, [](const MeasureLine &line) { return line.points.empty(); });
    if (shown.lines.size() > kMostLines)
        shown.lines.resize(kMostLines);
    if (shown.lines.empty())
        shown.nothing = words(measure).nothing;
    return shown;
}

QByteArray measureCsv(const MeasureContent &content)
{
    const auto number = [](std::optional<double> value) {
        return value ? core::csvNumber(*value) : QByteArray();
    };
    QByteArray csv = core::csvLine({"day", "line", "value", "low90", "high90"});
    for (const MeasureLine &line : content.lines)
        for (const MeasurePoint &point : line.points)
            csv +=
                core::csvLine({core::fromEngineDay(int(point.day)).toString(Qt::ISODate).toUtf8(),
                    core::csvField(line.name), number(point.value), number(point.low90),
                    number(point.high90)});
    return csv;
}

} // namespace ui
