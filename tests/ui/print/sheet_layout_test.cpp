#include "tests/ui/print/sample_sheet.h"
#include "ui/print/sheet_layout.h"

#include <algorithm>
#include <gmock/gmock.h>

using namespace ui;

namespace {

constexpr double kRounding = 1.0; ///< twips; text measures are sums of rounded widths

bool overlap(const QRectF &a, const QRectF &b)
{
    const QRectF both = a & b;
    return both.width() > kRounding && both.height() > kRounding;
}

/// What the ink of a text covers.
QRectF inkOf(const SheetText &text)
{
    const double width = textWidth(text.text, text.type);
    QRectF ink(text.box.left(), text.box.top(), width, text.box.height());
    if (text.align & Qt::AlignRight)
        ink.moveRight(text.box.right());
    else if (text.align & Qt::AlignHCenter)
        ink.moveCenter(text.box.center());
    return ink;
}

/// Everything lies within the margins, no word leaves its box and none lies on another.
void expectSound(const std::vector<SheetPage> &pages, PaperSize paper)
{
    const QRectF area = QRectF(QPointF(0, 0), sizeInTwips(paper))
                            .adjusted(kSheetMargin, kSheetMargin, -kSheetMargin, -kSheetMargin)
                            .adjusted(-kRounding, -kRounding, kRounding, kRounding);
    for (const SheetPage &page : pages) {
        for (const QRectF &box : page.boxes)
            EXPECT_TRUE(area.contains(box));
        for (size_t i = 0; i < page.texts.size(); ++i) {
            const QRectF ink = inkOf(page.texts[i]);
            EXPECT_TRUE(area.contains(ink)) << page.texts[i].text.toStdString();
            EXPECT_LE(ink.width(), page.texts[i].box.width() + kRounding)
                << page.texts[i].text.toStdString();
            for (size_t j = i + 1; j < page.texts.size(); ++j)
                EXPECT_FALSE(overlap(ink, inkOf(page.texts[j])))
                    << page.texts[i].text.toStdString() << " / "
                    << page.texts[j].text.toStdString();
            for (const QRectF &box : page.boxes)
                EXPECT_FALSE(overlap(ink, box)) << page.texts[i].text.toStdString();
        }
    }
}

int count(const std::vector<SheetPage> &pages, const QString &words)
{
    int found = 0;
    for (const SheetPage &page : pages)
        found += int(std::count_if(page.texts.begin(), page.texts.end(),
            [&](const SheetText &text) { return text.text == words; }));
    return found;
}

QString allWords(const std::vector<SheetPage> &pages)
{
    QStringList words;
    for (const SheetPage &page : pages)
        for (const SheetText &text : page.texts)
            words << text.text;
    return words.join(u' ');
}

class SheetLayout : public testing::TestWithParam<PaperSize>
{
};

} // namespace

INSTANTIATE_TEST_SUITE_P(Papers, SheetLayout, testing::Values(PaperSize::a4, PaperSize::letter));

TEST_P(SheetLayout, AUsualWeekIsOnePage)
{
    const auto pages = layOut(sample::sheet(3, 3, 3), GetParam()).pages;
    EXPECT_EQ(pages.size(), 1U);
    expectSound(pages, GetParam());
}

TEST_P(SheetLayout, AnEmptyWeekSaysSo)
{
    const auto pages = layOut(sample::sheet(0, 0, 0), GetParam()).pages;
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_TRUE(allWords(pages).contains(QStringLiteral("No work is planned this week.")));
}

TEST_P(SheetLayout, EverySetHasItsLoadAndFourBoxes)
{
    const auto pages = layOut(sample::sheet(7, 4, 5), GetParam()).pages;
    EXPECT_GT(pages.size(), 1U);
    expectSound(pages, GetParam());
    EXPECT_EQ(count(pages, QStringLiteral("122.5")), 7 * 4 * 5);
    size_t boxes = 0;
    for (const SheetPage &page : pages)
        boxes += page.boxes.size();
    EXPECT_EQ(boxes, 7U * 4 * 5 * 4);
    EXPECT_EQ(count(pages, QStringLiteral("Page 1 of %1").arg(pages.size())), 1);
}

