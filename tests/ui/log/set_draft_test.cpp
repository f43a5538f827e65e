#include "ui/log/set_draft.h"

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;
using core::SetEntry;
using ui::LogLine;
using ui::SetDraft;

namespace {

LogLine open(size_t planned)
{
    LogLine line;
    line.planned = planned;
    return line;
}

LogLine logged(size_t done, std::optional<size_t> planned = {})
{
    LogLine line;
    line.planned = planned;
    line.done = done;
    return line;
}

SetEntry fiveAt(double loadKg)
{
    SetEntry set;
    set.loadKg = loadKg;
    set.repsDone = 5;
    return set;
}

SetDraft typedOn(size_t line, const std::vector<LogLine> &lines, const std::vector<SetEntry> &done)
{
    SetDraft draft{.line = line};
    draft.begin(lines, done);
    draft.text = u"x4 9"_s;
    return draft;
}

} // namespace

TEST(SetDraft, IsTouchedByTextAndByASwap)
{
    EXPECT_FALSE(SetDraft{}.isTouched());
    EXPECT_FALSE(SetDraft{.text = u"  "_s}.isTouched()) << "nothing was said";
    EXPECT_TRUE(SetDraft{.text = u"9"_s}.isTouched());
    const SetDraft swapped{.variation = core::VariationId{3}};
    EXPECT_TRUE(swapped.isTouched());
    EXPECT_FALSE(swapped.hasText());
}

TEST(SetDraft, GoesWithItsPlannedSetWhenTheLinesMove)
{
    const std::vector<LogLine> before{logged(0, 0), open(1), open(2)};
    SetDraft draft = typedOn(1, before, {fiveAt(90)});
    draft.settle({logged(0, 0), logged(1), open(1), open(2)}, {fiveAt(90), fiveAt(60)});
    EXPECT_EQ(draft.line, 2U) << "an extra set came in above";
    draft.settle({open(0), open(1), open(2)}, {});
    EXPECT_EQ(draft.line, 1U) << "and what was logged has gone";
    EXPECT_EQ(draft.text, u"x4 9");
    EXPECT_FALSE(draft.isExtra);
}

TEST(SetDraft, GoesWithTheLoggedSetThatItChanges)
{
    SetDraft draft = typedOn(1, {logged(0, 0), logged(1, 1)}, {fiveAt(90), fiveAt(95)});
    draft.settle({logged(0, 0), open(1)}, {fiveAt(95)});
    EXPECT_EQ(draft.line, 0U);
    EXPECT_FALSE(draft.isExtra);
}

TEST(SetDraft, BecomesASetToAddWhereItsSetHasGone)
{
    SetDraft planned = typedOn(0, {open(0)}, {});
    planned.settle({logged(0, 0)}, {fiveAt(90)}); // logged from elsewhere: not to be written over
    EXPECT_EQ(planned.line, 1U);
    EXPECT_TRUE(planned.isExtra);
    EXPECT_EQ(planned.text, u"x4 9");

    SetDraft changed = typedOn(0, {logged(0, 0)}, {fiveAt(90)});
    changed.settle({logged(0, 0)}, {fiveAt(92.5)}); // changed from elsewhere
    EXPECT_TRUE(changed.isExtra);
}

TEST(SetDraft, KeepsWhatItWasBegunOnWhileItIsTyped)
{
    const std::vector<LogLine> lines{open(0), open(1)};
    SetDraft draft = typedOn(0, lines, {});
    draft.line = 1;
    draft.begin(lines, {});
    EXPECT_EQ(draft.planned, 0U);
    draft.text.clear();
    draft.begin(lines, {});
    EXPECT_EQ(draft.planned, 1U) << "an empty one begins anew";
}

TEST(SetDraft, OffersASetWhereNothingIsLeftToDoAndTakesTheOfferBack)
{
    SetDraft draft;
    draft.settle({}, {});
    EXPECT_TRUE(draft.isExtra);
    EXPECT_TRUE(draft.isOffered);
    draft.settle({logged(0, 0), open(1)}, {fiveAt(90)}); // the plan has come
    EXPECT_EQ(draft, (SetDraft{.line = 1}));
}

TEST(SetDraft, AnOfferThatIsTakenUpStays)
{
    SetDraft draft{.isExtra = true, .isOffered = true, .text = u"80x5"_s};
    draft.settle({open(0), open(1)}, {});
    EXPECT_TRUE(draft.isExtra);
    EXPECT_EQ(draft.line, 0U);
}

TEST(SetDraft, AnExtraSetStaysWithinTheLines)
{
    SetDraft draft{.line = 5, .isExtra = true};
    draft.settle({open(0), open(1)}, {});
    EXPECT_EQ(draft.line, 2U) << "below the last one";
}

TEST(SetDraft, EmptiedItKeepsItsLineAlone)
{
    const SetDraft draft{.line = 3, .isExtra = true, .text = u"9"_s, .planned = 2};
    EXPECT_EQ(draft.emptied(), (SetDraft{.line = 3}));
}
