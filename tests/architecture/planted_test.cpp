#include "tests/architecture/rules.h"

#include <gmock/gmock.h>

#include <cstdlib>
#include <fstream>
#include <stdexcept>

// Each rule sees what is planted against it in a small house, and names the place.

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const Arrows kSmallHouse{
    {"core/strength", {}},
    {"core/domain", {}},
    {"core/loads", {"core/domain", "core/strength"}},
    {"ui/look", {"core/domain"}},
    {"app", {"ui/look"}},
};

class Planted : public testing::Test
{
protected:
    Planted()
    {
        std::string folder = (fs::temp_directory_path() / "house-XXXXXX").string();
        if (!mkdtemp(folder.data()))
            throw std::runtime_error("no temporary folder");
        m_root = folder;
        plant("core/strength/curve.h", "#include <vector>\n");
        plant("core/domain/lifter.h", "#include <QString>\n");
        plant("core/loads/resolve.cpp",
            "#include \"core/domain/lifter.h\"\n#include \"core/strength/curve.h\"\n");
        plant("ui/look/theme.h", "#include \"core/domain/lifter.h\"\n");
        plant("app/main.cpp", "#include \"ui/look/theme.h\"\n");
    }
    ~Planted() override { fs::remove_all(m_root); }

    void plant(const std::string &file, const std::string &text)
    {
        fs::create_directories((m_root / file).parent_path());
        std::ofstream(m_root / file) << text;
    }
    [[nodiscard]] std::vector<Source> sources() const
    {
        return readSources(m_root, {"app", "core", "ui"});
    }

private:
    fs::path m_root;
};

} // namespace

TEST_F(Planted, NothingIsFoundInASoundHouse)
{
    EXPECT_THAT(drawn(sources()), testing::ContainerEq(kSmallHouse));
    EXPECT_THAT(offTheList(sources(), kSmallHouse), IsEmpty());
    EXPECT_THAT(unused(kSmallHouse, drawn(sources())), IsEmpty());
    EXPECT_THAT(cycle(drawn(sources())), IsEmpty());
    EXPECT_THAT(forbidden(sources()), IsEmpty());
    EXPECT_THAT(tooLong(sources()), IsEmpty());
    EXPECT_THAT(clockReaders(sources(), "app/main.cpp"), IsEmpty());
    EXPECT_THAT(linkedOtherwise(kSmallHouse, drawn(sources())), IsEmpty());
}

TEST_F(Planted, AnArrowOffTheListIsFound)
{
    plant("ui/look/colours.cpp", "#include \"core/loads/resolve.h\"\n");
    EXPECT_THAT(offTheList(sources(), kSmallHouse),
        ElementsAre("ui/look/colours.cpp includes core/loads/resolve.h: the list has no arrow "
                    "ui/look -> core/loads"));
}

TEST_F(Planted, AnArrowIsFoundHoweverItIsWritten)
{
    plant("ui/look/colours.cpp", "  #  include <../../core/strength/curve.h> // up and down\n");
    EXPECT_THAT(offTheList(sources(), kSmallHouse),
        ElementsAre("ui/look/colours.cpp includes core/strength/curve.h: the list has no arrow "
                    "ui/look -> core/strength"));
}

TEST_F(Planted, AFolderOffTheListIsFound)
{
    plant("core/diary/page.cpp", "");
    plant("core/loose.h", "");
    EXPECT_THAT(offTheList(sources(), kSmallHouse),
        ElementsAre("core/diary/page.cpp: the list has no folder core/diary",
            "core/loose.h: the list has no folder core"));
}

TEST_F(Planted, WhatTheListNoLongerNeedsIsFound)
{
    Arrows list = kSmallHouse;
    list["app"].insert("core/domain");
    list["core/diary"] = {};
    EXPECT_THAT(unused(list, drawn(sources())),
        ElementsAre("no file needs app -> core/domain", "core/diary holds no file"));
}

TEST_F(Planted, ACycleIsFound)
{
    plant("core/domain/history.cpp", "#include \"core/plan/edits.h\"\n");
    plant("core/plan/edits.h", "#include \"core/loads/resolve.h\"\n");
    // The folders above the cycle, app and ui/look, are no part of it.
    EXPECT_THAT(cycle(drawn(sources())),
        ElementsAre("core/domain", "core/plan", "core/loads", "core/domain"));
}

