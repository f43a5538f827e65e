#pragma once

#include "core/storage/roster_file.h"

#include <QString>

namespace tests {

/// What a coach wrote, in Greek letters: no word of the program can be taken for it.
[[nodiscard]] QString foreign(const QString &text);

/// A roster of nobody with a foreign catalogue, whose codes are like no word of the program.
core::RosterFile makeEmptyRoster(const QString &path);

/// The demo roster of the day with a template, all names and notes foreign.
void makeForeignRoster(const QString &path, QDate today);

} // namespace tests
