#pragma once

#include <QProxyStyle>

namespace ui {

/// Fusion with flat surfaces, one corner radius, roomy rows and a focus ring that is always plain
/// to see. Colours come from the palette alone, so that a scheme changes without a new style.
class LookStyle final : public QProxyStyle
{
    Q_OBJECT

public:
    LookStyle();

    int pixelMetric(
        PixelMetric metric, const QStyleOption *option, const QWidget *widget) const override;
    int styleHint(StyleHint hint, const QStyleOption *option, const QWidget *widget,
        QStyleHintReturn *data) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption *option, const QSize &size,
        const QWidget *widget) const override;
    QRect subElementRect(
        SubElement element, const QStyleOption *option, const QWidget *widget) const override;
    void drawPrimitive(PrimitiveElement element, const QStyleOption *option, QPainter *painter,
        const QWidget *widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex *option,
        QPainter *painter, const QWidget *widget) const override;
    void drawControl(ControlElement element, const QStyleOption *option, QPainter *painter,
        const QWidget *widget) const override;
};

} // namespace ui
