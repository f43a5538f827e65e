#include "core/domain/lifter_edits.h"

#include <gmock/gmock.h>

using namespace core;

TEST(LifterEdits, ArchiveAndRestoreTakeEachOtherBack)
{
    Lifter lifter;
    lifter.id = {3};
    lifter.name = QStringLiteral("Ada Quill");
    EXPECT_EQ(addLifter(lifter).lifters, (RowChange<Lifter>{{}, {lifter}}));
    const Edit archive = setArchived(lifter, true);
    ASSERT_EQ(archive.lifters.after.size(), 1U);
    EXPECT_TRUE(archive.lifters.after[0].archived);
    EXPECT_EQ(setArchived(archive.lifters.after[0], false), inverse(archive));
    EXPECT_TRUE(setArchived(lifter, false).isEmpty());
    EXPECT_TRUE(changeLifter(lifter, lifter).isEmpty());
}
