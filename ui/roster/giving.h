#pragma once

#include "core/loads/given_loads.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/today.h"

namespace ui {

/// Giving at this moment.
[[nodiscard]] inline core::Giving giving(OpenRoster &roster, core::GivenBy by)
{
    return {by, core::toSeconds(roster.today().now()),
        [&roster] { return roster.newId<core::GivenDay>(); }};
}

/// Keeps what was given; the return value is that of OpenRoster::record().
inline bool keep(OpenRoster &roster, std::vector<core::GivenDay> given)
{
    core::Edit facts;
    facts.given.after = std::move(given);
    return roster.record(facts);
}

} // namespace ui
