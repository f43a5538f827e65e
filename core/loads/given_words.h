#pragma once

#include "core/loads/resolved_cards.h"

namespace core {

/// That a card's loads are a fact, in few words: "given 3 May", "changed since given"; empty where
/// they follow the estimate.
[[nodiscard]] QString givenBadge(const ResolvedCard &card);

/// In full: when, how, and from which estimate.
[[nodiscard]] QString givenWords(const GivenMark &mark, Unit unit);

} // namespace core
