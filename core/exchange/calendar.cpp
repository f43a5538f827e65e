#include "core/exchange/calendar.h"

#include "core/domain/text.h"

#include <QCryptographicHash>
#include <libical/ical.h>
#include <memory>
#include <stdexcept>

namespace core {

namespace {

constexpr qsizetype kUidDigits = 32;

struct FreeComponent
{
    void operator()(icalcomponent *component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, FreeComponent>;

/// UTF-8 without the control characters that RFC 5545, section 3.1, keeps out of text; libical
/// escapes the rest and folds the lines.
QByteArray text(const QString &words)
{
    QString clean;
    for (const QChar c : words)
        if (c == u'\n' || c.category() != QChar::Other_Control)
            clean += c;
    return clean.toUtf8();
}

void add(icalcomponent *component, icalproperty *property)
{
    if (!property)
        throw std::runtime_error(icalerror_strerror(icalerrno));
    icalcomponent_add_property(component, property); // which owns it from now on
}

icaltimetype allDay(QDate day)
{
    icaltimetype time = icaltime_null_date();
    time.year = day.year();
    time.month = day.month();
    time.day = day.day();
    return time;
}

/// Of lifter and day alone: what is planned may change under it.
QByteArray uid(const Lifter &lifter, QDate day)
{
    const QString key = QStringLiteral("%1\n%2\n%3")
                            .arg(lifter.id.value)
                            .arg(lifter.name, day.toString(Qt::ISODate));
    return QCryptographicHash::hash(key.toUtf8(), QCryptographicHash::Sha256)
               .toHex()
               .left(kUidDigits)
        + "@benchwright.invalid"; // RFC 6761: a domain that is nobody's
}

QString heading(const SheetCard &card)
{
    return card.setLine.isEmpty() ? card.variation
                                  : Text::tr("%1: %2").arg(card.variation, card.setLine);
}

QString description(const SheetDay &day, const WeekSheet &sheet)
{
    QStringList lines = sheet.stops + day.stops;
    for (const SheetCard &card : day.cards) {
        lines << heading(card);
        lines << card.withheld << card.lighter;
        if (!card.note.isEmpty())
            lines << card.note;
        for (const SheetSet &set : card.sets)
            if (const QString load = Text::tr("%1 at %2 %3").arg(set.reps, set.load, sheet.unit);
                !set.load.isEmpty() && lines.last() != load) // equal sets are read once
                lines << load;
    }
    return (lines << sheet.cautions).join(u'\n');
}

Component event(
    const Lifter &lifter, const SheetDay &day, const WeekSheet &sheet, const QDateTime &stamp)
{
    QStringList names;
    for (const SheetCard &card : day.cards)
        names << card.variation;
    Component event(icalcomponent_new(ICAL_VEVENT_COMPONENT));
    add(event.get(), icalproperty_new_uid(uid(lifter, day.date)));
    add(event.get(),
        icalproperty_new_dtstamp(icaltime_from_timet_with_zone(
            stamp.toSecsSinceEpoch(), 0, icaltimezone_get_utc_timezone())));
    add(event.get(), icalproperty_new_dtstart(allDay(day.date)));
    add(event.get(), icalproperty_new_dtend(allDay(day.date.addDays(1))));
    add(event.get(),
        icalproperty_new_summary(
            text(Text::tr("Training: %1").arg(names.join(QStringLiteral(", "))))));
    add(event.get(), icalproperty_new_description(text(description(day, sheet))));
    add(event.get(), icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
    return event;
}

} // namespace

QByteArray writeCalendar(const Lifter &lifter, const WeekSheet &sheet, const QDateTime &stamp)
{
    Component calendar(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
    add(calendar.get(), icalproperty_new_version("2.0"));
    add(calendar.get(),
        icalproperty_new_prodid("-//Benchwright//Benchwright " BENCHWRIGHT_VERSION "//EN"));
    for (const SheetDay &day : sheet.days)
        icalcomponent_add_component(calendar.get(), event(lifter, day, sheet, stamp).release());
    const std::unique_ptr<char, void (*)(void *)> bytes(
        icalcomponent_as_ical_string_r(calendar.get()), icalmemory_free_buffer);
    if (!bytes)
        throw std::runtime_error("libical wrote no calendar");
    return bytes.get();
}

} // namespace core
