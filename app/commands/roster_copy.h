#pragma once

#include "app/commands/moment.h"
#include "core/storage/roster_file.h"

#include <QTemporaryDir>

namespace app {

/// A private copy of a roster for commands that only read: the file stays as it is, older schema
/// included, and may be open in a window meanwhile. Sessions and check-ins that are later than
/// Moment::asOf are not in the copy. Outlives what is opened from it.
class RosterCopy
{
public:
    /// Throws StorageError when the file cannot be copied.
    RosterCopy(const QString &path, const Moment &moment);

    [[nodiscard]] QString path() const { return m_copy; }
    /// Throws StorageError, in words about the file itself, when it is no sound roster.
    [[nodiscard]] core::RosterFile open() const;

private:
    QTemporaryDir m_folder;
    Moment m_moment;
    QString m_original;
    QString m_copy;
};

} // namespace app
