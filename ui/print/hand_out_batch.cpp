#include "ui/print/hand_out_batch.h"

#include "core/domain/storage_error.h"
#include "core/domain/week.h"
#include "core/exchange/calendar.h"
#include "core/exchange/hand_out.h"
#include "core/log/eased_lines.h"
#include "core/storage/roster_store.h"
#include "ui/look/text.h"
#include "ui/print/sheet_painter.h"

#include <QDir>
#include <QSaveFile>
#include <algorithm>

namespace ui {

namespace {

void writeFile(const QString &path, const QByteArray &contents)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(contents) != contents.size()
        || !file.commit())
        throw core::StorageError(Text::tr("%1 cannot be written: %2.")
                                     .arg(QDir::toNativeSeparators(path), file.errorString()));
}

class Writer
{
public:
    explicit Writer(const HandOutBatch &batch)
        : m_batch(batch)
        , m_given(batch.given)
        , m_folder(batch.folder)
    {
    }

    HandOutSummary run(const core::Watch &watch)
    {
        double done = 0.0;
        try {
            prepare(watch.stop);
            if (m_summary.cancelled || (m_batch.giving && !m_summary.stops.empty()))
                return std::move(m_summary);
            for (const Week &week : m_weeks) {
                if (!watch.goesOn(done++ / double(m_weeks.size()))) {
                    m_summary.cancelled = true;
                    break;
                }
                handOut(week);
            }
        } catch (const core::StorageError &error) {
            m_summary.failure = error.words();
        } catch (const std::exception &error) {
            m_summary.failure = QString::fromLocal8Bit(error.what());
        }
        return std::move(m_summary);
    }

private:
    /// The week of one lifter, ready to be written.
    struct Week
    {
        core::PlanSources sources;
        std::vector<core::ResolvedCard> cards;
        std::vector<core::OpenStop> stops;
    };

    /// All of them before any is written: one stop holds up the whole batch.
    void prepare(const std::stop_token &stop)
    {
        if (m_batch.anew) // the days ahead are worked out once more
            std::erase_if(
                m_given, [this](const core::GivenDay &day) { return day.day >= m_batch.today; });
        for (const core::Lifter &lifter : m_batch.lifters) {
            m_summary.cancelled = stop.stop_requested();
            if (m_summary.cancelled)
                return;
            std::vector<core::Card> own;
            for (const core::Card &card : m_batch.cards)
                if (card.lifter == lifter.id)
                    own.push_back(card);
            Week week{{lifter, m_batch.variations,
                          [this, id = lifter.id](core::Lift lift) {
                              return m_batch.estimateOf ? m_batch.estimateOf(id, lift) : nullptr;
                          },
                          m_batch.checkIns, m_given, m_batch.today},
                {}, {}};
            week.cards = core::resolveCards(std::move(own), week.sources);
            const auto readiness = m_batch.readiness.find(lifter.id);
            core::easeToday(week.cards, week.sources,
                readiness == m_batch.readiness.end() ? nullptr : &readiness->second);
            week.stops = stopsOf(week);
            std::ranges::copy(week.stops, std::back_inserter(m_summary.stops));
            m_weeks.push_back(std::move(week));
        }
    }

    [[nodiscard]] std::vector<core::OpenStop> stopsOf(const Week &week) const
    {
        const core::Lifter &lifter = week.sources.lifter;
        static const std::vector<core::LoggedSession> kNone;
        const auto sessions = m_batch.sessions.find(lifter.id);
        std::vector<core::CheckIn> checkIns;
        std::ranges::copy_if(m_batch.checkIns, std::back_inserter(checkIns),
            [&lifter](const core::CheckIn &checkIn) { return checkIn.lifter == lifter.id; });
        return core::openStops({lifter, m_batch.variations,
            sessions == m_batch.sessions.end() ? kNone : sessions->second, week.cards,
            week.sources.estimateOf, checkIns, m_batch.waivers});
    }

    void handOut(const Week &week)
    {
        write(week.sources.lifter,
            core::weekSheet(week.sources.lifter, m_batch.monday, week.cards, m_batch.variations,
                core::stopNotes(week.stops)));
        if (m_batch.giving)
            give(week.cards, week.sources);
    }

