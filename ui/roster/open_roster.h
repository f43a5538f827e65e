#pragma once

#include "core/domain/storage_error.h"
#include "core/storage/roster_store.h"

#include <QObject>
#include <QStringList>
#include <QUndoStack>
#include <memory>
#include <optional>
#include <vector>

namespace ui {

class Today;

/// The open roster on the screen's side: the one road for every change. A widget calls perform();
/// the edit is stored in one transaction, remembered as an undo step, and then told to everybody by
/// one signal. Whoever is told reads again; it may not change anything meanwhile.
class OpenRoster : public QObject
{
    Q_OBJECT

public:
    OpenRoster(std::unique_ptr<core::RosterStore> store, Today &today, QObject *parent = nullptr);

    /// The day that everything which is open stands on.
    [[nodiscard]] Today &today() const { return m_today; }

    /// Carries the edit out as one undo step named `name` ("Move card"). An empty edit is no step.
    /// @param series  steps that follow each other with the same name of a series become one step
    /// @param facts   what becomes a fact with it: written in the same transaction, and not undone
    /// @return false when nothing was changed; then failed() was emitted
    bool perform(const QString &name, const core::Edit &edit, const QString &series = {},
        const core::Edit &facts = {});
    /// Writes what has become a fact, such as loads that have left the house: no step, and nothing
    /// to undo. The return value is that of perform().
    bool record(const core::Edit &facts);
    /// Takes the last step back, or does it again. A step that cannot be stored stays where it is
    /// and can be tried again; then failed() was emitted. What is half typed is settled first.
    bool undo();
    bool redo();
    /// For its texts and signals only: it remembers, and changes nothing by itself.
    [[nodiscard]] const QUndoStack &steps() const { return m_steps; }

    /// Whoever holds something half typed is to perform it now: the selection, the page or the
    /// roster is about to change.
    /// @return false where some of it could not be stored, and failed() was emitted: what is about
    ///         to change had better stay
    bool settle();
    /// What is half typed and would be lost if the roster were closed now, in words for the coach;
    /// what can be stored as it is typed is stored first.
    [[nodiscard]] QStringList halfTyped();

    /// Work on another thread has failed: emits failed().
    void tell(const core::StorageError &trouble)
    {
        Q_EMIT failed(trouble.words(), trouble.detail());
    }

    [[nodiscard]] const std::vector<core::Lifter> &lifters() const { return m_lifters; }
    [[nodiscard]] const std::vector<core::Variation> &variations() const { return m_variations; }
    /// All versions, by name and version.
    [[nodiscard]] const std::vector<core::BlockTemplate> &templates() const { return m_templates; }
    /// Null where there is none.
    [[nodiscard]] const core::Lifter *lifter(core::LifterId id) const;
    [[nodiscard]] const core::Variation *variation(core::VariationId id) const;

    /// As core::RosterReader has them; on failure empty, and failed() was emitted.
    [[nodiscard]] std::vector<core::Card> cards(core::LifterId lifter, QDate from, QDate to);
    [[nodiscard]] std::vector<core::LoggedSession> sessions(core::LifterId lifter);
    [[nodiscard]] std::vector<core::LoggedSession> sessions();
    [[nodiscard]] std::vector<core::Card> cards(QDate from, QDate to);
    [[nodiscard]] std::vector<core::CheckIn> checkIns(core::LifterId lifter);
    [[nodiscard]] std::vector<core::CheckIn> checkIns();
    [[nodiscard]] std::vector<core::CheckIn> checkInsFor(QDate from, QDate to);
    [[nodiscard]] std::vector<core::Block> blocks(core::LifterId lifter);
    [[nodiscard]] std::vector<core::Block> blocks();
    [[nodiscard]] std::vector<core::Waiver> waivers(core::LifterId lifter);
    [[nodiscard]] std::vector<core::GivenDay> given(core::LifterId lifter);
    [[nodiscard]] std::vector<core::GivenDay> given(QDate from, QDate to);

    /// For work on other threads.
    [[nodiscard]] core::RosterStore::ReaderSource readers() const { return m_store->readers(); }

    template <class Row> [[nodiscard]] auto newId() { return m_store->newId<Row>(); }

Q_SIGNALS:
    /// A change is stored, and is told next.
    void stored();
    /// Something was changed, and is stored. Read again what is shown of it.
    void changed(const core::RosterChange &change);
    /// See settle(). Whoever cannot store what is typed says so in `left`.
    void settling(QStringList *left);
    /// See halfTyped(): of what nothing can be made until the coach has finished it.
    void closing(QStringList *left);
    /// Words for the coach, and details for a report.
    void failed(const QString &words, const QString &detail);

private:
    /// What was changed; nothing when it failed, and then failed() was emitted.
    [[nodiscard]] std::optional<core::RosterChange> write(const core::Edit &edit);
    void tellOf(const core::RosterChange &change);
    void readAgain(const core::RosterChange &change);
    /// What `read` gives; empty when it fails, and failed() was emitted.
    template <class Read> [[nodiscard]] auto reading(Read read) -> decltype(read());

    std::unique_ptr<core::RosterStore> m_store;
    Today &m_today;
    QUndoStack m_steps;
    bool m_telling = false;
    std::vector<core::Lifter> m_lifters;
    std::vector<core::Variation> m_variations;
    std::vector<core::BlockTemplate> m_templates;
};

} // namespace ui
