#include "tests/benchmarks/peak_memory.h"

#include <fstream>
#include <string>

namespace benchmarks {

namespace {

/// A field of /proc/self/status (Linux, proc(5)), given there in KiB.
std::optional<double> statusMb(const std::string &field)
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(field + ":"))
            return std::stod(line.substr(field.size() + 1)) * 1024.0 / 1e6;
    return std::nullopt;
}

} // namespace

bool resetPeakMemory()
{
    std::ofstream refs("/proc/self/clear_refs");
    refs << "5" << std::flush; // 5 = the peak resident size
    return refs.good();
}

std::optional<double> peakMemoryMb()
{
    return statusMb("VmHWM");
}

std::optional<double> memoryMb()
{
    return statusMb("VmRSS");
}

} // namespace benchmarks
