#include "core/notation/set_line_reader.h"

#include "core/domain/text.h"
#include "core/domain/units.h"

#include <cmath>
#include <utility>

namespace core {

namespace {

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

bool isInHalves(double value)
{
    return value * 2.0 == std::floor(value * 2.0);
}

/// Reads from left to right and throws a LineStop where it cannot go on.
class SetLinesReader
{
public:
    SetLinesReader(QStringView text, LineReading &reading)
        : m_text(text)
        , m_reading(reading)
        , m_line(reading.line)
    {
    }

    void read()
    {
        skipSpaces();
        refuseSlash();
        m_line.sets = count(LinePlace::sets, kMostSets,
            Text::tr("Start with the number of sets, such as 4x3 @8."),
            Text::tr("Write 1 to %1 sets."));
        skipSpaces();
        if (!takeAnyOf(u"xX\u00d7"))
            stop(LinePlace::times, Text::tr("After the sets write x and the reps, such as 4x3."));
        reps();
        for (skipSpaces(); !atEnd(); skipSpaces())
            if (!part())
                break;
    }

private:
    // Moving along

    [[nodiscard]] bool atEnd() const { return m_at >= m_text.size(); }
    [[nodiscard]] QChar here() const { return atEnd() ? QChar() : m_text[m_at]; }
    [[nodiscard]] QChar next() const
    {
        return m_at + 1 < m_text.size() ? m_text[m_at + 1] : QChar();
    }
    void skipSpaces()
    {
        while (!atEnd() && here().isSpace())
            ++m_at;
    }
    bool takeAnyOf(QStringView letters)
    {
        const bool taken = !atEnd() && letters.contains(here());
        m_at += taken ? 1 : 0;
        return taken;
    }
    bool takeWord(QStringView word)
    {
        const bool taken = m_text.mid(m_at).startsWith(word, Qt::CaseInsensitive);
        m_at += taken ? word.size() : 0;
        return taken;
    }
    [[noreturn]] void stop(LinePlace place, const QString &words) const
    {
        throw LineStop{m_at, words, place};
    }
    [[noreturn]] static void stopAt(qsizetype at, LinePlace place, const QString &words)
    {
        throw LineStop{at, words, place};
    }

    void refuseSlash() const
    {
        if (here() == u'/')
            stop(LinePlace::complete, slashWords());
    }

    // Numbers

    int count(
        LinePlace place, int most, const QString &missing, const QString &outOfRange, int least = 1)
    {
        skipSpaces();
        const qsizetype start = m_at;
        while (isDigit(here()))
            ++m_at;
        if (m_at == start)
            stop(place, missing);
        bool fits = false;
        const int value = m_text.mid(start, m_at - start).toInt(&fits);
        if (!fits || value < least || value > most)
            stopAt(start, place, outOfRange.arg(most));
        if ((here() == u'.' || here() == u',') && isDigit(next()))
            stop(place, Text::tr("Only whole numbers here."));
        return value;
    }

    double number(LinePlace place, const QString &missing)
    {
        skipSpaces();
        const qsizetype start = m_at;
        while (isDigit(here()))
            ++m_at;
        if (m_at == start)
            stop(place, missing);
        if (here() == u'.' || here() == u',') {
            const qsizetype point = m_at++;
            while (isDigit(here()))
                ++m_at;
            if (m_at == point + 1)
                stop(place,
                    m_text[point] == u'.' ? Text::tr("Write a digit after the point.")
                                          : Text::tr("Write a digit after the comma."));
            if (m_at > point + 3)
                stopAt(point + 3, place, Text::tr("Write at most two decimals."));
        }
        return m_text.mid(start, m_at - start).toString().replace(u',', u'.').toDouble();
    }

    /// A number in halves between bounds.
    double inHalves(
        LinePlace place, double least, double most, const QString &missing, const QString &wrong)
    {
        skipSpaces();
        const qsizetype start = m_at;
        const double value = number(place, missing);
        if (value < least || value > most || !isInHalves(value))
            stopAt(start, place, wrong);
        return value;
    }

