#include "ui/print/sheet_painter.h"

#include "core/domain/storage_error.h"
#include "ui/look/text.h"

#include <QDir>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>

namespace ui {

namespace {

const QColor kShade(0xe6e6e6);
const QColor kRule(0x9a9a9a);

[[noreturn]] void refuse(const QString &path, const QString &reason)
{
    throw core::StorageError(
        Text::tr("The plan could not be written to %1: %2. Choose another folder, or free "
                 "space on the disk, and try again.")
            .arg(QDir::toNativeSeparators(path), reason));
}

} // namespace

void paint(QPainter &painter, const SheetPage &page)
{
    for (const QRectF &shade : page.shades)
        painter.fillRect(shade, kShade);
    painter.setPen(QPen(kRule, 0.5 * kTwipsPerPoint));
    for (const QLineF &rule : page.rules)
        painter.drawLine(rule);
    painter.setPen(QPen(Qt::black, 0.6 * kTwipsPerPoint));
    painter.setBrush(Qt::NoBrush);
    for (const QRectF &box : page.boxes)
        painter.drawRect(box);
    for (const SheetText &text : page.texts) {
        painter.setFont(sheetFont(text.type));
        painter.drawText(
            text.box, int(text.align) | Qt::TextSingleLine | Qt::TextDontClip, text.text);
    }
}

bool print(QPrinter &printer, const LaidOutSheet &sheet)
{
    printer.setFullPage(true);
    printer.setPageOrientation(QPageLayout::Portrait);
    printer.setPageSize(pageSize(sheet.paper));
    QPainter painter;
    if (!painter.begin(&printer))
        return false;
    const double scale = double(printer.resolution()) / kTwipsPerInch;
    bool first = true;
    for (const SheetPage &page : sheet.pages) {
        if (!first && !printer.newPage())
            return false;
        first = false;
        painter.resetTransform();
        painter.scale(scale, scale);
        paint(painter, page);
    }
    return painter.end();
}

void writePlanPdf(const QString &path, const LaidOutSheet &sheet)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        refuse(path, file.errorString());
    {
        QPdfWriter writer(&file);
        writer.setResolution(kTwipsPerInch);
        writer.setPageSize(pageSize(sheet.paper));
        writer.setPageMargins({});
        writer.setTitle(sheet.title);
        writer.setCreator(QStringLiteral("Benchwright"));
        QPainter painter(&writer);
        bool first = true;
        for (const SheetPage &page : sheet.pages) {
            if (!first)
                writer.newPage();
            first = false;
            paint(painter, page);
        }
    }
    if (!file.commit())
        refuse(path, file.errorString());
}

} // namespace ui
