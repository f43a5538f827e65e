#pragma once

#include <QDate>

namespace tests {

/// The days that most tests of core play on.
inline const QDate kMonday(2026, 3, 2);
inline const QDate kDay(2026, 3, 4); ///< the Wednesday of that week

} // namespace tests
