#include "ui/look/date_field.h"

#include "core/domain/language.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"

#include <QCalendarWidget>
#include <QLineEdit>
#include <QMenu>
#include <QRegularExpression>
#include <QToolButton>
#include <QWidgetAction>

namespace ui {

namespace {
const QString kShown = QStringLiteral("d MMM yyyy");
constexpr int kWidth = 130;      ///< px
constexpr int kFirstYear = 1900; ///< before it a year is only half typed
} // namespace

QString shownDate(QDate date)
{
    return core::dateWords(date, kShown);
}

QDate dateTyped(const QString &text)
{
    const QString typed = text.simplified();
    const auto isWhole = [](QDate date) { return date.isValid() && date.year() >= kFirstYear; };
    if (const QDate date = QDate::fromString(typed, Qt::ISODate); isWhole(date))
        return date;
    // Numbers in the country's order, with the whole year.
    static const QRegularExpression kRuns(QStringLiteral("([dMy])\\1*"));
    const QString numbers = QLocale()
                                .dateFormat(QLocale::ShortFormat)
                                .replace(kRuns, QStringLiteral("\\1"))
                                .replace(u'y', QStringLiteral("yyyy"));
    if (const QDate date = QLocale().toDate(typed, numbers); isWhole(date))
        return date;
    // Months by name in the program's language, and in the country's.
    for (const QLocale &locale : {core::language(), QLocale()})
        for (const char *format : {"d MMM yyyy", "d MMMM yyyy", "d. MMM yyyy", "d. MMMM yyyy"})
            if (const QDate date = locale.toDate(typed, QString::fromLatin1(format)); isWhole(date))
                return date;
    return {};
}

DateField::DateField(QDate date, const QString &accessibleName, QWidget *parent)
    : QWidget(parent)
    , m_field(named("date", new QLineEdit))
    , m_pick(new QToolButton)
    , m_note(named("dateProblem", new FieldNote(FieldNote::Kind::problem)))
{
    m_field->setAccessibleName(accessibleName);
    m_field->setMinimumWidth(kWidth);
    m_field->setMaximumWidth(kWidth);
    m_pick->setText(QStringLiteral("\u25be"));
    m_pick->setAccessibleName(tr("%1: pick from a calendar").arg(accessibleName));
    m_pick->setToolTip(tr("Pick from a calendar"));
    fill(this,
        columnLayout(
            {rowLayout({m_field, m_pick, Stretch{1}}, space::tight), m_note}, space::hair));
    setFocusProxy(m_field);
    setDate(date);
    connect(m_field, &QLineEdit::textEdited, this, &DateField::take);
    connect(m_field, &QLineEdit::editingFinished, this, [this] {
        if (isSound())
            m_field->setText(shownDate(m_date));
        m_note->say(problem());
    });
    connect(m_pick, &QToolButton::clicked, this, &DateField::openCalendar);
}

void DateField::setDate(QDate date)
{
    m_date = date;
    m_field->setText(shownDate(date));
    m_note->say({});
}

void DateField::setMaximumDate(QDate latest)
{
    m_latest = latest;
}

QString DateField::problem() const
{
    const QDate typed = dateTyped(m_field->text());
    if (!typed.isValid())
        return tr("\"%1\" is no date. Write it like %2 or %3.")
            .arg(m_field->text().simplified().left(40), shownDate(m_date),
                m_date.toString(Qt::ISODate));
    if (m_latest.isValid() && typed > m_latest)
        return tr("%1 is too late: the last day here is %2.")
            .arg(shownDate(typed), shownDate(m_latest));
    return {};
}

void DateField::take(const QString &text)
{
    if (isSound()) {
        m_date = dateTyped(text);
        m_note->say({});
    }
    Q_EMIT edited();
}

void DateField::openCalendar()
{
    QMenu menu(this);
    auto *calendar = new QCalendarWidget;
    calendar->setLocale(core::language());
    calendar->setFirstDayOfWeek(Qt::Monday);
    calendar->setSelectedDate(m_date);
    if (m_latest.isValid())
        calendar->setMaximumDate(m_latest);
    QWidgetAction whole(&menu);
    whole.setDefaultWidget(calendar);
    menu.addAction(&whole);
    const auto pick = [this, &menu](QDate date) {
        setDate(date);
        Q_EMIT edited();
        menu.close();
    };
    connect(calendar, &QCalendarWidget::activated, &menu, pick);
    connect(calendar, &QCalendarWidget::clicked, &menu, pick);
    connect(&menu, &QMenu::aboutToShow, calendar, [calendar] { calendar->setFocus(); });
    menu.exec(m_pick->mapToGlobal(QPoint(0, m_pick->height())));
}

} // namespace ui
