#include "ui/look/metrics.h"

namespace ui {

QFont scaled(QFont font, double factor)
{
    if (font.pointSizeF() > 0)
        font.setPointSizeF(font.pointSizeF() * factor);
    else
        font.setPixelSize(int(font.pixelSize() * factor + 0.5));
    return font;
}

QFont font(Type type, const QFont &body)
{
    QFont font = body;
    switch (type) {
    case Type::small:
        font = scaled(font, 0.9);
        break;
    case Type::body:
        break;
    case Type::strong:
        font.setWeight(QFont::DemiBold);
        break;
    case Type::heading:
        font = scaled(font, 1.15);
        font.setWeight(QFont::DemiBold);
        break;
    case Type::title:
        font = scaled(font, 1.5);
        font.setWeight(QFont::DemiBold);
        break;
    }
    return font;
}

} // namespace ui
