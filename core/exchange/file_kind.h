#pragma once

class QIODevice;

namespace core {

enum class FileKind { unknown, empty, roster, log, people, estimates, returnSheet };

/// What a file is, by its first bytes: a roster by the mark of its database, a CSV by the kind
/// whose columns its header names most of. Reads no further than the header.
[[nodiscard]] FileKind fileKind(QIODevice &device);

} // namespace core
