#pragma once

#include "core/domain/ids.h"

#include <QDate>
#include <QStringList>
#include <tuple>

namespace core {

/// One planned piece of work on a day: a variation with its sets.
struct Card
{
    CardId id;
    LifterId lifter;
    QDate day;
    int position = 0; ///< place in the day from the top, 0, 1, 2 ... without gaps
    VariationId variation;
    QString setLine; ///< text form of the sets, see core/notation/set_line.h
    QString note;

    friend bool operator==(const Card &, const Card &) = default;
};

/// Whether `a` comes before `b` in a lifter's plan: by day, then from the top.
[[nodiscard]] inline bool isAbove(const Card &a, const Card &b)
{
    return std::tie(a.day, a.position) < std::tie(b.day, b.position);
}

/// What is wrong with the card alone, in words a coach can act on; empty when sound. The set line
/// is text to it: a coach may keep one half written.
[[nodiscard]] QStringList problems(const Card &card);

} // namespace core
