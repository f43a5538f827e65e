#include "ui/look/elided_tips.h"

#include <QApplication>
#include <QHelpEvent>
#include <QLabel>
#include <QListView>
#include <QStandardItemModel>
#include <QToolTip>
#include <gmock/gmock.h>

namespace {

const QString kHostile = QStringLiteral("<img src='/dev/zero'>");

QString tipOf(QWidget &widget, QPoint at)
{
    QToolTip::hideText();
    QHelpEvent asked(QEvent::ToolTip, at, widget.mapToGlobal(at));
    QApplication::sendEvent(&widget, &asked);
    return QToolTip::text();
}

} // namespace

TEST(PlainTips, NoTipIsTakenForHtmlSoThatNoFileIsRead)
{
    const ui::ElidedTips tips;
    QLabel label(QStringLiteral("short"));
    label.resize(200, 40);
    label.setToolTip(kHostile);
    label.show();
    EXPECT_FALSE(tipOf(label, {5, 5}).contains(QStringLiteral("<img")));
    EXPECT_TRUE(tipOf(label, {5, 5}).contains(QStringLiteral("&lt;img")));

    QStandardItemModel model;
    auto *row = new QStandardItem(QStringLiteral("Ada"));
    row->setToolTip(kHostile);
    model.appendRow(row);
    QListView list;
    list.setModel(&model);
    list.resize(200, 100);
    list.show();
    const QPoint at = list.visualRect(model.index(0, 0)).center();
    EXPECT_TRUE(tipOf(*list.viewport(), at).contains(QStringLiteral("&lt;img")));
}

TEST(PlainTips, PlainWordsStayAsTheyAre)
{
    const ui::ElidedTips tips;
    QLabel label(QStringLiteral("short"));
    label.resize(200, 40);
    label.setToolTip(QStringLiteral("5 < 6 and so on"));
    label.show();
    EXPECT_EQ(tipOf(label, {5, 5}), QStringLiteral("5 < 6 and so on"));
}
