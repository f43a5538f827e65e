#pragma once

#include "core/loads/resolved_cards.h"

namespace core {

/// That a card's loads are a fact, in few words: "given 3 May", "changed since given", and a sign
/// of about where they were worked out afterwards, which givenWords() explains; empty where they
/// follow the estimate.
[[nodiscard]] QString givenBadge(const ResolvedCard &card);

/// In full: when, how, and from which estimate.
[[nodiscard]] QString givenWords(const GivenMark &mark, Unit unit);

} // namespace core
