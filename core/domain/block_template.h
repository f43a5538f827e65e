#pragma once

#include "core/domain/ids.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace core {

/// Two variations that do the same job for the two touch styles. Where a plan is laid on a lifter
/// whose bar meets the chest the other way, one takes the place of the other. Codes of the
/// catalogue.
struct TouchSwap
{
    QString soft;
    QString sinking;
    friend bool operator==(const TouchSwap &, const TouchSwap &) = default;
};

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

/// A block without lifter and date, made from any block and laid on any lifter. Once stored a
/// version stays as it is, since the blocks laid out by it are merged against it; a change is a
/// further version under the same name.
struct BlockTemplate
{
    TemplateId id;
    QString name;
    int version = 1;
    QString purpose;
    int weeks = 4;
    std::vector<int> deloadWeeks;    ///< 1 = the first; ascending
    std::vector<TouchSwap> swaps;    ///< the first that names a variation decides
    std::vector<TemplateCard> cards; ///< by day and position

    friend bool operator==(const BlockTemplate &, const BlockTemplate &) = default;
};

/// What is wrong, in words a coach can act on; empty when sound.
[[nodiscard]] QStringList problems(const BlockTemplate &block);

} // namespace core
