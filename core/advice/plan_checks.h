#pragma once

#include "core/domain/check_in.h"
#include "core/domain/edit.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/waiver.h"
#include "core/loads/resolved_cards.h"

#include <QString>
#include <functional>
#include <optional>
#include <span>
#include <vector>

/// What a tired coach overlooks in a plan, in words.
///
/// A plan is measured against the lifter's own last weeks, never against a table, and never by a
/// ratio of acute to chronic load: its appearance of precision is criticised for good reason
/// (Impellizzeri et al. 2020, Int J Sports Physiol Perform 15(6):907-913, from memory). Thresholds
/// are common practice without a published source and stand beside their rules.
namespace core {

enum class Severity {
    hint,    ///< worth a look
    warning, ///< most coaches would change it
    stop     ///< somebody may come to harm
};

struct Finding
{
    FindingKey key;
    Severity severity = Severity::warning;
    QString words;        ///< what was found, one sentence or two
    QString remedy;       ///< what to do about it
    double measure = 1.0; ///< how bad, more is worse; compares only findings of one key
    std::optional<QString> wavedThrough; ///< the coach's note, where it was waved through
};

struct PlanToCheck
{
    const Lifter &lifter;
    const std::vector<Variation> &catalogue;
    const std::vector<LoggedSession> &sessions; ///< of the lifter, from eight weeks before
    std::span<const ResolvedCard> cards;        ///< of whole weeks, by day and position
    std::function<const LiftEstimate *(Lift)> estimateOf; ///< null where there is none
    std::span<const CheckIn> checkIns;                    ///< of the lifter, however old
    std::span<const Waiver> waivers = {};                 ///< of the lifter
};

/// Findings by week, those of cards before those of the whole week, each group in the order of the
/// plan, with the coach's notes on what was waved through. Cards whose set line cannot be read are
/// left out: the board points at them itself.
[[nodiscard]] std::vector<Finding> checkPlan(const PlanToCheck &plan);

/// Whether the finding is accepted only with a note: somebody may come to harm, and the coach says
/// why it is right here. A note without words accepts nothing.
[[nodiscard]] bool needsNote(const Finding &finding);

/// The coach lets the finding stand; an earlier waiver of it, from before it got worse, is
/// replaced.
/// @param note     with words where needsNote() says so
/// @param waivers  of the lifter
[[nodiscard]] Edit waive(const Finding &finding, const QString &note,
    std::span<const Waiver> waivers, const std::function<WaiverId()> &newId);

/// The finding is to be pointed out again.
[[nodiscard]] Edit takeUp(const Finding &finding, std::span<const Waiver> waivers);

} // namespace core
