#pragma once

#include "core/domain/edit.h"

namespace core {

class Database;

/// Writes an Edit in one transaction.
class EditWriter
{
public:
    explicit EditWriter(Database &db)
        : m_db(db)
    {
    }

    /// Throws StorageError, and changes nothing, when a row is unsound, a row of `before` is not in
    /// the file as it is there, a name or code is taken, or something that stays refers to a row
    /// that goes.
    void write(const Edit &edit);

private:
    template <class Repository, class Row>
    void carryOut(Repository repository, const RowChange<Row> &change);
    void refuseDangling();

    Database &m_db;
};

} // namespace core
