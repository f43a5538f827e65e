#pragma once

#include "core/domain/edit.h"

#include <QDate>
#include <functional>

namespace demo {

/// Sources of fresh ids.
struct Ids
{
    std::function<core::LifterId()> lifter;
    std::function<core::SessionId()> session;
    std::function<core::CardId()> card;
    std::function<core::BlockId()> block;
    std::function<core::CheckInId()> checkIn;
};

/// Everything of the demo roster as one edit of an empty one: the lifters, thirty weeks of log and
/// what of this week lies before `today`, the plan of the two weeks before, of this week and the
/// next, a block around them, and what some have said this morning. Same day, same roster.
/// @throws std::invalid_argument where the catalogue lacks a code that the scenario trains
[[nodiscard]] core::Edit demoRoster(
    const std::vector<core::Variation> &catalogue, QDate today, const Ids &ids);

} // namespace demo
