#pragma once

#include "core/domain/check_in.h"
#include "core/domain/session.h"

#include <memory>
#include <vector>

namespace core {

class Database;

/// Reads a roster that a window has open, from another thread. All that one reader gives is of one
/// moment, whatever the window writes meanwhile. Every member throws StorageError.
class RosterReader
{
public:
    explicit RosterReader(const QString &path);
    ~RosterReader();
    RosterReader(const RosterReader &) = delete;
    RosterReader &operator=(const RosterReader &) = delete;

    /// As RosterFile has them.
    [[nodiscard]] std::vector<LoggedSession> sessions(LifterId lifter);
    [[nodiscard]] std::vector<LoggedSession> sessions();
    [[nodiscard]] std::vector<CheckIn> checkIns();

private:
    std::unique_ptr<Database> m_db;
};

} // namespace core
