#pragma once

#include "core/domain/check_in.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"
#include "core/notation/card_text.h"
#include "core/plan/lay_out.h"

#include <QStringList>
#include <functional>
#include <span>
#include <vector>

namespace core {

/// A lifter on whose days copied cards are laid.
struct PasteTarget
{
    const Lifter &lifter;
    QDate first;                       ///< the day of the first copied one
    std::vector<Card> cards;           ///< of the lifter on the days concerned; more do no harm
    std::span<const CheckIn> checkIns; ///< as PlanSources::checkIns
};

struct PastedCards
{
    Edit edit;
    std::vector<Card> cards; ///< the new ones, by target and in the order copied
    QStringList remarks;     ///< for whom what is left out or made lighter, and why; each by name
};

/// Copied cards laid on the days of every target, all or none. Loads in kg or lb are those of the
/// lifter they were written for: anybody else gets the sets without a load, all else is resolved by
/// each lifter's own estimate. A card that works what hurts a target is left out there, and maximal
/// work comes down as withoutMaximal() says, or is left out, for who gets none on the day.
/// @param rows  as parseCardText() gives them
/// @param from  whose cards they are; invalid = nobody knows, and nobody's loads are taken over
[[nodiscard]] PastedCards pasteCards(std::span<const CardRow> rows, LifterId from,
    std::span<const PasteTarget> targets, OnOccupiedDays onOccupied,
    std::span<const Variation> catalogue, const std::function<CardId()> &newId);

} // namespace core
