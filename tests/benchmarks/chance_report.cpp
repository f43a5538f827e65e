// Prints the chances that the program gave in simulated coaching beside what came of them.
//
//     chance_report                    on the train seeds
//     chance_report --seeds held-out   on the seeds that nobody tunes on
//     chance_report --roster FILE      of a roster file: the first set of every line, by what was
//                                      given, or would have been by what was known on the day
#include "core/loads/passed_days.h"
#include "core/storage/roster_file.h"
#include "core/strength/pooling.h"
#include "tests/benchmarks/chances.h"

#include <CLI/CLI.hpp>
#include <QTemporaryDir>
#include <cstdio>

namespace {

using namespace benchmarks;

void print(const char *title, const core::GivenScore &score)
{
    std::printf("%-26s", title);
    for (const core::GivenTenth &tenth : score)
        if (tenth.sets > 0)
            std::printf(" %4.1f>%5.1f/%-5d", 100.0 * tenth.chance / tenth.sets,
                100.0 * tenth.made / tenth.sets, tenth.sets);
        else
            std::printf(" %16s", "-");
    std::printf(" | %4.1f\n", worstTenth(score));
}

Chances operator+(const Chances &a, const Chances &b)
{
    return {a.first + b.first, a.later + b.later};
}

/// Of a copy, so that the file stays as it is.
core::GivenScore scoreOfRoster(const QString &path)
{
    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("copy.benchroster"));
    if (!QFile::copy(path, copy))
        throw std::invalid_argument("cannot read " + path.toStdString());
    const core::RosterFile roster = core::RosterFile::open(copy, QDateTime(QDate(2000, 1, 1), {}));
    const std::vector<core::Lifter> lifters = roster.lifters();
    const std::vector<core::Variation> catalogue = roster.variations();
    const std::vector<core::LoggedSession> all = roster.sessions();
    const QDate today = core::lastDayOf(all).addDays(1);
    const core::LearntLifts learnt = core::fitRoster(lifters, catalogue, all, today).learnt;
    core::GivenScore score{};
    for (const core::Lifter &lifter : lifters) {
        const auto cards = roster.cards(lifter.id, QDate(1900, 1, 1), today.addDays(-1));
        const auto sessions = roster.sessions(lifter.id);
        std::vector<core::GivenDay> given = roster.given(lifter.id);
        std::ranges::move(
            core::givePassedDays({lifter, catalogue, cards, sessions, given, learnt},
                {core::GivenBy::reconstructed, {}, [] { return core::GivenDayId{1}; }}),
            std::back_inserter(given));
        score = score
            + core::scoreGiven(core::asGiven(cards, lifter, catalogue, given), sessions, catalogue);
    }
    return score;
}

} // namespace

int main(int argc, char **argv)
{
    CLI::App app("Chances given in simulated coaching against what came of them");
    std::string seeds = "train", world, file;
    int lifters = 24;
    app.add_option("--seeds", seeds, "train or held-out")
        ->check(CLI::IsMember({"train", "held-out"}));
    app.add_option("--world", world, "one world alone");
    app.add_option("--lifters", lifters, "in a roster")->check(CLI::PositiveNumber);
    app.add_option("--roster", file, "a roster file in place of simulated ones");
    CLI11_PARSE(app, argc, argv);
    std::printf("By tenth of the chance: mean chance > share made / sets, percent; at the end the "
                "furthest apart where %d sets or more.\n",
        kFewestJudged);
    if (!file.empty()) {
        print("first sets of lines", scoreOfRoster(QString::fromStdString(file)));
        return 0;
    }

    struct Job
    {
        const simulators::Truth *truth;
        std::uint64_t seed;
        Chances chances;
    };
    std::vector<Job> jobs;
    for (const simulators::Truth &truth : simulators::truths())
        if (world.empty() || truth.name == world)
            for (const std::uint64_t seed : seeds == "train" ? kChanceTrain : kChanceHeldOut)
                jobs.push_back({&truth, seed, {}});
    strength::forEachOnAllProcessors(jobs.size(),
        [&](size_t i) { jobs[i].chances = chancesGiven(*jobs[i].truth, jobs[i].seed, lifters); });

    Chances all;
    for (const simulators::Truth &truth : simulators::truths()) {
        if (!world.empty() && truth.name != world)
            continue;
        Chances sum;
        for (const Job &job : jobs)
            if (job.truth == &truth)
                sum = sum + job.chances;
        all = all + sum;
        print((std::string(truth.name) + ", first sets").c_str(), sum.first);
        print((std::string(truth.name) + ", later").c_str(), sum.later);
    }
    print("all, first sets", all.first);
    print("all, later", all.later);
}
