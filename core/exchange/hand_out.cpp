#include "core/exchange/hand_out.h"

#include "core/domain/body_area.h"
#include "core/domain/language.h"
#include "core/domain/text.h"
#include "core/domain/touch_score.h"
#include "core/domain/variation.h"
#include "core/exchange/hand_out_words.h"
#include "core/exchange/plan_mark.h"
#include "core/exchange/return_sheet.h"

#include <QCryptographicHash>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QLocale>
#include <cassert>
#include <map>
#include <set>

namespace core {

namespace {

constexpr double kStepKg = 2.5;
constexpr double kStepLb = 5.0;

QByteArray resource(const char *name)
{
    QFile file(QStringLiteral(":/handout/") + QLatin1String(name));
    const bool isThere = file.open(QIODevice::ReadOnly);
    assert(isThere);
    return isThere ? file.readAll() : QByteArray();
}

template <class Value> QJsonValue orNull(const std::optional<Value> &value)
{
    return value ? QJsonValue(*value) : QJsonValue();
}

/// Data of a page, with the catalogue's names at hand.
class HandOutWriter
{
public:
    explicit HandOutWriter(std::span<const Variation> variations)
        : m_catalogue(variations)
    {
    }

    QJsonArray days(const WeekSheet &sheet)
    {
        QJsonArray days;
        for (const SheetDay &day : sheet.days)
            days.append(QJsonObject{{QStringLiteral("date"), day.date.toString(Qt::ISODate)},
                {QStringLiteral("words"), day.day},
                {QStringLiteral("short"), dateWords(day.date, QStringLiteral("ddd d"))},
                {QStringLiteral("stops"), QJsonArray::fromStringList(day.stops)},
                {QStringLiteral("cards"), cards(day)}});
        return days;
    }

    /// What a set may be swapped for: the variations of the week.
    [[nodiscard]] QJsonArray swaps() const
    {
        QJsonArray swaps;
        for (const QString &code : m_inPlan)
            swaps.append(QJsonObject{{QStringLiteral("code"), code},
                {QStringLiteral("name"), nameOf(m_catalogue, code)},
                {QStringLiteral("lift"), liftOf(code)}});
        return swaps;
    }

private:
    [[nodiscard]] QJsonArray cards(const SheetDay &day)
    {
        QJsonArray cards;
        for (int number = 1; const SheetCard &card : day.cards) {
            m_inPlan.insert(card.code);
            QJsonArray sets;
            for (const SheetSet &set : card.sets)
                sets.append(this->set(set));
            cards.append(QJsonObject{{QStringLiteral("card"), number++},
                {QStringLiteral("code"), card.code}, {QStringLiteral("lift"), liftOf(card.code)},
                {QStringLiteral("name"), card.variation}, {QStringLiteral("setLine"), card.setLine},
                {QStringLiteral("tempo"), card.tempo}, {QStringLiteral("purpose"), card.purpose},
                {QStringLiteral("note"), card.note},
                {QStringLiteral("withheld"), QJsonArray::fromStringList(card.withheld)},
                {QStringLiteral("lighter"), QJsonArray::fromStringList(card.lighter)},
                {QStringLiteral("cautions"), QJsonArray::fromStringList(card.cautions)},
                {QStringLiteral("sets"), sets}});
        }
        return cards;
    }

    [[nodiscard]] QJsonObject set(const SheetSet &set)
    {
        const SetInValues &values = set.values;
        m_inPlan.insert(values.code);
        QString lead;
        if (values.leadReps > 0)
            lead = Text::tr("%1 x %2, then %3 x %4")
                       .arg(values.leadReps)
                       .arg(nameOf(m_catalogue, values.leadCode))
                       .arg(values.reps - values.leadReps)
                       .arg(nameOf(m_catalogue, values.code));
        return {{QStringLiteral("code"), values.code}, {QStringLiteral("reps"), values.reps},
            {QStringLiteral("repsWords"), set.reps}, {QStringLiteral("isExact"), values.isExact},
            {QStringLiteral("loadKg"), orNull(values.loadKg)}, {QStringLiteral("load"), set.load},
            {QStringLiteral("plates"), set.plates}, {QStringLiteral("target"), set.target},
            {QStringLiteral("rpe"), orNull(values.rpe)}, {QStringLiteral("effort"), values.effort},
            {QStringLiteral("leadCode"), values.leadCode},
            {QStringLiteral("leadReps"), values.leadReps}, {QStringLiteral("lead"), lead},
            {QStringLiteral("isMaximal"), values.isMaximal},
            {QStringLiteral("isWithheld"), !values.withheld.isEmpty()},
            {QStringLiteral("works"), areasWorked(values)}};
    }

    /// By the lead or by the reps after it: where it hurts there, the page holds the set back.
    [[nodiscard]] QJsonArray areasWorked(const SetInValues &values) const
    {
        QJsonArray areas;
        const Variation *rest = withCode(m_catalogue, values.code);
        const Variation *lead = withCode(m_catalogue, values.leadCode);
        for (const BodyArea area : kBodyAreas)
            if (!rest || works(*rest, area) || (lead && works(*lead, area)))
                areas.append(fileWord(area));
        return areas;
    }

