#pragma once

#include "core/domain/touch_style.h"

#include <QString>
#include <optional>

namespace ui {

/// Which lifters are looked for.
struct LifterQuery
{
    QString words;                         ///< all occur in name, groups or notes
    QString group;                         ///< empty: any
    std::optional<core::TouchStyle> style; ///< empty: any

    /// Whether any lifter may be passed over.
    [[nodiscard]] bool isNarrow() const
    {
        return !words.trimmed().isEmpty() || !group.isEmpty() || style;
    }
    friend bool operator==(const LifterQuery &, const LifterQuery &) = default;
};

} // namespace ui
