#pragma once

#include "core/domain/edit.h"
#include "core/domain/roster_change.h"

#include <array>
#include <functional>
#include <memory>
#include <vector>

namespace core {

/// What a stored roster holds. Every member throws StorageError.
class RosterReader
{
public:
    virtual ~RosterReader() = default;

    /// By name, archived ones too.
    [[nodiscard]] virtual std::vector<Lifter> lifters() const = 0;
    /// In catalogue order, retired ones too.
    [[nodiscard]] virtual std::vector<Variation> variations() const = 0;
    /// Cards of one lifter with from <= day <= to, by day and position.
    [[nodiscard]] virtual std::vector<Card> cards(LifterId lifter, QDate from, QDate to) const = 0;
    /// Cards of the whole roster in these days, by lifter, day and position; one query.
    [[nodiscard]] virtual std::vector<Card> cards(QDate from, QDate to) const = 0;
    /// All sessions of one lifter with their sets, by day and number; two queries.
    [[nodiscard]] virtual std::vector<LoggedSession> sessions(LifterId lifter) const = 0;
    /// The same for the whole roster, by lifter, day and number; two queries.
    [[nodiscard]] virtual std::vector<LoggedSession> sessions() const = 0;
    /// By day; of the whole roster by lifter and day.
    [[nodiscard]] virtual std::vector<CheckIn> checkIns(LifterId lifter) const = 0;
    [[nodiscard]] virtual std::vector<CheckIn> checkIns() const = 0;
    /// Of the whole roster what bears on these days: the check-ins of the days, and those before
    /// with a pain that no later one before the days has answered with "no"; by lifter and day, two
    /// queries.
    [[nodiscard]] virtual std::vector<CheckIn> checkInsFor(QDate from, QDate to) const = 0;
    /// All versions, by name and version.
    [[nodiscard]] virtual std::vector<BlockTemplate> templates() const = 0;
    /// By first day; of the whole roster by lifter and first day.
    [[nodiscard]] virtual std::vector<Block> blocks(LifterId lifter) const = 0;
    [[nodiscard]] virtual std::vector<Block> blocks() const = 0;
    [[nodiscard]] virtual std::vector<Waiver> waivers(LifterId lifter) const = 0;
    /// What was given, by day and number; of the whole roster in these days by lifter, too.
    [[nodiscard]] virtual std::vector<GivenDay> given(LifterId lifter) const = 0;
    [[nodiscard]] virtual std::vector<GivenDay> given(QDate from, QDate to) const = 0;
    /// Cards of days before `day` that nobody was given as they stand, by lifter, day and position.
    [[nodiscard]] virtual std::vector<Card> cardsNotGiven(QDate before) const = 0;
    /// The day on which the roster began to keep what is given; empty while it holds nothing.
    [[nodiscard]] virtual std::optional<QDate> givenSince() const = 0;
};

/// One open roster, wherever it lies: reading, one way to change it, and telling of changes. Not
/// thread-safe: other threads read through readers of their own.
class RosterStore : public RosterReader
{
public:
    /// Makes a reader on the thread that calls it. All that one reader gives is of one moment,
    /// whatever is changed meanwhile.
    using ReaderSource = std::function<std::unique_ptr<RosterReader>()>;
    [[nodiscard]] virtual ReaderSource readers() const = 0;

    /// Carries out one coach action in one transaction. Throws StorageError, and changes nothing,
    /// when a row of `before` is not there as it is there, a name or code is taken, or the disk
    /// fails.
    virtual void apply(const Edit &edit) = 0;

    /// Who is told of changes that others make in the same roster; nobody at first. It may not
    /// throw.
    void setListener(std::function<void(const RosterChange &)> listener)
    {
        m_listener = std::move(listener);
    }

    /// The id of a row to be added, never given out twice while the roster is open, on whatever
    /// thread: `CardId id = store.newId<Card>()`.
    template <class Row> [[nodiscard]] auto newId()
    {
        return decltype(Row::id){takeId(kRowKind<Row>)};
    }

protected:
    void tell(const RosterChange &change) const
    {
        if (m_listener)
            m_listener(change);
    }
    [[nodiscard]] virtual qint64 takeId(size_t rowKind) = 0;

private:
    std::function<void(const RosterChange &)> m_listener;
};

} // namespace core
