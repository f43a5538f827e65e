#pragma once

#include <array>
#include <string_view>

/// Every function of core that suggests or shows planned work. Each is a path of the test
/// safety/paths_property_test.cpp, and tests/architecture holds the headers of core against this
/// list: a new function that takes or gives what such work is made of joins here, and so the test.
namespace tests {

inline constexpr std::array kPathNames = std::to_array<std::string_view>({
    "resolveCards",
    "setsInValues",
    "withheldWords",
    "easeToday",
    "easedWords",
    "weekSheet",
    "handOutData",
    "writeCalendar",
    "daySets",
    "dayPlan",
    "shifted",
    "swapped",
    "easedKg",
    "whyWithheld",
    "adviseOnReadiness",
    "rankVariations",
    "adviceSetLine",
    "suggestedSetLine",
    "progress",
    "applyTemplate",
    "layTemplate",
    "pasteCards",
    "whatIf",
});

/// Functions of the same types that suggest nothing: they measure, compare, look things up or are a
/// part of one above.
inline constexpr std::array kNotPaths = std::to_array<std::string_view>({
    "resolve",             // the part of resolveCards before the rule
    "applyLimits",         // the rule's own step of resolveCards
    "askedEffort",         // what the rule asks
    "effortOf",            // the same
    "shareOfMax",          // the same
    "tonnageKg",           // a sum
    "checkPlan",           // points out what is planned
    "openStops",           // the same
    "withoutMaximalWords", // why a path wrote less
    "likelyAtMostKg",      // asks whether a load is meant
    "whyFarAboveMax",      // asks whether a load is meant
    "whyNoMaximal",        // words of the rule
    "whyNoMaximalYet",     // words of the rule
    "limitsOn",            // the rule
    "handOutPage",         // the page around handOutData
    "weekFileName",        // a name
    "sessionRows",         // pairs sets
    "asPlanned",           // a planned set as an entry
    "askedOf",             // words of a planned set
    "situationOf",         // what the advice comes down to
    "termsFor",            // reasons of rankVariations
    "isHeavier",           // a part of rankVariations
    "leadsWell",           // a part of rankVariations
    "progressed",          // one line of progress
    "takeGiven",    // a part of resolveCards; what was given stands, and the rule is asked after it
    "give",         // keeps what was shown, with what is withheld beside it
    "giveDay",      // the same
    "givenBadge",   // a word
    "asGiven",      // resolveCards without an estimate
    "scoreGiven",   // looks back
    "trainedDays",  // the same
    "liftCount",    // the same
    "expectedReps", // counts
    "expectedRpe",  // how hard a planned set is
    "effortWords",  // the same in words
});

} // namespace tests
