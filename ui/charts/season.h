#pragma once

#include <QString>
#include <vector>

namespace ui {

/// What stands behind every chart of a window: stretches as bands, days as marks. Days since
/// 1970-01-01.
struct Season
{
    struct Stretch
    {
        double from = 0.0;
        double to = 0.0;
        QString name;
        friend bool operator==(const Stretch &, const Stretch &) = default;
    };
    struct Day
    {
        double day = 0.0;
        QString name;
        friend bool operator==(const Day &, const Day &) = default;
    };
    std::vector<Stretch> blocks;
    std::vector<Day> meets;

    friend bool operator==(const Season &, const Season &) = default;
};

} // namespace ui
