#include "ui/print/sheet_type.h"

#include "ui/print/paper.h"

#include <QFontMetricsF>
#include <QTextLayout>

namespace ui {

QFont sheetFont(SheetType type)
{
    struct Look
    {
        double points;
        bool bold;
    };
    constexpr Look kLooks[] = {
        {17, true}, {11, false}, {10, true}, {9, true}, {8.5, false}, {7.5, false}, {10, true}};
    const Look &look = kLooks[size_t(type)];
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPixelSize(int(look.points * kTwipsPerPoint));
    font.setBold(look.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // No ligatures: "off" stays three letters, which a PDF reader finds.
    font.setStyleStrategy(QFont::PreferNoShaping);
    return font;
}

double lineHeight(SheetType type)
{
    return QFontMetricsF(sheetFont(type)).height();
}

double textWidth(const QString &text, SheetType type)
{
    return QFontMetricsF(sheetFont(type)).horizontalAdvance(text);
}

QStringList brokenLines(const QString &text, SheetType type, double width)
{
    QStringList lines;
    for (const QString &paragraph : text.split(u'\n', Qt::SkipEmptyParts)) {
        QTextLayout layout(paragraph, sheetFont(type));
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            lines << paragraph.mid(line.textStart(), line.textLength()).trimmed();
        }
        layout.endLayout();
    }
    return lines;
}

} // namespace ui