    // Reps

    void reps()
    {
        const LinePlace place = LinePlace::reps;
        const QString outOfRange = Text::tr("Write 1 to %1 reps a set.");
        skipSpaces();
        if (takeWord(u"amrap")) {
            m_line.asManyAsPossible = true;
            cap();
            return;
        }
        m_line.reps = count(place, kMostReps,
            Text::tr(
                "After x write the reps of a set, such as 4x3, or AMRAP for as many as possible."),
            outOfRange);
        const qsizetype sign = m_at;
        if (here() == u'+' && isDigit(next())) {
            ++m_at;
            const int rest = count(place, kMostReps, {}, outOfRange);
            if (m_line.reps + rest > kMostReps)
                stopAt(sign + 1, place, Text::tr("Write at most %1 reps in all.").arg(kMostReps));
            m_line.leadReps = std::exchange(m_line.reps, m_line.reps + rest);
            if (takeAnyOf(u"("))
                restVariation();
        } else if (takeAnyOf(u"+")) {
            m_line.asManyAsPossible = true;
            cap();
        } else if (takeAnyOf(u"-")) {
            const int most = count(LinePlace::upperReps, kMostReps,
                Text::tr(
                    "After - write the most reps, such as 4-6. A drop from the top set has a space "
                    "before it: 3 -10%."),
                outOfRange);
            if (here() == u'%')
                stopAt(sign, LinePlace::parts,
                    Text::tr("Put a space before a drop from the top set: 3 -10%."));
            if (most <= m_line.reps)
                stopAt(sign + 1, LinePlace::upperReps,
                    Text::tr("The range of reps goes from fewer to more, such as 4-6."));
            m_line.mostReps = most;
        }
    }

    void cap()
    {
        skipSpaces();
        if (!takeWord(u"max"))
            return;
        skipSpaces();
        const qsizetype start = m_at;
        const int most = count(LinePlace::cap, kMostReps,
            Text::tr("After max write the reps at which the set ends, such as AMRAP max 10."),
            Text::tr("Write 1 to %1 reps a set."));
        if (most < m_line.reps)
            stopAt(start, LinePlace::cap, Text::tr("The cap is not below the reps asked for."));
        m_line.mostReps = most;
    }

    void restVariation()
    {
        const qsizetype start = m_at;
        while (!atEnd() && here() != u')')
            ++m_at;
        const QString code = m_text.mid(start, m_at - start).trimmed().toString().toLower();
        for (const QChar c : code)
            if (!isDigit(c) && !(c >= u'a' && c <= u'z') && c != u'_')
                stopAt(start, LinePlace::restCode,
                    Text::tr("Between the brackets stands the code of a variation, such as "
                             "1+2(feet_up)."));
        if (code.isEmpty())
            stopAt(start, LinePlace::restCode,
                Text::tr("Write the code of the variation for the reps that follow, such as "
                         "1+2(feet_up)."));
        if (!takeAnyOf(u")"))
            stop(LinePlace::restCode, Text::tr("Close the bracket: 1+2(%1).").arg(code));
        m_line.restCode = code;
    }

    // Parts

    /// False when the note has ended the line.
    bool part()
    {
        if (here() == u';') {
            m_line.note = m_text.mid(m_at + 1).trimmed().toString();
            return false;
        }
        refuseSlash();
        const qsizetype start = m_at;
        if (takeWord(u"tempo")) {
            once(start, std::holds_alternative<std::monostate>(m_line.manner),
                Text::tr("Tempo or pause is there already."));
            m_line.manner = tempo();
        } else if (takeWord(u"pause")) {
            once(start, std::holds_alternative<std::monostate>(m_line.manner),
                Text::tr("Tempo or pause is there already."));
            m_line.manner = Pause{count(LinePlace::pause, kMostCounts,
                Text::tr("After pause write the counts, such as pause 3."),
                Text::tr("A pause has 0 to %1 counts."), 0)};
        } else if (takeWord(u"rest")) {
            once(start, !m_line.restSeconds, Text::tr("The rest is there already."));
            m_line.restSeconds = rest();
        } else {
            once(start, !m_reading.hasTarget,
                Text::tr("There is a target already. Further sets go on a row of their own, or "
                         "after the word then."));
            m_line.target = target();
            m_reading.hasTarget = true;
        }
        return true;
    }

