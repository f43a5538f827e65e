#include "ui/look/metrics.h"

namespace ui {

QFont font(Type type, const QFont &body)
{
    QFont font = body;
    const auto scale = [&font](double factor) {
        if (font.pointSizeF() > 0)
            font.setPointSizeF(font.pointSizeF() * factor);
        else
            font.setPixelSize(int(font.pixelSize() * factor + 0.5));
    };
    switch (type) {
    case Type::small:
        scale(0.9);
        break;
    case Type::body:
        break;
    case Type::strong:
        font.setWeight(QFont::DemiBold);
        break;
    case Type::heading:
        scale(1.15);
        font.setWeight(QFont::DemiBold);
        break;
    case Type::title:
        scale(1.5);
        font.setWeight(QFont::DemiBold);
        break;
    }
    return font;
}

} // namespace ui
