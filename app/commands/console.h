#pragma once

class QIODevice;

/// What a command of the command line talks to. Given from outside, so that tests can listen.
namespace app {

struct Console
{
    QIODevice &in;
    QIODevice &out;
    QIODevice &err;
};

enum ExitCode {
    exitFine = 0,
    exitProblems = 1, ///< the input has problems; they are on err
    exitUsage = 2,    ///< the command line is wrong
    exitFailed = 3    ///< a file or the disk failed
};

} // namespace app
