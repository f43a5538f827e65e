#include "tests/ui/fit/misfits.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableWidget>
#include <gmock/gmock.h>

using testing::Contains;
using testing::IsEmpty;
using testing::ResultOf;

namespace tests {

namespace {

auto contains(const char *words)
{
    return Contains(ResultOf(
        [words](const QString &found) { return found.contains(QLatin1String(words)); }, true));
}

} // namespace

TEST(Misfits, AreNoneWhereAllHasItsRoom)
{
    QWidget window;
    auto *row = new QHBoxLayout(&window);
    row->addWidget(new QLabel(QStringLiteral("A label")));
    row->addWidget(new QPushButton(QStringLiteral("Open…")));
    window.show();
    EXPECT_THAT(misfits(window), IsEmpty());
}

TEST(Misfits, AreTextsThatAreCut)
{
    QWidget window;
    QLabel label(QStringLiteral("More than there is room for"), &window);
    label.setGeometry(0, 0, 40, 20);
    QCheckBox button(QStringLiteral("Far too narrow for this"), &window);
    button.setGeometry(0, 30, 60, 30);
    QLabel flat(QStringLiteral("Flat"), &window);
    flat.setGeometry(0, 70, 100, 5);
    window.resize(200, 100);
    window.show();
    EXPECT_THAT(misfits(window), contains("QLabel in QWidget: cuts \"More"));
    EXPECT_THAT(misfits(window), contains("QCheckBox in QWidget: cuts \"Far"));
    EXPECT_THAT(misfits(window), contains("cuts \"Flat"));
}

TEST(Misfits, AreElidedTextsWithoutATip)
{
    QTableWidget table(1, 1);
    table.horizontalHeader()->hide();
    table.setItem(0, 0, new QTableWidgetItem(QStringLiteral("More than this cell can hold")));
    table.setColumnWidth(0, 60);
    table.show();
    EXPECT_THAT(misfits(table), contains("elides"));
    table.item(0, 0)->setToolTip(table.item(0, 0)->text());
    EXPECT_THAT(misfits(table), IsEmpty());
}

TEST(Misfits, AreWidgetsOutsideAndPagesOutOfReach)
{
    QWidget window;
    window.resize(100, 100);
    QWidget outside(&window);
    outside.setGeometry(90, 0, 20, 20);
    window.show();
    EXPECT_THAT(misfits(window), contains("outside"));

    QScrollArea area;
    auto *page = new QWidget;
    page->setFixedSize(500, 500);
    area.setWidget(page);
    area.resize(200, 200);
    area.show();
    EXPECT_THAT(misfits(area), IsEmpty());
    area.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    EXPECT_THAT(misfits(area), contains("reached"));
}

TEST(Misfits, AreWidgetsOverEachOther)
{
    QWidget window;
    auto *row = new QHBoxLayout(&window);
    auto *left = new QLabel(QStringLiteral("Left"));
    row->addWidget(left);
    row->addWidget(new QLabel(QStringLiteral("Right")));
    window.show();
    EXPECT_THAT(misfits(window), IsEmpty());
    left->setGeometry(left->geometry().adjusted(0, 0, 20, 0));
    EXPECT_THAT(misfits(window), contains("lies over"));
}

} // namespace tests
