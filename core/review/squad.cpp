#include "core/review/squad.h"

#include "core/domain/text.h"
#include "core/domain/week.h"
#include "core/notation/set_words.h"
#include "core/safety/day_limits.h"

#include <QLocale>
#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace core {

namespace {

using About = AttentionTerm::About;

constexpr size_t kTrendWeeks = 12;
constexpr int kReadinessDays = 7;
constexpr double kClearChange = 0.01, kFall = -0.015; ///< share in four weeks
constexpr int kAwayDays = 10, kMeetDays = 28;
constexpr double kLeastSurprise = 2.5; ///< SD

QString shortDate(QDate day)
{
    return QLocale().toString(day, QLocale::ShortFormat);
}

/// What belongs to one lifter.
struct Own
{
    std::set<QDate> planned;
    std::vector<const CheckIn *> checkIns;
};

class RowMaker
{
public:
    RowMaker(const SquadInput &input, const Lifter &lifter, const Own &own)
        : m_input(input)
        , m_lifter(lifter)
        , m_own(own)
        , m_bench(input.estimateOf(lifter.id, Lift::bench))
    {
        m_row.lifter = lifter.id;
        m_row.name = lifter.name;
    }

    SquadRow make()
    {
        readTrend();
        readSessions();
        readPlan();
        readCheckIns();
        if (m_lifter.meetDate && *m_lifter.meetDate >= m_input.today)
            m_row.daysToMeet = int(m_input.today.daysTo(*m_lifter.meetDate));
        readSurprise();
        judge();
        return std::move(m_row);
    }

private:
    void readTrend()
    {
        if (!m_bench || m_bench->estimate.weeks.empty()) {
            m_row.trendWords = Text::tr("no sets yet");
            return;
        }
        const auto &weeks = m_bench->estimate.weeks;
        const size_t from = weeks.size() - std::min(weeks.size(), kTrendWeeks);
        for (size_t i = from; i < weeks.size(); ++i)
            m_row.trendKg.push_back(weeks[i].smoothed.kg);
        m_row.max = m_bench->estimate.idle ? m_bench->estimate.idle->max : weeks.back().smoothed;
        if (weeks.size() < 5) {
            m_row.trendWords = Text::tr("too new");
            return;
        }
        const double change = weeks.back().smoothed.kg / weeks[weeks.size() - 5].smoothed.kg - 1.0;
        m_row.fourWeekChange = change;
        const QString percent = QLocale().toString(std::abs(100.0 * change), 'f', 1);
        m_row.trendWords = change >= kClearChange ? Text::tr("up %1 %").arg(percent)
            : change <= -kClearChange             ? Text::tr("down %1 %").arg(percent)
                                                  : Text::tr("level");
    }

