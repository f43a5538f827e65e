#include "ui/print/plan_preview.h"

#include "core/domain/storage_error.h"
#include "ui/look/file_dialogs.h"
#include "ui/look/form_parts.h"
#include "ui/look/scrolling_room.h"
#include "ui/print/sheet_painter.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPushButton>
#include <QSettings>
#include <QShortcut>
#include <QStandardPaths>
#include <QToolButton>

namespace ui {

namespace {

const QString kPaperKey = QStringLiteral("print/paper");
const QString kFolderKey = QStringLiteral("print/folder");

PaperSize rememberedPaper()
{
    return QSettings().value(kPaperKey, int(usualPaper())).toInt() == int(PaperSize::letter)
        ? PaperSize::letter
        : PaperSize::a4;
}

} // namespace

PlanPreview::PlanPreview(core::WeekSheet sheet, QWidget *parent)
    : QDialog(parent)
    , m_sheet(std::move(sheet))
    , m_laidOut(layOut(m_sheet, rememberedPaper()))
    , m_printer(QPrinter::HighResolution)
    , m_preview(new QPrintPreviewWidget(&m_printer, this))
    , m_message(plainWords())
{
    setWindowTitle(tr("Print the week of %1").arg(m_sheet.lifter));
    m_printer.setPageSize(pageSize(m_laidOut.paper));
    m_printer.setFullPage(true);
    m_message->hide();
    m_preview->setAccessibleName(tr("Preview of the printed week"));
    setLayout(columnLayout({makeBar(), m_message, {m_preview, 1}}));
    sizeToScreen(*this, {820, 900});

    connect(m_preview, &QPrintPreviewWidget::paintRequested, this, [this](QPrinter *printer) {
        if (!print(*printer, m_laidOut))
            say(tr("The preview could not be drawn."));
    });
    connect(m_preview, &QPrintPreviewWidget::previewChanged, this, [this] {
        m_pages->setText(
            tr("Page %1 of %2").arg(m_preview->currentPage()).arg(m_preview->pageCount()));
    });
    m_preview->fitInView();
}

QWidget *PlanPreview::makeBar()
{
    auto *paperLabel = new QLabel(tr("&Paper"));
    m_papers = new QComboBox;
    m_papers->addItems({tr("A4"), tr("Letter")});
    m_papers->setCurrentIndex(int(m_laidOut.paper));
    paperLabel->setBuddy(m_papers);
    connect(m_papers, &QComboBox::activated, this,
        [this](int index) { choosePaper(PaperSize(index)); });

    const auto tool = [&](const QString &text, const QString &name, const QKeySequence &keys,
                          auto act) {
        auto *button = new QToolButton;
        button->setText(text);
        button->setAccessibleName(name);
        button->setToolTip(keys.isEmpty()
                ? name
                : tr("%1 (%2)").arg(name, keys.toString(QKeySequence::NativeText)));
        button->setShortcut(keys);
        connect(button, &QToolButton::clicked, this, act);
        return button;
    };
    auto *pdf = new QPushButton(tr("&Save as PDF…"));
    auto *paper = new QPushButton(tr("P&rint…"), this); // a default button knows its dialog
    paper->setDefault(true);
    auto *close = new QPushButton(tr("&Close"));
    connect(pdf, &QPushButton::clicked, this, &PlanPreview::askForPdf);
    connect(paper, &QPushButton::clicked, this, &PlanPreview::askForPrinter);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    m_pages = new QLabel;
    return boxed(rowLayout({paperLabel, m_papers, space::group,
        tool(QStringLiteral("‹"), tr("Previous page"), Qt::ALT | Qt::Key_Left,
            [this] { showPage(m_preview->currentPage() - 1); }),
        m_pages,
        tool(QStringLiteral("›"), tr("Next page"), Qt::ALT | Qt::Key_Right,
            [this] { showPage(m_preview->currentPage() + 1); }),
        space::group,
        tool(QStringLiteral("+"), tr("Zoom in"), QKeySequence::ZoomIn,
            [this] { m_preview->zoomIn(); }),
        tool(QStringLiteral("−"), tr("Zoom out"), QKeySequence::ZoomOut,
            [this] { m_preview->zoomOut(); }),
        tool(tr("Width"), tr("Fit the width"), Qt::CTRL | Qt::Key_1,
            [this] { m_preview->fitToWidth(); }),
        tool(tr("Whole page"), tr("Fit the whole page"), Qt::CTRL | Qt::Key_0,
            [this] { m_preview->fitInView(); }),
        Stretch{1}, pdf, paper, close}));
}

void PlanPreview::choosePaper(PaperSize paper)
{
    m_laidOut = layOut(m_sheet, paper);
    m_papers->setCurrentIndex(int(paper));
    QSettings().setValue(kPaperKey, int(paper));
    m_printer.setPageSize(pageSize(paper));
    m_preview->updatePreview();
}

void PlanPreview::showPage(int page)
{
    m_preview->setCurrentPage(std::clamp(page, 1, std::max(1, m_preview->pageCount())));
    m_pages->setText(tr("Page %1 of %2").arg(m_preview->currentPage()).arg(m_preview->pageCount()));
}

void PlanPreview::say(const QString &words)
{
    m_message->setText(words);
    m_message->show();
}

bool PlanPreview::mayHandOver()
{
    if (!m_gate)
        return true;
    std::optional<core::WeekSheet> sheet = m_gate();
    if (!sheet)
        return false;
    if (*sheet != m_sheet) {
        m_sheet = std::move(*sheet);
        choosePaper(m_laidOut.paper);
    }
    return true;
}

bool PlanPreview::savePdf(const QString &path)
try {
    if (!mayHandOver())
        return false;
    writePlanPdf(path, m_laidOut);
    Q_EMIT handedOver();
    say(tr("Saved as %1.").arg(QDir::toNativeSeparators(path)));
    return true;
} catch (const core::StorageError &e) {
    say(e.words());
    return false;
}

void PlanPreview::askForPdf()
{
    if (!mayHandOver())
        return;
    const QString folder =
        QSettings()
            .value(kFolderKey, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
            .toString();
    QString path = askForFileToWrite(this, tr("Save the week as PDF"),
        QFileInfo(folder, suggestedPdfName(m_sheet)).filePath(), tr("PDF (*.pdf)"));
    if (path.isEmpty())
        return;
    if (QFileInfo(path).suffix().isEmpty())
        path += QStringLiteral(".pdf");
    if (savePdf(path))
        QSettings().setValue(kFolderKey, QFileInfo(path).absolutePath());
}

void PlanPreview::askForPrinter()
{
    if (!mayHandOver())
        return;
    QPrintDialog dialog(&m_printer, this);
    dialog.setWindowTitle(tr("Print the week"));
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (print(m_printer, m_laidOut)) {
        Q_EMIT handedOver();
        accept();
        return;
    }
    say(tr("The printer took nothing. Is it on and connected? A PDF can be saved instead."));
}

QString suggestedPdfName(const core::WeekSheet &sheet)
{
    return core::weekFileName(sheet) + QStringLiteral(".pdf");
}

} // namespace ui
