#pragma once

#include <QString>

namespace core {

/// SQLite's application id of a roster: "BWrt" as big-endian bytes.
inline constexpr int kApplicationId = 0x42577274;

/// What SQLite may leave beside a database when its program dies: changes that belong to it.
inline const QString kLogSuffixes[] = {QStringLiteral("-wal"), QStringLiteral("-journal")};

/// Both look at a file without changing it, or leaving anything beside it, and throw StorageError
/// in words for the coach.

/// When there is no such file, it may not be read or written, or it is not a roster. Reads the
/// first bytes only, so that a file held by another window may be asked too.
void probeHeader(const QString &path);

/// When a roster is damaged, or a newer version made it. Nobody else may hold it.
void probeContents(const QString &path);

} // namespace core
