#include "ui/returns/returns_dialog.h"

#include "ui/look/field_note.h"
#include "ui/look/file_dialogs.h"
#include "ui/look/form_parts.h"
#include "ui/look/scrolling_room.h"
#include "ui/returns/return_tree.h"
#include "ui/roster/today.h"

#include <QDialogButtonBox>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QSettings>
#include <QStackedWidget>
#include <QStandardPaths>
#include <algorithm>
#include <functional>

namespace ui {

namespace {

enum Page { invitationPage, busyPage, reviewPage };

const QString kFolderKey = QStringLiteral("returns/folder");

} // namespace

ReturnsDialog::ReturnsDialog(OpenRoster &roster, QWidget *parent)
    : QDialog(parent)
    , m_roster(roster)
    , m_reading(
          roster, [this](std::optional<core::JudgedReturns> returns) { take(std::move(returns)); })
    , m_heading(label(Type::heading))
    , m_pain(new FieldNote(FieldNote::Kind::problem))
    , m_trouble(new FieldNote(FieldNote::Kind::problem))
    , m_pages(new QStackedWidget(this))
    , m_tree(new ReturnTree)
{
    setWindowTitle(tr("Return sheets"));
    setAcceptDrops(true);
    m_heading->setWordWrap(true);
    m_pages->insertWidget(invitationPage,
        paragraph(tr("Choose the return sheets that the lifters sent, or drop them here: CSV files "
                     "as their hand-outs save them. Nothing is changed before you have seen what "
                     "was done beside what was planned.")));
    m_pages->insertWidget(busyPage, makeBusyPage());
    m_pages->insertWidget(reviewPage, m_tree);

    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_accept = buttons->addButton(tr("&Accept"), QDialogButtonBox::AcceptRole);
    m_accept->setDefault(true);
    auto *add = buttons->addButton(tr("A&dd sheets…"), QDialogButtonBox::ActionRole);
    add->setAutoDefault(false);

    auto *room =
        new ScrollingRoom(columnLayout({m_heading, m_pain, {m_pages, 1}, m_trouble}, space::gap));
    fill(this, columnLayout({{room, 1}, buttons}, space::gap),
        {space::page, space::page, space::page, space::group});
    sizeToScreen(*this, {1000, 640});

    connect(add, &QPushButton::clicked, this, &ReturnsDialog::askForFiles);
    connect(buttons, &QDialogButtonBox::accepted, this, &ReturnsDialog::acceptTicked);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_tree, &ReturnTree::acceptedChanged, this, &ReturnsDialog::refreshButton);
    connect(&roster, &OpenRoster::failed, m_trouble, &FieldNote::say);
    connect(&roster, &OpenRoster::changed, this, [this] {
        if (!m_performing)
            read();
    });
    refreshButton();
}

ReturnsDialog::~ReturnsDialog() = default;

QWidget *ReturnsDialog::makeBusyPage()
{
    auto *bar = new QProgressBar;
    bar->setAccessibleName(tr("Read so far"));
    connect(&m_reading.progress(), &QFutureWatcherBase::progressValueChanged, bar,
        &QProgressBar::setValue);
    return boxed(
        columnLayout({paragraph(tr("Reading the sheets …")), bar, Stretch{1}}, space::gap));
}

void ReturnsDialog::offer(const QStringList &paths)
{
    m_paths << paths;
    m_trouble->say({});
    read();
}

void ReturnsDialog::askForFiles()
{
    const QString folder =
        QSettings()
            .value(kFolderKey, QStandardPaths::writableLocation(QStandardPaths::DownloadLocation))
            .toString();
    const QStringList paths =
        ui::askForFiles(this, tr("Choose return sheets"), folder, tr("Return sheets (*.csv)"));
    if (paths.isEmpty())
        return;
    QSettings().setValue(kFolderKey, QFileInfo(paths.front()).absolutePath());
    offer(paths);
}

void ReturnsDialog::read()
{
    if (m_paths.isEmpty())
        return;
    m_pages->setCurrentIndex(busyPage);
    m_reading.start(std::bind_front(&core::readReturns, m_paths, m_roster.today().date()));
    refreshButton();
}

void ReturnsDialog::take(std::optional<core::JudgedReturns> returns)
{
    const bool wereRead = returns.has_value();
    m_returns = std::move(returns).value_or(core::JudgedReturns());
    m_pages->setCurrentIndex(wereRead ? reviewPage : invitationPage);
    m_tree->setReviews(m_returns.reviews);
    const auto pains = std::count_if(m_returns.reviews.begin(), m_returns.reviews.end(),
        [](const core::SheetReview &sheet) { return sheet.hasPain; });
    m_pain->say(pains == 0 ? QString()
            : pains == 1   ? tr("One sheet says pain. Read it first.")
                           : tr("%1 sheets say pain. Read them first.").arg(pains));
    refreshButton();
    if (!wereRead)
        return;
    m_tree->setFocus();
    Q_EMIT reviewed();
}

void ReturnsDialog::refreshButton()
{
    const size_t count = m_tree->accepted().size();
    m_accept->setEnabled(count > 0 && !m_reading.isRunning());
    m_accept->setText(count == 0 ? tr("&Accept")
            : count == 1         ? tr("&Accept one sheet")
                                 : tr("&Accept %1 sheets").arg(count));
    m_heading->setText(m_returns.reviews.empty()
            ? tr("What came back?")
            : tr("%1 of %2 sheets are ticked. Those that are ticked go into the log.")
                  .arg(count)
                  .arg(m_returns.reviews.size()));
}

void ReturnsDialog::acceptTicked()
{
    const core::Edit edit = core::acceptReturns(m_returns, m_tree->accepted(),
        {[this] { return m_roster.newId<core::LoggedSession>(); },
            [this] { return m_roster.newId<core::CheckIn>(); }});
    const QScopedValueRollback performing(m_performing, true);
    if (m_roster.perform(tr("Accept return sheets"), edit))
        accept();
}

void ReturnsDialog::done(int result)
{
    m_reading.stop();
    QDialog::done(result);
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
