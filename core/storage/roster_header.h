#pragma once

#include <QString>

namespace core {

/// SQLite's application id of a roster: "BWrt" as big-endian bytes.
inline constexpr int kApplicationId = 0x42577274;

/// What the first bytes of a file say, read without SQLite so that nothing is touched.
struct RosterHeader
{
    enum class Kind { missing, unreadable, foreign, roster };

    Kind kind = Kind::missing;
    int schemaVersion = 0; ///< for a roster
};

/// Source: SQLite database file format, section 1.3: magic at byte 0, user version at 60,
/// application id at 68, both big-endian.
[[nodiscard]] RosterHeader readRosterHeader(const QString &path);

} // namespace core
