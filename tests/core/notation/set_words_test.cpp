#include "core/notation/set_words.h"

#include <QLocale>
#include <gmock/gmock.h>

using namespace core;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const QString kBench = QStringLiteral("Bench press");

SetAsked asked()
{
    return {kBench, 100.0, 5, 8.0, {}};
}

SetEntry done(double loadKg = 100.0, int reps = 5, std::optional<double> rpe = 8.0)
{
    SetEntry set;
    set.loadKg = loadKg;
    set.repsDone = reps;
    set.rpe = rpe;
    return set;
}

std::vector<std::string> differences(
    const SetAsked &asked, const SetEntry &done, const QString &variation = kBench)
{
    QLocale::setDefault(QLocale::c());
    std::vector<std::string> said;
    for (const QString &words : differenceWords(asked, variation, done, Unit::kilogram))
        said.push_back(words.toStdString());
    return said;
}

} // namespace

TEST(SetWords, SayWhatWasDone)
{
    QLocale::setDefault(QLocale::c());
    SetEntry set = done(102.5, 3, 8.5);
    EXPECT_EQ(doneWords(set, Unit::kilogram).toStdString(), "3 x 102.5 kg, RPE 8.5");
    set.rpe.reset();
    set.touch = 2;
    EXPECT_EQ(doneWords(set, Unit::kilogram, QStringLiteral("Feet up"), 1).toStdString(),
        "3 x 102.5 kg, the first 1 as Feet up, touch 2");
    EXPECT_EQ(workWords(5, toKg(225, Unit::pound), Unit::pound).toStdString(), "5 x 225 lb");
    EXPECT_EQ(repsWords(1).toStdString(), "1 rep");
    EXPECT_EQ(repsWords(2).toStdString(), "2 reps");
}

TEST(SetWords, ASetAsAskedForDiffersInNothing)
{
    EXPECT_THAT(differences(asked(), done()), IsEmpty());
    EXPECT_THAT(differences({kBench}, done()), IsEmpty()) << "what was not asked for cannot differ";
    EXPECT_THAT(differences(asked(), done(100.0, 5, {})), IsEmpty());
}

TEST(SetWords, LoadsDifferFromFiveGramsOn)
{
    EXPECT_THAT(differences(asked(), done(102.5)), ElementsAre("2.5 kg heavier"));
    EXPECT_THAT(differences(asked(), done(97.5)), ElementsAre("2.5 kg lighter"));
    EXPECT_THAT(differences(asked(), done(100.0051)), ElementsAre("0.01 kg heavier"));
    EXPECT_THAT(differences(asked(), done(100.0049)), IsEmpty());
    EXPECT_THAT(differences(asked(), done(99.9949)), ElementsAre("0.01 kg lighter"));
    EXPECT_THAT(differences(asked(), done(99.9951)), IsEmpty());
}

TEST(SetWords, RepsDifferByOneAndRatingsByAWholePoint)
{
    EXPECT_THAT(differences(asked(), done(100.0, 6)), ElementsAre("1 rep more"));
    EXPECT_THAT(differences(asked(), done(100.0, 3)), ElementsAre("2 reps fewer"));
    EXPECT_THAT(differences(asked(), done(100.0, 5, 8.5)), IsEmpty());
    EXPECT_THAT(differences(asked(), done(100.0, 5, 9.0)),
        ElementsAre("harder than expected (RPE 9 against 8)"));
    EXPECT_THAT(differences(asked(), done(100.0, 5, 7.5)), IsEmpty());
    EXPECT_THAT(differences(asked(), done(100.0, 5, 7.0)),
        ElementsAre("easier than expected (RPE 7 against 8)"));
}

TEST(SetWords, AMissASwapAndAnExtraSetAreNamed)
{
    SetEntry missed = done();
    missed.failed = true;
    EXPECT_THAT(differences(asked(), missed), ElementsAre("missed a rep"));
    EXPECT_THAT(differences({}, missed), ElementsAre("missed a rep", "extra set"));
    EXPECT_THAT(differences({}, done()), ElementsAre("extra set"));
    EXPECT_THAT(differences(asked(), done(), QStringLiteral("Feet up")),
        ElementsAre("Feet up in place of Bench press"));
}

TEST(SetWords, LeadRepsDifferOnceTheSetCameToThem)
{
    SetAsked lead = asked();
    lead.leadReps = 2;
    SetEntry set = done();
    EXPECT_THAT(differences(lead, set), ElementsAre("lead reps 0, not 2"));
    set.lead = LeadReps{{2}, 2};
    EXPECT_THAT(differences(lead, set), IsEmpty());
    set.lead->reps = 1;
    EXPECT_THAT(differences(lead, set), ElementsAre("lead reps 1, not 2"));
    lead.reps.reset();
    set.repsDone = 2;
    EXPECT_THAT(differences(lead, set), IsEmpty()) << "it ended among them";
    set.repsDone = 3;
    EXPECT_THAT(differences(lead, set), ElementsAre("lead reps 1, not 2"));
}

TEST(SetWords, ARatingDiffersFromAnExpectedOneBetweenTheHalvesByAWholePointToo)
{
    // What is expected comes from an estimate, which knows no halves.
    const auto against = [](double expected, double said) {
        SetAsked by = asked();
        by.rpe = expected;
        return differences(by, done(100.0, 5, said));
    };
    EXPECT_THAT(against(8.05, 9.0), IsEmpty());
    EXPECT_THAT(against(7.95, 9.0), ElementsAre("harder than expected (RPE 9 against 7.95)"));
    EXPECT_THAT(against(8.95, 8.0), IsEmpty());
    EXPECT_THAT(against(9.05, 8.0), ElementsAre("easier than expected (RPE 8 against 9.05)"));
    EXPECT_THAT(against(7.1234, 9.0), ElementsAre("harder than expected (RPE 9 against 7.123)"));
}
