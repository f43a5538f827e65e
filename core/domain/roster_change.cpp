#include "core/domain/roster_change.h"

#include "core/domain/week.h"

namespace core {

namespace {

/// Whose a row is and on which days: for each kind of row.
template <class Row> struct Place
{
    static LifterId lifter(const Row &row) { return row.lifter; }
    static QDate firstDay(const Row &row) { return row.day; }
    static QDate lastDay(const Row &row) { return row.day; }
};
template <class Row> struct PlaceWithoutDay
{
    static QDate firstDay(const Row &) { return {}; }
    static QDate lastDay(const Row &) { return {}; }
};
template <> struct Place<Lifter> : PlaceWithoutDay<Lifter>
{
    static LifterId lifter(const Lifter &row) { return row.id; }
};
template <> struct Place<Variation> : PlaceWithoutDay<Variation>
{
    static LifterId lifter(const Variation &) { return {}; }
};
template <> struct Place<BlockTemplate> : PlaceWithoutDay<BlockTemplate>
{
    static LifterId lifter(const BlockTemplate &) { return {}; }
};
template <> struct Place<Block>
{
    static LifterId lifter(const Block &row) { return row.lifter; }
    static QDate firstDay(const Block &row) { return row.start; }
    static QDate lastDay(const Block &row) { return row.end(); }
};
template <> struct Place<Waiver>
{
    static LifterId lifter(const Waiver &row) { return row.key.lifter; }
    static QDate firstDay(const Waiver &row) { return row.key.monday; }
    static QDate lastDay(const Waiver &row) { return row.key.monday.addDays(kWeekDays - 1); }
};

template <class Row> void add(RosterChange &change, const std::vector<Row> &rows)
{
    for (const Row &row : rows) {
        change.kinds.set(kRowKind<Row>);
        if (const LifterId lifter = Place<Row>::lifter(row); lifter.isValid())
            change.lifters.insert(lifter);
        const QDate first = Place<Row>::firstDay(row);
        const QDate last = Place<Row>::lastDay(row);
        if (first.isValid() && (!change.firstDay.isValid() || first < change.firstDay))
            change.firstDay = first;
        if (last.isValid() && (!change.lastDay.isValid() || last > change.lastDay))
            change.lastDay = last;
    }
}

} // namespace

RosterChange changeBy(Edit edit)
{
    RosterChange change;
    forEachRowKind([&](auto kind) {
        add(change, (edit.*kind).before);
        add(change, (edit.*kind).after);
    });
    change.edit = std::make_shared<const Edit>(std::move(edit));
    return change;
}

} // namespace core
