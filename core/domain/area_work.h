#pragma once

#include "core/domain/body_area.h"

#include <array>

namespace core {

/// How much a variation works an area.
enum class Work { none, some, much };

template <> inline constexpr auto kEnumWords<Work> = std::to_array<EnumWord<Work>>({
    {Work::none, "not", QT_TRANSLATE_NOOP("core", "not")},
    {Work::some, "some", QT_TRANSLATE_NOOP("core", "some")},
    {Work::much, "much", QT_TRANSLATE_NOOP("core", "much")},
});

/// A grade for every area; an area of which nothing was said counts as worked much, so that what
/// is not known is never taken for safe.
class AreaWork
{
public:
    constexpr AreaWork() { m_grades.fill(Work::much); }

    [[nodiscard]] Work operator[](BodyArea area) const { return m_grades[size_t(area)]; }
    Work &operator[](BodyArea area) { return m_grades[size_t(area)]; }

    friend bool operator==(const AreaWork &, const AreaWork &) = default;

private:
    std::array<Work, std::size(kBodyAreas)> m_grades{};
};

/// In a file, every area with its grade: "back:some legs:some chest:much ...".
[[nodiscard]] QString fileWords(const AreaWork &work);
/// Empty where an area is missing, named twice or unknown.
[[nodiscard]] std::optional<AreaWork> areaWorkFromFileWords(const QString &words);

} // namespace core
