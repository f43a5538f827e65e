#include "ui/lifters/lifter_list_model.h"

#include "ui/lifters/lifter_list_filter.h"

#include <QAbstractItemModelTester>
#include <QPersistentModelIndex>
#include <QSignalSpy>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;

namespace {

using ui::LifterListModel;

ui::LifterRow row(qint64 id, const QString &name)
{
    ui::LifterRow r;
    r.id = {id};
    r.name = name;
    return r;
}

QStringList names(const QAbstractItemModel &model)
{
    QStringList result;
    for (int i = 0; i < model.rowCount(); ++i)
        result << model.index(i, 0).data().toString();
    return result;
}

class Lifters : public testing::Test
{
protected:
    LifterListModel model;
    QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(Lifters, TurnAnyListIntoAnyOtherWithoutAReset)
{
    QSignalSpy resets(&model, &QAbstractItemModel::modelReset);
    const std::vector<std::vector<ui::LifterRow>> lists{
        {row(1, u"Ada"_s), row(2, u"Bo"_s), row(3, u"Cy"_s)},
        {row(2, u"Abo"_s), row(1, u"Ada"_s), row(3, u"Cy"_s)}, // a new name moves a row
        {row(4, u"Aa"_s), row(3, u"Cy"_s), row(5, u"Di"_s)}, {},
        {row(9, u"Ed"_s), row(1, u"Ada"_s)}};
    for (const auto &list : lists) {
        model.setRows(list);
        QStringList wanted;
        for (const ui::LifterRow &r : list)
            wanted << r.name;
        EXPECT_EQ(names(model), wanted);
    }
    EXPECT_EQ(resets.size(), 0);
}

TEST_F(Lifters, KeepTheChosenRowWhenOthersMoveAroundIt)
{
    model.setRows({row(1, u"Ada"_s), row(2, u"Bo"_s), row(3, u"Cy"_s)});
    const QPersistentModelIndex chosen(model.indexOf({2}));
    model.setRows({row(3, u"Al"_s), row(4, u"An"_s), row(2, u"Bo"_s)});
    EXPECT_EQ(chosen.data().toString(), u"Bo"_s);
    EXPECT_EQ(chosen.row(), 2);
}

TEST_F(Lifters, TellOnlyTheRowsThatChanged)
{
    model.setRows({row(1, u"Ada"_s), row(2, u"Bo"_s)});
    QSignalSpy changes(&model, &QAbstractItemModel::dataChanged);
    ui::LifterRow heavier = row(2, u"Bo"_s);
    heavier.estimate = u"100 (95–105) kg"_s;
    heavier.trusted = true;
    model.setRows({row(1, u"Ada"_s), heavier});
    ASSERT_EQ(changes.size(), 1);
    EXPECT_EQ(changes[0][0].toModelIndex().row(), 1);
    EXPECT_EQ(model.index(1).data(LifterListModel::EstimateRole).toString(), u"100 (95–105) kg"_s);
}

TEST_F(Lifters, NameTheirRolesAndSpeakTheWholeRow)
{
    ui::LifterRow r = row(1, u"Ada"_s);
    r.touchStyle = core::TouchStyle::sinking;
    r.meet = u"meet in 3 days"_s;
    r.archived = true;
    model.setRows({r});
    EXPECT_EQ(model.roleNames().value(LifterListModel::EstimateRole), "estimate");
    const QString spoken = model.index(0).data(Qt::AccessibleTextRole).toString();
    for (const char *part : {"Ada", "sinking touch", "meet in 3 days", "archived"})
        EXPECT_TRUE(spoken.contains(QLatin1String(part))) << part;
}

TEST_F(Lifters, AreFilteredByWordsGroupStyleAndArchive)
{
    ui::LifterRow ada = row(1, u"Ada Núñez"_s);
    ada.touchStyle = core::TouchStyle::soft;
    ada.groups = {u"evening"_s};
    ui::LifterRow bo = row(2, u"Bo Stone"_s);
    bo.touchStyle = core::TouchStyle::sinking;
    bo.notes = u"long arms"_s;
    ui::LifterRow cy = row(3, u"Cy Archer"_s);
    cy.archived = true;

    ui::LifterListFilter filter;
    const QAbstractItemModelTester filterTester(
        &filter, QAbstractItemModelTester::FailureReportingMode::Fatal);
    filter.setSourceModel(&model);
    model.setRows({ada, bo, cy});
    EXPECT_EQ(names(filter), (QStringList{ada.name, bo.name}));
    EXPECT_FALSE(filter.isNarrowed());

    filter.setQuery({u"NUNEZ even"_s, {}, {}});
    EXPECT_EQ(names(filter), QStringList{ada.name});
    filter.setQuery({u"long"_s, {}, {}});
    EXPECT_EQ(names(filter), QStringList{bo.name});
    EXPECT_TRUE(filter.isNarrowed());
    filter.setQuery({{}, u"evening"_s, {}});
    EXPECT_EQ(names(filter), QStringList{ada.name});
    filter.setQuery({{}, u"evening"_s, core::TouchStyle::sinking});
    EXPECT_EQ(names(filter), QStringList());
    filter.setQuery({{}, {}, core::TouchStyle::sinking});
    EXPECT_EQ(names(filter), QStringList{bo.name});
    filter.setQuery({});
    EXPECT_FALSE(filter.isNarrowed());
    filter.setShowArchived(true);
    EXPECT_EQ(names(filter), (QStringList{ada.name, bo.name, cy.name}));
}
