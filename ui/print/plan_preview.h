#pragma once

#include "core/loads/week_sheet.h"
#include "ui/print/sheet_layout.h"

#include <QDialog>
#include <QPrinter>
#include <functional>
#include <optional>

class QComboBox;
class QLabel;
class QPrintPreviewWidget;

namespace ui {

/// The printed week before it is printed: paper, pages and zoom, then PDF or printer.
class PlanPreview : public QDialog
{
    Q_OBJECT

public:
    explicit PlanPreview(core::WeekSheet sheet, QWidget *parent = nullptr);

    /// Asked before the week is printed or saved, which the preview itself may show freely: what is
    /// to be printed, or nothing where it is not.
    using Gate = std::function<std::optional<core::WeekSheet>()>;
    void setGate(Gate gate) { m_gate = std::move(gate); }

    void choosePaper(PaperSize paper);
    /// False when the file could not be written; the dialog then says why.
    bool savePdf(const QString &path);

Q_SIGNALS:
    /// The week was printed, or stands in a file: the lifter has it now.
    void handedOver();

private:
    [[nodiscard]] QWidget *makeBar();
    [[nodiscard]] bool mayHandOver();
    void askForPdf();
    void askForPrinter();
    void showPage(int page);
    void say(const QString &words);

    Gate m_gate;
    core::WeekSheet m_sheet;
    LaidOutSheet m_laidOut; ///< on the paper chosen
    QPrinter m_printer;
    QPrintPreviewWidget *m_preview;
    QComboBox *m_papers = nullptr;
    QLabel *m_pages = nullptr;
    QLabel *m_message;
};

/// The sheet of the week in a file name: letters, digits, spaces and - only.
[[nodiscard]] QString suggestedPdfName(const core::WeekSheet &sheet);

} // namespace ui
