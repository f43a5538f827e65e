#pragma once

#include "core/storage/roster_store.h"

namespace tests {

/// A roster in memory, which counts what is read of it lifter by lifter.
class HeldRoster final : public core::RosterReader
{
public:
    std::vector<core::Lifter> allLifters;
    std::vector<core::Variation> catalogue;
    std::vector<core::Card> allCards;
    std::vector<core::LoggedSession> allSessions;
    std::function<void()> whenSessionsAreRead = [] {};
    mutable std::vector<core::LifterId> sessionsReadOf;

    [[nodiscard]] std::vector<core::Lifter> lifters() const override { return allLifters; }
    [[nodiscard]] std::vector<core::Variation> variations() const override { return catalogue; }
    [[nodiscard]] std::vector<core::Card> cards(
        core::LifterId lifter, QDate from, QDate to) const override
    {
        return those(allCards, [&](const core::Card &card) {
            return card.lifter == lifter && card.day >= from && card.day <= to;
        });
    }
    [[nodiscard]] std::vector<core::Card> cards(QDate from, QDate to) const override
    {
        return those(
            allCards, [&](const core::Card &card) { return card.day >= from && card.day <= to; });
    }
    [[nodiscard]] std::vector<core::LoggedSession> sessions(core::LifterId lifter) const override
    {
        sessionsReadOf.push_back(lifter);
        whenSessionsAreRead();
        return those(allSessions,
            [&](const core::LoggedSession &session) { return session.lifter == lifter; });
    }
    [[nodiscard]] std::vector<core::LoggedSession> sessions() const override { return allSessions; }
    [[nodiscard]] std::vector<core::CheckIn> checkIns(core::LifterId) const override { return {}; }
    [[nodiscard]] std::vector<core::CheckIn> checkIns() const override { return {}; }
    [[nodiscard]] std::vector<core::CheckIn> checkInsFor(QDate, QDate) const override { return {}; }
    [[nodiscard]] std::vector<core::BlockTemplate> templates() const override { return {}; }
    [[nodiscard]] std::vector<core::Block> blocks(core::LifterId) const override { return {}; }
    [[nodiscard]] std::vector<core::Block> blocks() const override { return {}; }
    [[nodiscard]] std::vector<core::Waiver> waivers(core::LifterId) const override { return {}; }
    [[nodiscard]] std::vector<core::GivenDay> given(core::LifterId) const override { return {}; }
    [[nodiscard]] std::vector<core::GivenDay> given(QDate, QDate) const override { return {}; }
    [[nodiscard]] std::vector<core::Card> cardsNotGiven(QDate) const override { return {}; }
    [[nodiscard]] std::optional<QDate> givenSince() const override { return std::nullopt; }

private:
    template <class Row, class Wanted>
    static std::vector<Row> those(const std::vector<Row> &rows, Wanted isWanted)
    {
        std::vector<Row> wanted;
        std::copy_if(rows.begin(), rows.end(), std::back_inserter(wanted), isWanted);
        return wanted;
    }
};

} // namespace tests
