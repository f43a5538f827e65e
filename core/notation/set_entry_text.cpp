#include "core/notation/set_entry_text.h"

#include "core/domain/text.h"

#include <QRegularExpression>

namespace core {

namespace {

constexpr double kHighestRpe = 10.0; ///< a bare number above is a load
constexpr double kManyReps = 30.0;   ///< of "12x60", 60 is not the reps

/// Reads the parts of one entry from left to right.
class EntryReader
{
public:
    EntryReader(
        const QString &text, const SetEntry &start, Unit unit, std::optional<double> plannedKg)
        : m_text(text)
        , m_unit(unit)
        , m_plannedKg(plannedKg.value_or(start.loadKg))
        , m_entry(start)
    {
    }

    EntryReading read()
    {
        for (skipBlanks(); m_at < m_text.size() && !m_error; skipBlanks())
            if (!readPart())
                refuse(m_at,
                    Text::tr("\"%1\" says nothing here. Write a load (100), reps (x4), a rating "
                             "(@8), touch (t3), miss, or ; and a note.")
                        .arg(m_text.mid(m_at).section(u' ', 0, 0).left(20)));
        if (!m_error)
            judge();
        return {m_entry, m_error};
    }

private:
    void skipBlanks()
    {
        while (m_at < m_text.size() && m_text[m_at].isSpace())
            ++m_at;
    }

    void refuse(qsizetype position, const QString &words)
    {
        if (!m_error)
            m_error = EntryError{int(position), words};
    }

    [[nodiscard]] QRegularExpressionMatch matchHere(const QRegularExpression &pattern) const
    {
        return pattern.match(m_text, m_at, QRegularExpression::NormalMatch,
            QRegularExpression::AnchorAtOffsetMatchOption);
    }

    /// Goes behind the match; its groups are in m_match.
    void accept(const QRegularExpressionMatch &match)
    {
        m_match = match;
        m_from = m_at;
        m_at = match.capturedEnd();
    }

    bool take(const QRegularExpression &pattern)
    {
        const QRegularExpressionMatch match = matchHere(pattern);
        if (match.hasMatch())
            accept(match);
        return match.hasMatch();
    }

    /// Of two numbers with an x between them: the plan says "5 x 100 kg", many a log 100x5.
    static bool isRepsFirst(const QRegularExpressionMatch &pair)
    {
        if (!pair.hasMatch())
            return false;
        const double first = pair.captured(1).toDouble();
        const double second = pair.captured(2).replace(u',', u'.').toDouble();
        return pair.capturedLength(3) > 0 || (first <= kHighestRpe && second > kHighestRpe)
            || (first <= kManyReps && second > kManyReps);
    }

    [[nodiscard]] double number(int group) const
    {
        return m_match.captured(group).replace(u',', u'.').toDouble();
    }

    /// Each kind of part stands there once.
    bool once(bool &seen, const QString &what)
    {
        if (seen)
            refuse(m_from, Text::tr("%1 is there twice. Write it once.").arg(what));
        seen = true;
        return !m_error;
    }

    bool readPart()
    {
        static const auto pattern = [](const char *text) {
            return QRegularExpression(
                QString::fromLatin1(text), QRegularExpression::CaseInsensitiveOption);
        };
        static const QRegularExpression kNote = pattern(";(.*)$");
        static const QRegularExpression kReps =
            pattern("[x*\\xd7] *(\\d{1,3})(?:\\+(\\d{1,3})(?![\\d.,]))?(?!\\d)");
        static const QRegularExpression kRepsAndLoad =
            pattern("(\\d{1,3}) *[x*\\xd7] *(\\d{1,4}(?:[.,]\\d{1,2})?) *(kg|lb)?(?![\\d.,+])");
        static const QRegularExpression kNoRating = pattern("@ *-");
        static const QRegularExpression kRating =
            pattern("@ *(\\d{1,2}(?:[.,]\\d{1,2})?)(?![\\d.,])");
        static const QRegularExpression kReserve = pattern("(\\d(?:[.,]5)?) *rir\\b");
        static const QRegularExpression kNoTouch = pattern("t *-");
        static const QRegularExpression kTouch = pattern("t *(\\d+)");
        static const QRegularExpression kMiss = pattern("(?:missed|miss|m)\\b");
        static const QRegularExpression kMade = pattern("made\\b");
        static const QRegularExpression kStep =
            pattern("([+-]) *(\\d{1,4}(?:[.,]\\d{1,2})?) *(kg|lb)?(?![\\d.,])");
        static const QRegularExpression kLoad =
            pattern("(\\d{1,4}(?:[.,]\\d{1,2})?) *(kg|lb)?(?![\\d.,])");

        if (take(kNote)) {
            m_entry.note = m_match.captured(1).trimmed();
        } else if (take(kReps)) {
            takeReps();
        } else if (const auto pair = matchHere(kRepsAndLoad); isRepsFirst(pair)) {
            accept(pair);
            takeRepsAndLoad();
        } else if (take(kNoRating)) {
            if (once(m_hasRating, Text::tr("The rating")))
                m_entry.rpe.reset();
        } else if (take(kRating)) {
            if (once(m_hasRating, Text::tr("The rating")))
                m_entry.rpe = number(1);
        } else if (take(kReserve)) {
            if (once(m_hasRating, Text::tr("The rating")))
                m_entry.rpe = kHighestRpe - number(1);
        } else if (take(kNoTouch)) {
            if (once(m_hasTouch, Text::tr("The touch")))
                m_entry.touch.reset();
        } else if (take(kTouch)) {
            if (once(m_hasTouch, Text::tr("The touch")))
                m_entry.touch = m_match.captured(1).toInt();
        } else if (take(kMiss)) {
            m_missAt = m_from;
            if (once(m_hasMiss, Text::tr("The miss")))
                m_entry.failed = true;
        } else if (take(kMade)) {
            if (once(m_hasMiss, Text::tr("The miss")))
                m_entry.failed = false;
        } else if (take(kStep)) {
            takeStep();
        } else if (take(kLoad)) {
            takeNumber();
        } else {
            return false;
        }
        return true;
    }

