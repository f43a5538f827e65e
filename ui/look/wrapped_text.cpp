#include "ui/look/wrapped_text.h"

#include <QTextLayout>
#include <cmath>

namespace ui {

QTextOption wrappedTextOption()
{
    QTextOption option(Qt::AlignLeft | Qt::AlignTop);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    return option;
}

QSize wrappedTextSize(const QString &text, const QFont &font, int width)
{
    QTextLayout layout(QString(text).replace(u'\n', QChar::LineSeparator), font);
    layout.setTextOption(wrappedTextOption());
    layout.beginLayout();
    qreal height = 0.0;
    qreal widest = 0.0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        height += line.height();
        widest = std::max(widest, line.naturalTextWidth());
    }
    layout.endLayout();
    return {int(std::ceil(widest)), int(std::ceil(height))};
}

} // namespace ui
