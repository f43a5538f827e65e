#pragma once

#include <QHash>
#include <functional>

/// Strong ids: a LifterId never passes for a CardId.
namespace core {

/// Row id in the roster file. Valid ids are 1 and up; a default one is "not stored yet".
template <class Tag> struct Id
{
    qint64 value = 0;

    [[nodiscard]] bool isValid() const { return value > 0; }
    friend auto operator<=>(const Id &, const Id &) = default;
};

template <class Tag> size_t qHash(const Id<Tag> &id, size_t seed = 0) noexcept
{
    return ::qHash(id.value, seed);
}

using LifterId = Id<struct LifterTag>;
using VariationId = Id<struct VariationTag>;
using CardId = Id<struct CardTag>;
using SessionId = Id<struct SessionTag>;
using CheckInId = Id<struct CheckInTag>;
using BlockId = Id<struct BlockTag>;
using TemplateId = Id<struct TemplateTag>;
using WaiverId = Id<struct WaiverTag>;
using GivenDayId = Id<struct GivenDayTag>;

} // namespace core

template <class Tag> struct std::hash<core::Id<Tag>>
{
    size_t operator()(const core::Id<Tag> &id) const noexcept
    {
        return std::hash<qint64>{}(id.value);
    }
};
