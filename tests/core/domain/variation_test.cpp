#include "core/domain/variation.h"

#include <gmock/gmock.h>

using namespace core;

namespace {
Variation soundVariation()
{
    Variation v;
    v.code = QStringLiteral("feet_up");
    v.name = QStringLiteral("Feet-up bench");
    v.spares = {BodyArea::back, BodyArea::legs};
    return v;
}
} // namespace

TEST(Variation, AreasSparedAreNamedOnceAndInOrder)
{
    Variation v = soundVariation();
    EXPECT_TRUE(problems(v).isEmpty());
    v.spares = {BodyArea::legs, BodyArea::back};
    EXPECT_EQ(problems(v).size(), 1);
    v.spares = {BodyArea::back, BodyArea::back};
    EXPECT_EQ(problems(v).size(), 1);
}

TEST(Variation, WorksWhatItsLiftWorksExceptWhatItSpares)
{
    const Variation feetUp = soundVariation();
    EXPECT_FALSE(works(feetUp, BodyArea::legs));
    EXPECT_TRUE(works(feetUp, BodyArea::chest));

    Variation bench = feetUp;
    bench.spares.clear();
    EXPECT_TRUE(works(bench, BodyArea::legs));

    Variation squat = bench;
    squat.lift = Lift::squat;
    EXPECT_TRUE(works(squat, BodyArea::back));
    EXPECT_FALSE(works(squat, BodyArea::elbows));
}

TEST(BodyArea, FileWordsReadBack)
{
    for (const BodyArea area : kBodyAreas)
        EXPECT_EQ(fromFileWord<BodyArea>(fileWord(area)), area);
    EXPECT_FALSE(fromFileWord<BodyArea>(QStringLiteral("Back")));
    const std::vector<BodyArea> several = {BodyArea::back, BodyArea::elbows};
    EXPECT_EQ(bodyAreasFromFileWords(fileWords(several)), several);
    EXPECT_EQ(bodyAreasFromFileWords({}), std::vector<BodyArea>{});
    EXPECT_FALSE(bodyAreasFromFileWords(QStringLiteral("back knees")));
}
