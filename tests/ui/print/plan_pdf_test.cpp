#include "core/domain/storage_error.h"
#include "tests/support/roster_fixture.h"
#include "tests/ui/print/sample_sheet.h"
#include "ui/print/plan_preview.h"
#include "ui/print/sheet_painter.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPrintPreviewWidget>
#include <QProcess>
#include <QTest>
#include <gmock/gmock.h>

using namespace ui;
using testing::HasSubstr;

namespace {

/// Output of one of the poppler tools on a file.
std::string run(const QString &tool, const QStringList &arguments)
{
    QProcess process;
    process.start(tool, arguments);
    EXPECT_TRUE(process.waitForFinished()) << tool.toStdString() << " of poppler-utils is needed";
    return process.readAllStandardOutput().toStdString();
}

class PlanPdf : public testing::Test
{
protected:
    QString path(const char *name) const { return folder.path(QString::fromUtf8(name)); }
    PrivateFolder folder;
};

} // namespace

TEST_F(PlanPdf, HoldsNameLoadsPlatesAndCautionsAsText)
{
    writePlanPdf(path("plan.pdf"), layOut(sample::sheet(2, 2, 3), PaperSize::a4));
    const std::string text = run(QStringLiteral("pdftotext"),
        {QStringLiteral("-layout"), path("plan.pdf"), QStringLiteral("-")});
    for (const char *words : {"Ada Example", "4 May to 10 May 2026", "Off-chest pause bench",
             "122.5", "2 x 25 + 1.25", "@8", "Use a spotter, or safeties set just below the chest.",
             "Stop at sharp pain.", "Page 1 of 1"})
        EXPECT_THAT(text, HasSubstr(words));
}

TEST_F(PlanPdf, IsOnThePaperAskedFor)
{
    writePlanPdf(path("a4.pdf"), layOut(sample::sheet(1, 1, 1), PaperSize::a4));
    writePlanPdf(path("letter.pdf"), layOut(sample::sheet(7, 4, 5), PaperSize::letter));
    // ISO 216: 210 x 297 mm = 595.28 x 841.89 pt; ANSI/ASME Y14.1: 8.5 x 11 in = 612 x 792 pt.
    EXPECT_THAT(run(QStringLiteral("pdfinfo"), {path("a4.pdf")}), HasSubstr("595 x 842 pts (A4)"));
    const std::string letter = run(QStringLiteral("pdfinfo"), {path("letter.pdf")});
    EXPECT_THAT(letter, HasSubstr("612 x 792 pts (letter)"));
    const size_t pages = layOut(sample::sheet(7, 4, 5), PaperSize::letter).pages.size();
    EXPECT_THAT(letter, testing::ContainsRegex("Pages: +" + std::to_string(pages)));
    EXPECT_THAT(letter, HasSubstr("Plan of Ada Example, 4 May to 10 May 2026"));
}

TEST_F(PlanPdf, AFolderThatIsNotThereIsNamedWithTheRemedy)
{
    try {
        writePlanPdf(path("nowhere/plan.pdf"), layOut(sample::sheet(1, 1, 1), PaperSize::a4));
        FAIL() << "no error";
    } catch (const core::StorageError &e) {
        EXPECT_THAT(e.words().toStdString(), HasSubstr("nowhere/plan.pdf"));
        EXPECT_THAT(e.words().toStdString(), HasSubstr("Choose another folder"));
    }
}

TEST_F(PlanPdf, PreviewShowsEveryPageOnThePaperChosen)
{
    PlanPreview preview(sample::sheet(7, 4, 5));
    preview.choosePaper(PaperSize::letter);
    preview.show();
    const auto *pages = preview.findChild<QPrintPreviewWidget *>();
    ASSERT_NE(pages, nullptr);
    EXPECT_EQ(
        pages->pageCount(), int(layOut(sample::sheet(7, 4, 5), PaperSize::letter).pages.size()));
    EXPECT_EQ(preview.findChild<QComboBox *>()->currentText(), u"Letter");
    EXPECT_TRUE(preview.savePdf(path("preview.pdf")));
    EXPECT_TRUE(QFile::exists(path("preview.pdf")));
}

TEST_F(PlanPdf, WhatIsPrintedGoesThroughTheGateAndTheHandingOverIsTold)
{
    PlanPreview preview(sample::sheet(1, 1, 1));
    int told = 0;
    QObject::connect(&preview, &PlanPreview::handedOver, &preview, [&told] { ++told; });
    bool isOpen = false;
    preview.setGate([&isOpen]() -> std::optional<core::WeekSheet> {
        return isOpen ? std::optional(sample::sheet(7, 4, 5)) : std::nullopt;
    });
    preview.choosePaper(PaperSize::a4);
    preview.show();
    EXPECT_FALSE(preview.savePdf(path("gate.pdf")));
    EXPECT_FALSE(QFile::exists(path("gate.pdf")));
    EXPECT_EQ(told, 0);
    isOpen = true;
    EXPECT_TRUE(preview.savePdf(path("gate.pdf")));
    EXPECT_EQ(told, 1);
    EXPECT_EQ(preview.findChild<QPrintPreviewWidget *>()->pageCount(),
        int(layOut(sample::sheet(7, 4, 5), PaperSize::a4).pages.size()))
        << "the sheet that the gate has given";
}

TEST_F(PlanPdf, PreviewSaysWhyAPdfCannotBeSaved)
{
    PlanPreview preview(sample::sheet(1, 1, 1));
    preview.show();
    EXPECT_FALSE(preview.savePdf(path("nowhere/plan.pdf")));
    bool said = false;
    for (const QLabel *label : preview.findChildren<QLabel *>())
        said |=
            label->isVisible() && label->text().contains(QStringLiteral("could not be written"));
    EXPECT_TRUE(said);
}

TEST(SuggestedPdfName, HoldsNothingThatAFileSystemRefuses)
{
    core::WeekSheet sheet = sample::sheet(0, 0, 0);
    sheet.lifter = QStringLiteral("../Ada: \"A/B\"*");
    EXPECT_EQ(suggestedPdfName(sheet), u"Ada A B - 4 May to 10 May 2026.pdf");
}
