#include "ui/window/recent_files.h"

#include "tests/support/roster_fixture.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

TEST(RecentFiles, PutsTheLatestFirstWithoutDoublesAndForgetsTheOldest)
{
    QStringList files;
    for (int i = 0; i < 12; ++i)
        files = ui::withRecent(files, QString::number(i));
    EXPECT_EQ(files.size(), ui::kRecentFiles);
    EXPECT_EQ(files.front(), u"11"_s);
    files = ui::withRecent(files, u"8"_s);
    EXPECT_EQ(files.front(), u"8"_s);
    EXPECT_EQ(files.size(), ui::kRecentFiles);
    EXPECT_EQ(files.count(u"8"_s), 1);
}

TEST(RecentFiles, AreKeptInTheSettings)
{
    const PrivateFolder folder;
    ui::rememberRecent(u"a"_s);
    ui::rememberRecent(u"b"_s);
    EXPECT_EQ(ui::recentFiles(), (QStringList{u"b"_s, u"a"_s}));
    ui::forgetRecentFiles();
    EXPECT_TRUE(ui::recentFiles().isEmpty());
}
