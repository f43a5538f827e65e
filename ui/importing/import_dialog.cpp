#include "ui/importing/import_dialog.h"

#include "ui/importing/file_field.h"
#include "ui/importing/problem_model.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/roomy_delegate.h"
#include "ui/look/scrolling_room.h"
#include "ui/roster/today.h"

#include <QClipboard>
#include <QDialogButtonBox>
#include <QDragEnterEvent>
#include <QGridLayout>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLocale>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QStackedWidget>
#include <QTableView>
#include <functional>

namespace ui {

namespace {

enum Page { invitationPage, busyPage, problemPage, summaryPage };

QLabel *wrappedHeading()
{
    QLabel *words = label(Type::heading);
    words->setWordWrap(true);
    return words;
}

} // namespace

ImportDialog::ImportDialog(OpenRoster &roster, QWidget *parent)
    : QDialog(parent)
    , m_roster(roster)
    , m_reading(roster, [this](std::optional<core::ImportPlan> plan) { take(std::move(plan)); })
    , m_log(new FileField(tr("Choose the training log"), tr("One line a set"), this))
    , m_people(new FileField(
          tr("Choose the list of lifters"), tr("One line a lifter; may be left out"), this))
    , m_note(new FieldNote(FieldNote::Kind::problem))
    , m_pages(new QStackedWidget(this))
{
    setWindowTitle(tr("Import training"));
    setAcceptDrops(true);

    auto *files = new QGridLayout;
    files->setHorizontalSpacing(space::group);
    files->setVerticalSpacing(space::gap);
    const auto addRow = [files](const QString &words, FileField *field) {
        auto *name = new QLabel(words);
        name->setBuddy(&field->chooseButton());
        files->addWidget(name, files->rowCount(), 0);
        files->addWidget(field, files->rowCount() - 1, 1);
    };
    addRow(tr("&Training log (CSV)"), m_log);
    addRow(tr("&Lifters (CSV)"), m_people);
    files->addWidget(m_note, files->rowCount(), 1);

    m_pages->insertWidget(invitationPage, makeInvitation());
    m_pages->insertWidget(busyPage, makeBusyPage());
    m_pages->insertWidget(problemPage, makeProblemPage());
    m_pages->insertWidget(summaryPage, makeSummaryPage());

    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_import = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
    m_import->setDefault(true);
    m_import->setEnabled(false);

    auto *room = new ScrollingRoom(columnLayout({files, {m_pages, 1}}, space::group));
    fill(this, columnLayout({{room, 1}, buttons}, space::group),
        {space::page, space::page, space::page, space::group});
    sizeToScreen(*this, {880, 560});

    connect(m_log, &FileField::pathChanged, this, &ImportDialog::read);
    connect(m_people, &FileField::pathChanged, this, &ImportDialog::read);
    connect(buttons, &QDialogButtonBox::accepted, this, &ImportDialog::performImport);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(&roster, &OpenRoster::failed, m_note, &FieldNote::say);
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (!m_performing && change.has<core::Lifter, core::Variation, core::LoggedSession>())
            readAgain();
    });
    m_log->chooseButton().setFocus();
}

ImportDialog::~ImportDialog() = default;

QWidget *ImportDialog::makeInvitation()
{
    return paragraph(
        tr("<p>Choose the files, or drop them here. Nothing is changed before you have seen what "
           "they would add.</p>"
           "<p>The <b>training log</b> has one line a set, under a first line that names the "
           "columns:<br><code>%1</code><br>and, where you have them: <code>%2</code>.</p>"
           "<p>The list of <b>lifters</b> has one line a lifter:<br><code>%3</code><br>and, where "
           "you "
           "have them: <code>%4</code>.</p>"
           "<p>Dates are written 2026-03-31, decimals with a point, loads in kg. A file that was "
           "imported before adds only what is new in it.</p>")
            .arg(core::logColumns().first(8).join(u','), core::logColumns().mid(8).join(u", "),
                core::peopleColumns().first(3).join(u','),
                core::peopleColumns().mid(3).join(u", ")));
}

QWidget *ImportDialog::makeBusyPage()
{
    auto *bar = new QProgressBar;
    bar->setAccessibleName(tr("Read so far"));
    connect(&m_reading.progress(), &QFutureWatcherBase::progressValueChanged, bar,
        &QProgressBar::setValue);
    return boxed(columnLayout({paragraph(tr("Reading the files …")), bar, Stretch{1}}, space::gap));
}

QWidget *ImportDialog::makeProblemPage()
{
    m_problemHeading = wrappedHeading();
    m_problems = new ProblemModel(this);
    m_problemTable = new QTableView;
    m_problemTable->setModel(m_problems);
    m_problemTable->setAccessibleName(tr("Problems"));
    m_problemTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_problemTable->setTabKeyNavigation(false);
    m_problemTable->setItemDelegate(new RoomyDelegate(m_problemTable));
    m_problemTable->setWordWrap(true);
    m_problemTable->setShowGrid(false);
    m_problemTable->setAlternatingRowColors(true);
    m_problemTable->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_problemTable->verticalHeader()->hide();
    m_problemTable->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    QHeaderView *header = m_problemTable->horizontalHeader();
    header->setHighlightSections(false);
    header->setSectionResizeMode(QHeaderView::ResizeToContents);
    header->setSectionResizeMode(ProblemModel::wordsColumn, QHeaderView::Stretch);
    header->setSectionResizeMode(ProblemModel::remedyColumn, QHeaderView::Stretch);

    auto *copy = new QPushButton(tr("&Copy all problems"));
    copy->setAutoDefault(false);
    copy->setToolTip(tr("As text, for whoever keeps the file"));
    connect(copy, &QPushButton::clicked, this, &ImportDialog::copyProblems);

    return boxed(columnLayout(
        {m_problemHeading, {m_problemTable, 1}, {copy, 0, Qt::AlignLeft}}, space::gap));
}

