#include <gmock/gmock.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <string>
#include <vector>

// The arrows of the architecture hold at the level of #include too: a header of Qt Widgets compiles
// without linking it, so the linker alone would not notice.

namespace fs = std::filesystem;

namespace {

const fs::path kRoot = SOURCE_DIR;

struct Room
{
    const char *folder;
    std::regex forbidden;
    const char *rule;
};

std::vector<std::string> includesOf(const fs::path &file)
{
    static const std::regex kInclude(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])");
    std::vector<std::string> includes;
    std::ifstream in(file);
    for (std::string line; std::getline(in, line);) {
        std::smatch match;
        if (std::regex_search(line, match, kInclude))
            includes.push_back(match[1]);
    }
    return includes;
}

std::vector<std::string> broken(const Room &room)
{
    std::vector<std::string> found;
    for (const auto &entry : fs::recursive_directory_iterator(kRoot / room.folder)) {
        const fs::path &file = entry.path();
        if (file.extension() != ".cpp" && file.extension() != ".h")
            continue;
        for (const std::string &include : includesOf(file))
            if (std::regex_search(include, room.forbidden))
                found.push_back(fs::relative(file, kRoot).string() + " includes " + include);
    }
    return found;
}

} // namespace

TEST(Arrows, StrengthKnowsNoQtAndNothingAboveIt)
{
    const Room room{"core/strength",
        std::regex("^(Q|q|core/(domain|plan|storage|exchange)/|ui/|app/)"), "plain C++ and Eigen"};
    EXPECT_THAT(broken(room), testing::IsEmpty()) << room.rule;
}

TEST(Arrows, CoreKnowsNoWidgetAndNothingAboveIt)
{
    const Room room{"core",
        std::regex(
            "^(ui/|app/|QtWidgets|QtGui|QtCharts|QtPrintSupport|"
            "Q(Widget|Application|MessageBox|Color|Brush|Pen|Font|Painter|Chart|Undo|Printer)"
            "[A-Za-z]*$)"),
        "no widget, colour or message box"};
    EXPECT_THAT(broken(room), testing::IsEmpty()) << room.rule;
}

TEST(Arrows, SqlLivesInStorageAlone)
{
    for (const char *folder :
        {"core/strength", "core/domain", "core/plan", "core/exchange", "ui", "app"}) {
        const Room room{folder, std::regex("^(QtSql|QSql|sqlite3)"), "SQL only in core/storage"};
        EXPECT_THAT(broken(room), testing::IsEmpty()) << room.rule;
    }
}

TEST(Arrows, UiKnowsNoApp)
{
    const Room room{"ui", std::regex("^app/"), "app composes ui, never the other way round"};
    EXPECT_THAT(broken(room), testing::IsEmpty()) << room.rule;
}

TEST(Arrows, TopLevelShowsNothingElse)
{
    std::vector<std::string> shown;
    for (const auto &entry : fs::directory_iterator(kRoot))
        if (const std::string name = entry.path().filename().string(); name.front() != '.')
            shown.push_back(name);
    EXPECT_THAT(shown,
        testing::UnorderedElementsAre("CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE",
            "app", "core", "ui", "resources", "tests"));
}

TEST(Arrows, FilesStaySmall)
{
    for (const char *folder : {"core", "ui", "app", "tests"})
        for (const auto &entry : fs::recursive_directory_iterator(kRoot / folder)) {
            if (entry.path().extension() != ".cpp" && entry.path().extension() != ".h")
                continue;
            std::ifstream in(entry.path());
            const auto lines = std::count(
                std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>(), '\n');
            EXPECT_LE(lines, 500) << entry.path() << " asks to be split";
        }
}
