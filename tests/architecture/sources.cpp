#include "tests/architecture/sources.h"

#include <algorithm>
#include <fstream>
#include <regex>

namespace fs = std::filesystem;

namespace {

Source read(const fs::path &root, const fs::path &path)
{
    static const std::regex kInclude(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"].*)");
    Source source{fs::relative(path, root).generic_string(), {}, 0};
    std::ifstream in(path);
    for (std::string line; std::getline(in, line); ++source.lines) {
        std::smatch match;
        if (line.find('#') == std::string::npos || !std::regex_match(line, match, kInclude))
            continue;
        // The compiler looks beside the including file first, and so does this.
        const fs::path beside = path.parent_path() / match[1].str();
        source.includes.push_back(
            fs::exists(beside) ? fs::relative(beside, root).generic_string() : match[1].str());
    }
    return source;
}

} // namespace

std::vector<Source> readSources(const fs::path &root, const std::vector<std::string> &folders)
{
    std::vector<Source> sources;
    for (const std::string &folder : folders)
        for (const auto &entry : fs::recursive_directory_iterator(root / folder))
            if (entry.path().extension() == ".cpp" || entry.path().extension() == ".h")
                sources.push_back(read(root, entry.path()));
    std::ranges::sort(sources, {}, &Source::file);
    return sources;
}
