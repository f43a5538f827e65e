#include "tests/architecture/house.h"

#include <gmock/gmock.h>

#include <fstream>
#include <sstream>

// The rules held against this project.

namespace fs = std::filesystem;

namespace {

const std::vector<Source> &product()
{
    static const std::vector<Source> kSources = readSources(SOURCE_DIR, {"app", "core", "ui"});
    return kSources;
}

/// The folder of a room's target: core/plan of core_plan.
std::string folderOfTarget(std::string target)
{
    return target.replace(target.find('_'), 1, "/");
}

/// What CMake wrote down: a line is a room and the rooms that it links.
Arrows linksOfRooms()
{
    Arrows links;
    std::ifstream in(LINKS_FILE);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        std::string room;
        words >> room;
        auto &linked = links[folderOfTarget(room)];
        for (std::string word; words >> word;)
            linked.insert(folderOfTarget(word));
    }
    return links;
}

} // namespace

TEST(House, EveryIncludeIsAnArrowOfTheList)
{
    EXPECT_THAT(offTheList(product(), kHouse), testing::IsEmpty());
}

TEST(House, EveryArrowOfTheListIsNeeded)
{
    EXPECT_THAT(unused(kHouse, drawn(product())), testing::IsEmpty());
}

TEST(House, FoldersHaveNoCycle)
{
    EXPECT_THAT(cycle(drawn(product())), testing::IsEmpty());
}

TEST(House, RoomsLinkWhatTheyInclude)
{
    Arrows rooms = drawn(product());
    std::erase_if(rooms, [](const auto &room) { return room.first.starts_with("app"); });
    EXPECT_THAT(linkedOtherwise(linksOfRooms(), rooms), testing::IsEmpty());
}

TEST(House, NothingForbiddenIsIncluded)
{
    EXPECT_THAT(forbidden(product()), testing::IsEmpty());
}

TEST(House, OneFileReadsTheClock)
{
    std::vector<Source> all = readSources(SOURCE_DIR, {"app", "core", "ui", "tests"});
    std::erase_if(all, [](const Source &source) { // which names what it looks for
        return source.file.starts_with("tests/architecture/");
    });
    EXPECT_THAT(clockReaders(all, "app/main.cpp"), testing::IsEmpty());
}

TEST(House, FilesStaySmall)
{
    EXPECT_THAT(
        tooLong(readSources(SOURCE_DIR, {"app", "core", "ui", "tests"})), testing::IsEmpty());
}

TEST(House, TopLevelShowsNothingElse)
{
    std::vector<std::string> shown;
    for (const auto &entry : fs::directory_iterator(SOURCE_DIR))
        if (const std::string name = entry.path().filename().string(); name.front() != '.')
            shown.push_back(name);
    EXPECT_THAT(shown,
        testing::UnorderedElementsAre("CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE",
            "app", "core", "ui", "resources", "tests"));
}
