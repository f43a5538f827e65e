#include "core/domain/touch_style.h"

#include "core/domain/text.h"

namespace core {

QString words(TouchStyle style)
{
    switch (style) {
    case TouchStyle::soft:
        return Text::tr("soft touch");
    case TouchStyle::sinking:
        return Text::tr("sinking touch");
    case TouchStyle::undecided:
        break;
    }
    return Text::tr("touch undecided");
}

QString words(Serves serves)
{
    switch (serves) {
    case Serves::soft:
        return Text::tr("soft touch");
    case Serves::sinking:
        return Text::tr("sinking touch");
    case Serves::both:
        break;
    }
    return Text::tr("both touches");
}

QString fileWord(TouchStyle style)
{
    switch (style) {
    case TouchStyle::soft:
        return QStringLiteral("soft");
    case TouchStyle::sinking:
        return QStringLiteral("sinking");
    case TouchStyle::undecided:
        break;
    }
    return QStringLiteral("undecided");
}

std::optional<TouchStyle> touchStyleFromFileWord(const QString &word)
{
    for (const TouchStyle style : {TouchStyle::undecided, TouchStyle::soft, TouchStyle::sinking})
        if (word == fileWord(style))
            return style;
    return std::nullopt;
}

QString fileWord(Serves serves)
{
    switch (serves) {
    case Serves::soft:
        return QStringLiteral("soft");
    case Serves::sinking:
        return QStringLiteral("sinking");
    case Serves::both:
        break;
    }
    return QStringLiteral("both");
}

std::optional<Serves> servesFromFileWord(const QString &word)
{
    for (const Serves serves : {Serves::both, Serves::soft, Serves::sinking})
        if (word == fileWord(serves))
            return serves;
    return std::nullopt;
}

bool suits(Serves serves, TouchStyle style)
{
    return serves == Serves::both || style == TouchStyle::undecided
        || (serves == Serves::soft) == (style == TouchStyle::soft);
}

} // namespace core
