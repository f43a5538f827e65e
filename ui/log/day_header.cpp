#include "ui/log/day_header.h"

#include "ui/look/form_parts.h"
#include "ui/look/metrics.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QToolButton>

namespace ui {

DayHeader::DayHeader(QWidget *parent)
    : QWidget(parent)
    , m_title(new QLabel)
    , m_progress(new QLabel)
{
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::tight);
    const auto turn = [this](int days) {
        return [this, days] {
            Q_EMIT dayWanted(days == 0 ? QDate::currentDate() : m_day.addDays(days));
        };
    };
    row->addWidget(turnButton(
        QStringLiteral("\u2039"), tr("Day before"), QKeySequence(tr("Ctrl+PgUp")), this, turn(-1)));
    row->addWidget(
        turnButton(tr("Today"), tr("Go to today"), QKeySequence(tr("Ctrl+Home")), this, turn(0)));
    row->addWidget(turnButton(
        QStringLiteral("\u203a"), tr("Day after"), QKeySequence(tr("Ctrl+PgDown")), this, turn(1)));
    m_title->setFont(ui::font(Type::heading, font()));
    m_title->setObjectName(QStringLiteral("day"));
    m_progress->setObjectName(QStringLiteral("progress"));
    row->addSpacing(space::gap);
    row->addWidget(m_title);
    row->addStretch(1);
    row->addWidget(m_progress);
}

void DayHeader::show(QDate day, const QString &progress)
{
    m_day = day;
    m_title->setText(QLocale().toString(day, QStringLiteral("dddd d MMMM yyyy")));
    m_progress->setText(progress);
}

} // namespace ui
