#include "ui/look/week_header.h"

#include "core/domain/week.h"
#include "ui/look/form_parts.h"
#include "ui/look/metrics.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QToolButton>

namespace ui {

QString weekTitle(QDate monday)
{
    const QLocale locale;
    const QDate sunday = monday.addDays(core::kWeekDays - 1);
    const QString full = QStringLiteral("d MMMM yyyy");
    const QString first = monday.year() != sunday.year() ? full
        : monday.month() != sunday.month()               ? QStringLiteral("d MMMM")
                                                         : QStringLiteral("d");
    return WeekHeader::tr("%1 \u2013 %2, week %3")
        .arg(locale.toString(monday, first), locale.toString(sunday, full))
        .arg(monday.weekNumber());
}

WeekHeader::WeekHeader(QWidget *parent)
    : QWidget(parent)
    , m_title(new QLabel(this))
    , m_totals(new QLabel(this))
{
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(space::tight);
    addTurn(QStringLiteral("\u2039"), tr("Previous week"), QKeySequence(tr("Ctrl+PgUp")), -1);
    addTurn(tr("This week"), tr("Go to this week"), QKeySequence(tr("Ctrl+Home")), 0);
    addTurn(QStringLiteral("\u203a"), tr("Next week"), QKeySequence(tr("Ctrl+PgDown")), 1);
    m_title->setFont(ui::font(Type::heading, font()));
    layout->addSpacing(space::gap);
    layout->addWidget(m_title);
    layout->addStretch(1);
    layout->addWidget(m_totals);
}

void WeekHeader::show(QDate monday, const QString &totals)
{
    m_monday = monday;
    m_title->setText(weekTitle(monday));
    m_totals->setText(totals);
}

void WeekHeader::addMenu(const QString &text, QMenu *menu)
{
    auto *button = new QPushButton(text, this);
    button->setAccessibleName(QString(text).remove(u'&'));
    button->setAutoDefault(false);
    button->setMenu(menu);
    layout()->addWidget(button);
}

void WeekHeader::addTurn(
    const QString &text, const QString &name, const QKeySequence &keys, int weeks)
{
    layout()->addWidget(turnButton(text, name, keys, this, [this, weeks] {
        Q_EMIT weekWanted(
            weeks == 0 ? QDate::currentDate() : m_monday.addDays(weeks * core::kWeekDays));
    }));
}

} // namespace ui
