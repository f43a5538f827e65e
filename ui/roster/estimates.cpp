#include "ui/roster/estimates.h"

#include "ui/roster/today.h"

#include <chrono>

namespace ui {

namespace {

using namespace std::chrono_literals;

constexpr auto kQuiet = 3s;
constexpr int kFew = 4; ///< lifters; more at once are an import, and teach the roster something

Estimates::Fits shared(core::LiftEstimates estimates)
{
    Estimates::Fits fits;
    for (auto &[key, estimate] : estimates)
        fits.emplace(key, std::make_shared<const core::LiftEstimate>(std::move(estimate)));
    return fits;
}

/// Of a log that the engine refuses though it was stored: of a file changed by another program.
QString unfit()
{
    return Estimates::tr("The roster holds a log that cannot be estimated. Open the newest backup, "
                         "or mend the set that the details name.");
}

QSet<core::LifterId> fittedLifters(const Estimates::Fits &fits)
{
    QSet<core::LifterId> lifters;
    for (const auto &[key, fit] : fits)
        lifters.insert(key.first);
    return lifters;
}

} // namespace

Estimates::Estimates(OpenRoster &roster, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
    , m_some(
          roster, [this](std::optional<Fitted> fitted) { takeChanged(std::move(fitted)); }, unfit())
    , m_whole(
          roster, [this](std::optional<Fitted> fitted) { takeRoster(std::move(fitted)); }, unfit())
{
    m_quiet.setSingleShot(true);
    m_quiet.setInterval(kQuiet);
    connect(&m_quiet, &QTimer::timeout, this, &Estimates::fitRoster);
    connect(&roster, &OpenRoster::changed, this, &Estimates::follow);
    connect(&roster.today(), &Today::changed, this, &Estimates::fitRoster);
    fitRoster();
}

const core::LiftEstimate *Estimates::of(core::LifterId lifter, core::Lift lift) const
{
    const auto it = m_fits.find({lifter, lift});
    return it == m_fits.end() ? nullptr : it->second.get();
}

void Estimates::follow(const core::RosterChange &change)
{
    const bool ofAll = change.has<core::Lifter, core::Variation>();
    if (!ofAll && !change.has<core::LoggedSession>())
        return;
    if (ofAll || m_learnt.empty() || change.lifters.size() > kFew) {
        fitRoster();
        return;
    }
    m_whole.giveUp();
    m_changed += change.lifters;
    fitChanged();
    m_quiet.start();
}

void Estimates::fitRoster()
{
    m_quiet.stop();
    m_whole.startNext([lifters = m_roster.lifters(), variations = m_roster.variations(),
                          today = m_roster.today().date()](
                          const core::RosterReader &reader, const core::Watch &watch) -> Fitted {
        core::RosterFit fit =
            core::fitRoster(lifters, variations, reader.sessions(), today, watch.stop);
        return {shared(std::move(fit.estimates)), std::move(fit.learnt)};
    });
}

void Estimates::takeRoster(std::optional<Fitted> fitted)
{
    QSet<core::LifterId> moved = fittedLifters(m_fits); // also those that are there no more
    if (fitted) {
        moved += fittedLifters(fitted->fits);
        m_fits = std::move(fitted->fits);
        m_learnt = std::move(fitted->learnt);
    }
    Q_EMIT changed(moved);
    if (fitted)
        Q_EMIT rosterFitted();
}

void Estimates::fitChanged()
{
    if (m_some.isRunning() || m_changed.isEmpty())
        return;
    std::vector<core::Lifter> lifters;
    for (const core::LifterId id : std::exchange(m_changed, {}))
        if (const core::Lifter *lifter = m_roster.lifter(id))
            lifters.push_back(*lifter);
    m_some.start([lifters, variations = m_roster.variations(), learnt = m_learnt,
                     today = m_roster.today().date()](
                     const core::RosterReader &reader, const core::Watch &) -> Fitted {
        std::vector<core::LoggedSession> sessions;
        for (const core::Lifter &lifter : lifters)
            for (core::LoggedSession &session : reader.sessions(lifter.id))
                sessions.push_back(std::move(session));
        return {shared(core::fitSome(lifters, variations, sessions, learnt, today)), {}};
    });
}

void Estimates::takeChanged(std::optional<Fitted> fitted)
{
    const Fits fits = fitted ? std::move(fitted->fits) : Fits();
    for (const auto &[key, estimate] : fits)
        m_fits.insert_or_assign(key, estimate);
    fitChanged();
    Q_EMIT changed(fittedLifters(fits));
}

} // namespace ui
