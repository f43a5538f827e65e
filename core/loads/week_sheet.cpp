#include "core/loads/week_sheet.h"

#include "core/domain/language.h"
#include "core/domain/text.h"
#include "core/domain/touch_score.h"
#include "core/domain/week.h"
#include "core/loads/effort_words.h"
#include "core/loads/given_words.h"
#include "core/loads/limited_lines.h"

#include <QLocale>
#include <QRegularExpression>
#include <set>

namespace core {

namespace {

constexpr qsizetype kLongestFileName =
    100; ///< file systems end at 255 bytes, a letter takes up to 4

QString dayWords(QDate day)
{
    return dateWords(day, QStringLiteral("dddd d MMMM"));
}

/// The sentences of a text, each with its full stop.
QStringList sentences(const QString &text)
{
    static const QRegularExpression kEnd(QStringLiteral("(?<=[.!?]) +"));
    return text.trimmed().split(kEnd, Qt::SkipEmptyParts);
}

bool isByEffort(const SetLine &line)
{
    return std::holds_alternative<RpeTarget>(line.target)
        || std::holds_alternative<ReserveTarget>(line.target);
}

/// Words of the sheet, in the order in which the week is trained.
class SheetWriter
{
public:
    SheetWriter(const Lifter &lifter, QDate monday, std::span<const Variation> variations,
        std::span<const StopNote> stops)
        : m_lifter(lifter)
        , m_monday(monday)
        , m_catalogue(variations)
        , m_stops(stops)
    {
    }

    WeekSheet write(std::span<const ResolvedCard> cards)
    {
        WeekSheet sheet;
        sheet.lifter = m_lifter.name;
        sheet.monday = m_monday;
        sheet.week =
            Text::tr("%1 to %2")
                .arg(dateWords(m_monday, QStringLiteral("d MMMM")),
                    dateWords(m_monday.addDays(kWeekDays - 1), QStringLiteral("d MMMM yyyy")));
        sheet.unit = symbol(m_lifter.unit);
        sheet.facts = facts();
        sheet.stops = stopsOn({});
        sheet.scales = scales();
        sheet.cautions = cautions();
        for (const QString &general : sheet.cautions)
            for (const QString &sentence : sentences(general))
                m_said.insert(sentence);
        for (int i = 0; i < kWeekDays; ++i) {
            SheetDay day = dayOf(m_monday.addDays(i), cards);
            if (!day.cards.empty())
                sheet.days.push_back(std::move(day));
        }
        return sheet;
    }

private:
    [[nodiscard]] QStringList facts() const
    {
        QStringList said{words(m_lifter.touchStyle)};
        if (m_lifter.meetDate && *m_lifter.meetDate >= m_monday)
            said << Text::tr("meet on %1")
                        .arg(dateWords(*m_lifter.meetDate, QStringLiteral("d MMMM yyyy")));
        said << (m_lifter.gear.collarsKg > 0.0
                ? Text::tr("bar and collars %1")
                      .arg(formatLoad(m_lifter.gear.barKg + m_lifter.gear.collarsKg, m_lifter.unit))
                : Text::tr("bar %1").arg(formatLoad(m_lifter.gear.barKg, m_lifter.unit)));
        return said;
    }

    [[nodiscard]] SheetDay dayOf(QDate date, std::span<const ResolvedCard> cards)
    {
        SheetDay day{dayWords(date), date, {}};
        day.stops = stopsOn(date);
        for (const ResolvedCard &card : cards)
            if (const Variation *variation = find(m_catalogue, card.card.variation);
                variation && card.card.day == date)
                day.cards.push_back(cardOf(card, *variation));
        if (const QString given = givenOf(date, cards); !given.isEmpty())
            day.day = Text::tr("%1 (%2)").arg(day.day, given);
        return day;
    }

    /// Of the week as a whole where there is no day.
    [[nodiscard]] QStringList stopsOn(QDate day) const
    {
        QStringList said;
        for (const StopNote &stop : m_stops)
            if (stop.day == day)
                said << stop.words;
        said.removeDuplicates();
        return said;
    }

    /// When the day was given, where all of it was at once.
    [[nodiscard]] static QString givenOf(QDate date, std::span<const ResolvedCard> cards)
    {
        const ResolvedCard *first = nullptr;
        for (const ResolvedCard &card : cards) {
            if (card.card.day != date)
                continue;
            if (!card.given || (first && first->given->at != card.given->at))
                return {};
            first = &card;
        }
        return first ? givenBadge(*first) : QString();
    }

    [[nodiscard]] SheetCard cardOf(const ResolvedCard &resolved, const Variation &variation)
    {
        const Card &card = resolved.card;
        SheetCard written;
        written.variation = variation.name;
        written.code = variation.code;
        written.tempo = tempoWords(variation.tempo);
        written.purpose = variation.purpose;
        written.note = card.note.trimmed();
        for (const QString &sentence : sentences(variation.cautions))
            if (m_said.insert(sentence).second)
                written.cautions << sentence;

        if (resolved.parsed.error) {
            written.setLine = card.setLine.simplified();
            written.cautions << Text::tr("The sets cannot be read: ask the coach.");
            return written;
        }
        QStringList lines;
        for (const ResolvedLine &line : resolved.lines) {
            lines << setLineText(line.line);
            if (const QString effort = effortWords(line); !effort.isEmpty())
                written.effort << (resolved.lines.size() == 1
                        ? effort
                        : Text::tr("%1: %2").arg(setLineText(line.line), effort));
            appendSets(line, variation, written.sets);
            if (!line.load && !line.why.isEmpty())
                written.cautions << (variation.assistance && isByEffort(line.line)
                        ? Text::tr("Take the load that fits the effort, and write it down.")
                        : Text::tr("No load is given: ask the coach."));
            if (!line.caution.isEmpty())
                written.cautions << line.caution;
        }
        written.withheld = withheldWords(resolved, m_lifter.unit);
        written.lighter = easedWords(resolved, m_lifter.unit);
        written.setLine = lines.join(QStringLiteral(" then "));
        written.cautions.removeDuplicates();
        return written;
    }

