#include "core/plan/progression.h"

#include "core/domain/text.h"
#include "core/domain/units.h"
#include "core/domain/week.h"
#include "core/loads/effort.h"
#include "core/safety/day_limits.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace core {

namespace {

double twoDecimals(double value)
{
    return std::round(value * 100.0) / 100.0;
}

/// The target with so much more load; targets without a load of their own stay.
Target withLoad(Target target, double amount, LoadIn in)
{
    if (auto *share = std::get_if<ShareTarget>(&target); share && in == LoadIn::percent) {
        share->percent = std::clamp(twoDecimals(share->percent + amount), 1.0, kMostPercent);
    } else if (auto *load = std::get_if<LoadTarget>(&target)) {
        const Unit unit = load->inPounds ? Unit::pound : Unit::kilogram;
        double more = load->loadKg * amount / 100.0;
        if (in != LoadIn::percent)
            more = toKg(amount, in == LoadIn::pound ? Unit::pound : Unit::kilogram);
        const double written = twoDecimals(fromKg(load->loadKg + more, unit));
        load->loadKg = std::clamp(toKg(written, unit), toKg(1.0, unit), kMostLoadKg);
    }
    return target;
}

struct Step
{
    int week;
    SetLine line;

    SetLine operator()(const AddLoad &rule)
    {
        line.target = withLoad(line.target, rule.perWeek * week, rule.in);
        return line;
    }
    SetLine operator()(const AddReps &rule)
    {
        const int top = line.asManyAsPossible ? line.reps : line.mostReps.value_or(line.reps);
        const int bound = std::max(top, std::min(rule.most, kMostReps)); // never fewer than written
        const int more = std::min(rule.perWeek * week, bound - top);
        line.reps = std::max(line.reps + more, line.leadReps + 1);
        if (line.mostReps)
            line.mostReps = std::clamp(
                *line.mostReps + more, line.reps + (line.asManyAsPossible ? 0 : 1), kMostReps);
        return line;
    }
    SetLine operator()(const RaiseRpe &rule)
    {
        const double more = std::round(rule.perWeek * week * 2.0) / 2.0;
        const double most = std::floor(std::clamp(rule.most, 1.0, 10.0) * 2.0) / 2.0;
        if (auto *rpe = std::get_if<RpeTarget>(&line.target)) {
            const double top = rpe->to.value_or(rpe->rpe);
            const double step = std::clamp(more, 1.0 - rpe->rpe, std::max(most - top, 0.0));
            rpe->rpe += step;
            if (rpe->to)
                *rpe->to += step;
        } else if (auto *rir = std::get_if<ReserveTarget>(&line.target)) {
            const double top = rir->to.value_or(rir->rir);
            const double step =
                std::clamp(more, top - kMostReserve, std::max(rir->rir - (10.0 - most), 0.0));
            rir->rir -= step;
            if (rir->to)
                *rir->to -= step;
        }
        return line;
    }
    SetLine operator()(const DropSets &rule)
    {
        const int fewest = std::min(line.sets, std::max(rule.fewest, 1));
        line.sets = std::clamp(line.sets - rule.perWeek * week, fewest, kMostSets);
        return line;
    }
    SetLine operator()(const Wave &rule)
    {
        const size_t length = rule.steps.size();
        const double step = rule.steps[size_t(week) % length]
            + rule.rise * double(size_t(week) / length) - rule.steps.front();
        line.target = withLoad(line.target, step, rule.in);
        return line;
    }
};

/// The step for those who get no maximal work, or none before their age is known.
SetLine carefully(const SetLine &line, ProgressionRule rule, int week, const DayLimits &limits)
{
    if (auto *raise = std::get_if<RaiseRpe>(&rule))
        raise->most =
            std::min(raise->most, limits.isBeginner() ? kMostRpeWithoutMaximal : kMaximalRpe);
    SetLine next = withoutMaximal(progressed(line, rule, week));
    const SetLine now = withoutMaximal(line);
    // A share that would become maximal stays where it was, rather than to fall back.
    if (auto *share = std::get_if<ShareTarget>(&next.target))
        if (const auto *had = std::get_if<ShareTarget>(&now.target);
            had && next != progressed(line, rule, week))
            share->percent = std::max(share->percent, had->percent);
    return next;
}

bool isDrop(const SetLine &line)
{
    return std::holds_alternative<DropTarget>(line.target);
}

/// Why the rule leaves the line as it is; empty where it acts or needs not.
QString remarkOn(const SetLine &line, const ProgressionRule &rule)
{
    const bool isByLoad =
        std::holds_alternative<AddLoad>(rule) || std::holds_alternative<Wave>(rule);
    const bool isByEffort = std::holds_alternative<RaiseRpe>(rule);
    const bool isEffort = std::holds_alternative<RpeTarget>(line.target)
        || std::holds_alternative<ReserveTarget>(line.target);
    if (isByLoad && isEffort)
        return Text::tr(
            "%1 goes by effort: its load follows the estimate, and is not raised by the "
            "rule.")
            .arg(setLineText(line));
    if (isByLoad && !isDrop(line) && progressed(line, rule, 1) == line
        && progressed(line, rule, 2) == line)
        return Text::tr("%1 has no load that this rule can raise: percent for shares, kg or lb for "
                        "loads.")
            .arg(setLineText(line));
    if (isByEffort && !isEffort)
        return Text::tr("%1 names no RPE or RIR to raise.").arg(setLineText(line));
    if (!isByLoad && progressed(line, rule, 1) == line)
        return Text::tr("%1 is at the bound of the rule already.").arg(setLineText(line));
    return {};
}

} // namespace

SetLine progressed(const SetLine &line, const ProgressionRule &rule, int week)
{
    return std::visit(Step{week, line}, rule);
}

Progression progress(std::span<const Card> week, const ProgressionRule &rule, int weeks,
    const Lifter &lifter, const std::function<CardId()> &newId)
{
    if (weeks < 0)
        throw std::invalid_argument("a progression goes forward");
    if (const auto *wave = std::get_if<Wave>(&rule); wave && wave->steps.empty())
        throw std::invalid_argument("a wave has at least one step");

    Progression progression;
    for (const Card &card : week) {
        const ParsedSetLines parsed = parseSetLines(card.setLine);
        if (parsed.error)
            progression.remarks << Text::tr("\"%1\" cannot be read and is carried as it is.")
                                       .arg(card.setLine.simplified());
        for (const SetLine &line : parsed.lines)
            if (const QString remark = remarkOn(line, rule); !remark.isEmpty())
                progression.remarks << remark;
    }

    for (int on = 1; on <= weeks; ++on)
        for (const Card &card : week) {
            Card row = card;
            row.id = newId();
            row.day = card.day.addDays(kWeekDays * on);
            ParsedSetLines parsed = parseSetLines(card.setLine);
            if (!parsed.error && !parsed.lines.empty()) {
                const DayLimits limits = limitsOn(lifter, row.day, {});
                for (SetLine &line : parsed.lines) {
                    const SetLine free = progressed(line, rule, on);
                    line = limits.mayWriteMaximal() ? free : carefully(line, rule, on, limits);
                    if (line != free)
                        progression.remarks
                            << withoutMaximalWords(limits, setLineText(line), setLineText(free));
                }
                row.setLine = setLineText(parsed.lines);
            }
            progression.rows.push_back(row);
        }
    progression.remarks.removeDuplicates();
    return progression;
}

} // namespace core
