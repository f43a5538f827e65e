#pragma once

#include <QDate>
#include <QString>

namespace tests {

/// The demo roster of the day with a template, in which every second lifter has a long name, and
/// whatever a coach can write is long: by words, or without a place to break.
void makeHostileRoster(const QString &path, QDate today);

} // namespace tests
