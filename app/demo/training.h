#pragma once

#include "app/demo/scenario.h"
#include "core/domain/session.h"

#include <map>
#include <random>

namespace demo {

/// Variation ids by catalogue code.
using Codes = std::map<QString, core::VariationId>;

/// One exercise of a training day as the coach wrote it.
struct Work
{
    const char *code; ///< of the reps after the lead
    double ratio;     ///< of the person, to the bench max
    int sets;
    int reps;
    double reserve;             ///< reps that should be left
    const char *lead = nullptr; ///< code of the first rep, where it is done in another variation
};

struct WorkDay
{
    QDate day;
    std::vector<Work> work;
};

/// Of the person's competition max of the bench, to the load of the variation.
/// @throws std::out_of_range for a code that the scenario does not train
[[nodiscard]] double ratioOf(const Person &person, const char *code);

/// Sets of three that a 4-2-0 tempo rep leads and competition reps follow.
[[nodiscard]] Work tempoLead(int sets, double reserve);

/// The training days of one week of the log as the coach planned them, counted from its first.
[[nodiscard]] std::vector<WorkDay> plannedWeek(const Person &person, int week, QDate monday);

/// Draws the log of one person: what a coach would have planned week by week from a running guess
/// of the max, and what the lifter made of it. Same seed, same log. Sessions carry no id and no
/// lifter id yet.
/// @param underWay  days of the week after, by its plan
[[nodiscard]] std::vector<core::LoggedSession> trainingLog(const Person &person, const Codes &codes,
    QDate firstMonday, const std::vector<WorkDay> &underWay, std::mt19937_64 &random);

} // namespace demo
