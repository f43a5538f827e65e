#include "core/domain/variation.h"

#include <gmock/gmock.h>

using namespace core;

TEST(Variation, WhatIsNotSaidOfAnAreaIsTakenForMuch)
{
    for (const BodyArea area : kBodyAreas) {
        EXPECT_EQ(Variation().work[area], Work::much);
        EXPECT_TRUE(works(Variation(), area));
    }
}

TEST(Variation, WorksAnAreaFromTheGradeSomeOn)
{
    Variation v;
    for (const Work grade : {Work::none, Work::some, Work::much}) {
        v.work[BodyArea::wrists] = grade;
        EXPECT_EQ(works(v, BodyArea::wrists), grade != Work::none);
    }
}

TEST(Variation, EveryLiftHoldsTheBarAndOnlyTheBenchPressWorksTheChest)
{
    for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift}) {
        const AreaWork work = usualWork(lift);
        for (const BodyArea area : {BodyArea::back, BodyArea::legs, BodyArea::shoulders,
                 BodyArea::elbows, BodyArea::wrists})
            EXPECT_NE(work[area], Work::none) << words(area).toStdString();
        EXPECT_EQ(work[BodyArea::chest], lift == Lift::bench ? Work::much : Work::none);
        EXPECT_EQ(work[BodyArea::legs], lift == Lift::bench ? Work::some : Work::much);
    }
}

TEST(BodyArea, FileWordsReadBack)
{
    for (const BodyArea area : kBodyAreas)
        EXPECT_EQ(fromFileWord<BodyArea>(fileWord(area)), area);
    EXPECT_FALSE(fromFileWord<BodyArea>(QStringLiteral("Back")));
}

TEST(AreaWork, FileWordsReadBackAndNameEveryAreaOnce)
{
    AreaWork work;
    work[BodyArea::back] = Work::none;
    work[BodyArea::wrists] = Work::some;
    const QString text = fileWords(work);
    EXPECT_EQ(text,
        QStringLiteral("back:not legs:much chest:much shoulders:much elbows:much wrists:some"));
    EXPECT_EQ(areaWorkFromFileWords(text), work);
    EXPECT_FALSE(areaWorkFromFileWords({}));
    EXPECT_FALSE(areaWorkFromFileWords(text.section(u' ', 0, 4))) << "wrists are missing";
    EXPECT_FALSE(areaWorkFromFileWords(text + QStringLiteral(" back:much"))) << "twice";
    EXPECT_FALSE(areaWorkFromFileWords(
        QString(text).replace(QStringLiteral("much"), QStringLiteral("very"))));
    EXPECT_FALSE(areaWorkFromFileWords(
        QString(text).replace(QStringLiteral("legs"), QStringLiteral("knees"))));
}

TEST(Variation, IsFoundByIdByCodeOrAsTheCompetitionLift)
{
    std::vector<Variation> all(4);
    for (size_t i = 0; i < all.size(); ++i) {
        all[i].id = {qint64(i) + 1};
        all[i].code = QStringLiteral("code_%1").arg(i);
        all[i].name = QStringLiteral("Name %1").arg(i);
    }
    all[1].competition = true;
    all[2].lift = all[3].lift = Lift::squat;
    all[3].competition = true;
    EXPECT_EQ(find(all, {3}), &all[2]);
    EXPECT_EQ(find(all, {5}), nullptr);
    EXPECT_EQ(withCode(all, QStringLiteral("code_1")), &all[1]);
    EXPECT_EQ(nameOf(all, QStringLiteral("code_1")), QStringLiteral("Name 1"));
    EXPECT_EQ(nameOf(all, QStringLiteral("code_9")), QStringLiteral("code_9"));
    EXPECT_EQ(competitionOf(all, Lift::bench), &all[1]);
    EXPECT_EQ(competitionOf(all, Lift::squat), &all[3]);
    EXPECT_EQ(competitionOf(all, Lift::deadlift), nullptr);
}