    static void once(qsizetype at, bool isFirst, const QString &words)
    {
        if (!isFirst)
            stopAt(at, LinePlace::complete, words);
    }

    Tempo tempo()
    {
        const auto counts = [this](bool isFirst) {
            if (!isFirst && !takeAnyOf(u"-"))
                stop(LinePlace::tempo, Text::tr("Write all three counts of a tempo: tempo 4-2-0."));
            return count(LinePlace::tempo, kMostCounts,
                Text::tr("After tempo write lowering-pause-lifting in counts: tempo 4-2-0."),
                Text::tr("Each part of a tempo has 0 to %1 counts."), 0);
        };
        Tempo tempo;
        tempo.lowering = counts(true);
        tempo.pause = counts(false);
        tempo.lifting = counts(false);
        return tempo;
    }

    int rest()
    {
        skipSpaces();
        const qsizetype start = m_at;
        int seconds = count(LinePlace::rest, kMostRestSeconds,
            Text::tr("After rest write the time: rest 3min, rest 90s or rest 2:30."),
            Text::tr("Write a rest of 1 to %1 seconds."));
        if (takeAnyOf(u":")) {
            if (!isDigit(here()) || !isDigit(next()) || here() > u'5')
                stop(LinePlace::restUnit, Text::tr("Write two digits of seconds: rest 2:30."));
            seconds = seconds * 60 + m_text.mid(m_at, 2).toInt();
            m_at += 2;
        } else {
            skipSpaces();
            if (takeWord(u"min"))
                seconds *= 60;
            else if (!takeAnyOf(u"sS"))
                stop(LinePlace::restUnit, Text::tr("Say min or s: rest 3min, rest 90s."));
        }
        if (seconds > kMostRestSeconds)
            stopAt(start, LinePlace::rest, Text::tr("Write a rest of at most 60 minutes."));
        return seconds;
    }

    Target target()
    {
        if (takeAnyOf(u"@"))
            return rpe();
        if (takeAnyOf(u"-\u2212"))
            return drop();
        const qsizetype start = m_at;
        const double value = number(LinePlace::parts,
            Text::tr(
                "Write a target: @8 for RPE, 2RIR, 75% of the max, a load such as 100kg, or a drop "
                "from the top set such as -10%."));
        if (takeAnyOf(u"-"))
            return reserveRange(start, value);
        skipSpaces();
        if (takeAnyOf(u"%")) {
            if (value <= 0.0 || value > kMostPercent)
                stopAt(start, LinePlace::parts,
                    Text::tr("Write more than 0% and at most %1%.").arg(kMostPercent));
            return ShareTarget{value};
        }
        if (takeWord(u"rir")) {
            checkReserve(start, value);
            return ReserveTarget{value, {}};
        }
        const bool inPounds = takeWord(u"lb");
        if (!inPounds && !takeWord(u"kg"))
            stop(LinePlace::unit,
                Text::tr(
                    "Say what the number is: 75% of the max, 100kg or 225lb, 2RIR; for RPE write "
                    "@8."));
        const double loadKg = toKg(value, inPounds ? Unit::pound : Unit::kilogram);
        if (loadKg <= 0.0 || loadKg > kMostLoadKg)
            stopAt(start, LinePlace::parts,
                Text::tr("Write a load above 0 and at most %1 kg.").arg(kMostLoadKg));
        return LoadTarget{loadKg, inPounds};
    }