    void readSessions()
    {
        for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift})
            if (const LiftEstimate *estimate = m_input.estimateOf(m_lifter.id, lift))
                for (const LoggedSession &session : estimate->readings) {
                    if (session.day >= m_input.today.addDays(-kSquadLookBackDays))
                        m_trained.insert(session.day);
                    if (session.day <= m_input.today)
                        m_row.lastSession =
                            std::max(m_row.lastSession.value_or(session.day), session.day);
                }
    }

    void readPlan()
    {
        std::set<QDate> weeks;
        for (const QDate day : m_own.planned) {
            weeks.insert(mondayOf(day));
            const qint64 ago = day.daysTo(m_input.today);
            if (ago > 0 && ago <= kSquadLookBackDays && !m_trained.contains(day))
                ++m_row.missed;
        }
        const QDate now = mondayOf(m_input.today);
        const auto first = weeks.lower_bound(now);
        if (first == weeks.end())
            return;
        if (*first > now)
            m_row.plannedFrom = *first;
        for (QDate monday = *first; weeks.contains(monday); monday = monday.addDays(kWeekDays))
            ++m_row.plannedWeeks;
    }

    void readCheckIns()
    {
        std::vector<CheckIn> own;
        for (const CheckIn *checkIn : m_own.checkIns)
            own.push_back(*checkIn);
        if (const DayLimits limits = limitsOn(m_lifter, m_input.today, own); !limits.pains.empty())
            m_row.pain = limits.pains.front().flag;
        const CheckIn *last = nullptr;
        for (const CheckIn *checkIn : m_own.checkIns)
            if (checkIn->day <= m_input.today && (!last || checkIn->day >= last->day))
                last = checkIn;
        if (!last)
            return;
        const qint64 ago = last->day.daysTo(m_input.today);
        if (ago <= kReadinessDays)
            m_row.readiness = core::readiness(*last);
    }

    void readSurprise()
    {
        if (!m_bench)
            return;
        for (const strength::SetPull &pull : m_bench->estimate.pulls) {
            const LoggedSession &session = m_bench->readings[size_t(pull.session)];
            const qint64 ago = session.day.daysTo(m_input.today);
            if (ago < 0 || ago > kSquadLookBackDays
                || (m_row.surprise && std::abs(m_row.surprise->sd) >= std::abs(pull.surprise)))
                continue;
            const SetEntry &set = session.sets[size_t(pull.set)];
            const Variation *variation = find(m_input.catalogue, set.variation);
            const QString done =
                Text::tr("%1, %2").arg(workWords(set.repsDone, set.loadKg, m_lifter.unit),
                    variation ? variation->name : QString());
            m_row.surprise = {session.day, set.variation, pull.surprise, done,
                pull.surprise > 0.0 ? Text::tr("better than forecast: %1").arg(done)
                                    : Text::tr("worse than forecast: %1").arg(done)};
        }
    }

    void say(About about, double points, const QString &words)
    {
        m_row.terms.push_back({about, points, words});
        m_row.attention += points;
    }

    void judge()
    {
        if (m_row.pain)
            say(About::pain, 100.0,
                Text::tr("Pain (%1): stop what hurts and refer.").arg(words(*m_row.pain)));
        if (m_row.readiness && *m_row.readiness < kLowReadiness)
            say(About::readiness, 25.0,
                Text::tr("Readiness %1 of 5.").arg(QLocale().toString(*m_row.readiness, 'f', 1)));
        if (m_row.missed > 0)
            say(About::missed, std::min(10.0 * m_row.missed, 40.0),
                Text::tr("Days missed in four weeks: %1.").arg(m_row.missed));
        if (m_row.plannedWeeks == 0)
            say(About::unplanned, 20.0, Text::tr("Nothing is planned for this week."));
        else if (m_row.plannedFrom)
            say(About::unplanned,
                *m_row.plannedFrom <= m_input.today.addDays(kWeekDays) ? 8.0 : 20.0,
                Text::tr("Nothing is planned before %1.").arg(shortDate(*m_row.plannedFrom)));
        else if (m_row.plannedWeeks == 1)
            say(About::unplanned, 8.0, Text::tr("Nothing is planned beyond this week."));
        if (m_row.lastSession && m_row.lastSession->daysTo(m_input.today) >= kAwayDays)
            say(About::away, 15.0,
                Text::tr("No session since %1.").arg(shortDate(*m_row.lastSession)));
        if (m_row.fourWeekChange && *m_row.fourWeekChange <= kFall)
            say(About::falling, std::min(-1000.0 * *m_row.fourWeekChange, 40.0),
                Text::tr("The estimated max is %1 in four weeks.").arg(m_row.trendWords));
        if (m_row.daysToMeet && *m_row.daysToMeet <= kMeetDays)
            say(About::meet, 10.0 + 0.5 * (kMeetDays - *m_row.daysToMeet),
                Text::tr("Days to the meet: %1.").arg(*m_row.daysToMeet));
        if (m_row.surprise && std::abs(m_row.surprise->sd) >= kLeastSurprise)
            say(About::surprise, 3.0 * std::min(std::abs(m_row.surprise->sd), 5.0),
                Text::tr("A set on %1 was far %2.")
                    .arg(shortDate(m_row.surprise->day), m_row.surprise->words));
        if (m_bench && m_bench->estimate.standing == strength::Standing::conflicting)
            say(About::conflict, 6.0, Text::tr("The sets of late disagree with each other."));
        std::ranges::stable_sort(m_row.terms,
            [](const AttentionTerm &a, const AttentionTerm &b) { return a.points > b.points; });
    }

    const SquadInput &m_input;
    const Lifter &m_lifter;
    const Own &m_own;
    const LiftEstimate *m_bench;
    std::set<QDate> m_trained;
    SquadRow m_row;
};

} // namespace

QString SquadRow::why() const
{
    if (terms.empty())
        return Text::tr("Nothing stands out.");
    QStringList sentences;
    for (const AttentionTerm &term : terms)
        sentences << term.words;
    return sentences.join(u' ');
}

bool SquadRow::leadsToPlan() const
{
    constexpr About kOfThePlan[] = {
        About::pain, About::readiness, About::missed, About::unplanned, About::meet};
    return !terms.empty() && std::ranges::count(kOfThePlan, terms.front().about) > 0;
}

std::vector<SquadRow> squadRows(const SquadInput &input)
{
    std::map<LifterId, Own> own;
    for (const Card &card : input.cards)
        own[card.lifter].planned.insert(card.day);
    for (const CheckIn &checkIn : input.checkIns)
        own[checkIn.lifter].checkIns.push_back(&checkIn);
    std::vector<SquadRow> rows;
    for (const Lifter &lifter : input.lifters)
        if (!lifter.archived)
            rows.push_back(RowMaker(input, lifter, own[lifter.id]).make());
    std::ranges::sort(rows, [](const SquadRow &a, const SquadRow &b) {
        if (a.attention != b.attention)
            return a.attention > b.attention;
        return a.name.localeAwareCompare(b.name) < 0;
    });
    return rows;
}

} // namespace core
