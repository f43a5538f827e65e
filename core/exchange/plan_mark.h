#pragma once

#include "core/domain/card.h"
#include "core/domain/variation.h"

#include <QString>
#include <span>

namespace core {

/// Fingerprint of what is planned for a lifter in a week: 16 hexadecimal digits of the SHA-256
/// (FIPS 180-4) of lifter, week and, card by card, day, place, variation and sets. Loads do not
/// count, they follow the estimate from day to day; neither do notes. So a return sheet tells
/// whether the plan that the lifter had in hand is still the plan.
/// @param cards  in any order; those of other lifters or weeks are left out
[[nodiscard]] QString planMark(LifterId lifter, QDate monday, std::span<const Card> cards,
    std::span<const Variation> variations);

/// Whether the mark is that of the plan as it stands, or of the same plan as it stood when a slash
/// parted the set lines of a row (version 6 of the roster file): a sheet that was handed out before
/// then is still one of this plan. What stood in rows even then is told from what the slash parted
/// by trying both, card by card; with more than ten such cards, all of them alike.
[[nodiscard]] bool isMarkOf(const QString &mark, LifterId lifter, QDate monday,
    std::span<const Card> cards, std::span<const Variation> variations);

} // namespace core
