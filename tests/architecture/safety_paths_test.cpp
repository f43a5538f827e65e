#include "tests/architecture/sources.h"
#include "tests/core/safety/path_names.h"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <regex>
#include <set>
#include <sstream>

// Every function in a header of core that takes or gives what planned work is made of is a path of
// the safety property test, or says why it is none (tests/core/safety/path_names.h).

namespace {

const std::regex kPlannedWork("\\b(PlanSources|ResolvedCard|ResolvedLine|DayInputs|DayPlan|DaySet|"
                              "AdviceContext|Ranking|DayLimits|WeekSheet|SetInValues|Progression|"
                              "TemplateResult|PastedCards)\\b");

std::string withoutComments(const std::string &file)
{
    std::ifstream in(std::string(SOURCE_DIR) + '/' + file);
    std::string text;
    for (std::string line; std::getline(in, line);)
        text += line.substr(0, line.find("//")) + '\n';
    return text;
}

/// Names of the functions declared with a type of planned work.
std::set<std::string> functionsOfPlannedWork(const std::string &text)
{
    static const std::regex kFunction("\\b([a-z]\\w*)\\s*\\(");
    std::set<std::string> names;
    static const std::regex kNothing("\\{\\}"); // of a default argument
    std::istringstream in(std::regex_replace(text, kNothing, ""));
    for (std::string declaration; std::getline(in, declaration, ';');) {
        // What stands before a brace belongs to a struct or a namespace.
        declaration = declaration.substr(declaration.find_last_of("{}") + 1);
        std::smatch name;
        if (std::regex_search(declaration, kPlannedWork)
            && std::regex_search(declaration, name, kFunction))
            names.insert(name[1]);
    }
    return names;
}

} // namespace

TEST(SafetyPaths, EveryFunctionOfPlannedWorkIsAPathOrSaysWhyNot)
{
    std::set<std::string> found;
    for (const Source &source : readSources(SOURCE_DIR, {"core"})) {
        if (!source.file.ends_with(".h"))
            continue;
        for (const std::string &name : functionsOfPlannedWork(withoutComments(source.file))) {
            found.insert(name);
            EXPECT_TRUE(std::ranges::find(tests::kPathNames, name) != tests::kPathNames.end()
                || std::ranges::find(tests::kNotPaths, name) != tests::kNotPaths.end())
                << source.file << ": " << name << " joins tests/core/safety/path_names.h";
        }
    }
    for (const std::string_view name : {"resolveCards", "dayPlan", "rankVariations", "weekSheet"})
        EXPECT_TRUE(found.contains(std::string(name))) << name << ": the search itself has failed";
}
