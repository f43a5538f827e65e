#pragma once

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <iomanip>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

/// What a model of many constants says of a made-up log, held to six digits. No source has these
/// numbers: they are the model's own, so that no change of it passes by accident. After a change
/// that is meant, and that tests/benchmarks has shown to be for the better, they are written anew
/// from the failure's words.
namespace samples {

using Values = std::vector<std::pair<std::string, double>>;

inline void expectReference(const Values &reference, const Values &found)
{
    EXPECT_EQ(reference.size(), found.size());
    std::ostringstream now;
    now << std::setprecision(9);
    for (size_t i = 0; i < found.size(); ++i) {
        const auto &[name, value] = found[i];
        now << "{\"" << name << "\", " << value << "}, ";
        if (i >= reference.size())
            continue;
        EXPECT_EQ(reference[i].first, name);
        EXPECT_NEAR(reference[i].second, value, 1e-6 * std::max(std::abs(value), 1e-3)) << name;
    }
    if (testing::Test::HasFailure())
        ADD_FAILURE() << "now: " << now.str();
}

} // namespace samples
