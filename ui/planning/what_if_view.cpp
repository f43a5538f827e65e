#include "ui/planning/what_if_view.h"

#include "ui/look/form_parts.h"
#include "ui/look/text.h"

#include <QHeaderView>
#include <QLocale>
#include <QTableWidget>
#include <cmath>

namespace ui {

namespace {

QString bandText(const strength::Band &band, core::Unit unit)
{
    return Text::tr("%1 (%2 to %3)")
        .arg(core::formatLoad(band.kg, unit, 1), core::formatLoadNumber(band.low90, unit, 0),
            core::formatLoadNumber(band.high90, unit, 0));
}

QString signedPercent(double ratio)
{
    const double percent = std::round((ratio - 1.0) * 1000.0) / 10.0;
    const QString number = QLocale().toString(std::abs(percent), 'f', 1);
    return (percent > 0.0          ? QStringLiteral("+")
                   : percent < 0.0 ? QStringLiteral("\u2212")
                                   : QString())
        + number;
}

QString percent(double share)
{
    return QLocale().toString(int(std::lround(share * 100.0)));
}

} // namespace

std::vector<WhatIfRow> whatIfRows(const core::WhatIfComparison &comparison, core::Unit unit)
{
    std::vector<WhatIfRow> rows;
    const QLocale locale;
    for (size_t i = 0; i < comparison.ratio.size(); ++i) {
        const core::WhatIfWeek &now = comparison.current.weeks[i];
        const core::WhatIfWeek &then = comparison.changed.weeks[i];
        const strength::Interval &ratio = comparison.ratio[i];
        rows.push_back({locale.toString(now.sunday, QLocale::ShortFormat), bandText(now.max, unit),
            bandText(then.max, unit),
            Text::tr("%1 % (%2 to %3)")
                .arg(signedPercent(ratio.value), signedPercent(ratio.low90),
                    signedPercent(ratio.high90)),
            Text::tr("%1 % \u2192 %2 %")
                .arg(percent(now.fatigue.value), percent(then.fatigue.value)),
            Text::tr("%1 \u2192 %2")
                .arg(core::formatLoadNumber(now.tonnageKg, unit, 0),
                    core::formatLoad(then.tonnageKg, unit, 0))});
    }
    return rows;
}

WhatIfView::WhatIfView(QWidget *parent)
    : QWidget(parent)
    , m_words(plainWords())
    , m_table(new QTableWidget(0, 6))
{
    m_table->setHorizontalHeaderLabels({tr("Week to"), tr("Max, plan as it is"),
        tr("Max, with this"), tr("Difference"), tr("Fatigue, % of usual"), tr("Tonnage")});
    m_table->verticalHeader()->hide();
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionMode(QAbstractItemView::NoSelection);
    m_table->setAccessibleName(tr("What the weeks may bring"));
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->horizontalHeader()->setStretchLastSection(true);
    fill(this, columnLayout({m_words, {m_table, 1}}));
}

void WhatIfView::show(const core::WhatIfComparison &comparison, core::Unit unit)
{
    const std::vector<WhatIfRow> rows = whatIfRows(comparison, unit);
    const QString why =
        !comparison.current.why.isEmpty() ? comparison.current.why : comparison.changed.why;
    m_table->setVisible(!rows.empty());
    m_words->setText(rows.empty()
            ? tr("No projection: %1").arg(why)
            : tr("Competition max expected at the end of each week, with its 90 % interval: a "
                 "picture of what is plausible, not a promise."));
    m_table->setRowCount(int(rows.size()));
    for (int row = 0; row < int(rows.size()); ++row) {
        const WhatIfRow &each = rows[size_t(row)];
        int column = 0;
        for (const QString &text :
            {each.week, each.current, each.changed, each.difference, each.fatigue, each.tonnage})
            m_table->setItem(row, column++, new QTableWidgetItem(text));
    }
}

} // namespace ui
