#include "ui/roster/estimates.h"

#include "ui/roster/open_roster.h"

#include <QtConcurrent/QtConcurrentRun>
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

using core::StorageError;

QSet<core::LifterId> fittedLifters(const Estimates::Fits &fits)
{
    QSet<core::LifterId> lifters;
    for (const auto &[key, fit] : fits)
        lifters.insert(key.first);
    return lifters;
}

/// A log that the engine refuses though it was stored: of a file changed by another program.
StorageError unfit(const std::exception &e)
{
    return StorageError(
        Estimates::tr("The roster holds a log that cannot be estimated. Open the newest backup, or "
                      "mend the set that the details name."),
        QString::fromUtf8(e.what()));
}

} // namespace

Estimates::Estimates(OpenRoster &roster, QObject *parent)
    : QObject(parent)
    , m_roster(roster)
{
    m_quiet.setSingleShot(true);
    m_quiet.setInterval(kQuiet);
    connect(&m_quiet, &QTimer::timeout, this, &Estimates::fitRoster);
    connect(&m_whole, &QFutureWatcherBase::finished, this, &Estimates::takeRoster);
    connect(&m_some, &QFutureWatcherBase::finished, this, &Estimates::takeChanged);
    connect(&roster, &OpenRoster::changed, this, &Estimates::follow);
    fitRoster();
}

Estimates::~Estimates()
{
    m_stop.request_stop();
    m_whole.waitForFinished();
    m_some.waitForFinished();
}

const core::LiftEstimate *Estimates::of(core::LifterId lifter, core::Lift lift) const
{
    const auto it = m_fits.find({lifter, lift});
    return it == m_fits.end() ? nullptr : it->second.get();
}

bool Estimates::isBusy() const
{
    return m_whole.isRunning() || m_some.isRunning();
}

template <class Fit> QFuture<Estimates::Fitted> Estimates::inBackground(Fit fit) const
{
    return QtConcurrent::run([fit, readers = m_roster.readers()]() -> Fitted {
        try {
            return fit(*readers());
        } catch (const core::StorageError &trouble) {
            return {{}, {}, trouble};
        } catch (const std::exception &e) {
            return {{}, {}, unfit(e)};
        }
    });
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
    m_stale = m_whole.isRunning();
    m_changed += change.lifters;
    fitChanged();
    m_quiet.start();
}

void Estimates::fitRoster()
{
    m_quiet.stop();
    m_stale = m_whole.isRunning();
    if (m_stale)
        return;
    m_whole.setFuture(
        inBackground([lifters = m_roster.lifters(), variations = m_roster.variations(),
                         stop = m_stop.get_token()](core::RosterReader &reader) -> Fitted {
            core::RosterFit fit = core::fitRoster(lifters, variations, reader.sessions(), stop);
            return {shared(std::move(fit.estimates)), std::move(fit.learnt), {}};
        }));
    Q_EMIT busyChanged(true);
}

void Estimates::takeRoster()
{
    if (m_stale) {
        if (!m_quiet.isActive())
            fitRoster();
        Q_EMIT busyChanged(isBusy());
        return;
    }
    Fitted fit = m_whole.result();
    QSet<core::LifterId> moved = fittedLifters(m_fits); // also those that are there no more
    if (fit.trouble) {
        m_roster.tell(*fit.trouble);
    } else {
        moved += fittedLifters(fit.fits);
        m_fits = std::move(fit.fits);
        m_learnt = std::move(fit.learnt);
    }
    Q_EMIT busyChanged(isBusy());
    Q_EMIT changed(moved);
    if (!fit.trouble)
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
    m_some.setFuture(inBackground([lifters, variations = m_roster.variations(), learnt = m_learnt](
                                      core::RosterReader &reader) -> Fitted {
        std::vector<core::LoggedSession> sessions;
        for (const core::Lifter &lifter : lifters)
            for (core::LoggedSession &session : reader.sessions(lifter.id))
                sessions.push_back(std::move(session));
        return {shared(core::fitSome(lifters, variations, sessions, learnt)), {}, {}};
    }));
    Q_EMIT busyChanged(true);
}

void Estimates::takeChanged()
{
    const Fitted fitted = m_some.result();
    if (fitted.trouble)
        m_roster.tell(*fitted.trouble);
    for (const auto &[key, estimate] : fitted.fits)
        m_fits.insert_or_assign(key, estimate);
    fitChanged();
    Q_EMIT busyChanged(isBusy());
    Q_EMIT changed(fittedLifters(fitted.fits));
}

} // namespace ui
