#pragma once

#include "app/commands/console.h"

#include <QDateTime>
#include <functional>
#include <string>
#include <vector>

namespace app {

/// What the command line asks for.
struct Request
{
    /// How much of Qt it takes.
    enum class Needs { core, painting, window };

    Needs needs = Needs::core;
    std::function<int(Console &)> run; ///< gives the exit code; throws StorageError
};

/// Reads the arguments, without the program's name. Help, version and usage errors come back as
/// requests too: they print and end.
/// @param clock  the computer's: a command asks it once, the window as long as it is open
[[nodiscard]] Request parseCommandLine(
    std::vector<std::string> arguments, const std::function<QDateTime()> &clock);

/// Runs the request; what it throws becomes words on the console and exitFailed.
[[nodiscard]] int runRequest(const Request &request, Console &console);

} // namespace app
