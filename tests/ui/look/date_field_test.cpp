#include "ui/look/date_field.h"

#include "core/domain/language.h"

#include <QLabel>
#include <QLineEdit>
#include <gmock/gmock.h>

using namespace ui;
using namespace Qt::StringLiterals;

namespace {

const QDate kDay(2026, 12, 7);

/// In another country for one test.
class In
{
public:
    explicit In(const QLocale &locale) { QLocale::setDefault(locale); }
    In(const In &) = delete;
    In &operator=(const In &) = delete;
    ~In() { QLocale::setDefault(QLocale::c()); }
};

void type(DateField &field, const QString &text)
{
    field.field().setText(text);
    Q_EMIT field.field().textEdited(text);
}

} // namespace

TEST(DateField, TakesWhatItShowsAndTheNumbersOfTheCountry)
{
    const In germany(QLocale(QLocale::German, QLocale::Germany));
    EXPECT_EQ(shownDate(kDay), u"7 Dec 2026"_s) << "the program speaks English";
    for (const char *text : {"7 Dec 2026", "07 Dec 2026", "7 December 2026", " 7  dec 2026 ",
             "2026-12-07", "07.12.2026", "7.12.2026", "7. Dezember 2026"})
        EXPECT_EQ(dateTyped(QString::fromLatin1(text)), kDay) << text;
}

TEST(DateField, RefusesInWordsWhatIsNoDate)
{
    DateField field(QDate(2026, 12, 16), u"First day"_s);
    int edited = 0;
    QObject::connect(&field, &DateField::edited, [&edited] { ++edited; });
    for (const char *text : {"", "7 Dec", "31 Feb 2026", "soon", "7/12/26x"}) {
        type(field, QString::fromLatin1(text));
        EXPECT_FALSE(field.isSound()) << text;
        EXPECT_EQ(field.date(), QDate(2026, 12, 16)) << "as it was before";
        EXPECT_THAT(field.problem().toStdString(), testing::HasSubstr("16 Dec 2026"));
        EXPECT_EQ(field.field().text(), QString::fromLatin1(text)) << "it stays as it was typed";
    }
    EXPECT_EQ(edited, 5);
    Q_EMIT field.field().editingFinished();
    EXPECT_FALSE(field.findChild<QLabel *>(u"dateProblem"_s)->text().isEmpty());
}

TEST(DateField, IsTakenWhenAllOfItIsTypedAnew)
{
    DateField field(QDate(2026, 12, 16), u"First day"_s);
    for (const QString &so : {u"0"_s, u"07"_s, u"07 Dec"_s, u"07 Dec 2026"_s})
        type(field, so);
    EXPECT_EQ(field.date(), kDay);
    EXPECT_TRUE(field.isSound());
    field.setMaximumDate(QDate(2026, 12, 1));
    EXPECT_THAT(field.problem().toStdString(), testing::HasSubstr("1 Dec 2026"));
}

TEST(Language, OfMonthsAndDaysIsTheProgramsInEveryCountry)
{
    const In germany(QLocale(QLocale::German, QLocale::Germany));
    EXPECT_EQ(core::dateWords(kDay, u"dddd d MMMM yyyy"_s), u"Monday 7 December 2026"_s);
    EXPECT_EQ(QLocale().toString(2.5), u"2,5"_s) << "numbers are the country's";
}
