#include "core/exchange/calendar.h"

#include "tests/core/exchange/hand_out_rows.h"

#include <QRegularExpression>
#include <gmock/gmock.h>
#include <libical/ical.h>
#include <memory>

using namespace core;
using tests::PlannedWeek;

namespace {

const QDateTime kNow(QDate(2024, 5, 3), QTime(8, 30), Qt::UTC);

/// The calendar as libical reads it back; it checks it against RFC 5545 too.
class Parsed
{
public:
    explicit Parsed(const QByteArray &text)
        : m_root(icalparser_parse_string(text.constData()), icalcomponent_free)
    {
    }

    [[nodiscard]] bool isSound() const
    {
        if (!m_root)
            return false;
        icalrestriction_check(m_root.get());
        return icalcomponent_isa(m_root.get()) == ICAL_VCALENDAR_COMPONENT
            && icalcomponent_count_errors(m_root.get()) == 0;
    }

    [[nodiscard]] std::vector<icalcomponent *> events() const
    {
        std::vector<icalcomponent *> found;
        for (icalcomponent *c =
                 icalcomponent_get_first_component(m_root.get(), ICAL_VEVENT_COMPONENT);
             c; c = icalcomponent_get_next_component(m_root.get(), ICAL_VEVENT_COMPONENT))
            found.push_back(c);
        return found;
    }

private:
    std::unique_ptr<icalcomponent, void (*)(icalcomponent *)> m_root;
};

} // namespace

TEST(Calendar, LibicalReadsBackOneAllDayEventADay)
{
    const PlannedWeek week;
    const Parsed parsed(writeCalendar(week.lifter, week.sheet(), kNow));
    ASSERT_TRUE(parsed.isSound());
    const auto events = parsed.events();
    ASSERT_EQ(events.size(), 2u);
    const icaltimetype start = icalcomponent_get_dtstart(events[1]);
    EXPECT_TRUE(start.is_date);
    EXPECT_EQ(QDate(start.year, start.month, start.day), tests::kMonday.addDays(2));
    const icaltimetype end = icalcomponent_get_dtend(events[1]);
    EXPECT_EQ(QDate(end.year, end.month, end.day), tests::kMonday.addDays(3))
        << "RFC 5545 3.6.1: the end is not part of the event";
    EXPECT_THAT(icalcomponent_get_summary(events[0]),
        testing::StrEq("Training: Competition bench, Off-chest pause bench"));
    EXPECT_THAT(icalcomponent_get_description(events[0]), testing::HasSubstr("3 at 100 kg"));
    EXPECT_THAT(icalcomponent_get_description(events[0]), testing::HasSubstr("spotter"));
}

TEST(Calendar, ADayKeepsItsUidWhateverIsPlannedAndNoTwoShareOne)
{
    PlannedWeek week;
    const auto uids = [&week] {
        std::vector<std::string> found;
        const Parsed parsed(writeCalendar(week.lifter, week.sheet(), kNow));
        for (icalcomponent *event : parsed.events())
            found.emplace_back(icalcomponent_get_uid(event));
        return found;
    };
    const auto before = uids();
    EXPECT_NE(before[0], before[1]);
    week.cards[0].setLine = QStringLiteral("5x5 80kg");
    EXPECT_EQ(uids(), before);
    week.lifter.id = LifterId{8};
    for (Card &card : week.cards)
        card.lifter = week.lifter.id;
    EXPECT_NE(uids()[0], before[0]);
}

TEST(Calendar, LinesAreFoldedTextIsEscapedAndTheSameInputGivesTheSameBytes)
{
    PlannedWeek week;
    const QString note =
        QStringLiteral("Elbows in; slow, then fast\nBEGIN:VEVENT \u00e9\u4e2d").repeated(4);
    week.cards[0].note = note + QChar(7);
    const QByteArray text = writeCalendar(week.lifter, week.sheet(), kNow);
    EXPECT_EQ(text, writeCalendar(week.lifter, week.sheet(), kNow));
    for (const QByteArray &line : text.split('\n')) // RFC 5545 3.1: 75 octets without the break
        EXPECT_LE(line.size(), 76) << line.constData();
    const Parsed parsed(text);
    ASSERT_TRUE(parsed.isSound());
    ASSERT_EQ(parsed.events().size(), 2u) << "a note is no event";
    EXPECT_THAT(
        icalcomponent_get_description(parsed.events()[0]), testing::HasSubstr(note.toStdString()));
}

TEST(Calendar, EqualSetsAreReadOnceAndASetWithoutALoadNotAtAll)
{
    PlannedWeek week;
    week.cards.clear();
    week.add(0, "comp", QStringLiteral("2x3 100kg\n1x3 90kg\n1x3 100kg"));
    week.add(0, "feet_up", QStringLiteral("3x5 @8"));
    const Parsed parsed(writeCalendar(week.lifter, week.sheet(), kNow));
    ASSERT_EQ(parsed.events().size(), 1u);
    const QString said = QString::fromUtf8(icalcomponent_get_description(parsed.events()[0]));
    EXPECT_EQ(said.count(QStringLiteral("3 at 100 kg\n")), 2) << said.toStdString();
    EXPECT_EQ(said.count(QStringLiteral("3 at 90 kg\n")), 1);
    EXPECT_FALSE(said.contains(QStringLiteral("5 at")));
    EXPECT_TRUE(said.startsWith(QStringLiteral("Competition bench: 2x3 100kg")));
}

TEST(Calendar, AUidIsThirtyTwoDigitsOfNobodysDomain)
{
    // RFC 6761: names under .invalid belong to nobody.
    const PlannedWeek week;
    const Parsed parsed(writeCalendar(week.lifter, week.sheet(), kNow));
    const QString uid = QString::fromUtf8(icalcomponent_get_uid(parsed.events()[0]));
    EXPECT_TRUE(QRegularExpression(QStringLiteral("^[0-9a-f]{32}@benchwright\\.invalid$"))
                    .match(uid)
                    .hasMatch())
        << uid.toStdString();
}

TEST(Calendar, AnEventIsStampedInUtcAndTakesNoTimeOfTheDay)
{
    // RFC 5545, 3.8.7.2: DTSTAMP is a date with a UTC time; 3.8.2.7: TRANSPARENT does not block.
    const PlannedWeek week;
    const QByteArray text = writeCalendar(week.lifter, week.sheet(), kNow);
    EXPECT_EQ(text.count("DTSTAMP:20240503T083000Z"), 2) << text.toStdString();
    EXPECT_EQ(text.count("TRANSP:TRANSPARENT"), 2);
}

TEST(Calendar, ACardWithoutSetsIsItsVariation)
{
    PlannedWeek week;
    week.cards.clear();
    week.add(0, "comp", {});
    const Parsed parsed(writeCalendar(week.lifter, week.sheet(), kNow));
    ASSERT_EQ(parsed.events().size(), 1u);
    const QString said = QString::fromUtf8(icalcomponent_get_description(parsed.events()[0]));
    EXPECT_TRUE(said.startsWith(QStringLiteral("Competition bench\n"))) << said.toStdString();
}
