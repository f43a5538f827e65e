#include "ui/window/main_window.h"

#include "core/domain/storage_error.h"
#include "core/storage/backup.h"
#include "core/storage/roster_file.h"
#include "ui/catalogue/catalogue_dialog.h"
#include "ui/lifters/lifter_list_panel.h"
#include "ui/look/file_dialogs.h"
#include "ui/look/form_dialog.h"
#include "ui/look/form_parts.h"
#include "ui/look/scrolling_room.h"
#include "ui/look/theme.h"
#include "ui/returns/return_files.h"
#include "ui/room/room.h"
#include "ui/roster/today.h"
#include "ui/window/help.h"
#include "ui/window/message_bar.h"
#include "ui/window/recent_files.h"
#include "ui/window/roster_view.h"
#include "ui/window/start_page.h"

#include <QActionGroup>
#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenuBar>
#include <QMimeData>
#include <QSettings>
#include <QStackedWidget>
#include <QStandardPaths>
#include <algorithm>

namespace ui {

namespace {

const QString kSuffix = QStringLiteral("benchwright");
const QString kLogSuffix = QStringLiteral("csv");
const QString kGeometryKey = QStringLiteral("window/geometry");
const QString kFolderKey = QStringLiteral("files/folder");

QString filters()
{
    return MainWindow::tr("Benchwright rosters (*.%1)").arg(kSuffix);
}

QString folder()
{
    return QSettings()
        .value(kFolderKey, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
        .toString();
}

/// A few of them, each cut short: a box of words fits the screen.
QString inLines(const QStringList &words)
{
    constexpr int kMost = 8;
    constexpr int kLongest = 120;
    QStringList lines;
    for (const QString &line : words.first(std::min(kMost, int(words.size()))))
        lines << (line.size() > kLongest ? line.left(kLongest) + u'\u2026' : line).simplified();
    if (words.size() > kMost)
        lines << MainWindow::tr("and %1 more").arg(words.size() - kMost);
    return lines.join(u'\n');
}

/// The files of this suffix among those dragged in.
QStringList filesIn(const QMimeData &data, const QString &suffix)
{
    QStringList paths;
    for (const QUrl &url : data.urls())
        if (const QString path = url.toLocalFile();
            QFileInfo(path).suffix().compare(suffix, Qt::CaseInsensitive) == 0)
            paths << path;
    return paths;
}

} // namespace

MainWindow::MainWindow(Theme &theme, Today &today, QWidget *parent)
    : QMainWindow(parent)
    , m_theme(theme)
    , m_today(today)
    , m_rosterActions(new QActionGroup(this))
    , m_message(new MessageBar)
    , m_stack(new QStackedWidget)
    , m_start(new StartPage)
{
    m_rosterActions->setExclusionPolicy(QActionGroup::ExclusionPolicy::None);
    m_stack->addWidget(m_start);
    setCentralWidget(boxed(columnLayout({m_message, {new ScrollingRoom(m_stack), 1}}, 0)));
    setAcceptDrops(true);
    qApp->installEventFilter(this);

    buildFileMenu();
    buildEditMenu();
    buildRosterMenu();
    buildViewMenu();
    buildHelpMenu();
    connect(m_start, &StartPage::newAskedFor, this, &MainWindow::askForNew);
    connect(m_start, &StartPage::openAskedFor, this, &MainWindow::askForOpen);
    connect(m_start, &StartPage::fileAskedFor, this, &MainWindow::openFile);

    if (restoreGeometry(QSettings().value(kGeometryKey).toByteArray()))
        keepOnScreen(*this); // the last one may have been larger
    else
        sizeToScreen(*this, {1366, 768});
    refreshState();
}

MainWindow::~MainWindow()
{
    dropRoster();
}

void MainWindow::buildFileMenu()
{
    QMenu *menu = menuBar()->addMenu(tr("&File"));
    menu->addAction(tr("&New roster…"), QKeySequence::New, this, &MainWindow::askForNew);
    menu->addAction(tr("&Open…"), QKeySequence::Open, this, &MainWindow::askForOpen);
    menu->addAction(tr("Open a &backup…"), this, &MainWindow::askForBackup);
    m_recent = menu->addMenu(tr("Open &recent"));
    connect(m_recent, &QMenu::aboutToShow, this, &MainWindow::fillRecentMenu);
    menu->addSeparator();
    addRosterAction(
        menu, tr("&Import log…"), tr("Ctrl+I"), [](RosterView &roster) { roster.importLog(); });
    addRosterAction(menu, tr("Read return &sheets…"), tr("Ctrl+Shift+I"),
        [](RosterView &roster) { roster.readReturns(); });
    addRosterAction(menu, tr("Write &hand-outs…"), tr("Ctrl+H"),
        [](RosterView &roster) { roster.writeHandOuts(); });
    addRosterAction(menu, tr("&Print plan…"), QKeySequence::Print,
        [](RosterView &roster) { roster.printPlan(); });
    menu->addSeparator();
    addRosterAction(
        menu, tr("&Close roster"), QKeySequence::Close, [this](RosterView &) { closeFile(); });
    menu->addAction(tr("&Quit"), QKeySequence::Quit, this, &QWidget::close);
}

void MainWindow::buildEditMenu()
{
    QMenu *menu = menuBar()->addMenu(tr("&Edit"));
    m_undo = menu->addAction({}, QKeySequence::Undo, this, [this] { m_roster->undo(); });
    m_redo = menu->addAction({}, QKeySequence::Redo, this, [this] { m_roster->redo(); });
    m_redo->setShortcuts(
        QKeySequence::keyBindings(QKeySequence::Redo) << QKeySequence(Qt::CTRL | Qt::Key_Y));
    showSteps();
}

void MainWindow::buildRosterMenu()
{
    QMenu *menu = menuBar()->addMenu(tr("&Roster"));
    addRosterAction(menu, tr("&Find a lifter"), QKeySequence::Find,
        [](RosterView &roster) { roster.lifters().focusSearch(); });
    menu->addSeparator();
    addRosterAction(menu, tr("&Add a lifter…"), tr("Ctrl+Shift+N"),
        [](RosterView &roster) { roster.lifters().addLifter(); });
    addRosterAction(menu, tr("&Edit the lifter…"), tr("Ctrl+E"),
        [](RosterView &roster) { roster.lifters().editLifter(); });
    addRosterAction(menu, tr("Ar&chive or restore the lifter"), {},
        [](RosterView &roster) { roster.lifters().toggleArchived(); });
    addRosterAction(menu, tr("Into or out of the roo&m"), tr("Ctrl+Shift+M"),
        [](RosterView &roster) { roster.toggleInRoom(); });
    menu->addSeparator();
    addRosterAction(menu, tr("&Variation catalogue…"), tr("Ctrl+Shift+V"),
        [this](RosterView &roster) { CatalogueDialog(roster.openRoster(), this).exec(); });
}

void MainWindow::buildViewMenu()
{
    QMenu *menu = menuBar()->addMenu(tr("&View"));
    addRosterAction(menu, tr("&Next lifter"), tr("Alt+Down"),
        [](RosterView &roster) { roster.lifters().stepLifter(+1); });
    addRosterAction(menu, tr("&Previous lifter"), tr("Alt+Up"),
        [](RosterView &roster) { roster.lifters().stepLifter(-1); });
    menu->addSeparator();
    for (int page = 0; const QString &name : RosterView::pageNames()) {
        addRosterAction(menu, name, QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_1 + page)),
            [page](RosterView &roster) { roster.showPage(page); });
        ++page;
    }
    menu->addSeparator();
    auto *schemes = new QActionGroup(this);
    for (const auto &[choice, words] :
        {std::pair{SchemeChoice::system, tr("Colours as the &desktop")},
            {SchemeChoice::light, tr("&Light colours")},
            {SchemeChoice::dark, tr("Dar&k colours")}}) {
        QAction *action = menu->addAction(words);
        action->setCheckable(true);
        action->setChecked(m_theme.choice() == choice);
        schemes->addAction(action);
        connect(
            action, &QAction::triggered, this, [this, wanted = choice] { m_theme.choose(wanted); });
    }
}

