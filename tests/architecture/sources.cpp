#include "tests/architecture/sources.h"

#include <algorithm>
#include <cctype>
#include <fstream>
#include <regex>
#include <string_view>

namespace fs = std::filesystem;

namespace {

bool isOfAName(char c)
{
    return std::isalnum(static_cast<unsigned char>(c)) || c == '_';
}

/// Whether the line holds `text`, and not as a part of a longer name.
bool holds(const std::string &line, std::string_view text)
{
    for (size_t at = line.find(text); at != std::string::npos; at = line.find(text, at + 1)) {
        const size_t end = at + text.size();
        const bool goesOn = end < line.size() && isOfAName(text.back()) && isOfAName(line[end]);
        if (!goesOn && (at == 0 || !isOfAName(line[at - 1])))
            return true;
    }
    return false;
}

/// What days and hours come from; a steady clock, which only measures, is none of them. No regular
/// expression: on every line of the project it takes minutes.
bool readsClock(std::string line)
{
    constexpr std::string_view kReads[] = {"currentDate", "currentTime", "currentDateTime",
        "currentDateTimeUtc", "currentMSecsSinceEpoch", "currentSecsSinceEpoch", "system_clock",
        "utc_clock", "clock_gettime", "gettimeofday", "localtime", "localtime_r", "gmtime",
        "gmtime_r", "time(nullptr)", "time(NULL)", "time(0)"};
    std::erase(line, ' ');
    return std::ranges::any_of(kReads, [&line](auto read) { return holds(line, read); });
}

Source read(const fs::path &root, const fs::path &path)
{
    static const std::regex kInclude(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"].*)");
    Source source{fs::relative(path, root).generic_string(), {}, {}, 0};
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);) {
        ++source.lines;
        std::smatch match;
        if (readsClock(line))
            source.clockReads.push_back(source.lines);
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
