#include "core/storage/roster_header.h"

#include <QFile>
#include <QtEndian>

namespace core {

RosterHeader readRosterHeader(const QString &path)
{
    constexpr int kHeaderBytes = 100;
    QFile file(path);
    if (!file.exists())
        return {RosterHeader::Kind::missing, 0};
    if (!file.open(QIODevice::ReadOnly))
        return {RosterHeader::Kind::unreadable, 0};
    const QByteArray header = file.read(kHeaderBytes);
    const QByteArray magic("SQLite format 3\0", 16);
    if (header.size() < kHeaderBytes || !header.startsWith(magic)
        || qFromBigEndian<qint32>(header.constData() + 68) != kApplicationId)
        return {RosterHeader::Kind::foreign, 0};
    return {RosterHeader::Kind::roster, qFromBigEndian<qint32>(header.constData() + 60)};
}

} // namespace core
