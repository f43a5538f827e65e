#pragma once

#include "core/loads/resolved_cards.h"
#include "core/log/outcome.h"
#include "ui/board/board_layout.h"

#include <QDate>
#include <QLocale>
#include <QStringList>
#include <array>
#include <span>
#include <vector>

/// What the week board shows, in words: a pure function of the plan.
namespace ui {

/// One set line on a card.
struct LineView
{
    QString sets;   ///< "4x3 @8"
    QString load;   ///< "102.5 kg", empty without one
    QString effort; ///< asked and expected in words; empty without an estimate
};

struct CardView
{
    core::CardId id;
    QString name;
    core::Lift lift = core::Lift::bench;
    core::Serves serves = core::Serves::both;
    QString setLine; ///< as stored, for the editor
    std::vector<LineView> lines;
    QString done;  ///< what became of it; empty while nothing has
    QString given; ///< that the loads are a fact, and what the estimate would ask now; short
    QString note;
    QString caution;         ///< what stands in the way of a load, or speaks against it; short
    bool isWithheld = false; ///< pain, or no maximal work, speaks against it; the caution says so
    QString toolTip;         ///< target with interval, plates per side, cautions in full
    QString spoken;          ///< the whole card for a screen reader

    friend bool operator==(const CardView &, const CardView &) = default;
};
[[nodiscard]] inline bool operator==(const LineView &a, const LineView &b)
{
    return a.sets == b.sets && a.load == b.load && a.effort == b.effort;
}

struct DayView
{
    QDate day;
    QString name;    ///< "Mon"
    QString date;    ///< "2 Mar"
    QString lifts;   ///< "24 lifts", empty on a day without
    QString tonnage; ///< "2450 kg", empty where no load is known
    QString done;    ///< "5/6 sets, 1 missed, 1 extra, pain"; empty while nothing is
    std::vector<CardView> cards;
};

struct WeekView
{
    std::array<DayView, core::kWeekDays> days;
    QString lifts; ///< totals of the week, as for a day
    QString tonnage;
    QString done;

    [[nodiscard]] bool isEmpty() const;
};

[[nodiscard]] CardView cardView(const core::ResolvedCard &card, const core::PlanSources &sources);

/// @param cards    of the lifter in the week that begins on `monday`, by day and position; others
///                 are left out
/// @param sources  from which they were resolved
/// @param outcomes  what became of the days of the week
[[nodiscard]] WeekView weekView(std::span<const core::ResolvedCard> cards,
    const core::PlanSources &sources, QDate monday,
    const std::map<QDate, core::DayOutcome> &outcomes = {});

} // namespace ui
