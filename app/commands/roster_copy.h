#pragma once

#include "core/storage/roster_file.h"

#include <QTemporaryDir>

namespace app {

/// A private copy of a roster for commands that only read: the file stays as it is, older schema
/// included, and may be open in a window meanwhile. Outlives what is opened from it.
class RosterCopy
{
public:
    /// Throws StorageError when the file cannot be copied.
    explicit RosterCopy(const QString &path);

    [[nodiscard]] QString path() const { return m_copy; }
    /// Throws StorageError, in words about the file itself, when it is no sound roster.
    [[nodiscard]] core::RosterFile open() const;

private:
    QTemporaryDir m_folder;
    QString m_original;
    QString m_copy;
};

} // namespace app
