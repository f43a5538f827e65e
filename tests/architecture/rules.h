#pragma once

#include "tests/architecture/sources.h"

#include <map>
#include <set>
#include <string>
#include <vector>

// The rules of the architecture as pure functions. Each returns what breaks it, a sentence each
// that names the place; empty when the rule holds.

using Findings = std::vector<std::string>;

/// A folder, and the folders whose headers it includes; also a list of those it may include.
using Arrows = std::map<std::string, std::set<std::string>>;

/// What the includes draw: a key for every folder that holds a file.
[[nodiscard]] Arrows drawn(const std::vector<Source> &sources);

/// Files in a folder that the list does not name, and includes that it does not allow.
[[nodiscard]] Findings offTheList(const std::vector<Source> &sources, const Arrows &list);

/// Folders and arrows of the list that no file needs any more.
[[nodiscard]] Findings unused(const Arrows &list, const Arrows &arrows);

/// One way round, such as a, b, a; empty when the arrows have no cycle.
[[nodiscard]] std::vector<std::string> cycle(Arrows arrows);

/// Rooms that include what they do not link, or link what they do not include.
[[nodiscard]] Findings linkedOtherwise(const Arrows &links, const Arrows &arrows);

/// Includes that no list may allow: Qt in core/strength, a widget in core, SQL outside
/// core/storage, an arrow that turns back. A header of Qt Widgets compiles without linking it, so
/// that the linker alone would not notice.
[[nodiscard]] Findings forbidden(const std::vector<Source> &sources);

/// Lines that read the computer's clock in any file but `mayRead`: what day it is, is passed in.
[[nodiscard]] Findings clockReaders(const std::vector<Source> &sources, const std::string &mayRead);

/// Files of more than 500 lines.
[[nodiscard]] Findings tooLong(const std::vector<Source> &sources);
