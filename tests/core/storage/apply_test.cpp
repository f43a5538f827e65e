#include "tests/core/storage/roster_fixture.h"
#include "tests/support/days.h"

using namespace core;
using namespace tests;
using testing::ElementsAre;

namespace {

class ApplyTest : public RosterFixture
{
protected:
    RosterFile file = RosterFile::create(path);
    Lifter ann = lifterNamed(file, QStringLiteral("Ann"));
    Lifter bea = lifterNamed(file, QStringLiteral("Bea"));

    void SetUp() override
    {
        Edit edit;
        edit.lifters.after = {ann, bea};
        file.apply(edit);
    }
    /// The words that refuse the edit, and that nothing was changed.
    [[nodiscard]] QString refusal(const Edit &edit)
    {
        const Contents before = contentsOf(file);
        const QString words = wordsOf([&] { file.apply(edit); });
        EXPECT_EQ(contentsOf(file), before);
        return words;
    }
    template <class Row> static RowChange<Row> change(const Row &before, const Row &after)
    {
        return {{before}, {after}};
    }
};

} // namespace

TEST_F(ApplyTest, ANameIsTakenWhateverItsCaseAndSpacing)
{
    Edit edit;
    edit.lifters.after = {lifterNamed(file, QStringLiteral(" ANN "))};
    EXPECT_THAT(refusal(edit), Says("There is a lifter named Ann already. Choose another name"));

    Edit accents;
    accents.lifters.after = {lifterNamed(file, QStringLiteral("Åsa Øst"))};
    file.apply(accents);
    edit.lifters.after = {lifterNamed(file, QStringLiteral("åSA øST"))};
    EXPECT_THAT(refusal(edit), Says("Åsa Øst"));
}

TEST_F(ApplyTest, ANameTakenByAnArchivedLifterSaysSo)
{
    Lifter archived = ann;
    archived.archived = true;
    Edit edit;
    edit.lifters = change(ann, archived);
    file.apply(edit);
    Edit add;
    add.lifters.after = {lifterNamed(file, QStringLiteral("ann"))};
    EXPECT_THAT(refusal(add), Says("archived lifter named Ann already. Bring that one back"));
}

TEST_F(ApplyTest, ALifterMayChangeTheCaseOfTheirName)
{
    Lifter louder = ann;
    louder.name = QStringLiteral("ANN");
    Edit edit;
    edit.lifters = change(ann, louder);
    file.apply(edit);
    EXPECT_THAT(file.lifters(), ElementsAre(louder, bea));
}

TEST_F(ApplyTest, TwoLiftersMaySwapNames)
{
    Lifter annAsBea = ann;
    Lifter beaAsAnn = bea;
    std::swap(annAsBea.name, beaAsAnn.name);
    Edit edit;
    edit.lifters = {{ann, bea}, {annAsBea, beaAsAnn}};
    file.apply(edit);
    EXPECT_THAT(file.lifters(), ElementsAre(beaAsAnn, annAsBea));
    file.apply(inverse(edit));
    EXPECT_THAT(file.lifters(), ElementsAre(ann, bea));
}

TEST_F(ApplyTest, TwoCardsMaySwapPlaces)
{
    const Card first = cardOn(file, ann.id, kMonday, 0);
    const Card second = cardOn(file, ann.id, kMonday, 1);
    Edit add;
    add.cards.after = {first, second};
    file.apply(add);
    Card firstBelow = first;
    Card secondAbove = second;
    std::swap(firstBelow.position, secondAbove.position);
    Edit edit;
    edit.cards = {{first, second}, {firstBelow, secondAbove}};
    file.apply(edit);
    EXPECT_THAT(file.cards(ann.id, kMonday, kMonday), ElementsAre(secondAbove, firstBelow));
}

TEST_F(ApplyTest, TwoCardsNeverShareAPlace)
{
    Edit edit;
    edit.cards.after = {cardOn(file, ann.id, kMonday, 0), cardOn(file, ann.id, kMonday, 0)};
    EXPECT_THAT(refusal(edit), Says("Card 1 of Ann on 2026-03-02 cannot be saved"));
}

TEST_F(ApplyTest, ASessionOfTheSameDayAndNumberIsNamed)
{
    Edit edit;
    edit.sessions.after = {sessionOn(file, ann.id, kMonday), sessionOn(file, ann.id, kMonday)};
    EXPECT_THAT(refusal(edit), Says("session 1 on 2026-03-02 already"));
}

TEST_F(ApplyTest, ALifterChangesWhileCardsAndLogsNameThem)
{
    Edit add;
    add.cards.after = {cardOn(file, ann.id, kMonday, 0)};
    add.sessions.after = {sessionOn(file, ann.id, kMonday)};
    file.apply(add);
    Lifter heavier = ann;
    heavier.bodyweightKg = 80.0;
    heavier.groups = QStringList{QStringLiteral("team")};
    heavier.gear.plates.pop_back();
    Edit edit;
    edit.lifters = change(ann, heavier);
    file.apply(edit);
    EXPECT_THAT(file.lifters(), ElementsAre(heavier, bea));
    EXPECT_THAT(file.sessions(ann.id), ElementsAre(add.sessions.after.front()));
}

