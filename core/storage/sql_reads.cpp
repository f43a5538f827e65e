#include "core/storage/sql_reads.h"

#include "core/storage/repositories.h"

namespace core {

template <class Base> std::vector<Lifter> SqlReads<Base>::lifters() const
{
    return LifterRepository(db()).all();
}

template <class Base> std::vector<Variation> SqlReads<Base>::variations() const
{
    return VariationRepository(db()).all();
}

template <class Base>
std::vector<Card> SqlReads<Base>::cards(LifterId lifter, QDate from, QDate to) const
{
    return CardRepository(db()).between(lifter, from, to);
}

template <class Base> std::vector<Card> SqlReads<Base>::cards(QDate from, QDate to) const
{
    return CardRepository(db()).between(from, to);
}

template <class Base> std::vector<LoggedSession> SqlReads<Base>::sessions(LifterId lifter) const
{
    return SessionRepository(db()).of(lifter);
}

template <class Base> std::vector<LoggedSession> SqlReads<Base>::sessions() const
{
    return SessionRepository(db()).all();
}

template <class Base> std::vector<CheckIn> SqlReads<Base>::checkIns(LifterId lifter) const
{
    return CheckInRepository(db()).of(lifter);
}

template <class Base> std::vector<CheckIn> SqlReads<Base>::checkIns() const
{
    return CheckInRepository(db()).all();
}

template <class Base> std::vector<BlockTemplate> SqlReads<Base>::templates() const
{
    return TemplateRepository(db()).all();
}

template <class Base> std::vector<Block> SqlReads<Base>::blocks(LifterId lifter) const
{
    return BlockRepository(db()).of(lifter);
}

template <class Base> std::vector<Block> SqlReads<Base>::blocks() const
{
    return BlockRepository(db()).all();
}

template <class Base> std::vector<Waiver> SqlReads<Base>::waivers(LifterId lifter) const
{
    return WaiverRepository(db()).of(lifter);
}

template class SqlReads<RosterReader>;
template class SqlReads<RosterStore>;

} // namespace core