void MainWindow::buildHelpMenu()
{
    QMenu *menu = menuBar()->addMenu(tr("&Help"));
    menu->addAction(tr("&Keys and set lines"), QKeySequence::HelpContents, this,
        [this] { showHelp(*this, m_roster ? m_roster->helpOn() : HelpOn(), this); });
    menu->addAction(tr("&Safety"), this, [this] { showSafetyNote(this); });
    menu->addAction(tr("&About Benchwright"), this, [this] { showAbout(this); });
}

QAction *MainWindow::addRosterAction(QMenu *menu, const QString &text, const QKeySequence &keys,
    const std::function<void(RosterView &)> &act)
{
    QAction *action = menu->addAction(text, keys, this, [this, act] {
        if (m_roster)
            act(*m_roster);
    });
    m_rosterActions->addAction(action);
    return action;
}

void MainWindow::fillRecentMenu()
{
    m_recent->clear();
    int number = 1;
    for (const QString &path : recentFiles()) {
        QAction *action = m_recent->addAction(
            QStringLiteral("&%1  %2").arg(number++).arg(QFileInfo(path).completeBaseName()), this,
            [this, path] { openFile(path); });
        action->setToolTip(path);
    }
    m_recent->setToolTipsVisible(true);
    m_recent->addSeparator();
    m_recent->addAction(tr("&Forget these"), this, [this] {
        forgetRecentFiles();
        refreshState();
    });
}

