#pragma once

#include "core/exchange/log_csv.h"
#include "core/exchange/people_csv.h"

#include <QBuffer>

/// Files for the tests of core/exchange, from text.
namespace files {

inline const QDate kToday(2026, 6, 30);

inline const QByteArray kLogHeader =
    "lifter,date,variation,load_kg,reps_planned,reps_done,rpe,failed\n";

inline core::LogTable log(const QByteArray &text)
{
    QBuffer buffer;
    buffer.setData(text);
    buffer.open(QIODevice::ReadOnly);
    return core::readLog(buffer, QStringLiteral("log.csv"), kToday);
}

/// A log of the eight usual columns.
inline core::LogTable logRows(const QByteArray &rows)
{
    return log(kLogHeader + rows);
}

inline core::PeopleTable people(const QByteArray &text)
{
    QBuffer buffer;
    buffer.setData(text);
    buffer.open(QIODevice::ReadOnly);
    return core::readPeople(buffer, QStringLiteral("people.csv"), kToday);
}

} // namespace files
