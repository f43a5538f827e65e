#include "core/plan/set_line.h"

#include "core/domain/units.h"

#include <QCoreApplication>
#include <cmath>

namespace core {

namespace {

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

/// Where and why the reading of one row stopped; caught by parseSetLines().
struct Stop
{
    qsizetype at = 0;
    QString words;
};

/// Reads one row from left to right.
class RowReader
{
    Q_DECLARE_TR_FUNCTIONS(SetLine)
public:
    explicit RowReader(QStringView row)
        : m_row(row)
    {
    }

    SetLine read()
    {
        SetLine line;
        line.sets = count(kMostSets, tr("Start with the number of sets, such as 4x3 @8."),
            tr("Write 1 to %1 sets."));
        skipSpaces();
        if (!takeAnyOf(u"xX\u00d7"))
            stop(tr("After the sets write x and the reps, such as 4x3."));
        line.reps = count(kMostReps, tr("After x write the reps of a set, such as 4x3."),
            tr("Write 1 to %1 reps a set."));
        skipSpaces();
        if (!atEnd())
            line.target = target();
        skipSpaces();
        if (!atEnd())
            stop(tr("The line is complete before this. Put further sets on a row of their own."));
        return line;
    }

private:
    [[nodiscard]] bool atEnd() const { return m_at >= m_row.size(); }
    [[nodiscard]] QChar here() const { return atEnd() ? QChar() : m_row[m_at]; }
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
    [[noreturn]] void stop(const QString &words) const { stopAt(m_at, words); }
    [[noreturn]] static void stopAt(qsizetype at, const QString &words) { throw Stop{at, words}; }

    int count(int most, const QString &missing, const QString &outOfRange)
    {
        skipSpaces();
        const qsizetype start = m_at;
        while (isDigit(here()))
            ++m_at;
        if (m_at == start)
            stop(missing);
        bool fits = false;
        const int value = m_row.mid(start, m_at - start).toInt(&fits);
        if (!fits || value < 1 || value > most)
            stopAt(start, outOfRange.arg(most));
        if (here() == u'.' || here() == u',')
            stop(tr("Sets and reps are whole numbers."));
        return value;
    }

    double number(const QString &missing)
    {
        skipSpaces();
        const qsizetype start = m_at;
        while (isDigit(here()))
            ++m_at;
        if (m_at == start)
            stop(missing);
        if (here() == u',')
            stop(tr("Write decimals with a point, such as 8.5."));
        if (here() == u'.') {
            const qsizetype point = m_at++;
            while (isDigit(here()))
                ++m_at;
            if (m_at == point + 1)
                stop(tr("Write a digit after the point."));
            if (m_at > point + 3)
                stopAt(point + 3, tr("Write at most two decimals."));
        }
        return m_row.mid(start, m_at - start).toDouble();
    }

    Target target()
    {
        const qsizetype start = m_at;
        if (takeAnyOf(u"@")) {
            skipSpaces();
            const qsizetype at = m_at;
            const double rpe = number(tr("After @ write the RPE, 1 to 10 in halves, such as @8."));
            if (rpe < 1.0 || rpe > 10.0 || rpe * 2.0 != std::floor(rpe * 2.0))
                stopAt(at, tr("RPE goes from 1 to 10 in halves, such as @8 or @8.5."));
            return RpeTarget{rpe};
        }
        const double value =
            number(tr("Write a target: @8 for RPE, 75% of the max, or a load such as 100kg."));
        skipSpaces();
        if (takeAnyOf(u"%")) {
            if (value <= 0.0 || value > kMostPercent)
                stopAt(start, tr("Write more than 0% and at most %1%.").arg(kMostPercent));
            return ShareTarget{value};
        }
        const QString unit = m_row.mid(m_at, 2).toString().toLower();
        if (unit != symbol(Unit::kilogram) && unit != symbol(Unit::pound))
            stop(tr("Say what the number is: 75% of the max, 100kg or 225lb; for RPE write @8."));
        m_at += 2;
        const bool inPounds = unit == symbol(Unit::pound);
        const double loadKg = toKg(value, inPounds ? Unit::pound : Unit::kilogram);
        if (loadKg <= 0.0 || loadKg > kMostLoadKg)
            stopAt(start, tr("Write a load above 0 and at most %1 kg.").arg(kMostLoadKg));
        return LoadTarget{loadKg, inPounds};
    }

    QStringView m_row;
    qsizetype m_at = 0;
};

/// At most two decimals, always with a point.
QString plain(double value)
{
    return QString::number(std::round(value * 100.0) / 100.0, 'g', 10);
}

struct TargetPrinter
{
    QString operator()(std::monostate) const { return {}; }
    QString operator()(const RpeTarget &t) const { return QStringLiteral(" @") + plain(t.rpe); }
    QString operator()(const ShareTarget &t) const { return u' ' + plain(t.percent) + u'%'; }
    QString operator()(const LoadTarget &t) const
    {
        const Unit unit = t.inPounds ? Unit::pound : Unit::kilogram;
        return u' ' + plain(fromKg(t.loadKg, unit)) + symbol(unit);
    }
};

} // namespace

ParsedSetLines parseSetLines(const QString &text)
{
    ParsedSetLines parsed;
    int rowNumber = 0;
    for (const QStringView row : QStringView(text).split(u'\n')) {
        ++rowNumber;
        if (row.trimmed().isEmpty())
            continue;
        try {
            parsed.lines.push_back(RowReader(row).read());
        } catch (const Stop &stop) {
            parsed.error = SetLineError{rowNumber, int(stop.at) + 1, stop.words};
            return parsed;
        }
    }
    return parsed;
}

QString print(const SetLine &line)
{
    return QStringLiteral("%1x%2").arg(line.sets).arg(line.reps)
        + std::visit(TargetPrinter{}, line.target);
}

QString print(const std::vector<SetLine> &lines)
{
    QStringList rows;
    for (const SetLine &line : lines)
        rows << print(line);
    return rows.join(u'\n');
}

} // namespace core
