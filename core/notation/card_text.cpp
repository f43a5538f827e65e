#include "core/notation/card_text.h"

#include "core/domain/text.h"
#include "core/domain/variation.h"
#include "core/domain/week.h"
#include "core/notation/set_line_check.h"
#include "core/notation/set_line_reader.h"

#include <QStringList>
#include <algorithm>

namespace core {

namespace {

/// Day of the week 1..7 that the line names and nothing else.
std::optional<int> dayNamed(const QString &line, const QLocale &locale)
{
    for (int day = 1; day <= kWeekDays; ++day)
        for (const QLocale::FormatType format : {QLocale::LongFormat, QLocale::ShortFormat})
            if (line.compare(locale.standaloneDayName(day, format), Qt::CaseInsensitive) == 0)
                return day;
    return std::nullopt;
}

const Variation *named(const QString &name, std::span<const Variation> catalogue)
{
    const Variation *found = nullptr;
    for (const Variation &variation : catalogue)
        if (name.compare(variation.name, Qt::CaseInsensitive) == 0
            || name.compare(variation.code, Qt::CaseInsensitive) == 0)
            if (!found || found->retired)
                found = &variation;
    return found;
}

/// Whether the line holds further sets of the card above.
bool goesOn(const QString &line)
{
    return line.startsWith(u'/') || linesOf(line).front().text.isEmpty();
}

class CardTextReader
{
public:
    CardTextReader(std::span<const Variation> catalogue, const QLocale &locale)
        : m_catalogue(catalogue)
        , m_locale(locale)
    {
    }

    ParsedCardText read(const QString &text)
    {
        for (const QString &line : text.split(u'\n')) {
            ++m_line;
            take(line);
            if (m_result.error)
                break;
        }
        for (size_t i = 0; i < m_result.rows.size() && !m_result.error; ++i)
            checkSets(m_result.rows[i], m_written[i]);
        if (m_result.error)
            m_result.rows.clear();
        return std::move(m_result);
    }

private:
    struct Written
    {
        int line;
        int column;
    };

    void take(const QString &line)
    {
        const QString words = line.trimmed();
        if (words.isEmpty())
            return;
        if (!line.front().isSpace() && goesOn(words) && !m_result.rows.empty()) {
            m_result.rows.back().setLine += u'\n' + words;
        } else if (line.front().isSpace() && !m_result.rows.empty()) {
            QString &note = m_result.rows.back().note;
            note += note.isEmpty() ? words : u'\n' + words;
        } else if (const auto day = dayNamed(words, m_locale)) {
            m_offset = m_day ? m_offset + (*day - *m_day + kWeekDays) % kWeekDays : 0;
            m_day = day;
        } else {
            takeCard(line);
        }
    }

    void takeCard(const QString &line)
    {
        const qsizetype colon = line.indexOf(u':');
        const QString name = line.left(colon).trimmed(); // all of it without a colon
        const Variation *variation = named(name, m_catalogue);
        if (!variation) {
            refuse(1,
                Text::tr("There is no variation \"%1\" in the catalogue. Write its name or code, a "
                         "colon, and the sets: %2: 4x3 @8.")
                    .arg(name, m_catalogue.empty() ? Text::tr("name") : m_catalogue.front().name));
            return;
        }
        qsizetype sets = colon < 0 ? line.size() : colon + 1;
        while (sets < line.size() && line[sets].isSpace())
            ++sets;
        m_result.rows.push_back({m_offset, variation->id, line.mid(sets).trimmed(), {}});
        m_written.push_back({m_line, int(sets)});
    }

    void checkSets(CardRow &row, Written written)
    {
        const Variation *variation = find(m_catalogue, row.variation);
        const ParsedSetLines parsed = parseSetLines(row.setLine, variation->lift, m_catalogue);
        if (!parsed.error) {
            row.setLine = setLineText(parsed.lines);
            return;
        }
        const bool first = parsed.error->line == 1;
        m_line = written.line + parsed.error->line - 1;
        refuse(parsed.error->column + (first ? written.column : 0), parsed.error->words);
    }

    void refuse(int column, const QString &words) { m_result.error = {m_line, column, words}; }

    std::span<const Variation> m_catalogue;
    const QLocale &m_locale;
    ParsedCardText m_result;
    std::vector<Written> m_written; ///< where the sets of each row begin
    std::optional<int> m_day;
    int m_offset = 0;
    int m_line = 0;
};

} // namespace

QString cardText(
    std::vector<Card> cards, std::span<const Variation> catalogue, const QLocale &locale)
{
    std::ranges::sort(cards, isAbove);
    const bool severalDays = !cards.empty() && cards.front().day != cards.back().day;
    QString text;
    QDate day;
    for (const Card &card : cards) {
        if (severalDays && card.day != day)
            text += locale.standaloneDayName(card.day.dayOfWeek()) + u'\n';
        day = card.day;
        const Variation *variation = find(catalogue, card.variation);
        text += variation ? variation->name : QStringLiteral("?");
        if (const QString sets = onOneRow(card.setLine); !sets.isEmpty())
            text += QStringLiteral(": ") + sets;
        text += u'\n';
        for (const QString &line : card.note.split(u'\n', Qt::SkipEmptyParts))
            text += QStringLiteral("    ") + line.trimmed() + u'\n';
    }
    return text;
}

ParsedCardText parseCardText(
    const QString &text, std::span<const Variation> catalogue, const QLocale &locale)
{
    return CardTextReader(catalogue, locale).read(text);
}

} // namespace core
