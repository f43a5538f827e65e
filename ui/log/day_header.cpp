#include "ui/log/day_header.h"

#include "core/domain/language.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/words_label.h"

#include <QToolButton>
#include <cstdlib>

namespace ui {

namespace {

/// "Not today: 3 days ago"; empty on the day.
QString distance(QDate day, QDate today)
{
    const qint64 ahead = today.daysTo(day);
    if (ahead == 0)
        return {};
    if (ahead == -1)
        return DayHeader::tr("Not today: yesterday");
    if (ahead == 1)
        return DayHeader::tr("Not today: tomorrow");
    return (ahead < 0 ? DayHeader::tr("Not today: %1 days ago")
                      : DayHeader::tr("Not today: in %1 days"))
        .arg(std::abs(ahead));
}

} // namespace

DayHeader::DayHeader(QWidget *parent)
    : QWidget(parent)
    , m_title(named("day", new ElidedLabel))
    , m_notToday(named("notToday", new FieldNote(FieldNote::Kind::caution)))
    , m_progress(named("progress", new ElidedLabel))
{
    m_notToday->setFont(ui::font(Type::strong, font()));
    m_notToday->setWordWrap(false);
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
                      space::gap, m_title, space::gap, m_notToday, Stretch{1}, m_progress},
            space::tight));
}

void DayHeader::show(QDate day, QDate today, const QString &progress)
{
    m_day = day;
    m_title->setText(core::dateWords(day, QStringLiteral("dddd d MMMM yyyy")));
    m_notToday->say(distance(day, today));
    m_progress->setText(progress);
}

} // namespace ui
