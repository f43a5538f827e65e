#pragma once

#include "core/domain/card.h"
#include "core/domain/edit.h"
#include "core/plan/touch_swap.h"

#include <QStringList>
#include <functional>
#include <optional>
#include <span>
#include <vector>

/// A block without lifter and date, made from any block and laid on any lifter.
namespace core {

struct TemplateCard
{
    int key = 0;       ///< unique in the template; stays the card's own through all its versions
    int dayOffset = 0; ///< from the first day, >= 0
    int position = 0;  ///< in the day from the top
    QString code;      ///< of the variation, since templates travel between rosters
    QString setLine;
    QString note;

    friend bool operator==(const TemplateCard &, const TemplateCard &) = default;
};

struct BlockTemplate
{
    QString name;
    std::vector<TemplateCard> cards; ///< by day and position

    friend bool operator==(const BlockTemplate &, const BlockTemplate &) = default;
};

/// The cards from `start` on as a template. Cards of variations that the catalogue lacks are left
/// out. Keys count from 1.
[[nodiscard]] BlockTemplate templateOf(const QString &name, std::span<const Card> cards,
    QDate start, std::span<const Variation> catalogue);

/// A new version of a template from a block that was laid out by it: cards keep their keys where
/// they stand on the same day with the same variation, further ones get new keys.
[[nodiscard]] BlockTemplate nextVersion(const BlockTemplate &before, std::span<const Card> cards,
    QDate start, std::span<const Variation> catalogue);

struct TemplateUse
{
    const Lifter &lifter;
    QDate start;
    std::span<const Variation> catalogue;
    std::span<const TouchSwap> swaps;
    const std::vector<Card> &cards; ///< all of the lifter in the block's time; more do no harm
    /// The version that was laid on this lifter from this start before; null = the first time.
    const BlockTemplate *before = nullptr;
};

struct TemplateResult
{
    Edit edit;
    QStringList
        remarks; ///< swaps, variations left out, differences kept: what the coach should see
};

/// Lays the template on a lifter; loads are resolved from the lifter's own estimate as on any card.
///
/// The first time its cards join what is there, below it. When a further version is laid, it is
/// merged with what the coach made of the earlier one, field by field: what the coach left alone
/// follows the template, what the coach changed, moved, added or took out stays so. A card of the
/// earlier version is recognised on its day by its content, else by its variation, else on another
/// day by its whole content, else on its day by its sets, the variation having been changed.
/// @param newId  gives a new id at each call
[[nodiscard]] TemplateResult applyTemplate(
    const BlockTemplate &block, const TemplateUse &use, const std::function<CardId()> &newId);

} // namespace core
