#include "ui/returns/returns_dialog.h"

#include "core/domain/week.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/metrics.h"
#include "ui/returns/return_files.h"
#include "ui/returns/return_tree.h"
#include "ui/roster/open_roster.h"

#include <QDialogButtonBox>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QSettings>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>
#include <algorithm>

namespace ui {

namespace {

enum Page { invitationPage, busyPage, reviewPage };

const QString kFolderKey = QStringLiteral("returns/folder");

} // namespace

ReturnsDialog::ReturnsDialog(OpenRoster &roster, QWidget *parent)
    : QDialog(parent)
    , m_roster(roster)
    , m_heading(new QLabel(this))
    , m_pain(new FieldNote(FieldNote::Kind::problem, this))
    , m_trouble(new FieldNote(FieldNote::Kind::problem, this))
    , m_pages(new QStackedWidget(this))
    , m_tree(new ReturnTree)
{
    setWindowTitle(tr("Return sheets"));
    setAcceptDrops(true);
    resize(1000, 640);
    m_heading->setFont(ui::font(Type::heading, m_heading->font()));
    m_heading->setWordWrap(true);
    m_pages->insertWidget(invitationPage,
        paragraph(tr("Choose the return sheets that the lifters sent, or drop them here: CSV files "
                     "as their hand-outs save them. Nothing is changed before you have seen what "
                     "was done beside what was planned.")));
    m_pages->insertWidget(busyPage, paragraph(tr("Reading the sheets …")));
    m_pages->insertWidget(reviewPage, m_tree);

    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_accept = buttons->addButton(tr("&Accept"), QDialogButtonBox::AcceptRole);
    m_accept->setDefault(true);
    auto *add = buttons->addButton(tr("A&dd sheets…"), QDialogButtonBox::ActionRole);
    add->setAutoDefault(false);

    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(space::page, space::page, space::page, space::group);
    column->setSpacing(space::gap);
    column->addWidget(m_heading);
    column->addWidget(m_pain);
    column->addWidget(m_pages, 1);
    column->addWidget(m_trouble);
    column->addWidget(buttons);

    connect(add, &QPushButton::clicked, this, &ReturnsDialog::askForFiles);
    connect(buttons, &QDialogButtonBox::accepted, this, &ReturnsDialog::acceptTicked);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_tree, &ReturnTree::acceptedChanged, this, &ReturnsDialog::refreshButton);
    connect(&m_reading, &QFutureWatcherBase::finished, this, &ReturnsDialog::review);
    connect(&roster, &OpenRoster::failed, m_trouble, &FieldNote::say);
    m_heading->setText(tr("What came back?"));
    refreshButton();
}

ReturnsDialog::~ReturnsDialog() = default;

void ReturnsDialog::offer(const QStringList &paths)
{
    m_paths << paths;
    m_trouble->say({});
    m_pages->setCurrentIndex(busyPage);
    m_reading.setFuture(QtConcurrent::run(&readReturnSheets, m_paths, QDate::currentDate()));
}

void ReturnsDialog::askForFiles()
{
    const QString folder =
        QSettings()
            .value(kFolderKey, QStandardPaths::writableLocation(QStandardPaths::DownloadLocation))
            .toString();
    const QStringList paths = QFileDialog::getOpenFileNames(
        this, tr("Choose return sheets"), folder, tr("Return sheets (*.csv)"));
    if (paths.isEmpty())
        return;
    QSettings().setValue(kFolderKey, QFileInfo(paths.front()).absolutePath());
    offer(paths);
}

void ReturnsDialog::review()
{
    m_sheets = m_reading.result();
    m_basis = {
        m_roster.lifters(), m_roster.variations(), {}, m_roster.sessions(), m_roster.checkIns()};
    for (const QDate monday : core::weeksOf(m_sheets))
        for (core::Card &card : m_roster.cards(monday, monday.addDays(core::kWeekDays - 1)))
            m_basis.cards.push_back(std::move(card));
    m_reviews = core::reviewReturns(m_sheets, m_basis);
    m_tree->setReviews(m_reviews);
    m_pages->setCurrentIndex(reviewPage);
    const auto pains = std::count_if(m_reviews.begin(), m_reviews.end(),
        [](const core::SheetReview &sheet) { return sheet.hasPain; });
    m_pain->say(pains == 0 ? QString()
            : pains == 1   ? tr("One sheet says pain. Read it first.")
                           : tr("%1 sheets say pain. Read them first.").arg(pains));
    refreshButton();
    m_tree->setFocus();
    Q_EMIT reviewed();
}

void ReturnsDialog::refreshButton()
{
    const size_t count = m_tree->accepted().size();
    m_accept->setEnabled(count > 0);
    m_accept->setText(count == 0 ? tr("&Accept")
            : count == 1         ? tr("&Accept one sheet")
                                 : tr("&Accept %1 sheets").arg(count));
    if (!m_reviews.empty())
        m_heading->setText(tr("%1 of %2 sheets are ticked. Those that are ticked go into the log.")
                               .arg(count)
                               .arg(m_reviews.size()));
}

std::vector<core::ReturnSheet> ReturnsDialog::ticked() const
{
    std::vector<core::ReturnSheet> sheets;
    for (const size_t index : m_tree->accepted())
        sheets.push_back(m_sheets[index]);
    return sheets;
}

void ReturnsDialog::acceptTicked()
{
    const core::Edit edit = core::acceptReturns(ticked(), m_basis,
        {[this] { return m_roster.newId<core::LoggedSession>(); },
            [this] { return m_roster.newId<core::CheckIn>(); }});
    if (m_roster.perform(tr("Accept return sheets"), edit))
        accept();
}

void ReturnsDialog::dragEnterEvent(QDragEnterEvent *event)
{
    if (!localPaths(*event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void ReturnsDialog::dropEvent(QDropEvent *event)
{
    offer(localPaths(*event->mimeData()));
    event->acceptProposedAction();
}

} // namespace ui
