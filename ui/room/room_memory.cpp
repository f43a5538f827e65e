#include "ui/room/room_memory.h"

#include <QSettings>
#include <QVariantMap>

namespace ui {

namespace {

const QString kDayKey = QStringLiteral("room/day");
const QString kRostersKey = QStringLiteral("room/rosters");

/// By path, of one day.
QVariantMap roomsOf(QDate day)
{
    const QSettings settings;
    return settings.value(kDayKey).toDate() == day ? settings.value(kRostersKey).toMap()
                                                   : QVariantMap();
}

} // namespace

void rememberRoom(const QString &path, QDate day, const std::vector<RoomPlace> &places)
{
    QVariantList kept;
    for (const RoomPlace &place : places)
        kept << QVariant(QVariantList{place.lifter.value, place.rack});
    QVariantMap rooms = roomsOf(day);
    rooms[path] = kept;
    QSettings settings;
    settings.setValue(kDayKey, day);
    settings.setValue(kRostersKey, rooms);
}

std::vector<RoomPlace> rememberedRoom(const QString &path, QDate day)
{
    std::vector<RoomPlace> places;
    for (const QVariant &kept : roomsOf(day).value(path).toList()) {
        const QVariantList place = kept.toList();
        places.push_back({{place.value(0).toLongLong()}, place.value(1).toInt()});
    }
    return places;
}

} // namespace ui
