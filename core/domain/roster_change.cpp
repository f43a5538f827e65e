#include "core/domain/roster_change.h"

#include "core/domain/week.h"

namespace core {

namespace {

/// Whose a row is and on which days; null where it is nobody's and of no day.
struct Place
{
    LifterId lifter;
    QDate first;
    QDate last;
};

/// For each kind of row.
struct PlaceOf
{
    template <class Row> Place operator()(const Row &row) { return {row.lifter, row.day, row.day}; }
    Place operator()(const Lifter &row) { return {row.id, {}, {}}; }
    Place operator()(const Variation &) { return {}; }
    Place operator()(const BlockTemplate &) { return {}; }
    Place operator()(const Block &row) { return {row.lifter, row.start, row.end()}; }
    Place operator()(const Waiver &row)
    {
        return {row.key.lifter, row.key.monday, row.key.monday.addDays(kWeekDays - 1)};
    }
};

template <class Row> void add(RosterChange &change, const std::vector<Row> &rows)
{
    for (const Row &row : rows) {
        change.kinds.set(kRowKind<Row>);
        const Place place = PlaceOf()(row);
        if (place.lifter.isValid())
            change.lifters.insert(place.lifter);
        if (place.first.isValid() && (!change.firstDay.isValid() || place.first < change.firstDay))
            change.firstDay = place.first;
        if (place.last.isValid() && (!change.lastDay.isValid() || place.last > change.lastDay))
            change.lastDay = place.last;
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
