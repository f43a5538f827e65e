#include "tests/ui/translation/visible_text.h"

#include "tests/ui/translation/pseudo_translator.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QPainter>
#include <QStandardItemModel>
#include <QTableView>
#include <QVBoxLayout>
#include <gmock/gmock.h>

// The search for words without a translation finds those that are planted.

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::pseudo;

namespace {

std::vector<std::string> latin(QWidget &widget, const QStringList &data = {})
{
    std::vector<std::string> found;
    for (const QString &text : tests::latinText(tests::visibleText(widget), data))
        found.push_back(text.toStdString());
    return found;
}

class Painted final : public QWidget
{
public:
    QString words;

private:
    void paintEvent(QPaintEvent *) override { QPainter(this).drawText(rect(), 0, words); }
};

} // namespace

TEST(Pseudo, KeepsWhatIsNoWord)
{
    EXPECT_EQ(pseudo(QStringLiteral("Abz")), QStringLiteral("Абщ"));
    EXPECT_EQ(pseudo(QStringLiteral("%L1 %n %2%")), QStringLiteral("%L1 %n %2%"));
    EXPECT_EQ(pseudo(QStringLiteral("<b>a</b>\n&amp; &b")), QStringLiteral("<b>а</b>\n&amp; &б"));
    EXPECT_EQ(pseudo(QStringLiteral("ddd d MMM")), QStringLiteral("ddd d MMM"));
}

TEST(Pseudo, TranslatesOnlyWhatLupdateFilesUnderTheContext)
{
    const tests::PseudoTranslator translator;
    EXPECT_EQ(translator.translate("ui::MainWindow", "&File"), pseudo(QStringLiteral("&File")));
    EXPECT_EQ(translator.translate("ui::LogPage", "&File"), QString());
    EXPECT_EQ(translator.translate("ui::MainWindow", "&Filet"), QString());
}

TEST(VisibleText, IsFoundInLabelsTipsAndActions)
{
    QWidget page;
    QLabel label(QStringLiteral("<b>щ</b>"), &page);
    label.setObjectName(QStringLiteral("name"));
    EXPECT_THAT(latin(page), IsEmpty()) << "neither names of objects nor markup are seen";
    label.setText(QStringLiteral("<b>left</b>"));
    label.setToolTip(QStringLiteral("tip"));
    label.setAccessibleName(QStringLiteral("heard"));
    page.addAction(new QAction(QStringLiteral("&do"), &page));
    EXPECT_THAT(latin(page),
        testing::IsSupersetOf({HasSubstr("text: left"), HasSubstr("toolTip: tip"),
            HasSubstr("accessibleName: heard"), HasSubstr("text: &do")}));
}

TEST(VisibleText, IsFoundWhereAWidgetPaintsIt)
{
    QWidget page;
    auto *painted = new Painted;
    (new QVBoxLayout(&page))->addWidget(painted);
    page.resize(200, 50);
    painted->words = QStringLiteral("щ");
    EXPECT_THAT(latin(page), IsEmpty());
    painted->words = QStringLiteral("щ und щ");
    EXPECT_THAT(latin(page), ElementsAre(HasSubstr("und")));
}

TEST(VisibleText, IsFoundInModelsBelowTheScreen)
{
    QTableView view;
    QStandardItemModel model(200, 1);
    view.setModel(&model);
    model.setVerticalHeaderLabels(QStringList(200, QStringLiteral("1")));
    model.setHorizontalHeaderLabels({QStringLiteral("щ")});
    QComboBox box(&view);
    EXPECT_THAT(latin(view), IsEmpty());
    model.setData(model.index(150, 0), QStringLiteral("left"));
    model.setData(model.index(1, 0), QStringLiteral("said"), Qt::AccessibleTextRole);
    box.addItem(QStringLiteral("item"));
    EXPECT_THAT(latin(view),
        testing::IsSupersetOf({HasSubstr("left"), HasSubstr("said"), HasSubstr("item")}));
}

TEST(VisibleText, LeavesOutSymbolsAndDataAlone)
{
    QLabel label(QStringLiteral("3x5 100kg 8 lb (щ+N) feet_up"));
    EXPECT_THAT(latin(label, {QStringLiteral("feet_up")}), IsEmpty());
    label.setText(QStringLiteral("3x5 feet_up kgs"));
    EXPECT_FALSE(latin(label, {QStringLiteral("feet_up")}).empty());
}
