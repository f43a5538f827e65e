#include "core/storage/roster_file.h"
#include "core/storage/storage_error.h"

#include <QTemporaryDir>
#include <gmock/gmock.h>

using namespace core;

TEST(RosterFile, KeepsALifterAndTakesItBack)
{
    const QTemporaryDir folder;
    RosterFile file = RosterFile::create(folder.filePath(QStringLiteral("a.roster")));
    Lifter lifter;
    lifter.id = file.newId<LifterTag>();
    lifter.name = QStringLiteral("Ann");
    lifter.groups = QStringList{QStringLiteral("a"), QStringLiteral("b")};
    lifter.gear = usualGear(Unit::pound);
    Edit edit;
    edit.lifters.after = {lifter};

    file.apply(edit);
    EXPECT_EQ(file.lifters(), edit.lifters.after);
    file.apply(inverse(edit));
    EXPECT_THAT(file.lifters(), testing::IsEmpty());
}

TEST(RosterFile, IsHeldByOneWindow)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.roster"));
    const RosterFile file = RosterFile::create(path);
    EXPECT_THROW((void)RosterFile::open(path), StorageError);
}
