#include "ui/handout/hand_out_dialog.h"

#include "core/domain/language.h"
#include "core/domain/week.h"
#include "ui/checks/accept_dialog.h"
#include "ui/look/date_field.h"
#include "ui/look/field_note.h"
#include "ui/look/file_dialogs.h"
#include "ui/look/form_parts.h"
#include "ui/look/scrolling_room.h"
#include "ui/roster/estimates.h"
#include "ui/roster/giving.h"
#include "ui/roster/insights.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>

namespace ui {

namespace {
const QString kFolderKey = QStringLiteral("handout/folder");
const QString kPdfKey = QStringLiteral("handout/pdf");
const QString kCalendarKey = QStringLiteral("handout/calendar");
} // namespace

HandOutDialog::HandOutDialog(OpenRoster &roster, Estimates &estimates, const Insights &insights,
    const Selection &selection, QWidget *parent)
    : QDialog(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_insights(insights)
    , m_answers(whoGetsOne(roster.lifters(), selection.lifter()))
    , m_writing(roster, [this](const std::optional<HandOutSummary> &summary) { finish(summary); })
    , m_who(new QComboBox)
    , m_week(named("week", new DateField(selection.monday(), tr("Week of"))))
    , m_weekWords(new QLabel)
    , m_page(new QCheckBox(tr("&Page for the phone: logs the sets and gives them back")))
    , m_pdf(new QCheckBox(tr("P&DF to print")))
    , m_calendar(new QCheckBox(tr("Ca&lendar of the sessions (iCalendar)")))
    , m_anew(new QCheckBox(tr("Work out &anew what was given already")))
    , m_folder(new QLineEdit)
    , m_note(new FieldNote(FieldNote::Kind::problem))
    , m_progress(new QProgressBar)
    , m_summary(named("summary", paragraph({})))
{
    setWindowTitle(tr("Write hand-outs"));
    setMinimumWidth(600);
    for (const HandOutWho &answer : m_answers)
        m_who->addItem(answer.words);
    m_page->setChecked(true);
    m_pdf->setChecked(QSettings().value(kPdfKey, false).toBool());
    m_calendar->setChecked(QSettings().value(kCalendarKey, false).toBool());
    m_folder->setText(QSettings().value(kFolderKey).toString());
    m_folder->setPlaceholderText(tr("Where the files go"));
    m_folder->setAccessibleName(tr("Folder"));
    m_anew->setToolTip(tr("What is written is given: its loads stay as they are, whatever the "
                          "estimate becomes. Days of this week that were given before keep their "
                          "loads, unless this is ticked; then both are kept."));
    m_progress->hide();
    m_progress->setAccessibleName(tr("Lifters done"));

    auto *choose = new QPushButton(tr("Ch&oose…"));
    choose->setAutoDefault(false);

    auto *form = new QFormLayout;
    addRow(form, tr("Fo&r"), m_who, m_who);
    addRow(form, tr("&Week of"), &m_week->field(), inRow({m_week, m_weekWords}));
    form->addRow(tr("What"), boxed(columnLayout({m_page, m_pdf, m_calendar})));
    form->addRow(tr("Loads"), m_anew);
    addRow(form, tr("&Folder"), m_folder,
        withNotes(boxed(rowLayout({{m_folder, 1}, choose})), {m_note}));

    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    m_close = buttons->button(QDialogButtonBox::Close);
    m_write = buttons->addButton(tr("Write &hand-outs"), QDialogButtonBox::ActionRole);
    m_write->setDefault(true);
    m_close->setAutoDefault(false);

    auto *room =
        new ScrollingRoom(columnLayout({form, m_progress, m_summary, Stretch{1}}, space::group));
    fill(this, columnLayout({{room, 1}, buttons}, space::group),
        {space::page, space::page, space::page, space::group});

    connect(choose, &QPushButton::clicked, this, &HandOutDialog::askForFolder);
    connect(m_folder, &QLineEdit::textChanged, this, &HandOutDialog::refresh);
    connect(m_week, &DateField::edited, this, &HandOutDialog::refresh);
    for (QCheckBox *box : {m_page, m_pdf, m_calendar})
        connect(box, &QCheckBox::toggled, this, &HandOutDialog::refresh);
    connect(m_write, &QPushButton::clicked, this, &HandOutDialog::start);
    connect(buttons, &QDialogButtonBox::rejected, this, &HandOutDialog::reject);
    connect(&m_writing.progress(), &QFutureWatcherBase::progressValueChanged, m_progress,
        &QProgressBar::setValue);
    connect(&roster, &OpenRoster::failed, m_note, &FieldNote::say);
    refresh();
}

HandOutDialog::~HandOutDialog() = default;

void HandOutDialog::chooseFolder(const QString &folder)
{
    m_folder->setText(QDir::toNativeSeparators(folder));
}

void HandOutDialog::askForFolder()
{
    const QString start = m_folder->text().isEmpty()
        ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
        : m_folder->text();
    const QString folder = ui::askForFolder(this, tr("Folder for the hand-outs"), start);
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

HandOutBatch HandOutDialog::order() const
{
    HandOutBatch batch;
    batch.estimateOf = [fits = m_estimates.all()](core::LifterId lifter, core::Lift lift) {
        const auto found = fits.find({lifter, lift});
        return found == fits.end() ? nullptr : found->second.get();
    };
    batch.readiness = m_insights.readiness();
    batch.monday = monday();
    batch.kinds = kinds();
    batch.paper = usualPaper();
    batch.folder = QDir::fromNativeSeparators(m_folder->text().trimmed());
    batch.now = m_roster.today().now().toUTC();
    batch.today = m_roster.today().date();
    batch.giving = giving(m_roster, core::GivenBy::handOut);
    batch.anew = m_anew->isChecked();
    return batch;
}

void HandOutDialog::start()
{
    if (!m_write->isEnabled())
        return;
    QSettings().setValue(kFolderKey, m_folder->text());
    QSettings().setValue(kPdfKey, m_pdf->isChecked());
    QSettings().setValue(kCalendarKey, m_calendar->isChecked());
    m_stopped.clear();
    write(m_answers[size_t(m_who->currentIndex())].lifters);
}

void HandOutDialog::write(std::vector<core::LifterId> lifters)
{
    m_lifters = std::move(lifters);
    m_summary->clear();
    m_progress->setValue(0);
    m_progress->show();
    m_writing.start([order = order(), who = m_lifters](
                        const core::RosterReader &roster, const core::Watch &watch) {
        HandOutBatch batch = order;
        batch.takeFrom(roster, who);
        return writeHandOuts(batch, watch);
    });
    refresh();
}

void HandOutDialog::finish(const std::optional<HandOutSummary> &summary)
{
    m_progress->hide();
    refresh();
    if (!summary)
        return;
    if (!summary->stops.empty()) {
        askAbout(summary->stops);
        return;
    }
    keep(m_roster, summary->given); // where it cannot be stored, the note says so
    QStringList lines = summaryLines(*summary);
    if (!m_stopped.isEmpty())
        lines << tr("Still stopped by the plan checks: %1.")
                     .arg(core::language().createSeparatedList(m_stopped));
    m_summary->setText(lines.join(u'\n'));
    Q_EMIT written(*summary);
}

void HandOutDialog::askAbout(const std::vector<core::OpenStop> &stops)
{
    AcceptDialog dialog(stops, this);
    if (dialog.exec() != QDialog::Accepted || !acceptStops(m_roster, stops, dialog.notes())) {
        m_summary->setText(tr("Nothing was written."));
        return;
    }
    std::vector<core::LifterId> lifters = m_lifters;
    for (const core::OpenStop &stop : stops)
        if (const core::LifterId lifter = stop.finding.key.lifter;
            !dialog.notes().contains(lifter) && std::erase(lifters, lifter) > 0)
            m_stopped << stop.lifter;
    write(std::move(lifters));
}

void HandOutDialog::refresh()
{
    m_weekWords->setText(tr("%1 to %2")
                             .arg(core::dateWords(monday(), QStringLiteral("d MMMM")),
                                 core::dateWords(monday().addDays(core::kWeekDays - 1),
                                     QStringLiteral("d MMMM yyyy"))));
    const bool hasFolder = !m_folder->text().trimmed().isEmpty();
    const bool isFile = QFileInfo(m_folder->text()).isFile();
    m_note->say(isFile             ? tr("This is a file. Choose a folder.")
            : kinds().count() == 0 ? tr("Choose at least one kind of file.")
            : m_answers.empty()    ? tr("The roster has no lifter who trains.")
                                   : QString());
    m_write->setEnabled(hasFolder && !isFile && m_week->isSound() && kinds().count() > 0
        && !m_answers.empty() && !isBusy());
    m_close->setText(isBusy() ? tr("&Stop") : tr("&Close"));
}

void HandOutDialog::reject()
{
    if (isBusy())
        m_writing.askToStop(); // what is written stays, and the summary names it
    else
        QDialog::reject();
}

} // namespace ui
