#include "ui/print/paper.h"

#include <QLocale>

namespace ui {

QPageSize pageSize(PaperSize paper)
{
    return QPageSize(paper == PaperSize::letter ? QPageSize::Letter : QPageSize::A4);
}

QSizeF sizeInTwips(PaperSize paper)
{
    return pageSize(paper).size(QPageSize::Point) * kTwipsPerPoint;
}

PaperSize usualPaper()
{
    switch (QLocale::system().territory()) {
    case QLocale::UnitedStates:
    case QLocale::Canada:
    case QLocale::Mexico:
    case QLocale::Philippines:
        return PaperSize::letter;
    default:
        return PaperSize::a4;
    }
}

} // namespace ui
