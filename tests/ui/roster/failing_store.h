#pragma once

#include "core/domain/storage_error.h"
#include "core/storage/roster_file.h"

#include <QString>

/// A roster in a file, whose disk fails when a test says so.
class FailingStore final : public core::RosterStore
{
public:
    explicit FailingStore(const QString &path)
        : m_file(core::RosterFile::create(path))
    {
    }

    bool failsToWrite = false;
    bool failsToRead = false;

    /// A change that another coach makes in the same roster.
    void changeElsewhere(const core::Edit &edit)
    {
        m_file.apply(edit);
        tell(core::changeBy(edit));
    }

    [[nodiscard]] std::vector<core::Lifter> lifters() const override
    {
        return read([this] { return m_file.lifters(); });
    }
    [[nodiscard]] std::vector<core::Variation> variations() const override
    {
        return read([this] { return m_file.variations(); });
    }
    [[nodiscard]] std::vector<core::Card> cards(
        core::LifterId lifter, QDate from, QDate to) const override
    {
        return read([&] { return m_file.cards(lifter, from, to); });
    }
    [[nodiscard]] std::vector<core::Card> cards(QDate from, QDate to) const override
    {
        return read([&] { return m_file.cards(from, to); });
    }
    [[nodiscard]] std::vector<core::LoggedSession> sessions(core::LifterId lifter) const override
    {
        return read([&] { return m_file.sessions(lifter); });
    }
    [[nodiscard]] std::vector<core::LoggedSession> sessions() const override
    {
        return read([this] { return m_file.sessions(); });
    }
    [[nodiscard]] std::vector<core::CheckIn> checkIns(core::LifterId lifter) const override
    {
        return read([&] { return m_file.checkIns(lifter); });
    }
    [[nodiscard]] std::vector<core::GivenDay> given(core::LifterId lifter) const override
    {
        return read([&] { return m_file.given(lifter); });
    }
    [[nodiscard]] std::vector<core::GivenDay> given(QDate from, QDate to) const override
    {
        return read([&] { return m_file.given(from, to); });
    }
    [[nodiscard]] std::vector<core::Card> cardsNotGiven(QDate before) const override
    {
        return read([&] { return m_file.cardsNotGiven(before); });
    }
    [[nodiscard]] std::optional<QDate> givenSince() const override
    {
        return read([this] { return m_file.givenSince(); });
    }
    [[nodiscard]] std::vector<core::CheckIn> checkIns() const override
    {
        return read([this] { return m_file.checkIns(); });
    }
    [[nodiscard]] std::vector<core::CheckIn> checkInsFor(QDate from, QDate to) const override
    {
        return read([&] { return m_file.checkInsFor(from, to); });
    }
    [[nodiscard]] std::vector<core::BlockTemplate> templates() const override
    {
        return read([this] { return m_file.templates(); });
    }
    [[nodiscard]] std::vector<core::Block> blocks(core::LifterId lifter) const override
    {
        return read([&] { return m_file.blocks(lifter); });
    }
    [[nodiscard]] std::vector<core::Block> blocks() const override
    {
        return read([this] { return m_file.blocks(); });
    }
    [[nodiscard]] std::vector<core::Waiver> waivers(core::LifterId lifter) const override
    {
        return read([&] { return m_file.waivers(lifter); });
    }
    [[nodiscard]] ReaderSource readers() const override { return m_file.readers(); }

    void apply(const core::Edit &edit) override
    {
        if (failsToWrite)
            throw core::StorageError(QStringLiteral("The disk is full."));
        m_file.apply(edit);
    }

protected:
    [[nodiscard]] qint64 takeId(size_t rowKind) override
    {
        std::array<qint64, core::kRowKindCount> &last = m_lastIds;
        return ++last[rowKind];
    }

private:
    template <class Read> [[nodiscard]] auto read(Read read) const -> decltype(read())
    {
        if (failsToRead)
            throw core::StorageError(QStringLiteral("The disk cannot be read."));
        return read();
    }

    core::RosterFile m_file;
    std::array<qint64, core::kRowKindCount> m_lastIds{0, 1000}; ///< the catalogue has some
};
