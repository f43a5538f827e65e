#include "core/notation/set_line_completion.h"

#include "core/domain/text.h"
#include "core/notation/set_line_reader.h"

#include <algorithm>

namespace core {

namespace {

class Completer
{
public:
    /// @param line  what stands before the cursor in its line
    Completer(QStringView line, std::span<const Variation> catalogue)
        : m_line(line)
        , m_catalogue(catalogue)
    {
    }

    std::vector<Completion> offers()
    {
        if (m_line.contains(u';'))
            return {};
        if (const LineReading whole = readSetLine(m_line); !whole.stop) {
            afterReps(whole);
            return std::move(m_offers);
        }
        // A word that has been begun is set aside, and the offers at its start are sifted by it.
        m_begun = m_line.mid(startOfWord());
        const QStringView before = m_line.left(m_line.size() - m_begun.size());
        const LineReading reading = readSetLine(before);
        if (!reading.stop)
            afterReps(reading);
        else if (reading.stop->at >= before.size())
            at(reading.stop->place, reading.line);
        return std::move(m_offers);
    }

private:
    [[nodiscard]] qsizetype startOfWord() const
    {
        if (const qsizetype bracket = m_line.lastIndexOf(u'(');
            bracket >= 0 && !m_line.contains(u')'))
            return bracket + 1;
        qsizetype word = m_line.size();
        while (word > 0 && m_line[word - 1].isLetter())
            --word;
        // The x after the sets begins no word.
        const bool isTimes = m_line.mid(word, 1).compare(u"x", Qt::CaseInsensitive) == 0;
        return isTimes ? word + 1 : word;
    }

    void offer(const QString &insert, const QString &explanation)
    {
        if (insert.startsWith(m_begun, Qt::CaseInsensitive))
            m_offers.push_back({insert, int(m_begun.size()), explanation});
    }

    void at(LinePlace place, const SetLine &line)
    {
        switch (place) {
        case LinePlace::sets:
            offer(QStringLiteral("3x5 @8"), Text::tr("three sets of five at RPE 8"));
            offer(QStringLiteral("1x1 @8"), Text::tr("a top single at RPE 8"));
            offer(QStringLiteral("3x3 -10%"), Text::tr("back-offs, 10% below the top set"));
            offer(
                QStringLiteral("1xAMRAP max 10 70%"), Text::tr("as many as possible, ten at most"));
            break;
        case LinePlace::times:
            offer(QStringLiteral("x"), Text::tr("then the reps"));
            break;
        case LinePlace::reps:
            for (const int reps : {1, 3, 5, 8})
                offer(QString::number(reps), Text::tr("reps a set"));
            offer(QStringLiteral("4-6"), Text::tr("a range of reps"));
            offer(QStringLiteral("1+2"), Text::tr("one lead rep, two competition reps"));
            offer(QStringLiteral("AMRAP"), Text::tr("as many as possible"));
            break;
        case LinePlace::cap:
            offer(QString::number(usualCap(line)), Text::tr("reps at which the set ends"));
            break;
        case LinePlace::restCode:
            for (const Variation &v : m_catalogue)
                if (!v.retired)
                    offer(v.code + u')', v.name);
            break;
        case LinePlace::rpe:
            for (const int rpe : {8, 7, 9, 6, 10})
                offer(QString::number(rpe), Text::tr("reps left at the end: %1").arg(10 - rpe));
            break;
        case LinePlace::unit:
            offer(QStringLiteral("%"), Text::tr("of the day's estimated max"));
            offer(QStringLiteral("kg"), Text::tr("on the bar"));
            offer(QStringLiteral("lb"), Text::tr("on the bar"));
            offer(QStringLiteral("RIR"), Text::tr("reps in reserve"));
            break;
        case LinePlace::drop:
            offer(QStringLiteral("10%"), Text::tr("below the top set"));
            break;
        case LinePlace::dropUnit:
            offer(QStringLiteral("%"), Text::tr("of the top set's load"));
            offer(QStringLiteral("kg"), Text::tr("below the top set"));
            offer(QStringLiteral("lb"), Text::tr("below the top set"));
            break;
        case LinePlace::tempo:
            offerTempo();
            break;
        case LinePlace::pause:
            offer(QStringLiteral("2"), Text::tr("counts"));
            offer(QStringLiteral("3"), Text::tr("counts"));
            break;
        case LinePlace::rest:
            offer(QStringLiteral("3min"), Text::tr("between the sets"));
            offer(QStringLiteral("90s"), Text::tr("between the sets"));
            break;
        case LinePlace::restUnit:
            offer(QStringLiteral("min"), Text::tr("minutes"));
            offer(QStringLiteral("s"), Text::tr("seconds"));
            break;
        case LinePlace::upperReps:
        case LinePlace::parts:
        case LinePlace::complete:
            break;
        }
    }

    void offerTempo()
    {
        // Only from the start: three numbers cannot be guessed from the first.
        if (m_line.trimmed().endsWith(u"tempo", Qt::CaseInsensitive))
            offer(
                QStringLiteral("4-2-0"), Text::tr("lowering, pause, lifting in counts; 0 = fast"));
    }

    /// The line can be read; what more may it say?
    void afterReps(const LineReading &reading)
    {
        const bool isSpaced = m_line.chopped(m_begun.size()).back().isSpace();
        const QString gap = isSpaced ? QString() : QStringLiteral(" ");
        const SetLine &line = reading.line;
        const bool isBare = !reading.hasTarget && !line.restSeconds && hasNoManner(line);
        if (line.leadReps > 0 && line.restCode.isEmpty() && isBare && !isSpaced)
            offer(QStringLiteral("("), Text::tr("other reps than competition ones after the lead"));
        if (line.asManyAsPossible && !line.mostReps && isBare)
            offer(
                gap + QStringLiteral("max %1").arg(usualCap(line)), Text::tr("a cap on the reps"));
        if (!reading.hasTarget) {
            offer(gap + QStringLiteral("@8"), Text::tr("by RPE"));
            offer(gap + QStringLiteral("2RIR"), Text::tr("by reps in reserve"));
            offer(gap + QStringLiteral("75%"), Text::tr("by share of the day's estimated max"));
            offer(gap + QStringLiteral("100kg"), Text::tr("by load"));
            offer(gap + QStringLiteral("-10%"), Text::tr("by drop from the top set above"));
        }
        if (hasNoManner(line)) {
            offer(gap + QStringLiteral("tempo 4-2-0"),
                Text::tr("lowering, pause, lifting in counts"));
            offer(gap + QStringLiteral("pause 3"), Text::tr("counts on the chest"));
        }
        if (!line.restSeconds)
            offer(gap + QStringLiteral("rest 3min"), Text::tr("between the sets"));
        offer(gap + QStringLiteral("; "), Text::tr("a note for the lifter"));
        offer(gap + QStringLiteral("then "), Text::tr("further sets on this card"));
    }

    static int usualCap(const SetLine &line)
    {
        return std::min(std::max(10, line.reps + 2), kMostReps);
    }

    static bool hasNoManner(const SetLine &line)
    {
        return std::holds_alternative<std::monostate>(line.manner);
    }

    QStringView m_line;
    std::span<const Variation> m_catalogue;
    QStringView m_begun;
    std::vector<Completion> m_offers;
};

} // namespace

std::vector<Completion> completions(
    const QString &text, int cursor, std::span<const Variation> catalogue)
{
    const QStringView before = QStringView(text).left(cursor);
    const QStringView row = before.mid(before.lastIndexOf(u'\n') + 1);
    return Completer(linesOf(row).back().text, catalogue).offers();
}

} // namespace core
