#pragma once

#include "core/domain/ids.h"

#include <QDate>
#include <QString>
#include <vector>

/// Who is in the room, kept in the user's settings for the day: the roster itself knows no room.
namespace ui {

struct RoomPlace
{
    core::LifterId lifter;
    int rack = 0; ///< see Seat::rack()

    friend bool operator==(const RoomPlace &, const RoomPlace &) = default;
};

/// @param path  of the roster
void rememberRoom(const QString &path, QDate day, const std::vector<RoomPlace> &places);
/// Nobody where the last room was on another day.
[[nodiscard]] std::vector<RoomPlace> rememberedRoom(const QString &path, QDate day);

} // namespace ui
