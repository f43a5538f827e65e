#include "core/plan/paste_cards.h"
#include "tests/core/plan/plan_rows.h"

#include <gmock/gmock.h>

using namespace core;
using namespace tests;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

namespace {

const QDate kThursday(2026, 3, 5);

Lifter lifter(int id, const QString &name)
{
    Lifter lifter;
    lifter.id = {id};
    lifter.name = name;
    lifter.isAdult = true;
    return lifter;
}

/// Three lifters; the first is who the day was copied from.
struct PasteDesk
{
    Lifter ada = lifter(1, u"Ada"_qs);
    Lifter ben = lifter(2, u"Ben"_qs);
    Lifter cleo = lifter(3, u"Cleo"_qs);
    std::vector<CheckIn> said;
    std::vector<Card> there;
    std::vector<CardRow> rows{{0, idOf("comp"), u"1x1 @9.5\n3x3 -10%"_qs, u"with a lift-off"_qs},
        {0, idOf("feet_up"), u"3x8 @7.5"_qs, {}}};

    PastedCards paste(LifterId from = {1}, OnOccupiedDays onOccupied = OnOccupiedDays::keep)
    {
        qint64 next = 100;
        std::vector<PasteTarget> targets;
        for (const Lifter *each : {&ada, &ben, &cleo}) {
            PasteTarget target{*each, kThursday, {}, said};
            std::ranges::copy_if(there, std::back_inserter(target.cards),
                [each](const Card &card) { return card.lifter == each->id; });
            targets.push_back(std::move(target));
        }
        return pasteCards(rows, from, targets, onOccupied, builtInCatalogue(),
            [&next] { return CardId{++next}; });
    }
    void hurts(const Lifter &who, BodyArea area)
    {
        CheckIn checkIn;
        checkIn.lifter = who.id;
        checkIn.day = kThursday.addDays(-3);
        checkIn.pain = PainFlag{area, {}};
        said.push_back(checkIn);
    }
};

std::vector<std::string> linesOf(const PastedCards &pasted, const Lifter &who)
{
    std::vector<std::string> lines;
    for (const Card &card : pasted.cards)
        if (card.lifter == who.id)
            lines.push_back(card.setLine.simplified().toStdString());
    return lines;
}

} // namespace

TEST(PasteCards, EverybodyGetsTheDayAsItWasInOneEdit)
{
    PasteDesk desk;
    const PastedCards pasted = desk.paste();
    EXPECT_THAT(pasted.remarks, IsEmpty());
    EXPECT_THAT(pasted.edit.cards.after, SizeIs(6));
    for (const Lifter *who : {&desk.ada, &desk.ben, &desk.cleo})
        EXPECT_THAT(linesOf(pasted, *who), ElementsAre("1x1 @9.5 3x3 -10%", "3x8 @7.5"));
    for (const Card &card : pasted.edit.cards.after)
        EXPECT_EQ(card.day, kThursday);
    EXPECT_EQ(pasted.cards[0].note, u"with a lift-off"_qs);
}

TEST(PasteCards, GoesBelowWhatIsThereOrTakesItsPlace)
{
    PasteDesk desk;
    desk.there = {cardOf(7, kThursday, 0, idOf("comp"), u"4x4 @8"_qs)};
    desk.there[0].lifter = desk.ben.id;
    const PastedCards below = desk.paste();
    EXPECT_TRUE(below.edit.cards.before.empty());
    for (const Card &card : below.edit.cards.after)
        if (card.lifter == desk.ben.id) {
            EXPECT_GE(card.position, 1);
        }
    const PastedCards instead = desk.paste({1}, OnOccupiedDays::replace);
    ASSERT_THAT(instead.edit.cards.before, SizeIs(1));
    EXPECT_EQ(instead.edit.cards.before[0].id, CardId{7});
}

