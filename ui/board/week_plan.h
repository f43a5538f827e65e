#pragma once

#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/roster_change.h"
#include "ui/board/week_cards.h"
#include "ui/board/week_view.h"
#include "ui/planning/copied_day.h"

#include <QObject>
#include <array>
#include <vector>

namespace ui {

class Estimates;
class Insights;
class LifterHistory;
class OpenRoster;
class Selection;

/// A card as it would be on each day of the week.
using DayCards = std::array<core::Card, core::kWeekDays>;

/// What a drop would do, and what would stand there.
struct Landing
{
    core::CardId card; ///< the one that lands; invalid where none would
    QString step;      ///< "Add feet-up bench"
    core::Edit edit;
    QString words; ///< its sets with the loads of that day; empty where there is nothing to say
};

/// The selected lifter's selected week: reads it, words it, and carries out what the coach does to
/// it, each as one undo step.
class WeekPlan : public QObject
{
    Q_OBJECT

public:
    WeekPlan(OpenRoster &roster, Estimates &estimates, const Insights &insights,
        const LifterHistory &history, Selection &selection, QObject *parent = nullptr);

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
    /// One of newCards() at `place`.
    [[nodiscard]] Landing landing(const core::Card &newCard, BoardPlace place);
    /// A card of the week moved; `place` is its place afterwards.
    [[nodiscard]] Landing landing(core::CardId card, BoardPlace place);
    /// Does what was told; the card's id, invalid when it could not be written.
    core::CardId land(const Landing &landing);
    /// @param setLine  empty = what the lifter last had for it
    core::CardId add(core::VariationId variation, BoardPlace place, const QString &setLine = {});
    core::CardId duplicate(core::CardId card, BoardPlace place);
    /// By key: moves that follow each other are one step. `place` is the card's place afterwards.
    void move(core::CardId card, BoardPlace place);
    void remove(const std::vector<core::CardId> &cards);
    /// The cards as text, see core/notation/card_text.h.
    [[nodiscard]] QString text(const std::vector<core::CardId> &cards) const;
    /// Takes the cards off the week as "Cut".
    void cut(const std::vector<core::CardId> &cards);
    struct Pasted
    {
        std::vector<core::CardId> cards; ///< the new ones
        QString refused;                 ///< why not all of it was pasted
        QString question; ///< a load far above the max: nothing was pasted, unless it is meant
    };
    /// Puts the cards of a text from `place` on; further days of it follow, beyond the week too.
    /// @param isMeant  far loads were asked about
    Pasted paste(const QString &text, BoardPlace place, bool isMeant = false);
    /// The day on the clipboard.
    [[nodiscard]] CopiedDay copied() const;
    /// Puts a copied day below what is planned on the day; what of it the lifter does not get, and
    /// why, is in `refused`.
    Pasted pasteDay(const CopiedDay &copied, int day);
    /// Whether the card's loads would be far above the max, see core/loads/far_above_max.h.
    [[nodiscard]] QString whyFarAbove(core::CardId card, const QString &setLine) const;
    /// Both false where it could not be stored, and the roster has said why.
    bool setSetLine(core::CardId card, const QString &setLine);
    bool setNote(core::CardId card, const QString &note);

    /// The lifter has been told the loads of the week: those of today and later are kept as given.
    /// What is given already stays as it was.
    void give(core::GivenBy by);
    /// The same of one day, by the estimate of now; what was given before is kept beside it.
    /// @return why nothing was given; empty when it was
    QString giveDay(int day);

Q_SIGNALS:
    /// The week reads differently: another lifter, week, card, estimate or today.
    void changed();
    /// What is half typed is to be stored now, see OpenRoster::settle().
    void settling(QStringList *left);

private:
    void follow(const core::RosterChange &change);
    void reload();
    /// Something that the loads depend on has changed.
    void resolveAgain();
    void rebuild();
    [[nodiscard]] core::PlanSources sources() const;
    /// Those of `cards` on the day, resolved; anew only where they are others than last time.
    const std::vector<core::ResolvedCard> &resolvedOn(
        QDate day, const std::vector<core::Card> &cards);
    [[nodiscard]] std::vector<core::Card> chosen(const std::vector<core::CardId> &ids) const;
    void takeOut(const QString &one, const QString &several, const std::vector<core::CardId> &ids);
    [[nodiscard]] Landing adding(const QString &pattern, core::Card card, BoardPlace place);
    [[nodiscard]] Landing moving(core::CardId card, BoardPlace place) const;
    [[nodiscard]] QString wordsOf(const Landing &landing, BoardPlace place);
    /// "Move feet-up bench"
    [[nodiscard]] QString named(const QString &pattern, core::VariationId variation) const;
    [[nodiscard]] const core::Card *find(core::CardId id) const;
    /// Of those of `cards` that are `meant`, resolved in their days.
    [[nodiscard]] QString whyFarAbove(
        std::vector<core::Card> cards, const std::vector<core::CardId> &meant) const;

    OpenRoster &m_roster;
    Estimates &m_estimates;
    const Insights &m_insights;
    const LifterHistory &m_history;
    Selection &m_selection;
    std::vector<core::Card> m_cards; ///< of the week
    /// Each day as it was resolved last, be it with a card that is dragged over it.
    std::array<std::vector<core::ResolvedCard>, core::kWeekDays> m_days;
    std::vector<core::ResolvedCard> m_resolved;
    WeekView m_view;
    WeekCards m_places;
};

} // namespace ui
