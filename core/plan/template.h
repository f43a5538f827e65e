#pragma once

#include "core/domain/card.h"
#include "core/domain/edit.h"

#include <QStringList>
#include <functional>
#include <optional>
#include <span>
#include <vector>

/// Making templates of blocks and laying them on lifters.
namespace core {

/// The cards of a block as a template, version 1, its id still to be given. Cards of variations
/// that the catalogue lacks are left out. Keys count from 1.
/// @param cards  of the block's lifter; those outside its weeks do no harm
[[nodiscard]] BlockTemplate templateOf(const QString &name, const Block &block,
    std::span<const Card> cards, std::span<const Variation> catalogue,
    std::vector<TouchSwap> swaps);

/// The version after `before`, from a block that was laid out by it: cards keep their keys where
/// they stand on the same day with the same variation, further ones get new keys; name and swaps
/// stay.
[[nodiscard]] BlockTemplate nextVersion(const BlockTemplate &before, const Block &block,
    std::span<const Card> cards, std::span<const Variation> catalogue);

/// The last version of each template, by name.
[[nodiscard]] std::vector<BlockTemplate> latestVersions(std::vector<BlockTemplate> templates);

struct TemplateUse
{
    const Lifter &lifter;
    QDate start;
    std::span<const Variation> catalogue;
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
/// A minor or a novice gets its maximal lines without what is maximal, with a remark.
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
