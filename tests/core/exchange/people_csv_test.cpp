#include "core/exchange/people_csv.h"

#include "tests/core/exchange/files.h"

#include <gmock/gmock.h>

using core::PeopleTable;

TEST(PeopleCsv, ReadsALineOfAllColumns)
{
    const PeopleTable people =
        files::people("lifter,sex,bodyweight_kg,birth_year,touch_style,unit\n"
                      "Ada Berg,f,62.5,1998,soft,lb\n"
                      "Bo Lund,,,,,\n");
    ASSERT_TRUE(people.problems.isEmpty());
    ASSERT_EQ(people.rows.size(), 2u);
    EXPECT_EQ(people.rows[0].sex, core::Sex::female);
    EXPECT_EQ(people.rows[0].bodyweightKg, 62.5);
    EXPECT_EQ(people.rows[0].birthYear, 1998);
    EXPECT_EQ(people.rows[0].touchStyle, core::TouchStyle::soft);
    EXPECT_EQ(people.rows[0].unit, core::Unit::pound);
    EXPECT_FALSE(people.rows[1].sex || people.rows[1].bodyweightKg || people.rows[1].birthYear
        || people.rows[1].touchStyle || people.rows[1].unit);
}

TEST(PeopleCsv, SaysSinceWhenALifterTrains)
{
    PeopleTable people = files::people("lifter,sex,bodyweight_kg,training_since\n"
                                       "Ada,f,62,2025-09-01\nBo,m,80,\n");
    ASSERT_TRUE(people.problems.isEmpty());
    EXPECT_EQ(people.rows[0].trainingSince, QDate(2025, 9, 1));
    EXPECT_FALSE(people.rows[1].trainingSince);
    people = files::people("lifter,sex,bodyweight_kg,training_since\nAda,f,62,last year\n");
    ASSERT_EQ(people.problems.items().size(), 1);
    EXPECT_EQ(people.problems.items().front().field, QStringLiteral("training_since"));
}

TEST(PeopleCsv, TellsEveryBadField)
{
    const PeopleTable people =
        files::people("lifter,sex,bodyweight_kg,birth_year,touch_style,unit\n"
                      "Ada,w,6.2,1898,hard,stone\n"
                      "ADA,f,62,,,\n"
                      ",f,62,,,\n");
    QStringList found;
    for (const core::Problem &p : people.problems.items()) {
        found << QStringLiteral("%1 %2").arg(p.line).arg(p.field);
        EXPECT_FALSE(p.words.isEmpty());
        EXPECT_FALSE(p.remedy.isEmpty());
    }
    EXPECT_EQ(found,
        (QStringList{"2 sex", "2 touch_style", "2 unit", "2 bodyweight_kg", "2 birth_year",
            "3 lifter", "4 lifter"}));
}

TEST(PeopleCsv, WrittenAndReadAgainIsTheSame)
{
    core::Lifter ada;
    ada.name = QStringLiteral("Berg, \"Ada\"");
    ada.sex = core::Sex::female;
    ada.bodyweightKg = 61.3;
    ada.unit = core::Unit::pound;
    ada.touchStyle = core::TouchStyle::sinking;
    const PeopleTable people = files::people(core::writePeople({ada}));
    ASSERT_TRUE(people.problems.isEmpty());
    const core::PersonRow &row = people.rows.at(0);
    EXPECT_EQ(row.lifter, ada.name);
    EXPECT_EQ(row.sex, ada.sex);
    EXPECT_EQ(row.bodyweightKg, ada.bodyweightKg);
    EXPECT_FALSE(row.birthYear);
    EXPECT_EQ(row.unit, ada.unit);
    EXPECT_EQ(row.touchStyle, ada.touchStyle);
}
