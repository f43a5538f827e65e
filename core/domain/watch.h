#pragma once

#include <functional>
#include <stop_token>

namespace core {

/// Whoever waits for a long piece of work, seen from that work: it tells how far it is, and asks
/// whether it is still wanted.
struct Watch
{
    std::stop_token stop;
    std::function<void(double share)> tell; ///< of the work that is done, 0 to 1; may be empty

    /// False when the work is to end at once; what it has until then is of no use.
    [[nodiscard]] bool goesOn(double share) const
    {
        if (tell)
            tell(share);
        return !stop.stop_requested();
    }

    /// For a part of the work: its 0 to 1 are `from` to `to` of the whole.
    [[nodiscard]] Watch part(double from, double to) const
    {
        if (!tell)
            return {stop, {}};
        return {stop, [tell = tell, from, to](double share) { tell(from + share * (to - from)); }};
    }
};

} // namespace core
