#include "ui/look/week_header.h"

#include "core/domain/language.h"
#include "core/domain/week.h"
#include "ui/look/form_parts.h"
#include "ui/look/words_label.h"

#include <QPushButton>
#include <QToolButton>

namespace ui {

QString weekTitle(QDate monday)
{
    const QDate sunday = monday.addDays(core::kWeekDays - 1);
    const QString full = QStringLiteral("d MMMM yyyy");
    const QString first = monday.year() != sunday.year() ? full
        : monday.month() != sunday.month()               ? QStringLiteral("d MMMM")
                                                         : QStringLiteral("d");
    return WeekHeader::tr("%1 \u2013 %2, week %3")
        .arg(core::dateWords(monday, first), core::dateWords(sunday, full))
        .arg(monday.weekNumber());
}

WeekHeader::WeekHeader(QWidget *parent)
    : QWidget(parent)
    , m_title(new ElidedLabel)
    , m_totals(new ElidedLabel)
{
    m_title->setFont(ui::font(Type::heading, font()));
    const auto turn = [this](const QString &text, const QString &name, const QString &keys,
                          int weeks) {
        return turnButton(text, name, QKeySequence(keys), this, [this, weeks] {
            if (weeks == 0)
                Q_EMIT thisWeekWanted();
            else
                Q_EMIT weekWanted(m_monday.addDays(weeks * core::kWeekDays));
        });
    };
    fill(this,
        rowLayout({turn(QStringLiteral("\u2039"), tr("Previous week"), tr("Ctrl+PgUp"), -1),
                      turn(tr("This week"), tr("Go to this week"), tr("Ctrl+Home"), 0),
                      turn(QStringLiteral("\u203a"), tr("Next week"), tr("Ctrl+PgDown"), 1),
                      space::gap, m_title, Stretch{1}, m_totals},
            space::tight));
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

} // namespace ui
