#pragma once

/// Weeks run from Monday to Sunday (ISO 8601) and are named by the Sunday that ends them.
namespace strength {

/// The Sunday that ends the week of `day`; days count from 1970-01-01, a Thursday.
[[nodiscard]] constexpr int sundayOf(int day)
{
    const int sinceMonday = ((day + 3) % 7 + 7) % 7;
    return day + 6 - sinceMonday;
}

} // namespace strength