TEST_F(ApplyTest, ALifterWithALogIsNotRemovedButForTheWhole)
{
    Edit add;
    add.cards.after = {cardOn(file, ann.id, kMonday, 0)};
    add.sessions.after = {sessionOn(file, ann.id, kMonday)};
    file.apply(add);
    Edit edit;
    edit.lifters.before = {ann};
    EXPECT_THAT(refusal(edit), Says("still has a plan or a log. Archive the lifter instead"));
    edit.cards.before = add.cards.after;
    edit.sessions.before = add.sessions.after;
    const Contents before = contentsOf(file);
    file.apply(edit);
    EXPECT_THAT(file.lifters(), ElementsAre(bea));
    file.apply(inverse(edit));
    EXPECT_EQ(contentsOf(file), before);
}

TEST_F(ApplyTest, AVariationInUseIsNotRemoved)
{
    Edit add;
    add.sessions.after = {sessionOn(file, ann.id, kMonday)};
    file.apply(add);
    Edit edit;
    edit.variations.before = {file.variations().front()};
    EXPECT_THAT(refusal(edit), Says("still used by a card or in a log. Retire it instead"));
}

TEST_F(ApplyTest, ASetOfAnUnknownVariationIsRefused)
{
    Edit edit;
    edit.sessions.after = {sessionOn(file, ann.id, kMonday)};
    edit.sessions.after.front().sets.back().variation = {9999};
    EXPECT_NE(refusal(edit), QStringLiteral("nothing thrown"));
}

TEST_F(ApplyTest, ACodeOrACompetitionMarkIsTaken)
{
    Variation mine = file.variations().front();
    mine.id = file.newId<Variation>();
    Edit edit;
    edit.variations.after = {mine};
    EXPECT_THAT(refusal(edit), Says("The code comp belongs to"));
    edit.variations.after.front().code = QStringLiteral("mine");
    EXPECT_THAT(refusal(edit), Says("competition variation of its lift already"));
}

TEST_F(ApplyTest, TheCompetitionMarkMayMoveInOneStep)
{
    const std::vector<Variation> all = file.variations();
    Variation first = all[0];
    Variation second = all[1];
    ASSERT_EQ(first.lift, second.lift);
    first.competition = false;
    second.competition = true;
    second.ratio = 1.0;
    Edit edit;
    edit.variations = {{all[0], all[1]}, {first, second}};
    file.apply(edit);
    EXPECT_EQ(file.variations()[1], second);
    file.apply(inverse(edit));
    EXPECT_EQ(file.variations(), all);
}

TEST_F(ApplyTest, ARowThatWasChangedInTheMeantimeIsNotOverwritten)
{
    Lifter heavier = ann;
    heavier.bodyweightKg = 80.0;
    Edit edit;
    edit.lifters = change(ann, heavier);
    file.apply(edit);
    Lifter noted = ann;
    noted.notes = QStringLiteral("from an old picture of Ann");
    Edit stale;
    stale.lifters = change(ann, noted);
    EXPECT_THAT(refusal(stale), Says("Lifter Ann was changed or removed in the meantime"));
}

TEST_F(ApplyTest, ARowThatIsGoneIsNotRemovedTwice)
{
    Edit remove;
    remove.lifters.before = {bea};
    file.apply(remove);
    EXPECT_THAT(refusal(remove), Says("Lifter Bea was changed or removed in the meantime"));
}

TEST_F(ApplyTest, UnsoundRowsAreNamedWithWhatIsWrong)
{
    Edit lifter;
    lifter.lifters.after = {lifterNamed(file, QStringLiteral("Cyd"))};
    lifter.lifters.after.front().bodyweightKg = 4000.0;
    EXPECT_THAT(refusal(lifter), Says("Lifter Cyd cannot be saved. Bodyweight is not between"));

    Edit session;
    session.sessions.after = {sessionOn(file, ann.id, kMonday)};
    session.sessions.after.front().sets[1].rpe = 11.0;
    EXPECT_THAT(refusal(session),
        Says("Session 1 of Ann on 2026-03-02 cannot be saved. Set 2: RPE is 1 to 10 in halves."));

    Edit card;
    card.cards.after = {cardOn(file, ann.id, QDate(), 0)};
    EXPECT_THAT(refusal(card), Says("A card needs a day."));
}

TEST_F(ApplyTest, ARowWithoutAnIdIsRefused)
{
    Edit edit;
    edit.lifters.after = {lifterNamed(file, QStringLiteral("Cyd"))};
    edit.lifters.after.front().id = {};
    EXPECT_THAT(refusal(edit), Says("cannot be saved"));
}

TEST_F(ApplyTest, AFaultInTheLastRowTakesTheFirstBackToo)
{
    Edit edit;
    edit.lifters.after = {lifterNamed(file, QStringLiteral("Cyd"))};
    edit.cards.after = {cardOn(file, edit.lifters.after.front().id, kMonday, 0)};
    edit.sessions.after = {sessionOn(file, edit.lifters.after.front().id, kMonday)};
    edit.sessions.after.front().sets.back().loadKg = -1.0;
    EXPECT_THAT(refusal(edit), Says("The load is more than 0"));
}
