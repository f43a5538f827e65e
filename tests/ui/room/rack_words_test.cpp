#include "ui/room/rack_words.h"

#include <QLocale>
#include <gmock/gmock.h>

using namespace core;
using namespace ui;
using testing::HasSubstr;
using testing::Not;

namespace {

RackSeat seat(const char *name, std::vector<double> loadsKg)
{
    return {QString::fromLatin1(name), Unit::kilogram, usualGear(Unit::kilogram),
        std::move(loadsKg), false};
}

std::string said(const std::vector<RackSeat> &seats, double onBarKg = 20.0)
{
    return rackWords(1, seats, onBarKg).toStdString();
}

} // namespace

TEST(RackWords, NameTheOrderAndWhatItSaves)
{
    // By hand, see RackOrder.StrongAndLightOnesGroupTheirEqualLoads.
    const std::string words = said({seat("Ada", {100, 100, 100}), seat("Ben", {60, 60, 60})});
    EXPECT_THAT(words, HasSubstr("Ben 60 kg (3 sets), Ada 100 kg (3 sets). Plates"));
    EXPECT_THAT(words, HasSubstr("Plates on and off: 8; taking turns: 34."));
    EXPECT_THAT(words, HasSubstr("follow one of the same lifter: 4"));
}

TEST(RackWords, FollowTheBar)
{
    EXPECT_THAT(said({seat("Ada", {100}), seat("Ben", {60})}, 100.0), HasSubstr("Ada 100 kg, Ben"));
    EXPECT_THAT(said({seat("Ada", {100}), seat("Ben", {60})}, 60.0), HasSubstr("Ben 60 kg, Ada"));
    EXPECT_THAT(
        said({seat("Ada", std::vector<double>(9, 80)), seat("Ben", std::vector<double>(9, 80))}),
        HasSubstr("Ben 80 kg, and so on. Plates"));
    EXPECT_THAT(said({seat("Ada", {80, 80}), seat("Ben", {80, 80})}, 80.0),
        testing::AllOf(HasSubstr("Ada 80 kg, Ben 80 kg, Ada 80 kg, Ben 80 kg"),
            HasSubstr("Plates on and off: 0"), Not(HasSubstr("same lifter"))));
}

TEST(RackWords, SayWhyThereIsNoOrder)
{
    EXPECT_THAT(said({seat("Ada", {100})}), HasSubstr("only Ada"));
    EXPECT_THAT(said({seat("Ada", {}), seat("Ben", {})}), HasSubstr("no set with a load is left"));
    EXPECT_THAT(said(std::vector<RackSeat>(5, seat("Ada", {100}))), HasSubstr("more than 4"));
    RackSeat other = seat("Ben", {60});
    other.gear.barKg = 15.0;
    EXPECT_THAT(said({seat("Ada", {100}), other}), HasSubstr("differ"));
    other.gear = usualGear(Unit::kilogram);
    std::ranges::reverse(other.gear.plates);
    EXPECT_THAT(said({seat("Ada", {100}), other}), Not(HasSubstr("differ"))) << "listed otherwise";
    RackSeat open = seat("Cem", {60});
    open.hasOpenLoads = true;
    EXPECT_THAT(said({seat("Ada", {100}), open}), HasSubstr("without a load"));
}

TEST(RackWords, LoadsAreThoseOfOpenSetsUpToTheFirstWithoutOne)
{
    Lifter lifter;
    lifter.name = QStringLiteral("Ada");
    lifter.gear = usualGear(Unit::kilogram);
    std::vector<DaySet> planned(6);
    for (const size_t set : {0, 1, 2, 3, 5})
        planned[set].loadKg = 60.0 + 10.0 * double(set);
    std::vector<LogLine> lines(6);
    std::vector<Variation> catalogue(2);
    catalogue[0].id = {1};
    catalogue[0].lift = Lift::bench;
    catalogue[1].id = {2};
    catalogue[1].lift = Lift::deadlift;
    for (DaySet &set : planned)
        set.variation = {1};
    for (size_t set = 0; set < lines.size(); ++set)
        lines[set].planned = set;
    lines[0].done = 0;
    lines[0].state = LineState::asPlanned;
    lines[1].state = LineState::leftOut;
    EXPECT_THAT(
        rackSeat(lifter, lines, planned, catalogue).loadsKg, testing::ElementsAre(80.0, 90.0));
    EXPECT_TRUE(rackSeat(lifter, lines, planned, catalogue).hasOpenLoads);
    lines[4].state = LineState::withheld; // is not done, so the bar goes on to the next
    EXPECT_THAT(rackSeat(lifter, lines, planned, catalogue).loadsKg,
        testing::ElementsAre(80.0, 90.0, 110.0));
    EXPECT_FALSE(rackSeat(lifter, lines, planned, catalogue).hasOpenLoads);
    planned[3].variation = {2};
    EXPECT_THAT(
        rackSeat(lifter, lines, planned, catalogue).loadsKg, testing::ElementsAre(80.0, 110.0))
        << "a deadlift needs no rack";
}
