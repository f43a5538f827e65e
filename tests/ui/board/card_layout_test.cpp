#include "ui/board/card_layout.h"

#include "ui/look/wrapped_text.h"

#include <gmock/gmock.h>

using namespace ui;

namespace {

CardView fullCard()
{
    CardView card;
    card.name = QStringLiteral("Off-chest pause bench with a rather long name");
    card.lines = {{QStringLiteral("1x1 @8"), QStringLiteral("142.5 kg"), QStringLiteral("RPE 8")},
        {QStringLiteral("10x10 102.25kg"), QStringLiteral("102.5 kg"),
            QStringLiteral("RPE 7.5\u20138.5")}};
    card.note = QStringLiteral("elbows under the bar");
    card.caution = QStringLiteral("no load: too few sets");
    return card;
}

} // namespace

TEST(CardLayout, NothingIsCutOffOrOverlapsAtAnyWidth)
{
    const QFont body;
    for (const int width : {110, 118, 150, 200, 320}) {
        const CardLayout layout = cardLayout(fullCard(), width, body);
        const QRect card(0, 0, width, layout.height);
        for (size_t i = 0; i < layout.texts.size(); ++i) {
            const CardText &text = layout.texts[i];
            EXPECT_TRUE(card.contains(text.rect)) << width << ' ' << text.text.toStdString();
            const QSize needed = wrappedTextSize(text.text, text.font, text.rect.width());
            EXPECT_LE(needed.height(), text.rect.height()) << text.text.toStdString();
            EXPECT_LE(needed.width(), text.rect.width()) << text.text.toStdString();
            for (size_t j = 0; j < i; ++j)
                EXPECT_FALSE(text.rect.intersects(layout.texts[j].rect))
                    << width << ": " << text.text.toStdString() << " over "
                    << layout.texts[j].text.toStdString();
        }
        EXPECT_TRUE(card.contains(layout.mark));
        EXPECT_TRUE(card.contains(layout.setsField));
    }
}

TEST(CardLayout, ANameIsWrittenSmallerBeforeAWordOfItBreaks)
{
    CardView card = fullCard();
    card.name = QStringLiteral("Competition bench");
    const QFont strong = cardLayout(card, 320, {}).texts.front().font;
    const int word = QFontMetrics(strong).horizontalAdvance(QStringLiteral("Competition"));
    const int frame = 320 - cardLayout(card, 320, {}).texts.front().rect.width();
    const CardText fits = cardLayout(card, word + frame + 1, {}).texts.front();
    EXPECT_EQ(fits.font, strong);
    const CardText tight = cardLayout(card, int(0.9 * word) + frame, {}).texts.front();
    EXPECT_LT(QFontMetrics(tight.font).horizontalAdvance(QStringLiteral("Competition")),
        tight.rect.width() + 1);
    const CardText least = cardLayout(card, int(0.5 * word) + frame, {}).texts.front();
    EXPECT_NEAR(least.font.pointSizeF(), 0.8 * strong.pointSizeF(), 0.01)
        << "small enough to be read";
}

TEST(CardLayout, SetsLoadAndEffortShareARowWhereThereIsRoom)
{
    CardView card = fullCard();
    card.lines.resize(1);
    const CardLayout wide = cardLayout(card, 400, {});
    EXPECT_EQ(wide.texts[1].rect.top(), wide.texts[2].rect.top());
    EXPECT_LT(wide.height, cardLayout(card, 110, {}).height);
}

TEST(CardLayout, ACardWithoutSetsSaysWhatToType)
{
    CardView card;
    card.name = QStringLiteral("Bench");
    const CardLayout layout = cardLayout(card, 120, {});
    ASSERT_EQ(layout.texts.size(), 2u);
    EXPECT_EQ(layout.texts[1].role, CardText::Role::prompt);
    EXPECT_GT(layout.setsField.height(), 10);
}

TEST(WrappedText, BreaksBetweenWordsAndInsideOneOnlyWhenItMust)
{
    const QFont font;
    const int word = wrappedTextSize(QStringLiteral("Competition"), font, 10000).width();
    const int row = wrappedTextSize(QStringLiteral("Competition"), font, 10000).height();
    const QString two = QStringLiteral("Competition Competition");
    EXPECT_EQ(wrappedTextSize(two, font, word + 2).height(), 2 * row);
    EXPECT_EQ(wrappedTextSize(two, font, 2 * word - 2).height(), 2 * row);
    EXPECT_EQ(wrappedTextSize(QStringLiteral("Competition"), font, word - 2).height(), 2 * row);
    EXPECT_EQ(wrappedTextSize(QStringLiteral("a\nb"), font, 10000).height(), 2 * row);
}
