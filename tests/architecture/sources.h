#pragma once

#include <filesystem>
#include <string>
#include <vector>

/// A source file as the rules of the architecture see it.
struct Source
{
    std::string file;                  ///< its path from the root of the project
    std::vector<std::string> includes; ///< files of the project by their path from the root
    std::vector<int> clockReads;       ///< lines that ask the computer what time it is
    int lines = 0;
};

/// The .cpp and .h files under these folders of the root, in the order of their names.
[[nodiscard]] std::vector<Source> readSources(
    const std::filesystem::path &root, const std::vector<std::string> &folders);
