#include "core/domain/merged_sets.h"

#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;

namespace {

SetEntry setOf(double loadKg)
{
    SetEntry set;
    set.variation = {1};
    set.loadKg = loadKg;
    set.repsPlanned = 5;
    set.repsDone = 5;
    set.rpe = 8.0;
    return set;
}

/// A set with everything that may be left blank.
SetEntry fullSet()
{
    SetEntry set = setOf(100.0);
    set.velocityMs = 0.4;
    set.touch = 2;
    set.lead = LeadReps{{2}, 1};
    set.note = QStringLiteral("slow");
    return set;
}

/// Whether a set that is told, changed so, is the one that is there.
template <class Change> bool isKnown(Change change)
{
    SetEntry told = fullSet();
    change(told);
    return mergeSets({fullSet()}, {told}).known == 1;
}

} // namespace

TEST(MergedSets, WhatWasDoneHasToBeTheSame)
{
    EXPECT_TRUE(isKnown([](SetEntry &) {}));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.variation = {2}; }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.repsPlanned.reset(); }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.repsDone = 4; }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.rpe.reset(); }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.failed = true; }));
    EXPECT_TRUE(isKnown([](SetEntry &s) { s.loadKg = 100.0049; })) << "within 5 g";
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.loadKg = 100.0051; }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.loadKg = 99.9949; }));
}

TEST(MergedSets, WhatIsBlankOnOneSideAgreesAndAnotherWordDoesNot)
{
    EXPECT_TRUE(isKnown([](SetEntry &s) { s.velocityMs.reset(); }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.velocityMs = 0.5; }));
    EXPECT_TRUE(isKnown([](SetEntry &s) { s.touch.reset(); }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.touch = 3; }));
    EXPECT_TRUE(isKnown([](SetEntry &s) { s.lead.reset(); }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.lead->reps = 2; }));
    EXPECT_TRUE(isKnown([](SetEntry &s) { s.note.clear(); }));
    EXPECT_FALSE(isKnown([](SetEntry &s) { s.note = QStringLiteral("fast"); }));
}

TEST(MergedSets, BlanksAreFilledFromEitherSideAndNothingIsWrittenOver)
{
    const SetsMerged filled = mergeSets({setOf(100.0)}, {fullSet()});
    EXPECT_THAT(filled.sets, ElementsAre(fullSet()));
    EXPECT_EQ(filled.known, 1);
    EXPECT_EQ(filled.added, 0);
    EXPECT_THAT(mergeSets({fullSet()}, {setOf(100.0)}).sets, ElementsAre(fullSet()));
}

TEST(MergedSets, ASetIsToldOnceAndTheRestIsAppendedInOrder)
{
    const std::vector<SetEntry> two(2, setOf(100.0));
    const SetsMerged merged =
        mergeSets(two, {setOf(90.0), setOf(100.0), setOf(100.0), setOf(100.0), setOf(80.0)});
    EXPECT_THAT(merged.sets,
        ElementsAre(setOf(100.0), setOf(100.0), setOf(90.0), setOf(100.0), setOf(80.0)));
    EXPECT_EQ(merged.known, 2);
    EXPECT_EQ(merged.added, 3);
    EXPECT_THAT(merged.isTold, ElementsAre(true, true));
    EXPECT_THAT(mergeSets(two, {setOf(100.0)}).isTold, ElementsAre(true, false));
}

TEST(MergedSets, AnEqualSetComesBeforeOneThatMerelyAgrees)
{
    const SetsMerged merged = mergeSets({setOf(100.0), fullSet()}, {fullSet()});
    EXPECT_THAT(merged.sets, ElementsAre(setOf(100.0), fullSet()));
    EXPECT_THAT(merged.isTold, ElementsAre(false, true));
}

TEST(MergedSets, WhatASetAnswersIsLearnedButNotChanged)
{
    SetEntry present = setOf(100.0), told = setOf(100.0);
    told.answers = PlannedSetRef{{1}, 2};
    EXPECT_EQ(mergeSets({present}, {told}).sets[0].answers, told.answers);
    present.answers = PlannedSetRef{{4}, 0};
    EXPECT_EQ(mergeSets({present}, {told}).sets[0].answers, present.answers);
    told.answers.reset();
    EXPECT_EQ(mergeSets({present}, {told}).sets[0].answers, present.answers);
}
