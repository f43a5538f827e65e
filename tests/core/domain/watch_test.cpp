#include "core/domain/watch.h"

#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;

TEST(Watch, APartTellsItsShareOfTheWhole)
{
    std::vector<double> told;
    const Watch watch{{}, [&told](double share) { told.push_back(share); }};
    const Watch part = watch.part(0.5, 0.75);
    EXPECT_TRUE(part.goesOn(0.0));
    EXPECT_TRUE(part.part(0.5, 1.0).goesOn(0.5));
    EXPECT_TRUE(part.goesOn(1.0));
    EXPECT_TRUE(watch.goesOn(1.0));
    EXPECT_THAT(told, ElementsAre(0.5, 0.6875, 0.75, 1.0));
}

TEST(Watch, WorkEndsOnceItIsNoLongerWantedWhoeverListens)
{
    std::stop_source source;
    const Watch silent{source.get_token(), {}};
    EXPECT_TRUE(silent.goesOn(0.1));
    EXPECT_TRUE(silent.part(0.0, 0.5).goesOn(0.1));
    source.request_stop();
    EXPECT_FALSE(silent.goesOn(0.2));
    EXPECT_FALSE(silent.part(0.0, 0.5).goesOn(0.2));
}
