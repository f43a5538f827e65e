#include "ui/roster_week/roster_week_page.h"

#include "core/notation/notation_help.h"
#include "ui/look/form_parts.h"
#include "ui/look/page_help.h"
#include "ui/look/week_header.h"
#include "ui/planning/copied_day.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster_week/cell_delegate.h"
#include "ui/roster_week/roster_week_model.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPlainTextEdit>
#include <QTableView>
#include <algorithm>

namespace ui {

namespace {
constexpr int kDayWidth = 150;
constexpr int kMostNames = 200; ///< px
} // namespace

RosterWeekPage::RosterWeekPage(OpenRoster &roster, Estimates &estimates, const Insights &insights,
    Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_selection(selection)
    , m_model(new RosterWeekModel(roster, estimates, insights, selection, this))
    , m_delegate(new CellDelegate(*m_model, this))
    , m_header(new WeekHeader(this))
    , m_table(new QTableView)
{
    m_table->setModel(m_model);
    m_table->setItemDelegate(m_delegate);
    connect(&roster, &OpenRoster::settling, m_delegate,
        [this](QStringList *left) { m_delegate->settle(*left); });
    m_table->setWordWrap(true);
    m_table->setAlternatingRowColors(true);
    m_table->setVerticalScrollMode(QTableView::ScrollPerPixel);
    m_table->setSelectionMode(QTableView::SingleSelection);
    m_table->setEditTriggers(
        QTableView::DoubleClicked | QTableView::EditKeyPressed | QTableView::AnyKeyPressed);
    m_table->setAccessibleName(tr("The week of all lifters"));
    m_table->setTabKeyNavigation(false);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->horizontalHeader()->setMinimumSectionSize(kDayWidth / 2);
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->verticalHeader()->setMaximumWidth(kMostNames);
    m_table->verticalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_table->installEventFilter(this);
    m_table->viewport()->installEventFilter(this);
    setFocusProxy(m_table);

    QLabel *help = plainWords(tr(
        "Typing or Enter changes a day: a line a card, such as \"Feet-up bench: 3x6 @7.5\". "
        "Copy and paste carry a day to another lifter; loads follow each lifter's own estimate."));
    fill(this, columnLayout({m_header, help, {m_table, 1}}),
        {space::gap, space::gap, space::gap, space::gap});

    connect(m_header, &WeekHeader::weekWanted, &selection, &Selection::setWeekOf);
    connect(m_header, &WeekHeader::thisWeekWanted, &selection, &Selection::setThisWeek);
    connect(&selection, &Selection::weekChanged, this, &RosterWeekPage::showWeek);
    connect(m_model, &RosterWeekModel::said, this, &RosterWeekPage::said);
    connect(m_table->verticalHeader(), &QHeaderView::sectionDoubleClicked, this, [this](int row) {
        m_selection.setLifter(m_model->lifterAt(row));
        Q_EMIT lifterWanted();
    });
    addHelp();
    showWeek();
}

void RosterWeekPage::addHelp()
{
    new HelpSection(
        tr("Table"),
        [] {
            return HelpRows{keyRow({Qt::Key_Return}, tr("write the day's cards; take them")),
                keyRow({Qt::SHIFT | Qt::Key_Return}, tr("while writing: another card")),
                keyRow({QKeySequence::Copy}, tr("copy the day")),
                keyRow({QKeySequence::Cut}, tr("cut the day")),
                keyRow({QKeySequence::Paste}, tr("paste below what is there")),
                keyRow({Qt::Key_Delete}, tr("empty the day"))};
        },
        this);
    new HelpSection(
        tr("A card is its variation, a colon and set lines such as"),
        [] { return formRows(core::setLineForms()); }, this);
}

void RosterWeekPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    if (!m_table->currentIndex().isValid() && m_model->rowCount() > 0)
        m_table->setCurrentIndex(m_model->index(0, 0));
}

void RosterWeekPage::showWeek()
{
    m_header->show(m_selection.monday(), {});
}

bool RosterWeekPage::eventFilter(QObject *watched, QEvent *event)
{
    // The view stores and closes the field of a cell that is left, asked about or not.
    if (watched == m_table->viewport())
        return (event->type() == QEvent::MouseButtonPress
                   || event->type() == QEvent::MouseButtonDblClick)
            && m_delegate->holds();
    if (event->type() != QEvent::KeyPress || !m_table->currentIndex().isValid())
        return QWidget::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    if (key->matches(QKeySequence::Copy)) {
        copy();
    } else if (key->matches(QKeySequence::Cut)) {
        copy();
        clear();
    } else if (key->matches(QKeySequence::Paste)) {
        paste();
    } else if (key->key() == Qt::Key_Delete) {
        clear();
    } else if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
        m_table->edit(m_table->currentIndex());
    } else {
        return QWidget::eventFilter(watched, event);
    }
    return true;
}

void RosterWeekPage::copy()
{
    const QModelIndex cell = m_table->currentIndex();
    if (const core::Lifter *lifter = m_roster.lifter(m_model->lifterAt(cell.row())))
        copyDay(m_model->textAt(cell), *lifter);
}

void RosterWeekPage::paste()
{
    const QModelIndex cell = m_table->currentIndex();
    const CopiedDay copied = copiedDay(m_roster.variations(), m_roster.lifters());
    if (!copied.refused.isEmpty()) {
        Q_EMIT said(copied.refused);
        return;
    }
    if (std::ranges::any_of(
            copied.rows, [](const core::CardRow &row) { return row.offset != 0; })) {
        Q_EMIT said(tr("A cell holds one day; paste several days on the week board."));
        return;
    }
    const auto [text, remarks] = m_model->pasted(cell, copied);
    if (!m_model->whyFarAbove(cell, text).isEmpty()) {
        m_table->edit(cell); // as if it had been typed there
        if (auto *editor = m_table->findChild<QPlainTextEdit *>()) {
            editor->setPlainText(text);
            m_delegate->asks(*editor);
        }
    } else if (text != m_model->textAt(cell)) {
        m_model->setData(cell, text, Qt::EditRole);
    }
    if (!remarks.isEmpty()) // after the step, which takes away what was said before
        Q_EMIT said(remarks.join(u' '));
}

void RosterWeekPage::clear()
{
    m_model->setData(m_table->currentIndex(), QString(), Qt::EditRole);
}

} // namespace ui