TEST_P(SheetLayout, WhatIsHeldBackOrLighterTodayIsNoLoadInBold)
{
    core::WeekSheet sheet = sample::sheet(1, 1, 3);
    core::SheetCard &card = sheet.days[0].cards[0];
    ASSERT_GE(card.sets.size(), 3u);
    card.sets[0].load = QStringLiteral("901");
    card.sets[0].plates = QStringLiteral("77");
    card.sets[0].values.withheld = QStringLiteral("it hurts");
    card.sets[1].load = QStringLiteral("902");
    card.sets[1].values.lighterKg = 100.0;
    card.sets[2].load = QStringLiteral("903");
    const std::vector<SheetPage> pages = layOut(sheet, GetParam()).pages;
    expectSound(pages, GetParam());
    for (const char *words : {"(901)", "(77)", "(902)"})
        EXPECT_GE(count(pages, QString::fromLatin1(words)), 1) << words;
    const auto inBold = [&](const QString &load) {
        return std::ranges::any_of(pages, [&](const SheetPage &page) {
            return std::ranges::any_of(page.texts, [&](const SheetText &text) {
                return text.text.contains(load) && text.type == SheetType::load;
            });
        });
    };
    EXPECT_FALSE(inBold(QStringLiteral("901")));
    EXPECT_FALSE(inBold(QStringLiteral("902")));
    EXPECT_TRUE(inBold(QStringLiteral("903")));
}

TEST_P(SheetLayout, ACardIsNotTornApartWhenItFitsOverleaf)
{
    for (int sets = 1; sets < 20; ++sets) {
        const auto pages = layOut(sample::sheet(4, 2, sets), GetParam()).pages;
        for (const SheetPage &page : pages) {
            const auto loads = std::count_if(page.texts.begin(), page.texts.end(),
                [](const SheetText &text) { return text.text == u"122.5"; });
            EXPECT_EQ(loads % sets, 0) << sets;
        }
    }
}

TEST_P(SheetLayout, ACardLongerThanAPageGoesOnUnderItsDay)
{
    const auto pages = layOut(sample::sheet(1, 1, 150), GetParam()).pages;
    EXPECT_GE(pages.size(), 3U);
    expectSound(pages, GetParam());
    EXPECT_EQ(count(pages, QStringLiteral("122.5")), 150);
    EXPECT_GE(count(pages, QStringLiteral("Wednesday 20 September, continued")), 2);
}

TEST_P(SheetLayout, LongNamesAndNotesAreWhole)
{
    core::WeekSheet sheet = sample::sheet(2, 2, 3);
    sheet.lifter =
        QStringLiteral("Wilhelmina-Theodora van den Example-Bergstrom ").repeated(3).trimmed();
    sheet.days[0].cards[0].variation = QString(120, u'Ж');
    sheet.days[0].cards[1].note =
        QStringLiteral("Breathe, settle, then lower evenly. ").repeated(200);
    sheet.days[1].cards[0].sets[0].plates =
        QStringLiteral("6 x 25 + 20 + 15 + 10 + 5 + 2.5 + 1.25 + 0.5 + 0.25");
    const auto pages = layOut(sheet, GetParam()).pages;
    expectSound(pages, GetParam());
    EXPECT_EQ(allWords(pages).count(QStringLiteral("Breathe")), 200);
    EXPECT_EQ(allWords(pages).count(u'Ж'), 120);
}

TEST(BrokenLines, BreakBetweenWordsAndInsideLongOnes)
{
    EXPECT_EQ(brokenLines(QStringLiteral("one\ntwo"), SheetType::body, 1e6),
        (QStringList{QStringLiteral("one"), QStringLiteral("two")}));
    EXPECT_TRUE(brokenLines({}, SheetType::body, 1000).isEmpty());
    for (const QString &line : brokenLines(QString(300, u'x'), SheetType::body, 2000))
        EXPECT_LE(textWidth(line, SheetType::body), 2000);
}
