#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/storage/database.h"

namespace core {

namespace {

const QString kColumns = QStringLiteral("id, lifter_id, day, number, given_by, at");
const QString kCardColumns = QStringLiteral(
    "given_day_id, position, card_id, variation_id, set_line, max_kg, max_low90, max_high90,"
    " last_set");
const QString kLineColumns = QStringLiteral(
    "given_day_id, card_position, position, load_kg, plates, target_kg, target_low90,"
    " target_high90, first_reserve, first_low90, first_high90, last_reserve, last_low90,"
    " last_high90, all_made, first_made, hard_sets_after, why, caution");

/// "2x20 1x2.5", exact: a plate in lb has many digits.
QString platesText(const std::vector<PlatePairs> &plates)
{
    QStringList words;
    for (const PlatePairs &each : plates)
        words << QStringLiteral("%1x%2").arg(each.pairs).arg(each.plateKg, 0, 'g', 17);
    return words.join(u' ');
}

std::vector<PlatePairs> platesOf(const QString &text)
{
    std::vector<PlatePairs> plates;
    for (const QString &word : text.split(u' ', Qt::SkipEmptyParts))
        plates.push_back({word.section(u'x', 1).toDouble(), word.section(u'x', 0, 0).toInt()});
    return plates;
}

void append(QVariantList &values, const std::optional<Figure> &figure)
{
    if (figure)
        values << figure->value << figure->low90 << figure->high90;
    else
        values << QVariant() << QVariant() << QVariant();
}

std::optional<Figure> figureOf(Rows &rows)
{
    const std::optional<double> value = rows.maybe<double>();
    const double low = rows.real();
    const double high = rows.real();
    return value ? std::optional(Figure{*value, low, high}) : std::nullopt;
}

GivenLine lineOf(Rows &rows)
{
    GivenLine line;
    line.loadKg = rows.maybe<double>();
    line.plates = platesOf(rows.text());
    line.targetKg = figureOf(rows);
    line.firstReserve = figureOf(rows);
    line.lastReserve = figureOf(rows);
    line.allMade = rows.maybe<double>();
    line.firstMade = rows.maybe<double>();
    line.hardSetsAfter = rows.real();
    line.why = rows.text();
    line.caution = rows.text();
    return line;
}

void readCards(Rows rows, std::unordered_map<qint64, GivenDay *> &days)
{
    while (rows.next()) {
        GivenDay &day = *days.at(rows.id());
        rows.skip(1);
        GivenCard &card = day.cards.emplace_back();
        card.card = {rows.id()};
        card.variation = {rows.id()};
        card.setLine = rows.text();
        if (const std::optional<Figure> max = figureOf(rows))
            card.from = {*max, rows.date()};
    }
}

void readLines(Rows rows, std::unordered_map<qint64, GivenDay *> &days)
{
    while (rows.next()) {
        GivenDay &day = *days.at(rows.id());
        GivenCard &card = day.cards.at(size_t(rows.integer()));
        rows.skip(1);
        card.lines.push_back(lineOf(rows));
    }
}

} // namespace

/// Three queries, however many days.
std::vector<GivenDay> Repository<GivenDay>::select(Database &db, const Where &where)
{
    std::vector<GivenDay> given;
    Rows rows =
        db.select(QStringLiteral("SELECT %1 FROM given_day %2 ORDER BY lifter_id, day, number")
                      .arg(kColumns, where.condition),
            where.values);
    while (rows.next()) {
        GivenDay &day = given.emplace_back();
        day.id = {rows.id()};
        day.lifter = {rows.id()};
        day.day = rows.date();
        day.number = rows.integer();
        day.by = fromFileWord<GivenBy>(rows.text()).value_or(GivenBy::word);
        day.at = QDateTime::fromString(rows.text(), Qt::ISODate);
    }
    auto days = byId(given);
    const Where parts = partsOf<GivenDay>(where, "given_day_id");
    readCards(db.select(QStringLiteral("SELECT %1 FROM given_card %2"
                                       " ORDER BY given_day_id, position")
                            .arg(kCardColumns, parts.condition),
                  parts.values),
        days);
    readLines(db.select(QStringLiteral("SELECT %1 FROM given_line %2"
                                       " ORDER BY given_day_id, card_position, position")
                            .arg(kLineColumns, parts.condition),
                  parts.values),
        days);
    return given;
}

void Repository<GivenDay>::insert(Database &db, const GivenDay &given)
{
    db.insert("given_day", kColumns,
        {given.id.value, given.lifter.value, toVariant(given.day), given.number, fileWord(given.by),
            given.at.toString(Qt::ISODate)});
    for (int position = 0; const GivenCard &card : given.cards) {
        QVariantList values{given.id.value, position, card.card.value, card.variation.value,
            toVariant(card.setLine)};
        append(values, card.from ? std::optional(card.from->maxKg) : std::nullopt);
        values << (card.from ? toVariant(card.from->lastSet) : QVariant());
        db.insert("given_card", kCardColumns, values);
        for (int number = 0; const GivenLine &line : card.lines) {
            QVariantList parts{given.id.value, position, number++, toVariant(line.loadKg),
                toVariant(platesText(line.plates))};
            append(parts, line.targetKg);
            append(parts, line.firstReserve);
            append(parts, line.lastReserve);
            parts << toVariant(line.allMade) << toVariant(line.firstMade) << line.hardSetsAfter
                  << toVariant(line.why) << toVariant(line.caution);
            db.insert("given_line", kLineColumns, parts);
        }
        ++position;
    }
}

QString Repository<GivenDay>::describe(Database &db, const GivenDay &given)
{
    return Text::tr("What %1 was given for %2")
        .arg(nameOf(given.lifter, db), given.day.toString(Qt::ISODate));
}

} // namespace core
