#include "ui/board/shelf_rows.h"

#include "ui/board/shelf_model.h"

#include <QAbstractItemModelTester>
#include <QMimeData>
#include <gmock/gmock.h>
#include <memory>

using namespace ui;
using core::Lift;
using core::Serves;
using core::TouchStyle;

namespace {

core::Variation variation(int id, const QString &name, Lift lift, Serves serves)
{
    core::Variation v;
    v.id = {id};
    v.name = name;
    v.code = QString(name).replace(u' ', u'_');
    v.lift = lift;
    v.serves = serves;
    v.purpose = QStringLiteral("builds the touch");
    return v;
}

std::vector<core::Variation> catalogue()
{
    return {variation(1, QStringLiteral("squat"), Lift::squat, Serves::both),
        variation(2, QStringLiteral("sink bench"), Lift::bench, Serves::sinking),
        variation(3, QStringLiteral("comp bench"), Lift::bench, Serves::both),
        variation(4, QStringLiteral("soft bench"), Lift::bench, Serves::soft)};
}

std::vector<std::string> names(const std::vector<ShelfRow> &rows)
{
    std::vector<std::string> names;
    for (const ShelfRow &row : rows)
        if (row.variation)
            names.push_back(row.variation->name.toStdString());
    return names;
}

} // namespace

using testing::ElementsAre;

TEST(ShelfRows, BenchComesFirstAndTheLiftersOwnTouchBeforeTheOthers)
{
    EXPECT_THAT(names(shelfRows(catalogue(), TouchStyle::soft, {})),
        ElementsAre("soft bench", "comp bench", "sink bench", "squat"));
    EXPECT_THAT(names(shelfRows(catalogue(), TouchStyle::sinking, {})),
        ElementsAre("sink bench", "comp bench", "soft bench", "squat"));
    EXPECT_THAT(names(shelfRows(catalogue(), TouchStyle::undecided, {})),
        ElementsAre("comp bench", "soft bench", "sink bench", "squat"));
}

TEST(ShelfRows, AssistanceStandsBehindTheLiftUnderAHeadOfItsOwn)
{
    std::vector<core::Variation> all = catalogue();
    all.insert(all.begin(), variation(5, QStringLiteral("row"), Lift::bench, Serves::both));
    all.front().assistance = true;
    const std::vector<ShelfRow> rows = shelfRows(all, TouchStyle::soft, {});
    EXPECT_THAT(names(rows), ElementsAre("soft bench", "comp bench", "sink bench", "row", "squat"));
    EXPECT_EQ(rows[6].head, QStringLiteral("Bench press \u00b7 assistance"));
}

TEST(ShelfRows, EachGroupHasAHeadAndEmptyOnesHaveNone)
{
    const auto rows = shelfRows(catalogue(), TouchStyle::soft, {});
    ASSERT_EQ(rows.size(), 8u);
    for (size_t i = 0; i < rows.size(); ++i)
        EXPECT_EQ(rows[i].variation.has_value(), i % 2 == 1);
    EXPECT_EQ(rows[6].head, core::words(Lift::squat));
}

TEST(ShelfRows, AllWordsMustBeFoundInAnyOrderAndCase)
{
    EXPECT_THAT(names(shelfRows(catalogue(), TouchStyle::soft, {QStringLiteral("BENCH Sink"), {}})),
        ElementsAre("sink bench"));
    EXPECT_THAT(names(shelfRows(catalogue(), TouchStyle::soft, {QStringLiteral("bench row"), {}})),
        testing::IsEmpty());
    EXPECT_EQ(
        names(shelfRows(catalogue(), TouchStyle::soft, {QStringLiteral("touch"), {}})).size(), 4u)
        << "the purpose is searched too";
}

TEST(ShelfRows, AChipLeavesOneTouchStyle)
{
    EXPECT_THAT(names(shelfRows(catalogue(), TouchStyle::sinking, {{}, Serves::soft})),
        ElementsAre("soft bench"));
}

TEST(ShelfRows, RetiredVariationsAreOffTheShelf)
{
    auto all = catalogue();
    all[0].retired = true;
    EXPECT_EQ(names(shelfRows(all, TouchStyle::soft, {})).size(), 3u);
}

TEST(ShelfRows, DetailsSayTempoRepsAndFatigue)
{
    core::Variation tempo = variation(1, QStringLiteral("tempo"), Lift::bench, Serves::soft);
    tempo.tempo = {4, 2, 0};
    tempo.repsLow = 1;
    tempo.repsHigh = 3;
    tempo.fatigue = core::Fatigue::high;
    const std::string details = shelfDetails(tempo).toStdString();
    EXPECT_THAT(details, testing::HasSubstr("4-2-0"));
    EXPECT_THAT(details, testing::HasSubstr("1\u20133 reps"));
    EXPECT_THAT(details, testing::HasSubstr("high fatigue"));
}

TEST(ShelfModel, IsASoundModelWhoseHeadsCanNeitherBeChosenNorDragged)
{
    ShelfModel model;
    const QAbstractItemModelTester tester(
        &model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows(shelfRows(catalogue(), TouchStyle::soft, {}));
    EXPECT_FALSE(model.flags(model.index(0)) & (Qt::ItemIsSelectable | Qt::ItemIsDragEnabled));
    EXPECT_TRUE(model.flags(model.index(1)) & Qt::ItemIsDragEnabled);
    EXPECT_EQ(model.firstVariation().row(), 1);
    const std::unique_ptr<QMimeData> mime(model.mimeData({model.index(1)}));
    ASSERT_TRUE(mime);
    EXPECT_EQ(mime->formats(), model.mimeTypes());
    model.setRows({});
    EXPECT_FALSE(model.firstVariation().isValid());
}
