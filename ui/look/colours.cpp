#include "ui/look/colours.h"

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

// Okabe & Ito (2008), the named hues.
constexpr QRgb kOrange = 0xffe69f00;
constexpr QRgb kSkyBlue = 0xff56b4e9;
constexpr QRgb kBluishGreen = 0xff009e73;
constexpr QRgb kBlue = 0xff0072b2;
constexpr QRgb kVermillion = 0xffd55e00;
constexpr QRgb kReddishPurple = 0xffcc79a7;

Colours lightColours()
{
    Colours c;
    c.window = QColor(0xf3f4f6);
    c.surface = QColor(0xffffff);
    c.sunken = QColor(0xe9ecef);
    c.line = QColor(0xd5d9df);
    c.controlBorder = QColor(0x7d8590);
    c.text = QColor(0x1b1f24);
    c.mutedText = QColor(0x545d68);
    c.accent = QColor(0x0069a5); // blue, darkened for text on the window's grey
    c.onAccent = QColor(0xffffff);
    c.chosen = QColor(0xd3e6f3);
    c.onChosen = c.text;
    c.cautionGround = QColor(0xfff2d6);
    c.cautionText = QColor(0x5a3c00);
    c.dangerGround = QColor(0xfbe3da);
    c.dangerText = QColor(0x8a2c00);
    c.goodText = QColor(0x00694d);

    c.softTouch = QColor(kBlue);
    c.sinkingTouch = QColor(kVermillion);
    c.bothTouches = QColor(kBluishGreen);
    c.undecidedTouch = QColor(0x6b7480);

    c.chartEstimate = QColor(kBlue);
    c.chartFiltered = QColor(kVermillion);
    c.chartReading = QColor(0x545d68);
    c.chartTonnage = QColor(kBluishGreen);
    c.chartLifts = QColor(kReddishPurple);
    c.chartMissed = QColor(kVermillion);
    c.chartGrid = QColor(0xe1e4e8);
    return c;
}

Colours darkColours()
{
    Colours c;
    c.window = QColor(0x181b1f);
    c.surface = QColor(0x22262b);
    c.sunken = QColor(0x121417);
    c.line = QColor(0x3a4048);
    c.controlBorder = QColor(0x858e99);
    c.text = QColor(0xe8eaed);
    c.mutedText = QColor(0xaeb6c0);
    c.accent = QColor(kSkyBlue);
    c.onAccent = QColor(0x0c1317);
    c.chosen = QColor(0x1f4257);
    c.onChosen = QColor(0xffffff);
    c.cautionGround = QColor(0x3b2e12);
    c.cautionText = QColor(0xffd98a);
    c.dangerGround = QColor(0x42221a);
    c.dangerText = QColor(0xffbda3);
    c.goodText = QColor(0x4fcfa6);

    c.softTouch = QColor(kSkyBlue);
    c.sinkingTouch = QColor(kOrange);
    c.bothTouches = QColor(0x2bb88c); // bluish green, lightened for the chosen row
    c.undecidedTouch = QColor(0xa3abb5);

    c.chartEstimate = QColor(kSkyBlue);
    c.chartFiltered = QColor(kOrange);
    c.chartReading = QColor(0xaeb6c0);
    c.chartTonnage = QColor(0x2bb88c);
    c.chartLifts = QColor(kReddishPurple);
    c.chartMissed = QColor(0xf0762a); // vermillion, lightened
    c.chartGrid = QColor(0x343a42);
    return c;
}

double relativeLuminance(const QColor &colour)
{
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF())
        + 0.0722 * linear(colour.blueF());
}

} // namespace

const Colours &colours(Scheme scheme)
{
    static const Colours light = lightColours();
    static const Colours dark = darkColours();
    return scheme == Scheme::dark ? dark : light;
}

Scheme schemeOf(const QPalette &palette)
{
    const bool lightOnDark = palette.color(QPalette::WindowText).lightness()
        > palette.color(QPalette::Window).lightness();
    return lightOnDark ? Scheme::dark : Scheme::light;
}

const Colours &colours(const QPalette &palette)
{
    return colours(schemeOf(palette));
}

QColor markColour(const Colours &colours, core::TouchStyle style)
{
    return style == core::TouchStyle::soft   ? colours.softTouch
        : style == core::TouchStyle::sinking ? colours.sinkingTouch
                                             : colours.undecidedTouch;
}

QColor markColour(const Colours &colours, core::Serves serves)
{
    return serves == core::Serves::soft   ? colours.softTouch
        : serves == core::Serves::sinking ? colours.sinkingTouch
                                          : colours.bothTouches;
}

QColor bandOf(QColor line)
{
    line.setAlphaF(0.18F);
    return line;
}

double contrastRatio(const QColor &a, const QColor &b)
{
    const auto [low, high] = std::minmax({relativeLuminance(a), relativeLuminance(b)});
    return (high + 0.05) / (low + 0.05);
}

} // namespace ui