TEST(PasteCards, MinorsAndNovicesGetTheMaximalSetsLighterAndTheWordsSaySo)
{
    PasteDesk desk;
    desk.ben.isAdult = false;
    desk.ben.birthYear = kThursday.year() - 16;
    desk.cleo.trainingSince = kThursday.addDays(-100);
    const PastedCards pasted = desk.paste();
    EXPECT_THAT(linesOf(pasted, desk.ada), ElementsAre("1x1 @9.5 3x3 -10%", "3x8 @7.5"));
    EXPECT_THAT(linesOf(pasted, desk.ben), ElementsAre("1x1 @8 3x3 -10%", "3x8 @7.5"));
    EXPECT_THAT(linesOf(pasted, desk.cleo), ElementsAre("1x1 @8 3x3 -10%", "3x8 @7.5"));
    ASSERT_THAT(pasted.remarks, SizeIs(2));
    EXPECT_THAT(pasted.remarks[0].toStdString(),
        HasSubstr("Ben: Competition bench 1x1 @8 in place of 1x1 @9.5"));
    EXPECT_THAT(pasted.remarks[0].toStdString(), HasSubstr("Under 18"));
    EXPECT_THAT(pasted.remarks[1].toStdString(), HasSubstr("Cleo"));
}

TEST(PasteCards, NoMaximalSetIsWrittenBeforeTheAgeIsKnown)
{
    PasteDesk desk;
    desk.cleo.isAdult = false; // nor is there a year
    const PastedCards pasted = desk.paste();
    EXPECT_THAT(linesOf(pasted, desk.cleo), ElementsAre("1x1 @8 3x3 -10%", "3x8 @7.5"));
    ASSERT_THAT(pasted.remarks, SizeIs(1));
    EXPECT_THAT(pasted.remarks[0].toStdString(),
        HasSubstr("No maximal work is suggested before the lifter's age is known."));
}

TEST(PasteCards, WhatHurtsIsLeftOutForWhomItHurts)
{
    PasteDesk desk;
    desk.hurts(desk.ben, BodyArea::legs);
    const PastedCards pasted = desk.paste();
    EXPECT_THAT(linesOf(pasted, desk.ben), ElementsAre("3x8 @7.5")) << "feet up, the legs rest";
    EXPECT_THAT(linesOf(pasted, desk.cleo), SizeIs(2));
    ASSERT_FALSE(pasted.remarks.empty());
    EXPECT_THAT(pasted.remarks.back().toStdString(), HasSubstr("Ben: Competition bench"));
    EXPECT_THAT(pasted.remarks.back().toStdString(), HasSubstr("is left out. Pain (legs)"));
}

TEST(PasteCards, ALoadInKgStaysWithWhomItWasWrittenFor)
{
    PasteDesk desk;
    desk.rows = {{0, idOf("comp"), u"1x3 140kg\n3x3 -10%"_qs, {}}};
    const PastedCards pasted = desk.paste();
    EXPECT_THAT(linesOf(pasted, desk.ada), ElementsAre("1x3 140kg 3x3 -10%"));
    EXPECT_THAT(linesOf(pasted, desk.ben), ElementsAre("1x3 3x3 -10%"));
    EXPECT_THAT(pasted.remarks[0].toStdString(),
        HasSubstr("Ben: Competition bench 1x3 140kg comes without a load"));
    EXPECT_THAT(linesOf(desk.paste({}), desk.ada), ElementsAre("1x3 3x3 -10%"))
        << "nobody knows whose it was";
}

TEST(PasteCards, FurtherDaysFollowAndWhatCannotBeReadStaysAsWritten)
{
    PasteDesk desk;
    desk.rows = {{0, idOf("comp"), u"heavy"_qs, {}}, {2, idOf("feet_up"), u"3x8 @7"_qs, {}}};
    const PastedCards pasted = desk.paste();
    EXPECT_EQ(pasted.cards[0].setLine, u"heavy"_qs);
    EXPECT_EQ(pasted.cards[1].day, kThursday.addDays(2));
}
