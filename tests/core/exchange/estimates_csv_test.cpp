#include "core/exchange/estimates_csv.h"

#include <gtest/gtest.h>

using namespace core;

TEST(EstimatesCsv, EveryWeekStandsOnALineAViewFilteredFirst)
{
    std::vector<Lifter> lifters(3);
    for (size_t i = 0; i < lifters.size(); ++i)
        lifters[i].id = {qint64(i) + 1};
    lifters[0].name = QStringLiteral("Berg, Ada");
    lifters[1].name = QStringLiteral("Bo");
    lifters[2].name = QStringLiteral("Cleo");
    LiftEstimate ada;
    strength::WeekEstimate week;
    week.sunday = engineDay(QDate(2026, 3, 8));
    week.filtered = {100.0, 96.126, 104.114};
    week.smoothed = {101.5, 97.0, 105.999};
    ada.estimate.weeks = {week};
    week.sunday += 7;
    week.filtered.kg = 102.0;
    ada.estimate.weeks.push_back(week);
    const std::map<std::pair<LifterId, Lift>, LiftEstimate> estimates{
        {{LifterId{1}, Lift::bench}, ada}, {{LifterId{2}, Lift::squat}, ada},
        {{LifterId{3}, Lift::bench}, LiftEstimate()}};
    EXPECT_EQ(writeEstimates(lifters, estimates).toStdString(),
        "lifter,date,view,estimate_kg,low90_kg,high90_kg\r\n"
        "\"Berg, Ada\",2026-03-08,filtered,100.00,96.13,104.11\r\n"
        "\"Berg, Ada\",2026-03-15,filtered,102.00,96.13,104.11\r\n"
        "\"Berg, Ada\",2026-03-08,smoothed,101.50,97.00,106.00\r\n"
        "\"Berg, Ada\",2026-03-15,smoothed,101.50,97.00,106.00\r\n")
        << "Bo has no bench press, Cleo no set of it";
}
