#pragma once

#include "core/domain/storage_error.h"
#include "core/storage/roster_file.h"

#include <QObject>
#include <QSet>
#include <QUndoStack>
#include <vector>

namespace ui {

/// The open roster on the screen's side: the one road for every change. A widget calls perform();
/// an undo command applies the edit to the file in one transaction; the signals tell the models.
/// A failed write changes nothing and is told by failed().
class OpenRoster : public QObject
{
    Q_OBJECT

public:
    explicit OpenRoster(core::RosterFile file, QObject *parent = nullptr);

    /// Carries the edit out as one undo step named `name` ("Move card"). False when it failed, and
    /// then failed() was emitted. An empty edit is no step.
    bool perform(const QString &name, const core::Edit &edit);

    /// A read of the file on another thread has failed: emits failed().
    void tell(const core::StorageError &trouble)
    {
        Q_EMIT failed(trouble.words(), trouble.detail());
    }

    [[nodiscard]] QUndoStack &undoStack() { return m_undo; }
    [[nodiscard]] QString path() const { return m_file.path(); }
    /// Why the backup of the day failed, for the coach; empty when all is well.
    [[nodiscard]] QString backupTrouble() const { return m_file.backupTrouble(); }

    [[nodiscard]] const std::vector<core::Lifter> &lifters() const { return m_lifters; }
    [[nodiscard]] const std::vector<core::Variation> &variations() const { return m_variations; }
    /// All versions, by name and version.
    [[nodiscard]] const std::vector<core::BlockTemplate> &templates() const { return m_templates; }
    /// Null where there is none.
    [[nodiscard]] const core::Lifter *lifter(core::LifterId id) const;
    [[nodiscard]] const core::Variation *variation(core::VariationId id) const;

    /// Reads of the file; on failure empty, and failed() was emitted.
    [[nodiscard]] std::vector<core::Card> cards(core::LifterId lifter, QDate from, QDate to);
    [[nodiscard]] std::vector<core::LoggedSession> sessions(core::LifterId lifter);
    [[nodiscard]] std::vector<core::LoggedSession> sessions();
    [[nodiscard]] std::vector<core::Card> cards(QDate from, QDate to);
    [[nodiscard]] std::vector<core::CheckIn> checkIns(core::LifterId lifter);
    [[nodiscard]] std::vector<core::CheckIn> checkIns();
    [[nodiscard]] std::vector<core::Block> blocks(core::LifterId lifter);
    [[nodiscard]] std::vector<core::Block> blocks();
    [[nodiscard]] std::vector<core::Waiver> waivers(core::LifterId lifter);

    template <class Tag> [[nodiscard]] core::Id<Tag> newId() { return m_file.newId<Tag>(); }

Q_SIGNALS:
    void liftersChanged();
    void variationsChanged();
    void cardsChanged(const QSet<core::LifterId> &lifters);
    void sessionsChanged(const QSet<core::LifterId> &lifters);
    void checkInsChanged(const QSet<core::LifterId> &lifters);
    void templatesChanged();
    void blocksChanged(const QSet<core::LifterId> &lifters);
    void waiversChanged(const QSet<core::LifterId> &lifters);
    /// Words for the coach, and details for a report.
    void failed(const QString &words, const QString &detail);

private:
    class ApplyEdit;
    [[nodiscard]] bool apply(const core::Edit &edit);
    void reload(const core::Edit &edit);
    /// What `read` gives; empty when it fails, and failed() was emitted.
    template <class Read> [[nodiscard]] auto reading(Read read) -> decltype(read());

    core::RosterFile m_file;
    QUndoStack m_undo;
    std::vector<core::Lifter> m_lifters;
    std::vector<core::Variation> m_variations;
    std::vector<core::BlockTemplate> m_templates;
};

} // namespace ui
