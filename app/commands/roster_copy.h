#pragma once

#include "core/storage/roster_file.h"

#include <QTemporaryDir>
#include <optional>

namespace app {

/// A private copy of a roster for commands that only read: the file stays as it is, older schema
/// included, and may be open in a window meanwhile.
class RosterCopy
{
public:
    /// Throws StorageError when the file is no sound roster.
    explicit RosterCopy(const QString &path);

    [[nodiscard]] core::RosterFile &roster() { return *m_roster; }

private:
    QTemporaryDir m_folder;
    std::optional<core::RosterFile> m_roster;
};

} // namespace app