    [[nodiscard]] QString liftOf(const QString &code) const
    {
        const Variation *variation = withCode(m_catalogue, code);
        return variation ? fileWord(variation->lift) : QString();
    }

    std::span<const Variation> m_catalogue;
    std::set<QString> m_inPlan; ///< codes
};

QJsonArray areas()
{
    QJsonArray areas;
    for (const BodyArea area : kBodyAreas) {
        QString name = words(area);
        name[0] = name[0].toUpper();
        areas.append(
            QJsonObject{{QStringLiteral("code"), fileWord(area)}, {QStringLiteral("words"), name}});
    }
    return areas;
}

QJsonObject scales()
{
    return {{QStringLiteral("sleep"), QJsonArray::fromStringList(sleepSteps())},
        {QStringLiteral("stress"), QJsonArray::fromStringList(stressSteps())},
        {QStringLiteral("motivation"), QJsonArray::fromStringList(motivationSteps())},
        {QStringLiteral("soreness"), QJsonArray::fromStringList(sorenessSteps())}};
}

/// JSON that may stand inside a script element: nothing in it ends the element or a line.
QByteArray dataBlock(const QJsonObject &data)
{
    QByteArray json = QJsonDocument(data).toJson(QJsonDocument::Compact);
    json.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026");
    json.replace("\xe2\x80\xa8", "\\u2028").replace("\xe2\x80\xa9", "\\u2029");
    return json;
}

QByteArray source(const QByteArray &text)
{
    return "'sha256-" + QCryptographicHash::hash(text, QCryptographicHash::Sha256).toBase64() + "'";
}

/// The template with its {{names}} filled in; what is filled in is not read again.
QByteArray filled(const QByteArray &page, const std::map<QByteArray, QByteArray> &values)
{
    QByteArray out;
    qsizetype at = 0;
    for (qsizetype open; (open = page.indexOf("{{", at)) >= 0;) {
        const qsizetype close = page.indexOf("}}", open);
        assert(close > open);
        out += page.mid(at, open - at) + values.at(page.mid(open + 2, close - open - 2));
        at = close + 2;
    }
    return out + page.mid(at);
}

} // namespace

QJsonObject handOutData(const Lifter &lifter, const WeekSheet &sheet, std::span<const Card> cards,
    std::span<const Variation> variations)
{
    HandOutWriter writer(variations);
    const QJsonArray days = writer.days(sheet);
    return {{QStringLiteral("format"), kReturnFormat},
        {QStringLiteral("lifter"),
            QJsonObject{
                {QStringLiteral("id"), lifter.id.value}, {QStringLiteral("name"), lifter.name}}},
        {QStringLiteral("week"), sheet.monday.toString(Qt::ISODate)},
        {QStringLiteral("weekWords"), sheet.week},
        {QStringLiteral("mark"), planMark(lifter.id, sheet.monday, cards, variations)},
        {QStringLiteral("unit"), sheet.unit},
        {QStringLiteral("step"), lifter.unit == Unit::pound ? kStepLb : kStepKg},
        {QStringLiteral("decimal"), QString(QLocale().decimalPoint())},
        {QStringLiteral("facts"), QJsonArray::fromStringList(sheet.facts)},
        {QStringLiteral("stops"), QJsonArray::fromStringList(sheet.stops)},
        {QStringLiteral("cautions"), QJsonArray::fromStringList(sheet.cautions)},
        {QStringLiteral("columns"), QJsonArray::fromStringList(returnColumns())},
        {QStringLiteral("fileName"),
            Text::tr("Return %1").arg(weekFileName(sheet)) + QStringLiteral(".csv")},
        {QStringLiteral("areas"), areas()}, {QStringLiteral("scales"), scales()},
        {QStringLiteral("touch"), QJsonArray::fromStringList(touchSteps())},
        {QStringLiteral("days"), days}, {QStringLiteral("swaps"), writer.swaps()},
        {QStringLiteral("words"), handOutWords()}};
}

QByteArray handOutPage(const QJsonObject &data)
{
    const QByteArray style = resource("page.css");
    QByteArray script;
    for (const char *part : {"record.js", "sheet.js", "parts.js", "check_in.js", "page.js"})
        script += resource(part);
    const QString name =
        data[QStringLiteral("lifter")].toObject()[QStringLiteral("name")].toString();
    const QString title =
        QStringLiteral("%1, %2").arg(name, data[QStringLiteral("weekWords")].toString());
    return filled(resource("page.html"),
        {{"language", Text::tr("en", "language of the words, as in HTML").toUtf8()},
            {"policy",
                "default-src 'none'; style-src " + source(style) + "; script-src " + source(script)
                    + "; base-uri 'none'; form-action 'none'"},
            {"title", title.toHtmlEscaped().toUtf8()}, {"style", style}, {"script", script},
            {"noscript",
                Text::tr("This page needs JavaScript. Ask the coach for the plan on paper.")
                    .toHtmlEscaped()
                    .toUtf8()},
            {"plan", dataBlock(data)}});
}

} // namespace core