QWidget *ImportDialog::makeSummaryPage()
{
    m_summaryHeading = wrappedHeading();
    m_summary = paragraph({});
    return boxed(columnLayout({m_summaryHeading, {m_summary, 1}}, space::gap));
}

core::ImportFiles ImportDialog::files() const
{
    return {m_log->path(), m_people->path()};
}

void ImportDialog::offer(const QStringList &paths)
{
    QStringList unknown;
    const core::ImportFiles chosen = core::placed(files(), paths, &unknown);
    {
        const QSignalBlocker quietLog(m_log), quietPeople(m_people); // read both once
        m_log->setPath(chosen.log);
        m_people->setPath(chosen.people);
    }
    read();
    m_note->say(unknown.isEmpty() ? QString()
                                  : tr("%1 is neither a training log nor a list of lifters: its "
                                       "first line does not name their columns.")
                                        .arg(unknown.join(QStringLiteral(", "))));
}

void ImportDialog::read()
{
    m_note->say({});
    m_plan = {};
    readAgain();
}

void ImportDialog::readAgain()
{
    m_import->setEnabled(false);
    if (files().isEmpty()) {
        m_reading.stop();
        m_pages->setCurrentIndex(invitationPage);
        return;
    }
    m_pages->setCurrentIndex(busyPage);
    const core::IdSource ids{[this] { return m_roster.newId<core::Lifter>(); },
        [this] { return m_roster.newId<core::LoggedSession>(); }};
    m_reading.start(std::bind_front(&core::readImport, files(), ids, m_roster.today().date()));
}

void ImportDialog::take(std::optional<core::ImportPlan> plan)
{
    if (!plan) {
        m_pages->setCurrentIndex(invitationPage);
        return;
    }
    m_plan = std::move(*plan);
    present(m_plan);
    Q_EMIT planned();
}

void ImportDialog::present(const core::ImportPlan &plan)
{
    const QLocale locale;
    if (!plan.isClean()) {
        const size_t count = plan.problems.count();
        QString words = count == 1 ? tr("One problem stands in the way. Nothing is imported until "
                                        "the file is mended.")
                                   : tr("%1 problems stand in the way. Nothing is imported until "
                                        "the files are mended.")
                                         .arg(locale.toString(qulonglong(count)));
        if (count > ProblemModel::kShown)
            words += u' ' + tr("The first %1 are shown.").arg(ProblemModel::kShown);
        m_problemHeading->setText(words);
        m_problems->setProblems(plan.problems);
        m_problemTable->setColumnHidden(
            ProblemModel::fileColumn, files().log.isEmpty() || files().people.isEmpty());
        m_pages->setCurrentIndex(problemPage);
        return;
    }
    const bool addsNothing = plan.edit.isEmpty();
    m_summaryHeading->setText(addsNothing
            ? tr("Everything in these files is in the roster already.")
            : tr("The files are sound. The import would find:"));
    QString rows;
    for (const core::CountLine &line : core::countLines(plan.counts))
        if (line.count > 0)
            rows +=
                QStringLiteral("<tr><td align='right'><b>%1</b></td><td>&nbsp;&nbsp;%2</td></tr>")
                    .arg(locale.toString(line.count), line.what.toHtmlEscaped());
    QString below;
    if (!plan.farLoads.isEmpty())
        below = QStringLiteral("<p><b>%1</b></p><p>%2</p>")
                    .arg(tr("Look at these loads first:").toHtmlEscaped(),
                        plan.farLoads.join(u'\n').toHtmlEscaped().replace(
                            u'\n', QStringLiteral("<br>")));
    m_summary->setText(QStringLiteral("<table cellpadding='3'>%1</table>%2").arg(rows, below));
    m_pages->setCurrentIndex(summaryPage);
    m_import->setEnabled(!addsNothing);
    if (!addsNothing && plan.farLoads.isEmpty())
        m_import->setFocus();
}

void ImportDialog::performImport()
{
    const QScopedValueRollback performing(m_performing, true);
    if (m_import->isEnabled() && m_roster.perform(tr("Import training"), m_plan.edit))
        accept();
}

void ImportDialog::done(int result)
{
    m_reading.stop();
    QDialog::done(result);
}

void ImportDialog::copyProblems()
{
    QStringList lines;
    for (const core::Problem &problem : m_plan.problems.items())
        lines << core::oneLine(problem);
    QGuiApplication::clipboard()->setText(lines.join(u'\n'));
}

void ImportDialog::dragEnterEvent(QDragEnterEvent *event)
{
    if (!localPaths(*event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void ImportDialog::dropEvent(QDropEvent *event)
{
    offer(localPaths(*event->mimeData()));
    event->acceptProposedAction();
}

} // namespace ui
