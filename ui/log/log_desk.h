#pragma once

#include "core/notation/set_entry_text.h"
#include "ui/log/set_draft.h"

#include <QDate>
#include <QObject>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace ui {

class DayLog;

/// Where the coach is in the day's list of sets, and what is half typed there. A half-typed set
/// stays with its lifter and day, whatever the window shows meanwhile.
class LogDesk : public QObject
{
    Q_OBJECT

public:
    explicit LogDesk(DayLog &log, QObject *parent = nullptr);

    /// A set that is being added stands among them.
    [[nodiscard]] const std::vector<LogLine> &lines() const { return m_lines; }
    [[nodiscard]] size_t current() const { return m_draft.line; }
    [[nodiscard]] const QString &text() const { return m_draft.text; }
    void setText(const QString &text);
    /// Of the set at hand, the one swapped for included.
    [[nodiscard]] core::VariationId variation() const;
    [[nodiscard]] bool isLogged() const;
    [[nodiscard]] bool isExtra() const { return m_draft.isExtra; }
    /// An extra set that nobody began: where nothing is left to do, what is typed adds one.
    [[nodiscard]] bool isOffered() const { return m_draft.isOffered; }
    /// Why nothing is suggested for the set at hand; empty when something is.
    [[nodiscard]] QString withheld() const;

    /// Whether what is typed has to be asked about before it is saved: a load far above the max
    /// that the coach has not kept. Empty where not.
    [[nodiscard]] QString question() const;

    /// What `text` says of the set at hand.
    [[nodiscard]] core::EntryReading reading() const;
    /// The reading in words, beside the plan.
    [[nodiscard]] QString words(const core::SetEntry &entry) const;

    /// Saves the set at hand and goes on to the next one to do. Why not, where it is refused or has
    /// to be asked about; a failed write has been told by the roster.
    std::optional<core::EntryError> take();
    /// The same of what is asked about: it is meant.
    std::optional<core::EntryError> keep();
    /// To the line so many further, below the last one to another set. A half-typed set is saved
    /// first; a variation that was only looked at is not.
    std::optional<core::EntryError> step(int lines);
    std::optional<core::EntryError> select(size_t line);
    /// Begins a set below the one at hand.
    std::optional<core::EntryError> beginExtra();
    /// Takes the set at hand out of the log, or gives up the extra one.
    void remove();
    void setVariation(core::VariationId variation);
    /// Takes back what is half typed, a swap too.
    void giveUp();
    /// What is half typed, here and of other lifters and days, in words for the coach.
    [[nodiscard]] QStringList drafts() const;

Q_SIGNALS:
    void changed();

private:
    using Key = std::pair<core::LifterId, QDate>;

    void follow();
    void rebuild();
    [[nodiscard]] LogLine extraLine() const;
    [[nodiscard]] std::optional<core::DaySet> plannedSet() const;
    [[nodiscard]] core::SetEntry start() const;
    /// What an extra set here would be, were nothing held back.
    [[nodiscard]] core::SetEntry extraSet() const;
    [[nodiscard]] core::SetEntry extraStart() const;
    [[nodiscard]] size_t placeInLog() const;

    DayLog &m_log;
    Key m_key;
    SetDraft m_draft;
    std::map<Key, SetDraft> m_drafts; ///< of other lifters and days
    std::vector<LogLine> m_lines;
    bool m_isKept = false; ///< while keep() takes
};

} // namespace ui
