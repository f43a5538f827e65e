#include "core/exchange/calendar.h"
#include "core/exchange/hand_out.h"
#include "core/exchange/hand_out_words.h"
#include "tests/ui/tour/window_tour.h"
#include "ui/print/sheet_layout.h"
#include "ui/window/roster_view.h"

#include <QJsonArray>
#include <QRegularExpression>
#include <QTextDocumentFragment>

using namespace core;

// What a lifter takes home: the printed week, the hand-out page and the calendar.

namespace tests {

namespace {

class Papers : public WindowTour
{
protected:
    void forEachWeek(
        const std::function<void(const Lifter &, const WeekSheet &, const std::vector<Card> &)>
            &read)
    {
        ui::OpenRoster &open = roster().openRoster();
        const QDate monday = roster().selection().monday();
        for (const Lifter &lifter : open.lifters()) {
            const std::vector<Card> cards = open.cards(lifter.id, monday, monday.addDays(6));
            const auto estimateOf = [&](Lift lift) {
                return roster().estimates().of(lifter.id, lift);
            };
            read(lifter,
                weekSheet(lifter, monday,
                    resolveCards(cards,
                        {lifter, open.variations(), estimateOf, open.checkIns(lifter.id), {}, {}}),
                    open.variations(), {}),
                cards);
        }
    }
    void readJson(const QString &key, const QJsonValue &value)
    {
        static const QSet<QString> kOfTheSheet{QStringLiteral("code"), QStringLiteral("columns"),
            QStringLiteral("lift"), QStringLiteral("mark"), QStringLiteral("works")};
        if (kOfTheSheet.contains(key))
            return;
        read(value.toString(), QStringLiteral("hand-out ") + key);
        for (const QJsonValue &each : value.toArray())
            readJson(key, each);
        const QJsonObject object = value.toObject();
        for (auto it = object.begin(); it != object.end(); ++it)
            readJson(it.key(), it.value());
    }
};

} // namespace

TEST_F(Papers, PrintedWeek)
{
    size_t texts = 0;
    forEachWeek([&](const Lifter &, const WeekSheet &sheet, const auto &) {
        for (const ui::PaperSize paper : {ui::PaperSize::a4, ui::PaperSize::letter}) {
            const ui::LaidOutSheet laid = ui::layOut(sheet, paper);
            read(laid.title, "title of the printed week");
            for (const ui::SheetPage &page : laid.pages)
                for (const ui::SheetText &text : page.texts) {
                    read(text.text, "line of the printed week");
                    ++texts;
                }
        }
    });
    EXPECT_GT(texts, 1000u);
}

TEST_F(Papers, HandOutPage)
{
    static const QRegularExpression kProgram(QStringLiteral("<(script|style)\\b.*?</\\1>"),
        QRegularExpression::DotMatchesEverythingOption);
    data << QStringLiteral(".csv");
    forEachWeek([&](const Lifter &lifter, const WeekSheet &sheet, const auto &cards) {
        const QJsonObject said =
            handOutData(lifter, sheet, cards, roster().openRoster().variations());
        readJson({}, said);
        const QString page = QString::fromUtf8(handOutPage(said)).remove(kProgram);
        read(QTextDocumentFragment::fromHtml(page).toPlainText(), "hand-out");
    });
}

TEST_F(Papers, Calendar)
{
    forEachWeek([&](const Lifter &lifter, const WeekSheet &sheet, const auto &) {
        QString text = QString::fromUtf8(writeCalendar(lifter, sheet, clock.today.now()));
        text.remove(QStringLiteral("\r\n ")).remove(QStringLiteral("\\n")); // folded lines
        for (const QString &line : text.split(QStringLiteral("\r\n")))
            for (const char *name : {"SUMMARY:", "DESCRIPTION:", "X-WR-CALNAME:"})
                if (line.startsWith(QLatin1String(name)))
                    read(line.mid(int(qstrlen(name))), "calendar");
    });
}

} // namespace tests
