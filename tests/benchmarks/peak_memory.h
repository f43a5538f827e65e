#pragma once

#include <optional>

namespace benchmarks {

/// Sets the process's peak back to what it holds now. False where the system has no such count.
bool resetPeakMemory();

/// Most memory the process held at once since the reset (or the start), in MB of 10^6 bytes.
[[nodiscard]] std::optional<double> peakMemoryMb();

/// What the process holds now, in MB.
[[nodiscard]] std::optional<double> memoryMb();

} // namespace benchmarks
