#pragma once

#include "core/loads/resolved_cards.h"

namespace core {

/// The last step over finished lines: says of each what speaks against it on its day
/// (core/safety/day_limits.h), and names a lighter load where one may be suggested in place of
/// maximal work. What is planned stays as it is.
void applyLimits(std::span<ResolvedCard> cards, const PlanSources &sources);

/// Why the line is held back and what may stand in its place: "Pain (shoulders): ... Lighter:
/// 92.5 kg." Empty where it is not.
[[nodiscard]] QString withheldWords(const ResolvedLine &line, Unit unit);

/// The same of a whole card, each reason once; of several lines with the sets it is about.
[[nodiscard]] QStringList withheldWords(const ResolvedCard &card, Unit unit);

/// The same of lines that are not held back, and of which today says that they be lighter.
[[nodiscard]] QString easedWords(const ResolvedLine &line, Unit unit);
[[nodiscard]] QStringList easedWords(const ResolvedCard &card, Unit unit);

} // namespace core
