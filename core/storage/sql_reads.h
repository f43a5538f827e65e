#pragma once

#include "core/storage/roster_store.h"

namespace core {

class Database;

/// The reads of a RosterReader or RosterStore whose rows lie in a SQL database.
template <class Base> class SqlReads : public Base
{
public:
    [[nodiscard]] std::vector<Lifter> lifters() const override;
    [[nodiscard]] std::vector<Variation> variations() const override;
    [[nodiscard]] std::vector<Card> cards(LifterId lifter, QDate from, QDate to) const override;
    [[nodiscard]] std::vector<Card> cards(QDate from, QDate to) const override;
    [[nodiscard]] std::vector<LoggedSession> sessions(LifterId lifter) const override;
    [[nodiscard]] std::vector<LoggedSession> sessions() const override;
    [[nodiscard]] std::vector<CheckIn> checkIns(LifterId lifter) const override;
    [[nodiscard]] std::vector<CheckIn> checkIns() const override;
    [[nodiscard]] std::vector<CheckIn> checkInsFor(QDate from, QDate to) const override;
    [[nodiscard]] std::vector<BlockTemplate> templates() const override;
    [[nodiscard]] std::vector<Block> blocks(LifterId lifter) const override;
    [[nodiscard]] std::vector<Block> blocks() const override;
    [[nodiscard]] std::vector<Waiver> waivers(LifterId lifter) const override;
    [[nodiscard]] std::vector<GivenDay> given(LifterId lifter) const override;
    [[nodiscard]] std::vector<GivenDay> given(QDate from, QDate to) const override;
    [[nodiscard]] std::vector<Card> cardsNotGiven(QDate before) const override;
    [[nodiscard]] std::optional<QDate> givenSince() const override;

protected:
    [[nodiscard]] virtual Database &db() const = 0;
};

extern template class SqlReads<RosterReader>;
extern template class SqlReads<RosterStore>;

} // namespace core
