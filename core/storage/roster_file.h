#pragma once

#include "core/domain/edit.h"

#include <QString>
#include <memory>
#include <vector>

namespace core {

/// One open roster: a SQLite database of ours, held by this window alone (a lock file beside it
/// tells a second window). Not thread-safe: read here, hand copies to other threads.
/// Every member that touches the file throws StorageError.
class RosterFile
{
public:
    /// Makes a new file with the present schema and the catalogue of `resources`; never writes over
    /// an existing one.
    [[nodiscard]] static RosterFile create(const QString &path);

    /// Opens an existing file: brings an older schema up to date after a backup, and makes the
    /// backup of the day, see core/storage/backup.h. A file that is not ours, damaged, a backup,
    /// held by another window or made by a newer version is left unchanged, and the error says
    /// which of these it is.
    [[nodiscard]] static RosterFile open(const QString &path);

    RosterFile(RosterFile &&) noexcept;
    RosterFile &operator=(RosterFile &&) noexcept;
    ~RosterFile();

    [[nodiscard]] QString path() const;

    /// Why the day's backup could not be made at opening, for the coach; empty when all is well.
    /// The roster can be worked in all the same.
    [[nodiscard]] QString backupTrouble() const;

    /// By name, archived ones too.
    [[nodiscard]] std::vector<Lifter> lifters() const;
    /// In catalogue order, retired ones too.
    [[nodiscard]] std::vector<Variation> variations() const;
    /// Cards of one lifter with from <= day <= to, by day and position.
    [[nodiscard]] std::vector<Card> cards(LifterId lifter, QDate from, QDate to) const;
    /// Cards of the whole roster in these days, by lifter, day and position; one query.
    [[nodiscard]] std::vector<Card> cards(QDate from, QDate to) const;
    /// All sessions of one lifter with their sets, by day and number; two queries.
    [[nodiscard]] std::vector<LoggedSession> sessions(LifterId lifter) const;
    /// The same for the whole roster, by lifter, day and number; two queries.
    [[nodiscard]] std::vector<LoggedSession> sessions() const;
    /// By day; of the whole roster by lifter and day.
    [[nodiscard]] std::vector<CheckIn> checkIns(LifterId lifter) const;
    [[nodiscard]] std::vector<CheckIn> checkIns() const;
    /// All versions, by name and version.
    [[nodiscard]] std::vector<BlockTemplate> templates() const;
    /// By first day; of the whole roster by lifter and first day.
    [[nodiscard]] std::vector<Block> blocks(LifterId lifter) const;
    [[nodiscard]] std::vector<Block> blocks() const;
    [[nodiscard]] std::vector<Waiver> waivers(LifterId lifter) const;

    /// Carries out one coach action in one transaction. Throws, and changes nothing, when a row of
    /// `before` is not there any more, a name or code is taken, or the disk fails.
    void apply(const Edit &edit);

    /// Ids for rows to be added, never given out twice while the file is open. Tag is that of the
    /// id: `CardId id = file.newId<CardTag>()`.
    template <class Tag> [[nodiscard]] Id<Tag> newId();

private:
    struct Impl;
    [[nodiscard]] static std::unique_ptr<Impl> openWithoutBackup(const QString &path);
    explicit RosterFile(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> m_impl;
};

} // namespace core
