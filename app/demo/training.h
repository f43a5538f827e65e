#pragma once

#include "app/demo/scenario.h"
#include "core/domain/session.h"

#include <map>
#include <random>

namespace demo {

/// Variation ids by catalogue code.
using Codes = std::map<QString, core::VariationId>;

/// Draws the log of one person: what a coach would have planned week by week from a running guess
/// of the max, and what the lifter made of it. Same seed, same log. Sessions carry no id and no
/// lifter id yet.
[[nodiscard]] std::vector<core::LoggedSession> trainingLog(
    const Person &person, const Codes &codes, QDate firstMonday, std::mt19937_64 &random);

} // namespace demo
