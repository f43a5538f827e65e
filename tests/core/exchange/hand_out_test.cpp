#include "tests/core/exchange/hand_out_rows.h"

#include "core/domain/touch_score.h"
#include "core/exchange/hand_out_words.h"
#include "core/exchange/plan_mark.h"
#include "core/exchange/return_sheet.h"

#include <QCryptographicHash>
#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QRegularExpression>
#include <QSet>
#include <gmock/gmock.h>

using namespace core;
using tests::PlannedWeek;

namespace {

/// What stands between two marks.
QByteArray between(const QByteArray &page, const QByteArray &from, const QByteArray &to)
{
    const qsizetype begin = page.indexOf(from) + from.size();
    return page.mid(begin, page.indexOf(to, begin) - begin);
}

QByteArray dataOf(const QByteArray &page)
{
    return between(page, "<script type=\"application/json\" id=\"plan\">", "</script>");
}

QByteArray pageResource(const QString &name)
{
    QFile file(QStringLiteral(":/handout/") + name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

QJsonArray setsOf(const QJsonObject &data, int day, int card)
{
    return data["days"]
        .toArray()[day]
        .toObject()["cards"]
        .toArray()[card]
        .toObject()["sets"]
        .toArray();
}

} // namespace

TEST(HandOut, HoldsWhatIsStoppedAndNobodyHasAccepted)
{
    PlannedWeek week;
    week.stops = {{tests::kMonday.addDays(2), QStringLiteral("Stop: pain.")},
        {{}, QStringLiteral("Stop: week.")}};
    const QJsonObject data = week.data();
    EXPECT_EQ(data["stops"].toArray(), QJsonArray{QStringLiteral("Stop: week.")});
    const QJsonArray days = data["days"].toArray();
    EXPECT_TRUE(days[0].toObject()["stops"].toArray().isEmpty());
    EXPECT_EQ(days[1].toObject()["stops"].toArray(), QJsonArray{QStringLiteral("Stop: pain.")});
    // The page shows both; what it does with them is in the browser's test.
    const QByteArray page = pageResource(QStringLiteral("page.js"));
    EXPECT_TRUE(page.contains("plan.stops.map"));
    EXPECT_TRUE(page.contains("day.stops.map"));
    EXPECT_TRUE(page.contains("card.lighter.map"));
}

TEST(HandOut, HoldsTheWeekWithLoadsPlatesAndPlacesInThePlan)
{
    const QJsonObject data = PlannedWeek().data();
    EXPECT_EQ(data["lifter"].toObject()["id"].toInt(), 7);
    EXPECT_EQ(data["week"].toString(), QStringLiteral("2024-05-06"));
    ASSERT_EQ(data["days"].toArray().size(), 2);
    const QJsonArray sets = setsOf(data, 0, 0);
    ASSERT_EQ(sets.size(), 2);
    EXPECT_EQ(sets[0].toObject()["loadKg"].toDouble(), 100.0);
    EXPECT_TRUE(sets[0].toObject().contains("effort"));
    EXPECT_EQ(sets[0].toObject()["reps"].toInt(), 3);
    EXPECT_EQ(sets[0].toObject()["plates"].toString(), QStringLiteral("25 + 15"));
    EXPECT_TRUE(sets[0].toObject()["isExact"].toBool());
    EXPECT_FALSE(setsOf(data, 1, 0)[0].toObject()["isExact"].toBool())
        << "as many as possible cannot be accepted without the reps";
    EXPECT_EQ(data["swaps"].toArray().size(), 3) << "the variations of the week";
    EXPECT_EQ(data["columns"].toArray().size(), returnColumns().size());
}

TEST(HandOut, ALeadRepSetNamesBothParts)
{
    PlannedWeek week;
    week.add(4, "tempo_4_2_0", QStringLiteral("1x1+2 90kg"));
    const QJsonObject set = setsOf(week.data(), 2, 0)[0].toObject();
    EXPECT_EQ(set["code"].toString(), QStringLiteral("comp"));
    EXPECT_EQ(set["leadCode"].toString(), QStringLiteral("tempo_4_2_0"));
    EXPECT_EQ(set["leadReps"].toInt(), 1);
    EXPECT_EQ(set["reps"].toInt(), 3);
    EXPECT_TRUE(set["lead"].toString().contains(QStringLiteral("Competition bench")));
}

TEST(HandOut, ALifterOfPoundsSeesPounds)
{
    PlannedWeek week;
    week.lifter.unit = Unit::pound;
    week.lifter.gear = usualGear(Unit::pound);
    week.cards.clear();
    week.add(0, "comp", QStringLiteral("1x1 225lb"));
    const QJsonObject data = week.data();
    EXPECT_EQ(data["unit"].toString(), QStringLiteral("lb"));
    const QJsonObject set = setsOf(data, 0, 0)[0].toObject();
    EXPECT_EQ(set["load"].toString(), QStringLiteral("225"));
    EXPECT_NEAR(set["loadKg"].toDouble(), 225 * kKgPerPound, 1e-6);
}

TEST(HandOut, TheSameInputGivesTheSamePage)
{
    EXPECT_EQ(handOutPage(PlannedWeek().data()), handOutPage(PlannedWeek().data()));
}

TEST(HandOut, NothingThatIsWrittenBecomesMarkupOrScript)
{
    PlannedWeek week;
    const QString hostile = QStringLiteral("</script><script>alert(1)</script><img src=x "
                                           "onerror=alert(2)> {{script}} & \u2028 \u2029");
    week.lifter.name = hostile;
    week.cards[0].note = hostile;
    const QByteArray page = handOutPage(week.data());
    EXPECT_EQ(page.count("<script"), 2);
    EXPECT_EQ(page.count("</script"), 2);
    EXPECT_FALSE(page.contains("<img"));
    const QByteArray data = dataOf(page);
    for (const char *mark : {"<", ">", "&", "\xe2\x80\xa8", "\xe2\x80\xa9"})
        EXPECT_FALSE(data.contains(mark)) << mark;
    const QJsonObject back = QJsonDocument::fromJson(data).object();
    EXPECT_EQ(back["lifter"].toObject()["name"].toString(), hostile) << "and nothing is lost";
}

TEST(HandOut, ThePolicyAllowsThePagesOwnStyleAndScriptAndNothingElse)
{
    const QByteArray page = handOutPage(PlannedWeek().data());
    const auto source = [](const QByteArray &text) {
        return "'sha256-" + QCryptographicHash::hash(text, QCryptographicHash::Sha256).toBase64()
            + "'";
    };
    const QByteArray style = between(page, "<style>", "</style>");
    const QByteArray script = between(page, "<script>", "</script>");
    EXPECT_GT(script.size(), 5000);
    EXPECT_EQ(between(page, "Content-Security-Policy\" content=\"", "\">"),
        "default-src 'none'; style-src " + source(style) + "; script-src " + source(script)
            + "; base-uri 'none'; form-action 'none'");
    EXPECT_FALSE(page.contains("://")) << "the page refers to nothing outside";
    for (const char *way : {"innerHTML", "insertAdjacentHTML", "document.write", "eval("})
        EXPECT_FALSE(script.contains(way)) << way;
}

TEST(HandOut, EveryWordOfThePageIsThereAndEachIsUsed)
{
    QSet<QString> used;
    const QRegularExpression key(QStringLiteral("\\bW\\.([a-zA-Z]+)"));
    for (const QString &name :
        QDir(QStringLiteral(":/handout")).entryList({QStringLiteral("*.js")}))
        for (auto found = key.globalMatch(QString::fromUtf8(pageResource(name))); found.hasNext();)
            used << found.next().captured(1);
    const QStringList keys = handOutWords().keys();
    EXPECT_EQ(used, QSet<QString>(keys.begin(), keys.end()));
    for (const QStringList &steps :
        {touchSteps(), sleepSteps(), stressSteps(), motivationSteps(), sorenessSteps()})
        EXPECT_EQ(steps.size(), 5);
}

TEST(HandOut, TextMeetsTheContrastOfWcagInLightAndDark)
{
    // W3C, Web Content Accessibility Guidelines 2.2, 1.4.3: 4.5 for text; 1.4.11: 3 for controls.
    const QString css = QString::fromUtf8(pageResource(QStringLiteral("page.css")));
    const auto luminance = [](const QString &hex) {
        double sum = 0.0;
        const double weights[] = {0.2126, 0.7152, 0.0722};
        for (int i = 0; i < 3; ++i) {
            const double c = hex.mid(1 + 2 * i, 2).toInt(nullptr, 16) / 255.0;
            sum += weights[i] * (c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    };
    const qsizetype dark = css.indexOf(QStringLiteral("prefers-color-scheme"));
    for (const QString &scheme : {css.left(dark), css.mid(dark)}) {
        const auto colour = [&scheme](const QString &name) {
            return QRegularExpression(QStringLiteral("--%1: (#[0-9a-f]{6})").arg(name))
                .match(scheme)
                .captured(1);
        };
        const auto contrast = [&](const char *a, const char *b) {
            const double x = luminance(colour(QLatin1String(a)));
            const double y = luminance(colour(QLatin1String(b)));
            return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
        };
        for (const auto &[ink, ground] :
            std::initializer_list<std::pair<const char *, const char *>>{{"text", "window"},
                {"text", "surface"}, {"text", "sunken"}, {"muted", "window"}, {"muted", "surface"},
                {"muted", "sunken"}, {"on-accent", "accent"}, {"on-chosen", "chosen"},
                {"good", "surface"}, {"on-caution", "caution"}, {"on-danger", "danger"}})
            EXPECT_GE(contrast(ink, ground), 4.5) << ink << " on " << ground;
        EXPECT_GE(contrast("edge", "surface"), 3.0);
        EXPECT_GE(contrast("edge", "sunken"), 3.0);
        EXPECT_GE(contrast("accent", "surface"), 3.0);
    }
}

TEST(PlanMark, StaysWhileThePlanStaysAndChangesWithIt)
{
    const PlannedWeek week;
    const auto mark = [](const PlannedWeek &one) {
        return planMark(one.lifter.id, tests::kMonday, one.cards, one.catalogue);
    };
    PlannedWeek other = week;
    std::reverse(other.cards.begin(), other.cards.end());
    other.lifter.name = QStringLiteral("Renamed");
    other.cards[0].note = QStringLiteral("a note");
    other.cards.push_back(other.cards[0]);
    other.cards.back().day = tests::kMonday.addDays(7); // another week
    EXPECT_EQ(mark(other), mark(week));

    other = week;
    other.cards[0].setLine = QStringLiteral("3x3 100kg");
    EXPECT_NE(mark(other), mark(week));
    other = week;
    std::swap(other.cards[0].variation, other.cards[1].variation);
    EXPECT_NE(mark(other), mark(week));
    other = week;
    other.cards[2].day = tests::kMonday.addDays(3);
    EXPECT_NE(mark(other), mark(week));
}

TEST(PlanMark, OfASheetFromWhenASlashPartedSetLinesIsStillOfThePlan)
{
    PlannedWeek week;
    week.cards.resize(2);
    const QDate day = week.cards[0].day;
    week.cards[1].day = day;
    const QString code = find(week.catalogue, week.cards[0].variation)->code;
    const QString other = find(week.catalogue, week.cards[1].variation)->code;
    // Rows were rows even then; only the first card had a slash.
    const QStringList written{QString::number(week.lifter.id.value),
        tests::kMonday.toString(Qt::ISODate), day.toString(Qt::ISODate), code,
        QStringLiteral("1x1 @8 / 3x3 -10% ; a/b then c"), day.toString(Qt::ISODate), other,
        QStringLiteral("3x3 @7 2x2 @6")};
    const QString mark = QString::fromLatin1(
        QCryptographicHash::hash(written.join(u'\n').toUtf8(), QCryptographicHash::Sha256)
            .toHex()
            .left(16));
    week.cards[1].setLine = QStringLiteral("3x3 @7\n2x2 @6");
    const auto isOf = [&](const char *setLine) {
        week.cards[0].setLine = QString::fromLatin1(setLine);
        return isMarkOf(mark, week.lifter.id, tests::kMonday, week.cards, week.catalogue);
    };
    EXPECT_TRUE(isOf("1x1 @8 / 3x3 -10% ; a/b then c")) << "as it was";
    EXPECT_TRUE(isOf("1x1 @8 \n 3x3 -10% ; a/b then c")) << "as it was migrated";
    EXPECT_TRUE(isOf("1x1 @8 then 3x3 -10% ; a/b then c")) << "as it is written now";
    EXPECT_FALSE(isOf("1x1 @8 then 3x3 -5% ; a/b then c"));
    EXPECT_FALSE(isOf("1x1 @8 then 3x3 -10% ; a/b / c")) << "a note is no set line";
}

TEST(HandOut, EveryVariationIsNamedWithItsLift)
{
    PlannedWeek week;
    week.add(4, "squat", QStringLiteral("3x5 140kg"));
    const QJsonObject data = week.data();
    for (const QJsonValue swap : data["swaps"].toArray()) {
        const QString code = swap.toObject()["code"].toString();
        EXPECT_EQ(swap.toObject()["lift"].toString(),
            code == QStringLiteral("squat") ? QStringLiteral("squat") : QStringLiteral("bench"));
        EXPECT_NE(swap.toObject()["name"].toString(), code);
    }
    const QJsonArray days = data["days"].toArray();
    const QJsonObject monday = days[0].toObject();
    EXPECT_EQ(monday["date"].toString(), QStringLiteral("2024-05-06"));
    const QJsonArray cards = monday["cards"].toArray();
    ASSERT_EQ(cards.size(), 2);
    EXPECT_EQ(cards[0].toObject()["card"].toInt(), 1);
    EXPECT_EQ(cards[1].toObject()["card"].toInt(), 2);
    EXPECT_EQ(cards[1].toObject()["lift"].toString(), QStringLiteral("bench"));
}

TEST(HandOut, AsksAboutEveryAreaByItsNameAndGoesInTheSmallestStep)
{
    const QJsonObject data = PlannedWeek().data();
    const QJsonArray areas = data["areas"].toArray();
    ASSERT_EQ(areas.size(), qsizetype(std::size(kBodyAreas)));
    for (const QJsonValue area : areas)
        EXPECT_EQ(
            area.toObject()["words"].toString().toLower(), area.toObject()["code"].toString());
    EXPECT_TRUE(areas[0].toObject()["words"].toString()[0].isUpper());
    EXPECT_EQ(data["format"].toInt(), 1);
    EXPECT_EQ(data["step"].toDouble(), 2.5);
    PlannedWeek pounds;
    pounds.lifter.unit = Unit::pound;
    EXPECT_EQ(pounds.data()["step"].toDouble(), 5.0);
    for (const char *question : {"sleep", "stress", "motivation", "soreness"})
        EXPECT_EQ(data["scales"].toObject()[QLatin1String(question)].toArray().size(), 5);
    EXPECT_EQ(data["touch"].toArray().size(), 5);
}

TEST(PlanMark, IsSixteenHexadecimalDigits)
{
    const PlannedWeek week;
    const QString mark = planMark(week.lifter.id, tests::kMonday, week.cards, week.catalogue);
    EXPECT_TRUE(QRegularExpression(QStringLiteral("^[0-9a-f]{16}$")).match(mark).hasMatch())
        << mark.toStdString();
}

TEST(HandOut, ASetWithoutLeadRepsSaysNothingOfThem)
{
    PlannedWeek week;
    const QJsonObject plain = setsOf(week.data(), 0, 0)[0].toObject();
    EXPECT_EQ(plain["lead"].toString(), QString());
    EXPECT_EQ(plain["leadReps"].toInt(-1), 0);
    week.add(4, "tempo_4_2_0", QStringLiteral("1x1+2 90kg"));
    const QString lead = setsOf(week.data(), 2, 0)[0].toObject()["lead"].toString();
    EXPECT_TRUE(lead.startsWith(QStringLiteral("1 x "))) << lead.toStdString();
    EXPECT_TRUE(lead.contains(QStringLiteral("then 2 x "))) << lead.toStdString();
}

TEST(HandOut, ASetWorksWhatItsLeadOrItsOtherRepsWork)
{
    PlannedWeek week;
    week.add(4, "feet_up", QStringLiteral("1x1+2(feet_up) 90kg"));
    week.add(4, "feet_up", QStringLiteral("1x1+2 90kg"));
    const auto works = [data = week.data()](int day, int card) {
        QStringList areas;
        for (const QJsonValue area : setsOf(data, day, card)[0].toObject()["works"].toArray())
            areas << area.toString();
        return areas;
    };
    EXPECT_FALSE(works(1, 0).contains(QStringLiteral("back"))) << "feet up";
    EXPECT_TRUE(works(1, 0).contains(QStringLiteral("chest")));
    EXPECT_EQ(works(2, 0), works(1, 0)) << "feet up, led by the same";
    EXPECT_TRUE(works(2, 1).contains(QStringLiteral("back"))) << "then as in competition";
}
