#pragma once

#include "core/domain/text.h"

#include <QString>
#include <algorithm>
#include <array>
#include <cassert>
#include <optional>

namespace core {

/// Words of one value of an enum.
template <class Enum> struct EnumWord
{
    Enum value;
    const char *inFiles;
    const char *onScreen = nullptr; ///< under QT_TRANSLATE_NOOP("core", ...); null = never shown
};

/// The words of an enum that has some: each enum has its own table, with every value in it.
template <class Enum> inline constexpr std::array<EnumWord<Enum>, 0> kEnumWords{};

/// An enum with a table of words.
template <class Enum>
concept Worded = !kEnumWords<Enum>.empty();

template <Worded Enum> [[nodiscard]] const EnumWord<Enum> &entryOf(Enum value)
{
    const auto found = std::ranges::find(kEnumWords<Enum>, value, &EnumWord<Enum>::value);
    assert(found != kEnumWords<Enum>.end());
    return *found;
}

/// For the screen, in the user's language.
template <Worded Enum> [[nodiscard]] QString words(Enum value)
{
    return Text::tr(entryOf(value).onScreen);
}

template <Worded Enum> [[nodiscard]] QString fileWord(Enum value)
{
    return QLatin1String(entryOf(value).inFiles);
}

template <Worded Enum> [[nodiscard]] std::optional<Enum> fromFileWord(const QString &word)
{
    const auto found = std::ranges::find_if(kEnumWords<Enum>,
        [&word](const EnumWord<Enum> &each) { return word == QLatin1String(each.inFiles); });
    return found == kEnumWords<Enum>.end() ? std::nullopt : std::optional(found->value);
}

} // namespace core
