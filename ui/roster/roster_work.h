#pragma once

#include "core/domain/watch.h"
#include "ui/roster/open_roster.h"

#include <QFutureWatcher>
#include <QtConcurrent/QtConcurrentRun>
#include <functional>
#include <optional>
#include <stop_token>
#include <variant>

namespace ui {

/// Long work on the stored roster for a page or dialog: on another thread, with a reader of its
/// own. One piece at a time: the next one stops what runs, and so does the end of this object.
/// Whatever the work throws is told as a StorageError.
template <class Result> class RosterWork
{
public:
    using Work = std::function<Result(const core::RosterReader &, const core::Watch &)>;
    /// Nothing where the roster could not be read; OpenRoster::failed() tells why thereafter.
    using Done = std::function<void(std::optional<Result>)>;

    /// @param done  called on the screen's thread with what the work has given
    /// @param unforeseen  for the coach, where the work fails and not for the disk
    RosterWork(OpenRoster &roster, Done done,
        const QString &unforeseen = OpenRoster::tr(
            "This could not be worked out. The details tell what went wrong."))
        : m_roster(roster)
        , m_done(std::move(done))
        , m_unforeseen(unforeseen)
    {
        QObject::connect(&m_watcher, &QFutureWatcherBase::finished, &m_watcher, [this] { tell(); });
    }
    ~RosterWork() { stop(); }
    RosterWork(const RosterWork &) = delete;
    RosterWork &operator=(const RosterWork &) = delete;

    void start(Work work)
    {
        stop();
        m_stop = {};
        m_isRunning = true;
        m_watcher.setFuture(QtConcurrent::run(
            [work = std::move(work), readers = m_roster.readers(), unforeseen = m_unforeseen,
                stop = m_stop.get_token()](QPromise<Outcome> &promise) {
                promise.setProgressRange(0, 100);
                const core::Watch watch{stop,
                    [&promise](double share) { promise.setProgressValue(int(100.0 * share)); }};
                try {
                    promise.addResult(Outcome(work(*readers(), watch)));
                } catch (const core::StorageError &trouble) {
                    promise.addResult(Outcome(trouble));
                } catch (const std::exception &e) {
                    promise.addResult(
                        Outcome(core::StorageError(unforeseen, QString::fromUtf8(e.what()))));
                }
            }));
    }

    /// As start(), but what runs is given up and may take its time to end; the last one begins
    /// then.
    void startNext(Work work)
    {
        if (!m_isRunning) {
            start(std::move(work));
            return;
        }
        giveUp();
        m_next = std::move(work);
    }

    /// Asks what runs to end; nothing is told of it.
    void giveUp()
    {
        m_isGivenUp = m_isRunning;
        askToStop();
    }

    /// Asks the work to end; what it gives is told all the same.
    void askToStop() { m_stop.request_stop(); }

    /// Ends the work at once, and nothing is told of it.
    void stop()
    {
        askToStop();
        m_watcher.waitForFinished();
        m_watcher.setFuture({});
        m_isRunning = m_isGivenUp = false;
        m_next = {};
    }

    /// Until what it gives is told, or is not to be told any more.
    [[nodiscard]] bool isRunning() const { return m_isRunning; }
    /// For its signals of progress, in percent.
    [[nodiscard]] const QFutureWatcherBase &progress() const { return m_watcher; }

private:
    using Outcome = std::variant<Result, core::StorageError>;

    void tell()
    {
        if (m_watcher.future().resultCount() == 0) // stopped
            return;
        Outcome outcome = m_watcher.future().takeResult();
        m_watcher.setFuture({}); // one whose result was taken never counts as finished
        m_isRunning = false;
        if (std::exchange(m_isGivenUp, false)) {
            if (Work next = std::exchange(m_next, {}))
                start(std::move(next));
            return;
        }
        if (auto *result = std::get_if<Result>(&outcome)) {
            m_done(std::move(*result));
        } else {
            m_done(std::nullopt);
            m_roster.tell(std::get<core::StorageError>(outcome));
        }
    }

    OpenRoster &m_roster;
    Done m_done;
    QString m_unforeseen;
    Work m_next; ///< begins when what was given up has ended
    bool m_isRunning = false;
    bool m_isGivenUp = false;
    std::stop_source m_stop;
    QFutureWatcher<Outcome> m_watcher;
};

} // namespace ui