void MainWindow::askForNew()
{
    // Making a roster never writes over a file, so there is nothing to confirm: a taken name is
    // said in the message bar.
    QString path = askForFileToWrite(this, tr("New roster"),
        QFileInfo(folder(), tr("My lifters") + u'.' + kSuffix).filePath(), filters(),
        Taken::isLeftToCaller);
    if (path.isEmpty())
        return;
    if (QFileInfo(path).suffix().isEmpty())
        path += u'.' + kSuffix;
    createFile(path);
}

void MainWindow::askForOpen()
{
    const QString path = askForFile(this, tr("Open a roster"), folder(),
        filters() + QStringLiteral(";;") + tr("All files (*)"));
    if (!path.isEmpty())
        openFile(path);
}

void MainWindow::askForBackup()
{
    const QString start = m_roster ? core::backupFolderOf(m_path) : folder();
    const QString path = askForFile(
        this, tr("Open a backup"), QFileInfo::exists(start) ? start : folder(), filters());
    if (!path.isEmpty())
        openFile(path);
}

bool MainWindow::openFile(const QString &path)
{
    if (core::isBackup(path))
        return openCopyOfBackup(path);
    if (m_roster && QFileInfo(path) == QFileInfo(m_path)) {
        m_message->hide();
        return true;
    }
    return take([&] { return core::RosterFile::open(path, m_today.now()); });
}

bool MainWindow::openCopyOfBackup(const QString &path)
{
    if (!take([&] { return core::RosterFile::open(core::copyOutOfBackups(path), m_today.now()); }))
        return false;
    m_message->say(
        tr("This is a copy of the backup, saved as %1. The roster it comes from is as it "
           "was; go on with whichever is right.")
            .arg(QDir::toNativeSeparators(m_path)),
        {});
    return true;
}

bool MainWindow::createFile(const QString &path)
{
    return take([&path] { return core::RosterFile::create(path); });
}

template <class Make> bool MainWindow::take(Make make)
try {
    if (!mayClose())
        return false;
    auto file = std::make_unique<core::RosterFile>(make());
    const QString path = file->path();
    const QString trouble = file->backupTrouble();
    showRoster(std::move(file), path);
    if (!trouble.isEmpty())
        m_message->say(trouble, {});
    return true;
} catch (const core::StorageError &e) {
    m_message->say(e.words(), e.detail());
    return false;
}