    void appendSets(
        const ResolvedLine &line, const Variation &variation, std::vector<SheetSet> &sets) const
    {
        SheetSet set;
        set.reps = printReps(line.line);
        set.target = targetWords(line.line);
        if (line.load) {
            set.load = formatLoadNumber(line.load->loadKg, m_lifter.unit);
            set.plates = platesWords(line.load->plates, m_lifter.unit);
        }
        for (SetInValues &values : setsInValues(line, variation, m_catalogue)) {
            set.values = std::move(values);
            set.rpe = set.values.rpe ? rpeWords(*set.values.rpe) : QString();
            sets.push_back(set);
        }
    }

    [[nodiscard]] QString targetWords(const SetLine &line) const
    {
        QStringList words;
        if (const auto *rpe = std::get_if<RpeTarget>(&line.target))
            words << u'@' + range(rpe->rpe, rpe->to);
        else if (const auto *rir = std::get_if<ReserveTarget>(&line.target))
            words << Text::tr("%1 in reserve").arg(range(rir->rir, rir->to));
        else if (const auto *share = std::get_if<ShareTarget>(&line.target))
            words << QLocale().toString(share->percent) + u'%';
        if (const auto *tempo = std::get_if<Tempo>(&line.manner))
            words << Text::tr("tempo %1-%2-%3")
                         .arg(tempo->lowering)
                         .arg(tempo->pause)
                         .arg(tempo->lifting);
        else if (const auto *pause = std::get_if<Pause>(&line.manner))
            words << Text::tr("pause %1").arg(pause->counts);
        return words.join(QStringLiteral(", "));
    }

    [[nodiscard]] static QString range(double from, const std::optional<double> &to)
    {
        const QLocale locale;
        return to ? locale.toString(from) + QChar(0x2013) + locale.toString(*to)
                  : locale.toString(from);
    }

    [[nodiscard]] QStringList scales() const
    {
        return {
            Text::tr(
                "RPE: 10 = no rep left, 9 = one left, 8 = two left. Write what it was, not what "
                "was planned."),
            Text::tr("Touch: %1. For heavy sets.").arg(touchScale()),
            Text::tr("Missed a rep? Write the reps completed, and \"miss\" behind them.")};
    }

    [[nodiscard]] QStringList cautions() const
    {
        QStringList said{Text::tr("Use a spotter or safeties set just below the chest."),
            Text::tr("Thumbs around the bar."),
            Text::tr("Alone without safeties: no collars, so that the plates can be tipped off and "
                     "the bar cannot trap you."),
            Text::tr(
                "Stop at sharp pain, numbness or dizziness, and tell the coach; pain that stays is "
                "for a doctor or physiotherapist."),
            Text::tr(
                "Local rules, the federation's rule book and the advice of licensed professionals "
                "come first. The loads are arithmetic from the log, not medical advice: take less "
                "on a bad day."),
            Text::tr("Minors and novices: no maximal attempts without qualified supervision.")};
        if (mayBeMinor(m_lifter, m_monday))
            said.prepend(
                Text::tr("This lifter may be a minor: train under qualified supervision, without "
                         "maximal attempts."));
        else if (isNovice(m_lifter, m_monday))
            said.prepend(Text::tr("In training for less than a year: no maximal attempts."));
        return said;
    }

    const Lifter &m_lifter;
    QDate m_monday;
    std::span<const Variation> m_catalogue;
    std::span<const StopNote> m_stops;
    std::set<QString> m_said; ///< cautions; words that stand on every card are read on none
};

} // namespace

WeekSheet weekSheet(const Lifter &lifter, QDate monday, std::span<const ResolvedCard> cards,
    std::span<const Variation> variations, std::span<const StopNote> stops)
{
    return SheetWriter(lifter, monday, variations, stops).write(cards);
}

QString tempoWords(const Tempo &tempo)
{
    if (tempo.lowering > 0)
        return tempo.lifting > 0 ? Text::tr("%1 counts down, %2 held, %3 up")
                                       .arg(tempo.lowering)
                                       .arg(tempo.pause)
                                       .arg(tempo.lifting)
                                 : Text::tr("%1 counts down, %2 held, then as fast as possible")
                                       .arg(tempo.lowering)
                                       .arg(tempo.pause);
    return tempo.pause > 0 ? Text::tr("%1-count pause").arg(tempo.pause) : QString();
}

QString weekFileName(const WeekSheet &sheet)
{
    static const QRegularExpression kOdd(
        QStringLiteral("[^\\p{L}\\p{N} -]+"), QRegularExpression::UseUnicodePropertiesOption);
    QString name = sheet.lifter + QStringLiteral(" - ") + sheet.week;
    name.replace(kOdd, QStringLiteral(" "));
    return name.simplified().left(kLongestFileName);
}

} // namespace core
