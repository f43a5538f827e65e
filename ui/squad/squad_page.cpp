#include "ui/squad/squad_page.h"

#include "core/log/roster_adherence.h"
#include "ui/look/form_parts.h"
#include "ui/look/page_help.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/today.h"
#include "ui/squad/spark_line.h"
#include "ui/squad/squad_model.h"

#include <QComboBox>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QTableView>

namespace ui {

namespace {
constexpr int kAhead = 365; ///< days of plan that are looked at
constexpr int kQueryWidth = 280, kLeastWidth = 40;
/// The reason is as wide as its words; the others fit a window of 1366 pixels beside it and the
/// lifter list, and the last has what is left.
constexpr std::pair<SquadModel::Column, int> kWidths[] = {{SquadModel::lifterColumn, 104},
    {SquadModel::trendColumn, 152}, {SquadModel::maxColumn, 66}, {SquadModel::lastColumn, 56},
    {SquadModel::plannedColumn, 56}, {SquadModel::missedColumn, 52}, {SquadModel::doneColumn, 56},
    {SquadModel::painColumn, 66}, {SquadModel::readinessColumn, 74}, {SquadModel::meetColumn, 52}};
} // namespace

SquadPage::SquadPage(OpenRoster &roster, Estimates &estimates, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_estimates(estimates)
    , m_model(new SquadModel(this))
    , m_filter(new SquadFilter(this))
    , m_table(new QTableView(this))
    , m_count(new QLabel(this))
    , m_why(named("squadWhy", plainWords()))
    , m_adherence(
          roster,
          [this](std::optional<std::map<core::LifterId, core::Adherence>> found) {
              if (found)
                  m_model->setAdherence(std::move(*found));
          },
          tr("What was done of the plans could not be worked out."))
{
    m_filter->setSourceModel(m_model);
    m_why->setMinimumHeight(space::field);
    makeTable();
    setFocusProxy(m_table);
    fill(this, columnLayout({makeTopBar(), {m_table, 1}, m_why}),
        {space::group, space::gap, space::group, space::gap});

    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Lifter, core::Variation, core::Card, core::CheckIn, core::GivenDay>())
            refresh();
    });
    connect(&estimates, &Estimates::changed, this, &SquadPage::refresh);
    connect(&roster.today(), &Today::changed, this, &SquadPage::refresh);
}

QWidget *SquadPage::makeTopBar()
{
    QLineEdit *query = named("squadQuery", searchField(tr("Find a lifter")));
    query->setMaximumWidth(kQueryWidth);
    connect(query, &QLineEdit::textChanged, this, [this](const QString &text) {
        m_filter->setQuery(text);
        showCount();
    });
    auto *show = named("squadShow", new QComboBox);
    show->setAccessibleName(tr("Show"));
    show->addItems({tr("All lifters"), tr("Who needs attention"), tr("With pain"),
        tr("Nothing planned this week"), tr("Meet within 8 weeks")});
    connect(show, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_filter->setShow(SquadFilter::Show(index));
        showCount();
    });
    return boxed(rowLayout({query, show, m_count, Stretch{1}}));
}

void SquadPage::makeTable()
{
    m_table->setModel(m_filter);
    m_table->setItemDelegateForColumn(SquadModel::trendColumn, new SparkDelegate(m_table));
    m_table->setAccessibleName(tr("Squad"));
    setUpForReading(*m_table);
    m_table->setShowGrid(false);
    m_table->setWordWrap(false);
    m_table->verticalHeader()->setDefaultSectionSize(space::field);
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(SquadModel::attentionColumn, Qt::DescendingOrder);
    QHeaderView *header = m_table->horizontalHeader();
    header->setHighlightSections(false);
    header->setMinimumSectionSize(kLeastWidth);
    header->setStretchLastSection(true);
    header->setSectionResizeMode(SquadModel::attentionColumn, QHeaderView::ResizeToContents);
    for (const auto &[column, width] : kWidths)
        header->resizeSection(column, width);
    m_table->installEventFilter(this);
    new HelpSection(
        tr("Table"),
        [] { return HelpRows{keyRow({Qt::Key_Return}, tr("to the page that shows why"))}; }, this);
    connect(m_table, &QTableView::doubleClicked, this, &SquadPage::openReason);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
        &SquadPage::showWhy);
}

void SquadPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
}

bool SquadPage::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_table && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent *>(event)->key();
        if ((key == Qt::Key_Return || key == Qt::Key_Enter) && m_table->currentIndex().isValid()) {
            openReason(m_table->currentIndex());
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void SquadPage::refresh()
{
    m_stale = !isVisible(); // a page that nobody sees reads no plan
    if (m_stale)
        return;
    const core::LifterId current = m_table->currentIndex().isValid()
        ? m_model->row(m_filter->mapToSource(m_table->currentIndex()).row()).lifter
        : core::LifterId{};
    const QDate today = m_roster.today().date();
    const auto cards =
        m_roster.cards(today.addDays(-core::kSquadLookBackDays), today.addDays(kAhead));
    const auto checkIns = m_roster.checkIns();
    m_model->setRows(
        core::squadRows({today, m_roster.lifters(), m_roster.variations(), cards, checkIns,
            [this](
                core::LifterId lifter, core::Lift lift) { return m_estimates.of(lifter, lift); }}),
        m_roster.lifters());
    workOutAdherence();
    int row = 0;
    for (int i = 0; i < m_filter->rowCount(); ++i)
        if (m_model->row(m_filter->mapToSource(m_filter->index(i, 0)).row()).lifter == current)
            row = i;
    m_table->setCurrentIndex(m_filter->index(row, 0));
    showCount();
    showWhy();
}

void SquadPage::workOutAdherence()
{
    m_adherence.startNext([lifters = m_roster.lifters(), catalogue = m_roster.variations(),
                              fits = m_estimates.all(), today = m_roster.today().date()](
                              const core::RosterReader &reader, const core::Watch &) {
        const auto [from, to] = core::daysOfLate(today);
        return core::adherenceOfAll(
            {lifters, catalogue, reader.cards(from, to), reader.given(from, to),
                [&fits](core::LifterId lifter, core::Lift lift) -> const core::LiftEstimate * {
                    const auto fit = fits.find({lifter, lift});
                    return fit == fits.end() ? nullptr : fit->second.get();
                },
                today});
    });
}

void SquadPage::showCount()
{
    const int shown = m_filter->rowCount(), all = m_model->rowCount();
    m_count->setText(
        shown == all ? tr("Lifters: %1").arg(all) : tr("%1 of %2 lifters").arg(shown).arg(all));
}

void SquadPage::showWhy()
{
    const QModelIndex index = m_filter->mapToSource(m_table->currentIndex());
    if (!index.isValid())
        return m_why->setText(m_model->rowCount() == 0
                ? tr("No lifters yet. Add one in the list, or import a log.")
                : tr("No lifter matches what is asked for."));
    const core::SquadRow &row = m_model->row(index.row());
    m_why->setText((row.leadsToPlan() ? tr("%1: %2 Enter or a double click opens the week board.")
                                      : tr("%1: %2 Enter or a double click opens the review."))
                       .arg(row.name, row.why()));
}

void SquadPage::openReason(const QModelIndex &index)
{
    const core::SquadRow &row = m_model->row(m_filter->mapToSource(index).row());
    Q_EMIT reasonAskedFor(row.lifter, row.leadsToPlan());
}

} // namespace ui