void MainWindow::showRoster(std::unique_ptr<core::RosterStore> store, const QString &path)
{
    auto *roster = new RosterView(std::move(store), m_today); // may throw: the one before stays
    dropRoster();
    m_roster = roster;
    m_path = QFileInfo(path).absoluteFilePath();
    m_stack->addWidget(roster);
    m_stack->setCurrentWidget(roster);
    const QUndoStack &steps = roster->openRoster().steps();
    connect(&steps, &QUndoStack::indexChanged, this, &MainWindow::showSteps);
    connect(&roster->openRoster(), &OpenRoster::failed, m_message, &MessageBar::sayForNow);
    connect(&roster->openRoster(), &OpenRoster::stored, m_message, &MessageBar::takeSuccess);
    connect(roster, &RosterView::said, m_message,
        [this](const QString &words) { m_message->sayForNow(words, {}); });
    connect(roster, &RosterView::stepTold, m_message, &MessageBar::note);
    connect(roster, &RosterView::clockTold, m_message, &MessageBar::sayToo);
    roster->room().remember(m_path);
    rememberRecent(m_path);
    QSettings().setValue(kFolderKey, QFileInfo(m_path).absolutePath());
    refreshState();
    roster->lifters().setFocus();
}

bool MainWindow::mayClose()
{
    const QStringList left = m_roster ? m_roster->openRoster().halfTyped() : QStringList();
    return left.isEmpty()
        || mayDrop(
            tr("Half typed"), tr("This is not saved, and would be lost:"), inLines(left), this);
}

bool MainWindow::closeFile()
{
    if (!mayClose())
        return false;
    dropRoster();
    return true;
}

void MainWindow::dropRoster()
{
    m_message->hide();
    delete m_roster;
    m_roster = nullptr;
    m_path.clear();
    refreshState();
}

void MainWindow::showSteps()
{
    const QUndoStack *steps = m_roster ? &m_roster->openRoster().steps() : nullptr;
    m_undo->setEnabled(steps && steps->canUndo());
    m_undo->setText(m_undo->isEnabled() ? tr("&Undo %1").arg(steps->undoText()) : tr("&Undo"));
    m_redo->setEnabled(steps && steps->canRedo());
    m_redo->setText(m_redo->isEnabled() ? tr("&Redo %1").arg(steps->redoText()) : tr("&Redo"));
}

void MainWindow::refreshState()
{
    m_rosterActions->setEnabled(m_roster);
    m_recent->setEnabled(!recentFiles().isEmpty());
    m_start->setRecent(recentFiles());
    showSteps();
    setWindowFilePath(m_path);
    setWindowTitle(m_roster ? tr("%1 – Benchwright").arg(QFileInfo(m_path).completeBaseName())
                            : tr("Benchwright"));
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    if (!mayClose()) {
        event->ignore();
        return;
    }
    QSettings().setValue(kGeometryKey, saveGeometry());
    QMainWindow::closeEvent(event);
}

bool MainWindow::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::ShortcutOverride)
        if (const auto *field = qobject_cast<QLineEdit *>(watched);
            field && field->window() == this) {
            const auto &key = *static_cast<QKeyEvent *>(event);
            const bool undoes = m_undo->shortcuts().contains(QKeySequence(key.keyCombination()));
            const bool redoes = m_redo->shortcuts().contains(QKeySequence(key.keyCombination()));
            if ((undoes && !field->isUndoAvailable()) || (redoes && !field->isRedoAvailable())) {
                event->ignore();
                return true;
            }
        }
    return QMainWindow::eventFilter(watched, event);
}

void MainWindow::dragEnterEvent(QDragEnterEvent *event)
{
    const QMimeData &dragged = *event->mimeData();
    if (!filesIn(dragged, kSuffix).isEmpty()
        || (m_roster && !filesIn(dragged, kLogSuffix).isEmpty()))
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent *event)
{
    const QStringList rosters = filesIn(*event->mimeData(), kSuffix);
    const QStringList tables = filesIn(*event->mimeData(), kLogSuffix);
    event->acceptProposedAction();
    if (!rosters.isEmpty())
        openFile(rosters.front());
    else if (const QStringList returns = returnSheetsAmong(tables); m_roster && !returns.isEmpty())
        m_roster->readReturns(returns);
    else if (m_roster && !tables.isEmpty())
        m_roster->importLog(tables);
}

} // namespace ui
