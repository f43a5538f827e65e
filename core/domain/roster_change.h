#pragma once

#include "core/domain/edit.h"

#include <QDate>
#include <QSet>
#include <bitset>
#include <memory>

namespace core {

/// What one edit touched, so that whoever shows a roster can tell whether any of it is shown.
struct RosterChange
{
    std::bitset<kRowKindCount> kinds; ///< in the order of kRowKinds
    QSet<LifterId> lifters;           ///< whose rows; variations and templates are nobody's
    QDate firstDay;                   ///< of the rows that have a day; null where none has
    QDate lastDay;
    std::shared_ptr<const Edit> edit; ///< the rows themselves

    /// Rows of any of these kinds.
    template <class... Rows> [[nodiscard]] bool has() const
    {
        return (kinds.test(kRowKind<Rows>) || ...);
    }
    /// Rows of any of these kinds, and rows of the lifter.
    template <class... Rows> [[nodiscard]] bool has(LifterId lifter) const
    {
        return has<Rows...>() && lifters.contains(lifter);
    }
    /// The rows of one kind.
    template <class Row> [[nodiscard]] const RowChange<Row> &rows() const
    {
        return (*edit).*std::get<kRowKind<Row>>(kRowKinds);
    }
    /// Rows of these days, both included.
    [[nodiscard]] bool isWithin(QDate first, QDate last) const
    {
        return firstDay.isValid() && firstDay <= last && lastDay >= first;
    }
};

[[nodiscard]] RosterChange changeBy(Edit edit);

} // namespace core
