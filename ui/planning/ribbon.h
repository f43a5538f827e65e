#pragma once

#include "core/domain/block.h"
#include "core/domain/card.h"
#include "core/log/outcome.h"

#include <QDate>
#include <optional>
#include <span>
#include <vector>

/// What the block ribbon shows: a pure function of the plan.
namespace ui {

struct RibbonWeek
{
    QDate monday;
    int cards = 0;
    int lifts = 0;
    bool deload = false;
    bool meet = false;
    bool now = false;                         ///< today is in it
    std::optional<core::WeekOutcome> outcome; ///< of a week that is over

    friend bool operator==(const RibbonWeek &, const RibbonWeek &) = default;
};

struct RibbonBlock
{
    core::Block block;
    int first = 0; ///< week of the ribbon, cut off where the ribbon begins
    int last = 0;

    friend bool operator==(const RibbonBlock &, const RibbonBlock &) = default;
};

struct Ribbon
{
    std::vector<RibbonWeek> weeks;
    std::vector<RibbonBlock> blocks; ///< those that reach into the weeks, by first day

    friend bool operator==(const Ribbon &, const Ribbon &) = default;
};

/// Cards whose sets cannot be read count as a card without lifts.
/// @param outcomes  of the weeks that are over, by Monday
[[nodiscard]] Ribbon ribbonOf(QDate firstMonday, int weeks, std::span<const core::Card> cards,
    std::span<const core::Block> blocks, std::optional<QDate> meet, QDate today,
    const std::map<QDate, core::WeekOutcome> &outcomes = {});

/// How much of a week's plan was done, as the ribbon marks it by shape.
enum class WeekMark { none, done, partly, leftOut };
[[nodiscard]] WeekMark markOf(const RibbonWeek &week);

/// The ribbon stays where it is while the week shown is in it with a neighbour on both sides, so
/// that it does not slide under the pointer; else the week becomes its fourth.
[[nodiscard]] QDate ribbonStart(QDate before, int weeks, QDate shownMonday);

/// "Strength, 2 March to 29 March 2026, 4 weeks: heavy singles" and what the week holds.
[[nodiscard]] QString blockWords(const core::Block &block);
[[nodiscard]] QString weekWords(const RibbonWeek &week);

} // namespace ui