    /// Days gone by are not given by what is written now.
    void give(std::vector<core::ResolvedCard> cards, const core::PlanSources &sources)
    {
        std::erase_if(cards,
            [this](const core::ResolvedCard &card) { return card.card.day < m_batch.today; });
        for (core::GivenDay &day : core::give(cards, sources, m_batch.given, *m_batch.giving))
            m_summary.given.push_back(std::move(day));
    }

    void write(const core::Lifter &lifter, const core::WeekSheet &sheet)
    {
        if (sheet.days.empty()) {
            m_summary.withoutPlan << lifter.name;
            return;
        }
        if (!m_folder.mkpath(QStringLiteral(".")))
            throw core::StorageError(Text::tr("The folder %1 cannot be made.")
                                         .arg(QDir::toNativeSeparators(m_batch.folder)));
        const QString name = freeName(core::weekFileName(sheet));
        if (m_batch.kinds.page) {
            const QString path = m_folder.filePath(name + QStringLiteral(".html"));
            writeFile(path,
                core::handOutPage(
                    core::handOutData(lifter, sheet, m_batch.cards, m_batch.variations)));
            m_summary.files << path;
        }
        if (m_batch.kinds.pdf) {
            const QString path = m_folder.filePath(name + QStringLiteral(".pdf"));
            writePlanPdf(path, layOut(sheet, m_batch.paper));
            m_summary.files << path;
        }
        if (m_batch.kinds.calendar) {
            const QString path = m_folder.filePath(name + QStringLiteral(".ics"));
            writeFile(path, core::writeCalendar(lifter, sheet, m_batch.now));
            m_summary.files << path;
        }
    }

    /// With a number where two lifters' names read the same as a file name.
    QString freeName(const QString &name)
    {
        QString free = name;
        for (int number = 2; m_taken.contains(free, Qt::CaseInsensitive); ++number)
            free = QStringLiteral("%1 %2").arg(name).arg(number);
        m_taken << free;
        return free;
    }

    const HandOutBatch &m_batch;
    std::vector<core::GivenDay> m_given; ///< that are shown as they were given
    std::vector<Week> m_weeks;
    QDir m_folder;
    QStringList m_taken;
    HandOutSummary m_summary;
};

} // namespace

void HandOutBatch::takeFrom(const core::RosterReader &roster, std::span<const core::LifterId> who)
{
    variations = roster.variations();
    const QDate sunday = monday.addDays(core::kWeekDays - 1);
    checkIns = roster.checkInsFor(monday, sunday);
    given = roster.given(monday, sunday);
    for (core::Lifter &lifter : roster.lifters()) {
        if (std::find(who.begin(), who.end(), lifter.id) == who.end())
            continue;
        std::vector<core::Card> own = roster.cards(lifter.id, monday, sunday);
        if (!own.empty()) { // else there is nothing to check
            sessions[lifter.id] = roster.sessions(lifter.id);
            std::ranges::move(roster.waivers(lifter.id), std::back_inserter(waivers));
        }
        std::ranges::move(own, std::back_inserter(cards));
        lifters.push_back(std::move(lifter));
    }
}

HandOutSummary writeHandOuts(const HandOutBatch &batch, const core::Watch &watch)
{
    return Writer(batch).run(watch);
}

QStringList summaryLines(const HandOutSummary &summary)
{
    QStringList lines;
    if (!summary.failure.isEmpty())
        lines << Text::tr("It ended early: %1").arg(summary.failure);
    if (summary.cancelled)
        lines << Text::tr("It was cancelled.");
    lines << (summary.files.size() == 1
            ? Text::tr("One file was written.")
            : Text::tr("%1 files were written.").arg(summary.files.size()));
    if (!summary.withoutPlan.isEmpty())
        lines << Text::tr("Nothing is planned in this week for: %1.")
                     .arg(summary.withoutPlan.join(QStringLiteral(", ")));
    return lines;
}

} // namespace ui
