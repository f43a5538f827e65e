#pragma once

#include "core/storage/sql_reads.h"

#include <QDateTime>
#include <QString>
#include <memory>
#include <vector>

namespace core {

/// One open roster in a file: a SQLite database of ours, held by this window alone (a lock file
/// beside it tells a second window).
/// Every member that touches the file throws StorageError.
class RosterFile final : public SqlReads<RosterStore>
{
public:
    /// Makes a new file with the present schema and the catalogue of `resources`; never writes over
    /// an existing one.
    [[nodiscard]] static RosterFile create(const QString &path);

    /// Opens an existing file: brings an older schema up to date after a backup, and makes the
    /// backup of the day, see core/storage/backup.h. A file that is not ours, damaged, a backup,
    /// held by another window or made by a newer version is left unchanged, and the error says
    /// which of these it is.
    /// @param now  which the backups are named by
    [[nodiscard]] static RosterFile open(const QString &path, const QDateTime &now);

    RosterFile(RosterFile &&) noexcept;
    RosterFile &operator=(RosterFile &&) noexcept;
    ~RosterFile() override;

    [[nodiscard]] QString path() const;

    /// Why the day's backup could not be made at opening, for the coach; empty when all is well.
    /// The roster can be worked in all the same.
    [[nodiscard]] QString backupTrouble() const;

    [[nodiscard]] ReaderSource readers() const override;

    void apply(const Edit &edit) override;

protected:
    [[nodiscard]] qint64 takeId(size_t rowKind) override;
    [[nodiscard]] Database &db() const override;

private:
    struct Impl;
    [[nodiscard]] static std::unique_ptr<Impl> openWithoutBackup(
        const QString &path, const QDateTime &now);
    explicit RosterFile(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> m_impl;
};

} // namespace core
