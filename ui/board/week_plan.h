#pragma once

#include "core/domain/card.h"
#include "core/domain/roster_change.h"
#include "ui/board/week_cards.h"
#include "ui/board/week_view.h"

#include <QObject>
#include <array>
#include <vector>

namespace ui {

class Estimates;
class OpenRoster;
class Selection;

/// A card as it would be on each day of the week.
using DayCards = std::array<core::Card, core::kWeekDays>;

/// The selected lifter's selected week: reads it, words it, and carries out what the coach does to
/// it, each as one undo step.
class WeekPlan : public QObject
{
    Q_OBJECT

public:
    WeekPlan(
        OpenRoster &roster, Estimates &estimates, Selection &selection, QObject *parent = nullptr);

    /// Null while no lifter is selected.
    [[nodiscard]] const core::Lifter *lifter() const;
    [[nodiscard]] QDate monday() const;
    [[nodiscard]] QDate today() const;
    [[nodiscard]] const std::vector<core::Variation> &catalogue() const;
    /// The week's cards with their loads, by day and position: what is shown, checked and printed.
    [[nodiscard]] const std::vector<core::ResolvedCard> &resolved() const { return m_resolved; }
    [[nodiscard]] const WeekView &view() const { return m_view; }
    [[nodiscard]] const WeekCards &places() const { return m_places; }

    /// What a new card of the variation would be: with the sets that the lifter last had for it by
    /// that day. Reads the weeks before.
    [[nodiscard]] DayCards newCards(core::VariationId variation) const;
    /// Puts one of newCards() on the week; the card's id, invalid when it could not be written.
    core::CardId add(const core::Card &card, BoardPlace place);
    /// @param setLine  empty = what the lifter last had for it
    core::CardId add(core::VariationId variation, BoardPlace place, const QString &setLine = {});
    core::CardId duplicate(core::CardId card, BoardPlace place);
    enum class MovedBy { drag, key };
    /// `place` is the card's place afterwards. Moves by key that follow each other are one step.
    void move(core::CardId card, BoardPlace place, MovedBy by = MovedBy::drag);
    void remove(const std::vector<core::CardId> &cards);
    /// The cards as text, see core/notation/card_text.h.
    [[nodiscard]] QString text(const std::vector<core::CardId> &cards) const;
    /// Takes the cards off the week as "Cut".
    void cut(const std::vector<core::CardId> &cards);
    struct Pasted
    {
        std::vector<core::CardId> cards; ///< the new ones
        QString refused;                 ///< why the text cannot be read
    };
    /// Puts the cards of a text from `place` on; further days of it follow, beyond the week too.
    Pasted paste(const QString &text, BoardPlace place);
    /// What a card, new or of this week, would be at `place`: its sets with the loads of that day.
    /// Empty where there is nothing to say.
    [[nodiscard]] QString landing(core::Card card, BoardPlace place) const;
    [[nodiscard]] QString landing(core::CardId card, BoardPlace place) const;
    void setSetLine(core::CardId card, const QString &setLine);
    void setNote(core::CardId card, const QString &note);

Q_SIGNALS:
    /// The week reads differently: another lifter, week, card, estimate or today.
    void changed();
    /// What is half typed is to be stored now, see OpenRoster::settle().
    void settling();

private:
    void follow(const core::RosterChange &change);
    void reload();
    void rebuild();
    [[nodiscard]] core::PlanSources sources() const;
    [[nodiscard]] std::vector<core::Card> chosen(const std::vector<core::CardId> &ids) const;
    void takeOut(const QString &one, const QString &several, const std::vector<core::CardId> &ids);
    core::CardId addCard(const QString &name, core::Card card, BoardPlace place);
    /// "Move feet-up bench"
    [[nodiscard]] QString named(const QString &pattern, core::VariationId variation) const;
    [[nodiscard]] const core::Card *find(core::CardId id) const;

    OpenRoster &m_roster;
    Estimates &m_estimates;
    Selection &m_selection;
    std::vector<core::Card> m_cards; ///< of the week
    std::vector<core::ResolvedCard> m_resolved;
    WeekView m_view;
    WeekCards m_places;
};

} // namespace ui
