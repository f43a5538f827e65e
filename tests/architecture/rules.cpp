#include "tests/architecture/rules.h"

#include <algorithm>
#include <regex>

namespace {

std::string folderOf(const std::string &file)
{
    return std::filesystem::path(file).parent_path().generic_string();
}

bool ofTheProject(const std::string &include)
{
    static const std::regex kOurs("^(app|core|ui|tests)/");
    return std::regex_search(include, kOurs);
}

bool has(const Arrows &arrows, const std::string &from, const std::string &to)
{
    const auto found = arrows.find(from);
    return found != arrows.end() && found->second.contains(to);
}

} // namespace

Arrows drawn(const std::vector<Source> &sources)
{
    Arrows arrows;
    for (const Source &source : sources) {
        const std::string from = folderOf(source.file);
        arrows[from];
        for (const std::string &include : source.includes)
            if (ofTheProject(include) && folderOf(include) != from)
                arrows[from].insert(folderOf(include));
    }
    return arrows;
}

Findings offTheList(const std::vector<Source> &sources, const Arrows &list)
{
    Findings found;
    for (const Source &source : sources) {
        const std::string from = folderOf(source.file);
        if (!list.contains(from))
            found.push_back(source.file + ": the list has no folder " + from);
        for (const std::string &include : source.includes)
            if (ofTheProject(include) && folderOf(include) != from
                && !has(list, from, folderOf(include)))
                found.push_back(source.file + " includes " + include + ": the list has no arrow "
                    + from + " -> " + folderOf(include));
    }
    return found;
}

Findings unused(const Arrows &list, const Arrows &arrows)
{
    Findings found;
    for (const auto &[from, known] : list) {
        if (!arrows.contains(from))
            found.push_back(from + " holds no file");
        for (const std::string &to : known)
            if (!has(arrows, from, to))
                found.push_back("no file needs " + from + " -> " + to);
    }
    return found;
}

std::vector<std::string> cycle(Arrows arrows)
{
    const auto staysIn = [&](const std::string &folder) { return arrows.contains(folder); };
    // A folder that leads nowhere lies on no cycle, and once it is gone, others lead nowhere.
    const auto leadsNowhere = [&](const auto &arrow) {
        return std::ranges::none_of(arrow.second, staysIn);
    };
    while (std::erase_if(arrows, leadsNowhere) > 0) {
    }
    if (arrows.empty())
        return {};
    // So each folder left leads on to another, and a walk must meet its own track.
    std::vector<std::string> way;
    std::string folder = arrows.begin()->first;
    while (std::ranges::find(way, folder) == way.end()) {
        way.push_back(folder);
        folder = *std::ranges::find_if(arrows.at(folder), staysIn);
    }
    way.erase(way.begin(), std::ranges::find(way, folder));
    way.push_back(folder);
    return way;
}

Findings linkedOtherwise(const Arrows &links, const Arrows &arrows)
{
    Findings found;
    for (const auto &[from, known] : arrows)
        for (const std::string &to : known)
            if (!has(links, from, to))
                found.push_back(from + " includes " + to + " and does not link it");
    for (const auto &[from, linked] : links)
        for (const std::string &to : linked)
            if (!has(arrows, from, to))
                found.push_back(from + " links " + to + " and includes nothing of it");
    return found;
}

Findings forbidden(const std::vector<Source> &sources)
{
    struct Rule
    {
        std::regex where;
        std::regex what;
        std::string words;
    };
    static const std::vector<Rule> kRules{
        {std::regex("^core/strength/"), std::regex("^[Qq]"), "strength knows no Qt"},
        {std::regex("^core/strength/"), std::regex("^core/(?!strength/)"),
            "strength knows no other room"},
        {std::regex("^core/"), std::regex("^(ui|app)/"), "core knows nothing above it"},
        {std::regex("^core/"),
            std::regex("^(QtWidgets|QtGui|QtCharts|QtPrintSupport|"
                       "Q(Widget|Application|MessageBox|Color|Brush|Pen|Font|Painter|Chart|Undo|"
                       "Printer)[A-Za-z]*$)"),
            "core knows no widget, colour or message box"},
        {std::regex("^(?!core/storage/)"), std::regex("^(QtSql|QSql|sqlite3)"),
            "SQL lives in core/storage alone"},
        {std::regex("^ui/"), std::regex("^app/"), "app composes ui, never the other way round"},
    };
    Findings found;
    for (const Source &source : sources)
        for (const std::string &include : source.includes)
            for (const Rule &rule : kRules)
                if (std::regex_search(source.file, rule.where)
                    && std::regex_search(include, rule.what))
                    found.push_back(source.file + " includes " + include + ": " + rule.words);
    return found;
}

Findings clockReaders(const std::vector<Source> &sources, const std::string &mayRead)
{
    Findings found;
    for (const Source &source : sources)
        for (const int line : source.clockReads)
            if (source.file != mayRead)
                found.push_back(source.file + ":" + std::to_string(line)
                    + " reads the clock: what day it is, is passed in");
    return found;
}

Findings tooLong(const std::vector<Source> &sources)
{
    constexpr int kMost = 500;
    Findings found;
    for (const Source &source : sources)
        if (source.lines > kMost)
            found.push_back(
                source.file + " has " + std::to_string(source.lines) + " lines: split it");
    return found;
}
