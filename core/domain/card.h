#pragma once

#include "core/domain/ids.h"

#include <QDate>
#include <QString>

namespace core {

/// One planned piece of work on a day: a variation with its sets.
struct Card
{
    CardId id;
    LifterId lifter;
    QDate day;
    int position = 0; ///< place in the day from the top, 0, 1, 2 ... without gaps
    VariationId variation;
    QString setLine; ///< text form of the sets, see core/plan/set_line.h
    QString note;

    friend bool operator==(const Card &, const Card &) = default;
};

} // namespace core