    void takeReps()
    {
        if (!once(m_hasReps, Text::tr("The number of reps")))
            return;
        m_entry.repsDone = m_match.captured(1).toInt();
        if (m_match.capturedLength(2) == 0)
            return;
        if (!m_entry.lead) {
            refuse(m_from,
                Text::tr("This set has no lead reps. Write all its reps as one number: x3."));
            return;
        }
        if (m_entry.repsDone < 1)
            refuse(m_from, Text::tr("Without a lead rep done, write the reps as one number."));
        m_entry.lead->reps = m_entry.repsDone;
        m_entry.repsDone += m_match.captured(2).toInt();
    }

    void takeRepsAndLoad()
    {
        if (!once(m_hasReps, Text::tr("The number of reps"))
            || !once(m_hasLoad, Text::tr("The load")))
            return;
        m_entry.repsDone = m_match.captured(1).toInt();
        m_entry.loadKg = kgOf(2, 3);
        m_loadAt = m_from;
    }

    [[nodiscard]] double kgOf(int numberGroup, int unitGroup) const
    {
        const QString unit = m_match.captured(unitGroup).toLower();
        return toKg(number(numberGroup),
            unit.isEmpty()                    ? m_unit
                : unit == symbol(Unit::pound) ? Unit::pound
                                              : Unit::kilogram);
    }

    void takeStep()
    {
        if (!once(m_hasLoad, Text::tr("The load")))
            return;
        if (m_plannedKg <= 0.0) {
            refuse(m_from, Text::tr("No load is planned to count from. Write the load itself."));
            return;
        }
        const double stepKg = kgOf(2, 3);
        m_entry.loadKg =
            m_match.captured(1) == QLatin1String("-") ? m_plannedKg - stepKg : m_plannedKg + stepKg;
        m_loadAt = m_from;
    }

    void takeNumber()
    {
        if (m_match.capturedLength(2) == 0 && number(1) <= kHighestRpe) {
            if (once(m_hasRating, Text::tr("The rating")))
                m_entry.rpe = number(1);
        } else if (once(m_hasLoad, Text::tr("The load"))) {
            m_entry.loadKg = kgOf(1, 2);
            m_loadAt = m_from;
        }
    }

    void judge()
    {
        if (m_entry.loadKg == 0.0 && !m_hasLoad) {
            refuse(0, Text::tr("No load is given for this set. Write what was on the bar: 100x5."));
            return;
        }
        // Of a single the miss says it all; of more reps nobody knows how many went up.
        if (m_hasMiss && m_entry.failed && !m_hasReps) {
            if (m_entry.repsPlanned != 1) {
                refuse(m_missAt, Text::tr("How many reps went up before the miss? Write x3 miss."));
                return;
            }
            m_entry.repsDone = 0;
        }
        if (m_entry.repsDone == 0 && !m_entry.failed) {
            refuse(m_text.size(),
                m_hasReps ? Text::tr("No rep went up: write x0 miss, or leave the set out.")
                          : Text::tr("How many reps went up? Write x5."));
            return;
        }
        if (const QStringList wrong = problems(m_entry); !wrong.isEmpty())
            refuse(m_loadAt, wrong.front());
    }

    const QString &m_text;
    Unit m_unit;
    double m_plannedKg;
    SetEntry m_entry;
    std::optional<EntryError> m_error;
    qsizetype m_at = 0;   ///< next character
    qsizetype m_from = 0; ///< where the last part begins
    qsizetype m_missAt = 0;
    qsizetype m_loadAt = 0;
    QRegularExpressionMatch m_match;
    bool m_hasLoad = false;
    bool m_hasReps = false;
    bool m_hasRating = false;
    bool m_hasTouch = false;
    bool m_hasMiss = false;
};

} // namespace

EntryReading readEntry(
    const QString &text, const SetEntry &start, Unit unit, std::optional<double> plannedKg)
{
    return EntryReader(text, start, unit, plannedKg).read();
}

} // namespace core
