#include "ui/look/colours.h"
#include "ui/look/theme.h"

#include <gmock/gmock.h>

#include <vector>

namespace {

using ui::Colours;
using ui::contrastRatio;
using ui::Scheme;

struct Pair
{
    const char *name;
    QColor front;
    QColor ground;
};

std::vector<Pair> textPairs(const Colours &c)
{
    return {{"text on window", c.text, c.window}, {"text on surface", c.text, c.surface},
        {"text on sunken", c.text, c.sunken}, {"muted on window", c.mutedText, c.window},
        {"muted on surface", c.mutedText, c.surface}, {"muted on sunken", c.mutedText, c.sunken},
        {"muted on chosen", c.mutedText, c.chosen}, {"accent on window", c.accent, c.window},
        {"accent on surface", c.accent, c.surface}, {"on accent", c.onAccent, c.accent},
        {"on chosen", c.onChosen, c.chosen}, {"caution", c.cautionText, c.cautionGround},
        {"danger", c.dangerText, c.dangerGround},
        {"danger text on surface", c.dangerText, c.surface},
        {"danger text on window", c.dangerText, c.window},
        {"caution text on surface", c.cautionText, c.surface},
        {"caution text on window", c.cautionText, c.window},
        {"good on surface", c.goodText, c.surface}, {"good on window", c.goodText, c.window}};
}

std::vector<Pair> markPairs(const Colours &c)
{
    std::vector<Pair> pairs;
    for (const auto &[name, mark] : {std::pair{"soft", c.softTouch}, {"sinking", c.sinkingTouch},
             {"both", c.bothTouches}, {"undecided", c.undecidedTouch},
             {"edge of a control", c.controlBorder}, {"focus", c.accent}})
        for (const QColor &ground : {c.window, c.surface})
            pairs.push_back({name, mark, ground});
    for (const QColor &mark : {c.softTouch, c.sinkingTouch, c.undecidedTouch})
        pairs.push_back({"mark in the chosen row", mark, c.chosen});
    for (const auto &[name, series] : {std::pair{"estimate", c.chartEstimate},
             {"filtered", c.chartFiltered}, {"reading", c.chartReading},
             {"tonnage", c.chartTonnage}, {"lifts", c.chartLifts}, {"missed", c.chartMissed}})
        pairs.push_back({name, series, c.surface});
    return pairs;
}

class InBothSchemes : public testing::TestWithParam<Scheme>
{
};

} // namespace

TEST(Contrast, FollowsTheFormulaOfWcag22)
{
    // W3C, WCAG 2.2: black on white is 21:1, a colour on itself 1:1.
    EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrastRatio(Qt::red, Qt::red), 1.0, 1e-9);
    // W3C, Understanding SC 1.4.3, technique G18: the greys #767676 and #777777 are the last to
    // pass and the first to fail 4.5:1 on white (common knowledge of the field; from memory).
    EXPECT_GE(contrastRatio(QColor(0x767676), Qt::white), 4.5);
    EXPECT_LT(contrastRatio(QColor(0x777777), Qt::white), 4.5);
    // By hand from the definition: red has luminance 0.2126, so (1.05) / (0.2126 + 0.05).
    EXPECT_NEAR(contrastRatio(Qt::white, QColor(255, 0, 0)), 1.05 / 0.2626, 1e-9);
}

// WCAG 2.2, SC 1.4.3 (AA): 4.5:1 for text.
TEST_P(InBothSchemes, EveryTextMeetsAaOnItsGround)
{
    for (const Pair &pair : textPairs(ui::colours(GetParam())))
        EXPECT_GE(contrastRatio(pair.front, pair.ground), 4.5) << pair.name;
}

// WCAG 2.2, SC 1.4.11 (AA): 3:1 for marks and the edges of controls.
TEST_P(InBothSchemes, EveryMarkMeetsAaOnItsGround)
{
    for (const Pair &pair : markPairs(ui::colours(GetParam())))
        EXPECT_GE(contrastRatio(pair.front, pair.ground), 3.0) << pair.name;
}

TEST_P(InBothSchemes, ThePaletteTellsItsScheme)
{
    const QPalette palette = ui::paletteFor(GetParam());
    EXPECT_EQ(ui::schemeOf(palette), GetParam());
    EXPECT_EQ(&ui::colours(palette), &ui::colours(GetParam()));
}

TEST_P(InBothSchemes, ThePaletteKeepsTextReadable)
{
    const QPalette p = ui::paletteFor(GetParam());
    for (const auto &[front, ground] : {std::pair{QPalette::WindowText, QPalette::Window},
             {QPalette::Text, QPalette::Base}, {QPalette::Text, QPalette::AlternateBase},
             {QPalette::PlaceholderText, QPalette::Base}, {QPalette::ButtonText, QPalette::Button},
             {QPalette::HighlightedText, QPalette::Highlight},
             {QPalette::ToolTipText, QPalette::ToolTipBase}, {QPalette::Link, QPalette::Base},
             {QPalette::BrightText, QPalette::Window}})
        EXPECT_GE(contrastRatio(p.color(front), p.color(ground)), 4.5)
            << int(front) << " on " << int(ground);
}

INSTANTIATE_TEST_SUITE_P(Schemes, InBothSchemes, testing::Values(Scheme::light, Scheme::dark));
