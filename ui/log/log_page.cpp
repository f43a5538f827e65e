#include "ui/log/log_page.h"

#include "ui/log/advice_box.h"
#include "ui/log/check_in_form.h"
#include "ui/log/day_header.h"
#include "ui/log/day_log.h"
#include "ui/log/entry_panel.h"
#include "ui/log/log_desk.h"
#include "ui/log/log_table_model.h"
#include "ui/look/form_parts.h"

#include <QHeaderView>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableView>
#include <algorithm>

namespace ui {

namespace {

constexpr int kCheckInWidth = 330;

/// "3 of 12 sets logged"
QString progress(const std::vector<LogLine> &lines)
{
    const auto done = std::count_if(
        lines.begin(), lines.end(), [](const LogLine &line) { return line.done.has_value(); });
    const auto planned = std::count_if(
        lines.begin(), lines.end(), [](const LogLine &line) { return line.planned.has_value(); });
    if (planned == 0)
        return done == 0 ? QString()
            : done == 1  ? LogPage::tr("1 set logged")
                         : LogPage::tr("%1 sets logged").arg(done);
    const auto answered = std::count_if(
        lines.begin(), lines.end(), [](const LogLine &line) { return line.planned && line.done; });
    return answered == planned
        ? LogPage::tr("All %1 planned sets logged").arg(planned)
        : LogPage::tr("%1 of %2 planned sets logged").arg(answered).arg(planned);
}

} // namespace

LogPage::LogPage(OpenRoster &roster, Estimates &estimates, Insights &insights,
    LifterHistory &history, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_log(new DayLog(roster, estimates, insights, history, selection, this))
    , m_desk(new LogDesk(*m_log, this))
    , m_model(new LogTableModel(this))
    , m_header(new DayHeader(this))
    , m_advice(new AdviceBox)
    , m_entry(new EntryPanel(*m_desk))
    , m_empty(plainWords())
    , m_table(named("sets", new QTableView))
    , m_checkIn(new CheckInForm)
    , m_stack(new QStackedWidget)
{
    QLabel *nobody = label(Type::heading, tr("Choose a lifter in the list to log a session."));
    nobody->setAlignment(Qt::AlignCenter);
    m_stack->addWidget(nobody);
    m_stack->addWidget(boxed(rowLayout({{setsColumn(), 1}, checkInColumn()}, space::group)));
    fill(this, columnLayout({m_header, {m_stack, 1}}, space::gap),
        {space::gap, space::gap, space::gap, space::gap});
    setFocusProxy(m_entry);

    m_model->follow(*m_desk); // before the page, which chooses one of its rows
    connect(m_header, &DayHeader::dayWanted, this, &LogPage::showDay);
    connect(m_header, &DayHeader::todayWanted, this, [this] { showDay(m_log->today()); });
    connect(m_desk, &LogDesk::changed, this, &LogPage::showDesk);
    connect(m_table, &QTableView::clicked, this, [this](const QModelIndex &index) {
        m_desk->select(size_t(index.row()));
        m_entry->setFocus();
    });
    connect(m_checkIn, &CheckInForm::said, m_log, &DayLog::say);
    connect(m_log, &DayLog::settling, this, [this](QStringList *left) {
        if (!m_checkIn->giveUntold())
            *left << tr("The check-in of this day");
    });
    connect(m_log, &DayLog::checkInChanged, m_checkIn, &CheckInForm::setCheckIn);
    connect(m_log, &DayLog::checkInNotSaved, m_checkIn, &CheckInForm::keepUnsaved);
    connect(m_advice, &AdviceBox::shiftWanted, m_log, &DayLog::setShiftsLoads);
    connect(m_advice, &AdviceBox::swapWanted, m_log, &DayLog::takeSwap);
    m_checkIn->setCheckIn(m_log->checkIn());
    showDesk();
}

QWidget *LogPage::setsColumn()
{
    m_table->setModel(m_model);
    m_table->setAccessibleName(tr("Sets of the day"));
    m_table->setFocusPolicy(Qt::NoFocus); // its keys are the entry field's
    setUpForReading(*m_table);
    m_table->setAlternatingRowColors(true);
    m_table->setWordWrap(true);
    m_table->setVerticalScrollMode(QTableView::ScrollPerPixel);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->verticalHeader()->setMinimumSectionSize(space::field);
    QHeaderView *columns = m_table->horizontalHeader();
    columns->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    columns->setSectionResizeMode(QHeaderView::Stretch);
    for (const int fitted : {LogTableModel::number, LogTableModel::variation})
        columns->setSectionResizeMode(fitted, QHeaderView::ResizeToContents);
    return boxed(columnLayout({m_advice, m_empty, m_entry, {m_table, 1}}, space::gap));
}

QWidget *LogPage::checkInColumn()
{
    auto *area = new QScrollArea;
    setUpForScrolling(*area,
        boxed(columnLayout(
                  {label(Type::heading, tr("Check-in before training")), m_checkIn, Stretch{1}}),
            {0, 0, space::gap, 0}));
    area->setFixedWidth(kCheckInWidth);
    return area;
}

void LogPage::showDay(QDate day)
{
    m_log->setDay(day);
    m_entry->setFocus();
}

bool LogPage::event(QEvent *event)
{
    if (event->type() == QEvent::Show || event->type() == QEvent::WindowActivate)
        m_log->keepUp();
    return QWidget::event(event);
}

void LogPage::showDesk()
{
    const bool hasLifter = m_log->lifter();
    m_header->setVisible(hasLifter);
    m_stack->setCurrentIndex(hasLifter ? 1 : 0);
    if (!hasLifter)
        return;
    m_header->show(m_log->day(), m_log->today(), progress(m_desk->lines()));
    m_advice->show(m_log->advice(), m_log->shiftsLoads(), m_log->catalogue());
    QStringList notices;
    if (m_log->rows().empty())
        notices << tr("Nothing is planned for this day. Write a set, such as 100x5, to log it, or "
                      "put cards on the week board first.");
    for (const QString &name : m_log->unreadable())
        notices << tr("The sets of %1 cannot be read: put its set line right on the week board.")
                       .arg(name);
    m_empty->setText(notices.join(u'\n'));
    m_empty->setVisible(!notices.isEmpty());
    m_table->selectRow(int(m_desk->current()));
    m_table->scrollTo(m_model->index(int(m_desk->current()), 0));
    m_entry->show(m_log->catalogue());
}

} // namespace ui