TEST_F(Planted, QtInStrengthIsFound)
{
    plant("core/strength/curve.cpp", "#include <QString>\n");
    EXPECT_THAT(forbidden(sources()),
        ElementsAre("core/strength/curve.cpp includes QString: strength knows no Qt"));
}

TEST_F(Planted, ARoomAboveStrengthIsFound)
{
    plant("core/strength/curve.cpp", "#include \"core/domain/lifter.h\"\n");
    EXPECT_THAT(forbidden(sources()),
        ElementsAre("core/strength/curve.cpp includes core/domain/lifter.h: "
                    "strength knows no other room"));
}

TEST_F(Planted, AWidgetInCoreIsFound)
{
    plant("core/loads/plates.cpp", "#include <QtWidgets/QLabel>\n");
    plant("core/loads/plates.h", "#include <QColor>\n");
    EXPECT_THAT(forbidden(sources()),
        ElementsAre("core/loads/plates.cpp includes QtWidgets/QLabel: "
                    "core knows no widget, colour or message box",
            "core/loads/plates.h includes QColor: core knows no widget, colour or message box"));
}

TEST_F(Planted, SqlOutsideStorageIsFound)
{
    plant("app/main.cpp", "#include <sqlite3.h>\n");
    plant("core/loads/plates.cpp", "#include <QSqlQuery>\n");
    plant("core/storage/database.cpp", "#include <QSqlQuery>\n");
    EXPECT_THAT(forbidden(sources()),
        ElementsAre("app/main.cpp includes sqlite3.h: SQL lives in core/storage alone",
            "core/loads/plates.cpp includes QSqlQuery: SQL lives in core/storage alone"));
}

TEST_F(Planted, AnArrowThatTurnsBackIsFound)
{
    plant("core/domain/lifter.cpp", "#include \"ui/look/theme.h\"\n");
    plant("ui/look/theme.cpp", "#include \"app/main.h\"\n");
    EXPECT_THAT(forbidden(sources()),
        ElementsAre("core/domain/lifter.cpp includes ui/look/theme.h: core knows nothing above it",
            "ui/look/theme.cpp includes app/main.h: app composes ui, never the other way round"));
}

TEST_F(Planted, AClockThatIsReadIsFound)
{
    plant("app/main.cpp", "const auto now = QDateTime::currentDateTime();\n");
    EXPECT_THAT(clockReaders(sources(), "app/main.cpp"), IsEmpty());
    EXPECT_THAT(clockReaders(sources(), "app/clock.cpp"),
        ElementsAre("app/main.cpp:1 reads the clock: what day it is, is passed in"));
    for (const char *read : {"QDate::currentDate()", "QTime::currentTime()",
             "QDateTime::currentDateTimeUtc()", "QDateTime::currentMSecsSinceEpoch()",
             "std::time(nullptr)", "time( NULL )", "std::chrono::system_clock::now()",
             "clock_gettime(CLOCK_REALTIME, &t)", "localtime(&t)"}) {
        plant("core/loads/plates.cpp", "#include <ctime>\n\nauto now = " + std::string(read));
        EXPECT_THAT(clockReaders(sources(), "app/main.cpp"),
            ElementsAre("core/loads/plates.cpp:3 reads the clock: what day it is, is passed in"))
            << read;
    }
    for (const char *other : {"steady_clock::now()", "work.currentTimeLeft()", "time(day)",
             "lifetime(nullptr)", "model.currentDateRow()"}) {
        plant("core/loads/plates.cpp", "auto then = " + std::string(other));
        EXPECT_THAT(clockReaders(sources(), "app/main.cpp"), IsEmpty()) << other;
    }
}

TEST_F(Planted, AFileOf501LinesIsFound)
{
    plant("core/loads/plates.cpp", std::string(500, '\n'));
    EXPECT_THAT(tooLong(sources()), IsEmpty());
    plant("core/loads/plates.cpp", std::string(501, '\n'));
    EXPECT_THAT(tooLong(sources()), ElementsAre("core/loads/plates.cpp has 501 lines: split it"));
}

TEST_F(Planted, LinksThatDifferFromTheIncludesAreFound)
{
    Arrows links = kSmallHouse;
    links["core/loads"].erase("core/strength");
    links["ui/look"].insert("core/loads");
    EXPECT_THAT(linkedOtherwise(links, drawn(sources())),
        ElementsAre("core/loads includes core/strength and does not link it",
            "ui/look links core/loads and includes nothing of it"));
}
