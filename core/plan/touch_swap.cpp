#include "core/plan/touch_swap.h"

#include "core/domain/text.h"

namespace core {

std::vector<TouchSwap> usualTouchSwaps(std::span<const Variation> catalogue)
{
    std::vector<TouchSwap> swaps = {
        {QStringLiteral("off_chest_pause"), QStringLiteral("long_pause")},
        {QStringLiteral("tempo_4_2_0"), QStringLiteral("two_stage")},
        {QStringLiteral("light_touch"), QStringLiteral("slow_lowering")}};
    std::erase_if(swaps, [catalogue](const TouchSwap &swap) {
        return !withCode(catalogue, swap.soft) || !withCode(catalogue, swap.sinking);
    });
    return swaps;
}

QString words(const TouchSwap &swap, std::span<const Variation> catalogue)
{
    return Text::tr("%1 for a soft touch, %2 for a sinking one.")
        .arg(nameOf(catalogue, swap.soft), nameOf(catalogue, swap.sinking));
}

QString swapped(const QString &code, TouchStyle style, std::span<const TouchSwap> swaps)
{
    for (const TouchSwap &swap : swaps) {
        if (style == TouchStyle::soft && code == swap.sinking)
            return swap.soft;
        if (style == TouchStyle::sinking && code == swap.soft)
            return swap.sinking;
    }
    return code;
}

} // namespace core
