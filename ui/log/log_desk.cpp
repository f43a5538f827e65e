#include "ui/log/log_desk.h"

#include "core/domain/language.h"
#include "core/domain/variation.h"
#include "ui/log/day_log.h"

#include <QScopedValueRollback>
#include <algorithm>
#include <utility>

namespace ui {

namespace {

/// The set as it was meant, without what was said of it: the next one is rated by itself.
core::SetEntry onceMore(core::SetEntry set)
{
    if (set.failed)
        set.repsDone = set.repsPlanned.value_or(set.repsDone);
    set.failed = false;
    set.repsPlanned.reset();
    set.answers.reset();
    set.rpe.reset();
    set.velocityMs.reset();
    set.touch.reset();
    set.note.clear();
    return set;
}

} // namespace

LogDesk::LogDesk(DayLog &log, QObject *parent)
    : QObject(parent)
    , m_log(log)
{
    connect(&log, &DayLog::changed, this, &LogDesk::follow);
    connect(&log, &DayLog::closing, this, [this](QStringList *left) { *left << drafts(); });
    connect(&log, &DayLog::opening, this, [this](core::LifterId lifter, QDate *day) {
        for (const auto &[key, draft] : m_drafts) // by day: the last one holds
            if (key.first == lifter && draft.hasText())
                *day = key.second;
    });
    follow();
}

void LogDesk::follow()
{
    const Key now{m_log.lifter() ? m_log.lifter()->id : core::LifterId{}, m_log.day()};
    if (now != m_key) {
        if (m_draft.isTouched())
            m_drafts[m_key] = m_draft;
        m_key = now;
        m_draft = {};
        rebuild();
        if (const auto kept = m_drafts.find(now); kept != m_drafts.end()) {
            m_draft = kept->second;
            m_drafts.erase(kept);
        } else {
            m_draft.line = lineToBegin(m_lines);
        }
    } else if (!m_draft.isTouched() && !m_draft.isExtra && m_draft.line < m_lines.size()
        && !m_lines[m_draft.line].done) {
        const std::optional<size_t> planned = m_lines[m_draft.line].planned;
        rebuild();
        if (m_draft.line < m_lines.size() && m_lines[m_draft.line].done
            && m_lines[m_draft.line].planned == planned)
            m_draft.line = lineToBegin(m_lines); // logged meanwhile, on another page
    }
    rebuild();
    Q_EMIT changed();
}

QStringList LogDesk::drafts() const
{
    QStringList words;
    const auto add = [&](const Key &key, const SetDraft &draft) {
        const core::Lifter *lifter = m_log.lifter(key.first);
        if (lifter && draft.hasText())
            words << tr("Set of %1 on %2, not saved yet: %3")
                         .arg(lifter->name,
                             core::dateWords(key.second, QStringLiteral("d MMM yyyy")),
                             draft.text.trimmed());
    };
    for (const auto &[key, draft] : m_drafts)
        add(key, draft);
    add(m_key, m_draft);
    return words;
}

void LogDesk::rebuild()
{
    m_lines.clear();
    if (!m_log.lifter())
        return;
    m_lines = logLines(m_log.rows(), m_log.planned(), m_log.done(), m_log.catalogue(),
        m_log.lifter()->unit, m_log.day() < m_log.today());
    m_draft.settle(m_lines, m_log.done());
    if (m_draft.isExtra)
        m_lines.insert(m_lines.begin() + std::ptrdiff_t(m_draft.line), extraLine());
}

LogLine LogDesk::extraLine() const
{
    LogLine extra;
    extra.state = LineState::extra;
    extra.said = m_draft.isOffered ? tr("add a set") : tr("extra set, not saved yet");
    const core::Variation *variation = core::find(m_log.catalogue(), extraSet().variation);
    extra.variation = variation ? variation->name : QString();
    return extra;
}

void LogDesk::setText(const QString &text)
{
    m_draft.begin(m_lines, m_log.done());
    m_draft.text = text;
}

bool LogDesk::isLogged() const
{
    return m_draft.line < m_lines.size() && m_lines[m_draft.line].done;
}

std::optional<core::DaySet> LogDesk::plannedSet() const
{
    if (m_draft.line >= m_lines.size() || !m_lines[m_draft.line].planned)
        return std::nullopt;
    const size_t planned = *m_lines[m_draft.line].planned;
    return m_draft.variation.isValid() && m_draft.variation != m_log.planned()[planned].variation
        ? m_log.swapped(planned, m_draft.variation)
        : m_log.planned()[planned];
}

core::SetEntry LogDesk::extraStart() const
{
    core::SetEntry entry = extraSet();
    entry.loadKg = m_log.easedKg(entry.variation, entry.loadKg);
    if (!m_log.withheld(entry).isEmpty()) {
        entry.loadKg = 0.0;
        entry.repsDone = 0;
    }
    return entry;
}

core::SetEntry LogDesk::extraSet() const
{
    core::SetEntry entry;
    if (m_draft.line > 0 && m_draft.line - 1 < m_log.rows().size()) {
        const core::SessionRow &above = m_log.rows()[m_draft.line - 1];
        entry = onceMore(above.done ? m_log.done()[*above.done]
                                    : core::asPlanned(m_log.planned()[*above.planned]));
    } else if (const core::Variation *bench =
                   core::competitionOf(m_log.catalogue(), core::Lift::bench)) {
        entry.variation = bench->id;
    }
    if (m_draft.variation.isValid() && m_draft.variation != entry.variation) {
        entry = {};
        entry.variation = m_draft.variation;
    }
    return entry;
}

core::SetEntry LogDesk::start() const
{
    if (m_draft.isExtra)
        return extraStart();
    if (isLogged()) {
        core::SetEntry entry = m_log.done()[*m_lines[m_draft.line].done];
        if (m_draft.variation.isValid() && m_draft.variation != entry.variation) {
            entry.variation = m_draft.variation;
            entry.lead.reset();
        }
        return entry;
    }
    const std::optional<core::DaySet> planned = plannedSet();
    return planned ? core::asPlanned(*planned) : core::SetEntry{};
}

core::VariationId LogDesk::variation() const
{
    return start().variation;
}

QString LogDesk::withheld() const
{
    if (m_draft.isExtra)
        return m_log.withheld(extraSet());
    const std::optional<core::DaySet> planned = plannedSet();
    return planned && !isLogged() ? planned->withheld : QString();
}

QString LogDesk::question() const
{
    if (m_isKept || !m_draft.hasText())
        return {};
    const core::EntryReading said = reading();
    if (said.error
        || (isLogged() && m_log.done()[*m_lines[m_draft.line].done].loadKg == said.entry.loadKg))
        return {};
    return m_log.whyFarAbove(said.entry);
}

core::EntryReading LogDesk::reading() const
{
    const std::optional<core::DaySet> planned = plannedSet();
    core::EntryReading reading = core::readEntry(
        m_draft.text, start(), m_log.lifter()->unit, planned ? planned->loadKg : std::nullopt);
    if (!m_log.isLoggable())
        reading.error =
            core::EntryError{0, tr("This day has not come yet: nothing can have been done on it.")};
    return reading;
}

QString LogDesk::words(const core::SetEntry &entry) const
{
    const std::optional<core::DaySet> planned = plannedSet();
    return entryWords(
        entry, planned ? &*planned : nullptr, m_log.catalogue(), m_log.lifter()->unit);
}

size_t LogDesk::placeInLog() const
{
    return size_t(std::count_if(m_lines.begin(), m_lines.begin() + std::ptrdiff_t(m_draft.line),
        [](const LogLine &line) { return line.done.has_value(); }));
}

std::optional<core::EntryError> LogDesk::take()
{
    if (!m_log.lifter())
        return std::nullopt;
    const bool wasLogged = isLogged();
    const size_t own = m_draft.line;
    if (m_draft.isOffered && !m_draft.isTouched() && m_lines.size() > 1)
        return std::nullopt; // Enter once too often
    if (!wasLogged || m_draft.isTouched()) {
        const core::EntryReading said = reading();
        if (said.error)
            return said.error;
        if (const QString asked = question(); !asked.isEmpty())
            return core::EntryError{int(m_draft.text.size()), asked};
        const size_t place = placeInLog();
        const SetDraft kept = std::exchange(m_draft, m_draft.emptied());
        if (!(wasLogged ? m_log.change(said.entry, place) : m_log.add(said.entry, place))) {
            m_draft = kept;
            rebuild();
            Q_EMIT changed();
            return core::EntryError{
                0, tr("This set is not saved. What you typed stays: try again.")};
        }
    }
    m_draft.line = nextOpen(m_lines, own + 1).value_or(m_lines.size());
    rebuild();
    Q_EMIT changed();
    return std::nullopt;
}

std::optional<core::EntryError> LogDesk::keep()
{
    const QScopedValueRollback kept(m_isKept, true);
    return take();
}

std::optional<core::EntryError> LogDesk::step(int lines)
{
    const int end = int(m_lines.size()) - (m_draft.isExtra ? 1 : 0);
    return select(size_t(std::clamp(int(m_draft.line) + lines, 0, end)));
}

std::optional<core::EntryError> LogDesk::select(size_t line)
{
    if (line == m_draft.line)
        return std::nullopt;
    if (m_draft.hasText())
        if (auto refused = take())
            return refused;
    if (m_draft.isExtra && line > m_draft.line)
        --line; // the extra set above goes
    m_draft = m_draft.emptied();
    m_draft.line = line;
    rebuild();
    Q_EMIT changed();
    return std::nullopt;
}

std::optional<core::EntryError> LogDesk::beginExtra()
{
    if (!m_log.lifter() || (m_draft.isExtra && !m_draft.isOffered))
        return std::nullopt;
    if (m_draft.isOffered) {
        m_draft.isOffered = false;
        rebuild();
        Q_EMIT changed();
        return std::nullopt;
    }
    const size_t below = m_draft.line + 1;
    if (m_draft.hasText())
        if (auto refused = take())
            return refused;
    m_draft = SetDraft{.line = below, .isExtra = true};
    rebuild();
    Q_EMIT changed();
    return std::nullopt;
}

void LogDesk::remove()
{
    if (isLogged()) {
        const size_t place = placeInLog();
        m_draft = m_draft.emptied();
        m_log.remove(place);
        return;
    }
    if (!m_draft.isExtra)
        return;
    m_draft = m_draft.emptied();
    m_draft.line -= std::min<size_t>(m_draft.line, 1);
    rebuild();
    Q_EMIT changed();
}

void LogDesk::setVariation(core::VariationId variation)
{
    if (variation == this->variation())
        return;
    m_draft.begin(m_lines, m_log.done());
    m_draft.variation = {};
    if (variation != this->variation())
        m_draft.variation = variation;
    rebuild();
    Q_EMIT changed();
}

void LogDesk::giveUp()
{
    m_draft.text.clear();
    m_draft.variation = {};
    rebuild();
    Q_EMIT changed();
}

} // namespace ui
