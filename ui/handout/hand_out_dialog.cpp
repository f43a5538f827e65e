#include "ui/handout/hand_out_dialog.h"

#include "core/domain/week.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/metrics.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>
#include <algorithm>

namespace ui {

namespace {
const QString kFolderKey = QStringLiteral("handout/folder");
const QString kPdfKey = QStringLiteral("handout/pdf");
const QString kCalendarKey = QStringLiteral("handout/calendar");
} // namespace

HandOutDialog::HandOutDialog(
    OpenRoster &roster, Estimates &estimates, const Selection &selection, QWidget *parent)
    : QDialog(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_answers(whoGetsOne(roster.lifters(), selection.lifter()))
    , m_who(new QComboBox)
    , m_week(new QDateEdit(selection.monday()))
    , m_weekWords(new QLabel)
    , m_page(new QCheckBox(tr("&Page for the phone: logs the sets and gives them back")))
    , m_pdf(new QCheckBox(tr("P&DF to print")))
    , m_calendar(new QCheckBox(tr("Ca&lendar of the sessions (iCalendar)")))
    , m_folder(new QLineEdit)
    , m_note(new FieldNote(FieldNote::Kind::problem))
    , m_progress(new QProgressBar)
    , m_summary(new QLabel)
{
    setWindowTitle(tr("Write hand-outs"));
    setMinimumWidth(600);
    for (const HandOutWho &answer : m_answers)
        m_who->addItem(answer.words);
    m_week->setCalendarPopup(true);
    m_page->setChecked(true);
    m_pdf->setChecked(QSettings().value(kPdfKey, false).toBool());
    m_calendar->setChecked(QSettings().value(kCalendarKey, false).toBool());
    m_folder->setText(QSettings().value(kFolderKey).toString());
    m_folder->setPlaceholderText(tr("Where the files go"));
    m_folder->setAccessibleName(tr("Folder"));
    m_progress->hide();
    m_progress->setAccessibleName(tr("Lifters done"));
    m_summary->setWordWrap(true);
    m_summary->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_summary->setObjectName(QStringLiteral("summary"));

    auto *choose = new QPushButton(tr("C&hoose…"));
    choose->setAutoDefault(false);
    auto *where = new QWidget;
    auto *across = new QHBoxLayout(where);
    across->setContentsMargins({});
    across->addWidget(m_folder, 1);
    across->addWidget(choose);
    auto *kindColumn = new QWidget;
    auto *down = new QVBoxLayout(kindColumn);
    down->setContentsMargins({});
    for (QCheckBox *box : {m_page, m_pdf, m_calendar})
        down->addWidget(box);

    auto *form = new QFormLayout;
    addRow(form, tr("Fo&r"), m_who, m_who);
    addRow(form, tr("&Week of"), m_week, inRow({m_week, m_weekWords}));
    form->addRow(tr("What"), kindColumn);
    addRow(form, tr("&Folder"), m_folder, withNotes(where, {m_note}));

    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    m_close = buttons->button(QDialogButtonBox::Close);
    m_write = buttons->addButton(tr("Write &hand-outs"), QDialogButtonBox::ActionRole);
    m_write->setDefault(true);
    m_close->setAutoDefault(false);

    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(space::page, space::page, space::page, space::group);
    column->setSpacing(space::group);
    column->addLayout(form);
    column->addWidget(m_progress);
    column->addWidget(m_summary);
    column->addStretch(1);
    column->addWidget(buttons);

    connect(choose, &QPushButton::clicked, this, &HandOutDialog::askForFolder);
    connect(m_folder, &QLineEdit::textChanged, this, &HandOutDialog::refresh);
    connect(m_week, &QDateEdit::dateChanged, this, &HandOutDialog::refresh);
    for (QCheckBox *box : {m_page, m_pdf, m_calendar})
        connect(box, &QCheckBox::toggled, this, &HandOutDialog::refresh);
    connect(m_write, &QPushButton::clicked, this, &HandOutDialog::start);
    connect(buttons, &QDialogButtonBox::rejected, this, &HandOutDialog::reject);
    connect(
        &m_writing, &QFutureWatcherBase::progressValueChanged, m_progress, &QProgressBar::setValue);
    connect(&m_writing, &QFutureWatcherBase::finished, this, &HandOutDialog::finish);
    refresh();
}

HandOutDialog::~HandOutDialog()
{
    m_stop = true;
    m_writing.waitForFinished();
}

void HandOutDialog::chooseFolder(const QString &folder)
{
    m_folder->setText(QDir::toNativeSeparators(folder));
}

void HandOutDialog::askForFolder()
{
    const QString start = m_folder->text().isEmpty()
        ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
        : m_folder->text();
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Folder for the hand-outs"), start);
    if (!folder.isEmpty())
        chooseFolder(folder);
}

QDate HandOutDialog::monday() const
{
    return core::mondayOf(m_week->date());
}

HandOutKinds HandOutDialog::kinds() const
{
    return {m_page->isChecked(), m_pdf->isChecked(), m_calendar->isChecked()};
}

HandOutBatch HandOutDialog::batch()
{
    HandOutBatch batch;
    const std::vector<core::LifterId> &ids = m_answers[size_t(m_who->currentIndex())].lifters;
    for (const core::Lifter &lifter : m_roster.lifters()) {
        if (std::find(ids.begin(), ids.end(), lifter.id) == ids.end())
            continue;
        batch.lifters.push_back(lifter);
        for (const core::Lift lift : {core::Lift::bench, core::Lift::squat, core::Lift::deadlift})
            if (const core::LiftEstimate *estimate = m_estimates.of(lifter.id, lift))
                batch.estimates.emplace(std::pair(lifter.id, lift), *estimate);
    }
    batch.variations = m_roster.variations();
    batch.monday = monday();
    batch.cards = m_roster.cards(batch.monday, batch.monday.addDays(core::kWeekDays - 1));
    batch.kinds = kinds();
    batch.paper = usualPaper();
    batch.folder = QDir::fromNativeSeparators(m_folder->text().trimmed());
    batch.now = QDateTime::currentDateTimeUtc();
    return batch;
}

void HandOutDialog::start()
{
    if (!m_write->isEnabled())
        return;
    QSettings().setValue(kFolderKey, m_folder->text());
    QSettings().setValue(kPdfKey, m_pdf->isChecked());
    QSettings().setValue(kCalendarKey, m_calendar->isChecked());
    HandOutBatch work = batch();
    m_stop = false;
    m_summary->clear();
    m_progress->setRange(0, int(work.lifters.size()));
    m_progress->setValue(0);
    m_progress->show();
    m_writing.setFuture(QtConcurrent::run(
        [this](QPromise<HandOutSummary> &promise, const HandOutBatch &copied) {
            promise.setProgressRange(0, int(copied.lifters.size()));
            promise.addResult(writeHandOuts(copied, [&](int lifters) {
                promise.setProgressValue(lifters);
                return !m_stop;
            }));
        },
        std::move(work)));
    refresh();
}

void HandOutDialog::finish()
{
    const HandOutSummary summary = m_writing.result();
    m_progress->hide();
    m_summary->setText(summaryLines(summary).join(u'\n'));
    refresh();
    Q_EMIT written(summary);
}

void HandOutDialog::refresh()
{
    const QLocale locale;
    m_weekWords->setText(tr("%1 to %2")
                             .arg(locale.toString(monday(), QStringLiteral("d MMMM")),
                                 locale.toString(monday().addDays(core::kWeekDays - 1),
                                     QStringLiteral("d MMMM yyyy"))));
    const bool hasFolder = !m_folder->text().trimmed().isEmpty();
    const bool isFile = QFileInfo(m_folder->text()).isFile();
    m_note->say(isFile             ? tr("This is a file. Choose a folder.")
            : kinds().count() == 0 ? tr("Choose at least one kind of file.")
            : m_answers.empty()    ? tr("The roster has no lifter who trains.")
                                   : QString());
    m_write->setEnabled(
        hasFolder && !isFile && kinds().count() > 0 && !m_answers.empty() && !isBusy());
    m_close->setText(isBusy() ? tr("&Stop") : tr("&Close"));
}

void HandOutDialog::reject()
{
    if (isBusy())
        m_stop = true; // what is written stays, and the summary names it
    else
        QDialog::reject();
}

} // namespace ui
