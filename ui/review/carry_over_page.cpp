#include "ui/review/carry_over_page.h"

#include "ui/look/form_parts.h"
#include "ui/roster/insights.h"
#include "ui/roster/open_roster.h"

#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QStackedWidget>
#include <QTableWidget>

namespace ui {

namespace {
enum Column {
    variationColumn,
    changeColumn,
    doseColumn,
    weeksColumn,
    liftersColumn,
    meaningColumn
};
constexpr int kVariationWidth = 200, kChangeWidth = 190;
} // namespace

CarryOverPage::CarryOverPage(OpenRoster &roster, Insights &insights, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_insights(insights)
    , m_stack(new QStackedWidget(this))
    , m_table(new QTableWidget(this))
    , m_nothing(centredWords())
{
    QLabel *title =
        label(Type::heading, tr("What carried over to the competition bench, all lifters"));

    m_table->setColumnCount(meaningColumn + 1);
    m_table->setHorizontalHeaderLabels({tr("Variation"), tr("Change (90 % interval)"),
        tr("Usual hard lifts"), tr("Weeks"), tr("Lifters"), tr("What it says")});
    setUpForReading(*m_table);
    m_table->setShowGrid(false);
    m_table->setAccessibleName(title->text());
    m_table->verticalHeader()->setDefaultSectionSize(space::field);
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->resizeSection(variationColumn, kVariationWidth);
    m_table->horizontalHeader()->resizeSection(changeColumn, kChangeWidth);
    m_stack->addWidget(m_table);
    m_stack->addWidget(m_nothing);

    fill(this, columnLayout({title, plainWords(core::carryOverCaution()), {m_stack, 1}}),
        {space::group, space::gap, space::group, space::gap});
    connect(&insights, &Insights::changed, this, &CarryOverPage::refresh);
}

void CarryOverPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    refresh();
}

void CarryOverPage::refresh()
{
    if (!isVisible())
        return;
    const std::vector<core::CarryOverRow> &rows = m_insights.carriedOver();
    m_nothing->setText(m_insights.isBusy()
            ? tr("The roster's logs are being read.")
            : tr(
                "Not enough to say: no lifter has logged other bench variations beside eight weeks "
                "of rated competition sets yet."));
    m_stack->setCurrentIndex(rows.empty() ? 1 : 0);
    m_table->setRowCount(int(rows.size()));
    const QLocale locale;
    for (int i = 0; i < int(rows.size()); ++i) {
        const core::CarryOverRow &row = rows[size_t(i)];
        const core::Variation *variation = m_roster.variation(row.variation);
        const auto put = [&](int column, const QString &text) {
            m_table->setItem(i, column, new QTableWidgetItem(text));
        };
        put(variationColumn, variation ? variation->name : QString());
        put(changeColumn, core::effectWords(row.effect));
        put(doseColumn, tr("%1 a week").arg(locale.toString(row.effect.usualLifts, 'f', 0)));
        put(weeksColumn, locale.toString(row.effect.weeks));
        put(liftersColumn, locale.toString(row.effect.lifters));
        put(meaningColumn, core::meaningWords(row.effect));
    }
}

} // namespace ui
