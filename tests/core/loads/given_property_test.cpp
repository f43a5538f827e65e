#include "core/loads/given_loads.h"

#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/support/days.h"

#include <gmock/gmock.h>
#include <random>

using namespace core;
using namespace tests;

// What a day shows once it is given is a fact: no later set, lifter, plate or estimate changes it.

namespace {

class RandomRoster
{
public:
    explicit RandomRoster(unsigned seed)
        : m_chance(seed)
        , m_isFitted(seed % 20 == 0)
    {
        m_lifter.id = {1};
        m_lifter.gear = usualGear(below(2) ? Unit::kilogram : Unit::pound);
        for (int session = 0; session < 2 + below(6); ++session)
            logOn(kMonday.addDays(-2 - 3 * session));
        static constexpr const char *kLines[] = {"3x3 @8", "1x1 @8\n3x4 -10%", "5x5 75%",
            "2x2+1 1RIR", "1xAMRAP 80%", "4x6 100kg", "3x3"};
        static constexpr const char *kCodes[] = {"comp", "feet_up", "tempo_4_2_0", "squat"};
        for (int card = 0; card < 1 + below(5); ++card)
            m_cards.push_back(cardOf(card + 1, kMonday.addDays(card / 2), card % 2,
                idOf(kCodes[below(4)]), QString::fromLatin1(kLines[below(7)])));
        fit();
    }

    void give()
    {
        for (GivenDay &day : core::give(resolved(), sources(), m_given,
                 {GivenBy::handOut, QDateTime(kMonday, QTime(8, 0), Qt::UTC),
                     [this] { return GivenDayId{++m_lastId}; }}))
            m_given.push_back(std::move(day));
    }

    /// Something that happens afterwards.
    void happen()
    {
        switch (below(4)) {
        case 0:
            logOn(kMonday.addDays(below(14)));
            fit();
            break;
        case 1:
            m_lifter.gear.plates = {{20.0, 1 + below(5)}, {7.5, 1}};
            break;
        case 2:
            m_lifter.sex = Sex::female;
            m_lifter.bodyweightKg = 60 + below(60);
            fit();
            break;
        default:
            m_today = m_today.addDays(below(7));
        }
    }

    [[nodiscard]] std::vector<ResolvedCard> resolved() const
    {
        return resolveCards(m_cards, sources());
    }

private:
    int below(int bound) { return int(m_chance() % unsigned(bound)); }

    void logOn(QDate day)
    {
        std::vector<SetEntry> sets;
        for (int set = 0; set < 1 + below(3); ++set)
            sets.push_back(setOf(idOf(below(4) ? "comp" : "squat"), 80.0 + 2.5 * below(30),
                1 + below(6), below(3) ? std::optional(6.0 + 0.5 * below(8)) : std::nullopt));
        m_sessions.push_back(sessionOf(day, sets));
        std::ranges::stable_sort(m_sessions, {}, &LoggedSession::day);
    }
    /// By the log in every twentieth roster; a fit takes its time under the sanitizers. Else by
    /// numbers that might have come of one.
    void fit()
    {
        if (m_isFitted) {
            m_fits = estimateAll({m_lifter}, builtInCatalogue(), m_sessions, m_today);
            return;
        }
        m_fits.insert_or_assign({m_lifter.id, Lift::bench},
            plainEstimate(m_sessions.back().day, 80.0 + below(1000) / 10.0, below(5) / 100.0));
        m_fits.try_emplace({m_lifter.id, Lift::squat}); // nobody knows anything of it
    }

    [[nodiscard]] PlanSources sources() const
    {
        return {m_lifter, builtInCatalogue(),
            [this](Lift lift) -> const LiftEstimate * {
                const auto found = m_fits.find({m_lifter.id, lift});
                return found == m_fits.end() ? nullptr : &found->second;
            },
            noCheckIns(), m_given, m_today};
    }

    std::mt19937 m_chance;
    bool m_isFitted;
    Lifter m_lifter;
    std::vector<LoggedSession> m_sessions;
    std::vector<Card> m_cards;
    std::vector<GivenDay> m_given;
    LiftEstimates m_fits;
    QDate m_today = kMonday;
    qint64 m_lastId = 0;
};

/// All that a screen or sheet shows of a line as given.
bool showsTheSame(const ResolvedLine &a, const ResolvedLine &b)
{
    const auto same = [](const auto &x, const auto &y) {
        return x.has_value() == y.has_value()
            && (!x || (x->low90 == y->low90 && x->high90 == y->high90));
    };
    return a.load == b.load && same(a.target, b.target) && same(a.firstReserve, b.firstReserve)
        && same(a.lastReserve, b.lastReserve) && a.allMade == b.allMade
        && a.firstMade == b.firstMade && a.hardSetsAfter == b.hardSetsAfter && a.why == b.why
        && a.caution == b.caution;
}

} // namespace

TEST(GivenLoads, AreTheSameWhateverHappensAfterwardsInAThousandRosters)
{
    for (unsigned seed = 0; seed < 1000; ++seed) {
        RandomRoster roster(seed);
        const std::vector<ResolvedCard> asPlanned = roster.resolved();
        roster.give();
        for (int step = 0; step < 3; ++step) {
            const std::vector<ResolvedCard> shown = roster.resolved();
            ASSERT_EQ(shown.size(), asPlanned.size());
            for (size_t card = 0; card < shown.size(); ++card) {
                ASSERT_TRUE(shown[card].given) << "seed " << seed;
                ASSERT_EQ(shown[card].lines.size(), asPlanned[card].lines.size());
                for (size_t line = 0; line < shown[card].lines.size(); ++line)
                    ASSERT_TRUE(showsTheSame(shown[card].lines[line], asPlanned[card].lines[line]))
                        << "seed " << seed << ", card " << card << ", line " << line;
            }
            roster.happen();
        }
    }
}
