#include "core/domain/visible_text.h"

#include <QList>
#include <algorithm>

namespace core {

namespace {

/// Letters by their category that are drawn as nothing: the fillers of Hangul (Unicode,
/// Default_Ignorable_Code_Point).
constexpr char32_t kFillers[] = {0x115F, 0x1160, 0x3164, 0xFFA0};

} // namespace

bool hasVisibleText(const QString &text)
{
    const QList<uint> points = text.toUcs4();
    return std::ranges::any_of(points, [](char32_t point) {
        return QChar::isLetterOrNumber(point)
            && std::ranges::find(kFillers, point) == std::end(kFillers);
    });
}

bool hasHiddenSigns(const QString &text)
{
    constexpr char32_t kNonJoiner = 0x200C, kJoiner = 0x200D;
    const QList<uint> points = text.toUcs4();
    return std::ranges::any_of(points, [](char32_t point) {
        return QChar::category(point) == QChar::Other_Format && point != kNonJoiner
            && point != kJoiner;
    });
}

} // namespace core