    Target rpe()
    {
        const QString missing = Text::tr("After @ write the RPE, 1 to 10 in halves, such as @8.");
        const QString wrong = Text::tr("RPE goes from 1 to 10 in halves, such as @8 or @8.5.");
        RpeTarget target{inHalves(LinePlace::rpe, 1.0, 10.0, missing, wrong), {}};
        if (takeAnyOf(u"-")) {
            const qsizetype start = m_at;
            target.to = inHalves(LinePlace::rpe, 1.0, 10.0, missing, wrong);
            if (*target.to <= target.rpe)
                stopAt(start, LinePlace::rpe,
                    Text::tr("A range of RPE goes from easier to harder, such as @7-8."));
        }
        return target;
    }

    Target reserveRange(qsizetype start, double from)
    {
        const qsizetype second = m_at;
        const double to = number(
            LinePlace::unit, Text::tr("After - write the more reps in reserve, such as 1-2RIR."));
        skipSpaces();
        if (!takeWord(u"rir"))
            stop(LinePlace::unit, Text::tr("Only RPE and RIR take a range: @7-8 or 1-2RIR."));
        checkReserve(start, from);
        checkReserve(second, to);
        if (to <= from)
            stopAt(second, LinePlace::unit,
                Text::tr("A range of reps in reserve goes from fewer to more, such as 1-2RIR."));
        return ReserveTarget{from, to};
    }

    static void checkReserve(qsizetype start, double value)
    {
        if (value > kMostReserve || !isInHalves(value))
            stopAt(start, LinePlace::parts,
                Text::tr("Reps in reserve go from 0 to %1 in halves, such as 2RIR.")
                    .arg(kMostReserve));
    }

    Target drop()
    {
        skipSpaces();
        const qsizetype start = m_at;
        const double amount = number(LinePlace::drop,
            Text::tr("After - write how far below the top set: -10%, -10kg or -20lb."));
        skipSpaces();
        DropTarget target{amount, DropTarget::In::percent};
        if (takeWord(u"kg"))
            target.in = DropTarget::In::kilogram;
        else if (takeWord(u"lb"))
            target.in = DropTarget::In::pound;
        else if (!takeAnyOf(u"%"))
            stop(LinePlace::dropUnit, Text::tr("Say how the drop is meant: -10%, -10kg or -20lb."));
        const double most = target.in == DropTarget::In::percent ? 100.0 : kMostLoadKg;
        if (amount <= 0.0 || amount >= most)
            stopAt(
                start, LinePlace::drop, Text::tr("Write a drop above 0 and below %1.").arg(most));
        return target;
    }

    QStringView m_text;
    LineReading &m_reading;
    SetLine &m_line;
    qsizetype m_at = 0;
};

} // namespace

LineReading readSetLine(QStringView line)
{
    LineReading reading;
    try {
        SetLinesReader(line, reading).read();
    } catch (const LineStop &stop) {
        reading.stop = stop;
    }
    return reading;
}

std::vector<RowLine> linesOf(QStringView row)
{
    static constexpr QStringView kThen = u"then";
    const auto isLetter = [row](qsizetype at) {
        return at >= 0 && at < row.size() && (row[at].isLetter() || row[at] == u'_');
    };
    std::vector<RowLine> lines;
    qsizetype from = 0;
    bool inBrackets = false;
    for (qsizetype at = 0; at < row.size() && row[at] != u';'; ++at) {
        if (row[at] == u'(' || row[at] == u')')
            inBrackets = row[at] == u'(';
        const bool isThen = !inBrackets && row.mid(at).startsWith(kThen, Qt::CaseInsensitive)
            && !isLetter(at - 1) && !isLetter(at + kThen.size());
        if (!isThen)
            continue;
        lines.push_back({from, row.mid(from, at - from)});
        from = at + kThen.size();
        at = from - 1;
    }
    lines.push_back({from, row.mid(from)});
    return lines;
}

QString slashWords()
{
    return Text::tr("Write then in place of the slash: 1x1 @8 then 3x3 -10%.");
}

} // namespace core
