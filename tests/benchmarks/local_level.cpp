#include "tests/benchmarks/local_level.h"

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <limits>
#include <sstream>
#include <unistd.h>

namespace benchmarks {

namespace {

namespace fs = std::filesystem;

/// Files of one exchange with the script, gone at the end.
struct Exchange
{
    fs::path folder =
        fs::temp_directory_path() / ("benchwright-level-" + std::to_string(::getpid()));
    fs::path in = folder / "series.csv";
    fs::path out = folder / "levels.csv";
    fs::path times = folder / "times.txt";

    Exchange() { fs::create_directories(folder); }
    ~Exchange()
    {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
    Exchange(const Exchange &) = delete;
    Exchange &operator=(const Exchange &) = delete;
};

void write(const fs::path &path, std::span<const std::vector<double>> series)
{
    std::ofstream out(path);
    out.precision(12);
    for (const std::vector<double> &values : series) {
        for (size_t i = 0; i < values.size(); ++i) {
            out << (i > 0 ? "," : "");
            if (std::isfinite(values[i]))
                out << values[i];
        }
        out << '\n';
    }
}

std::optional<LevelSeries> readSeries(std::istream &in)
{
    std::string line;
    if (!std::getline(in, line))
        return std::nullopt;
    LevelSeries level;
    std::istringstream fields(line + ',');
    for (std::string field; std::getline(fields, field, ',');) {
        const size_t colon = field.find(':');
        const bool empty = colon == std::string::npos;
        constexpr double nan = std::numeric_limits<double>::quiet_NaN();
        level.mean.push_back(empty ? nan : std::stod(field.substr(0, colon)));
        level.variance.push_back(empty ? nan : std::stod(field.substr(colon + 1)));
    }
    return level;
}

} // namespace

std::optional<LocalLevel> localLevel(std::span<const std::vector<double>> series)
{
    const Exchange files;
    write(files.in, series);
    const std::string command = "/usr/bin/python3 " SOURCE_DIR "/tests/benchmarks/local_level.py <"
        + files.in.string() + " >" + files.out.string() + " 2>" + files.times.string();
    if (std::system(command.c_str()) != 0)
        return std::nullopt;
    LocalLevel level;
    std::ifstream out(files.out);
    while (auto filtered = readSeries(out)) {
        auto smoothed = readSeries(out);
        if (!smoothed)
            return std::nullopt;
        level.filtered.push_back(std::move(*filtered));
        level.smoothed.push_back(std::move(*smoothed));
    }
    if (level.filtered.size() != series.size())
        return std::nullopt;
    std::ifstream times(files.times);
    std::string word;
    times >> word >> level.fitSeconds >> word >> level.smoothSeconds;
    return level;
}

} // namespace benchmarks
