#include "ui/lifters/lifter_search.h"

#include <QComboBox>
#include <QLineEdit>
#include <QTest>
#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using testing::ElementsAre;

namespace {

class LifterSearchTest : public testing::Test
{
protected:
    LifterSearchTest()
    {
        search.setGroups({u"evening"_s, u"morning"_s});
        QObject::connect(&search, &ui::LifterSearch::queryChanged,
            [this](const ui::LifterQuery &query) { told.push_back(query); });
        QObject::connect(&search, &ui::LifterSearch::left, [this] { ++left; });
    }

    ui::LifterSearch search;
    QLineEdit *words = search.findChild<QLineEdit *>(u"search"_s);
    QComboBox *groups = search.findChild<QComboBox *>(u"groups"_s);
    QComboBox *styles = search.findChild<QComboBox *>(u"styles"_s);
    std::vector<ui::LifterQuery> told;
    int left = 0;
};

} // namespace

TEST_F(LifterSearchTest, TellsWhatIsLookedForAsItChanges)
{
    QTest::keyClick(words, 'a');
    groups->setCurrentText(u"morning"_s);
    styles->setCurrentIndex(styles->findData(int(core::TouchStyle::sinking)));
    EXPECT_THAT(told,
        ElementsAre(ui::LifterQuery{u"a"_s, {}, {}}, ui::LifterQuery{u"a"_s, u"morning"_s, {}},
            ui::LifterQuery{u"a"_s, u"morning"_s, core::TouchStyle::sinking}));
    EXPECT_EQ(search.query(), told.back());
    search.clear();
    EXPECT_EQ(search.query(), ui::LifterQuery{});
    EXPECT_EQ(told.back(), ui::LifterQuery{});
}

TEST_F(LifterSearchTest, AGroupIsLookedForWhileItIsThere)
{
    groups->setCurrentText(u"morning"_s);
    told.clear();
    search.setGroups({u"late"_s, u"morning"_s});
    EXPECT_EQ(search.query().group, u"morning");
    EXPECT_TRUE(told.empty());
    search.setGroups({u"late"_s});
    EXPECT_THAT(told, ElementsAre(ui::LifterQuery{}));
}

TEST_F(LifterSearchTest, GroupsAreOfferedOnlyWhereThereAreSome)
{
    EXPECT_FALSE(groups->isHidden());
    search.setGroups({});
    EXPECT_TRUE(groups->isHidden());
}

TEST_F(LifterSearchTest, EscapeEmptiesTheWordsAndDownOrEnterLeave)
{
    QTest::keyClicks(words, u"ada"_s);
    QTest::keyClick(words, Qt::Key_Escape);
    EXPECT_EQ(search.query(), ui::LifterQuery{});
    EXPECT_EQ(left, 0);
    QTest::keyClick(words, Qt::Key_Down);
    QTest::keyClick(words, Qt::Key_Return);
    QTest::keyClick(words, Qt::Key_Enter);
    EXPECT_EQ(left, 3);
}
