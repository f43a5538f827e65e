#include "ui/log/day_header.h"

#include "core/domain/language.h"
#include "ui/look/form_parts.h"
#include "ui/look/words_label.h"

#include <QToolButton>

namespace ui {

DayHeader::DayHeader(QWidget *parent)
    : QWidget(parent)
    , m_title(named("day", new ElidedLabel))
    , m_progress(named("progress", new ElidedLabel))
{
    m_title->setFont(ui::font(Type::heading, font()));
    const auto turn = [this](
                          const QString &text, const QString &name, const QString &keys, int days) {
        return turnButton(text, name, QKeySequence(keys), this, [this, days] {
            if (days == 0)
                Q_EMIT todayWanted();
            else
                Q_EMIT dayWanted(m_day.addDays(days));
        });
    };
    fill(this,
        rowLayout({turn(QStringLiteral("\u2039"), tr("Day before"), tr("Ctrl+PgUp"), -1),
                      turn(tr("Today"), tr("Go to today"), tr("Ctrl+Home"), 0),
                      turn(QStringLiteral("\u203a"), tr("Day after"), tr("Ctrl+PgDown"), 1),
                      space::gap, m_title, Stretch{1}, m_progress},
            space::tight));
}

void DayHeader::show(QDate day, const QString &progress)
{
    m_day = day;
    m_title->setText(core::dateWords(day, QStringLiteral("dddd d MMMM yyyy")));
    m_progress->setText(progress);
}

} // namespace ui
