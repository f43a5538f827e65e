#include "core/plan/paste_cards.h"

#include "core/domain/text.h"
#include "core/loads/effort.h"
#include "core/safety/day_limits.h"
#include "core/safety/unknown_age.h"

#include <algorithm>

namespace core {

namespace {

/// The copied cards as one lifter gets them.
class Paster
{
public:
    Paster(const PasteTarget &target, bool isOwn, std::span<const Variation> catalogue,
        QStringList &remarks)
        : m_target(target)
        , m_isOwn(isOwn)
        , m_catalogue(catalogue)
        , m_remarks(remarks)
    {
    }

    /// The card with its day and sets; nothing where it is left out.
    [[nodiscard]] std::optional<Card> cardOf(const CardRow &row)
    {
        const QDate day = m_target.first.addDays(row.offset);
        const Variation *variation = find(m_catalogue, row.variation);
        if (!variation)
            return std::nullopt;
        const DayLimits limits = limitsOn(m_target.lifter, day, m_target.checkIns);
        ParsedSetLines parsed = parseSetLines(row.setLine);
        const std::vector<SetLine> copied = parsed.lines;
        for (SetLine &line : parsed.lines) {
            if (!m_isOwn && std::holds_alternative<LoadTarget>(line.target)) {
                remark(Text::tr("%1 comes without a load: it was written for another lifter.")
                           .arg(namedLine(*variation, line)));
                line.target = {};
            }
            // What the coach wrote for the same lifter stays the coach's word.
            if (m_isOwn ? !limits.mayGoMaximal() : !limits.mayWriteMaximal())
                line = lighter(*variation, line, limits);
            if (const QString why = whyWithheld(limits, askedEffort(line, *variation, m_catalogue));
                !why.isEmpty()) {
                remark(Text::tr("%1 is left out. %2").arg(namedLine(*variation, line), why));
                return std::nullopt;
            }
        }
        const bool isAsWritten = parsed.error || parsed.lines == copied;
        return Card{{}, m_target.lifter.id, day, 0, row.variation,
            isAsWritten ? row.setLine : setLineText(parsed.lines), row.note};
    }

private:
    [[nodiscard]] SetLine lighter(
        const Variation &variation, const SetLine &line, const DayLimits &limits)
    {
        const SetLine eased = withoutMaximal(line);
        if (eased != line)
            remark(Text::tr("%1 in place of %2. %3")
                       .arg(namedLine(variation, eased), setLineText(line),
                           limits.mayGoMaximal() ? whyNoMaximalYet(limits) : whyNoMaximal(limits)));
        return eased;
    }

    [[nodiscard]] static QString namedLine(const Variation &variation, const SetLine &line)
    {
        return Text::tr("%1 %2").arg(variation.name, setLineText(line));
    }

    void remark(const QString &words)
    {
        m_remarks << Text::tr("%1: %2").arg(m_target.lifter.name, words);
    }

    const PasteTarget &m_target;
    bool m_isOwn;
    std::span<const Variation> m_catalogue;
    QStringList &m_remarks;
};

} // namespace

PastedCards pasteCards(std::span<const CardRow> rows, LifterId from,
    std::span<const PasteTarget> targets, OnOccupiedDays onOccupied,
    std::span<const Variation> catalogue, const std::function<CardId()> &newId)
{
    PastedCards pasted;
    for (const PasteTarget &target : targets) {
        Paster paster(
            target, from.isValid() && target.lifter.id == from, catalogue, pasted.remarks);
        std::vector<Card> added;
        for (const CardRow &row : rows)
            if (std::optional<Card> card = paster.cardOf(row)) {
                card->id = newId();
                card->position = int(added.size());
                added.push_back(std::move(*card));
            }
        const Edit laid = layOut(target.cards, added, onOccupied);
        std::ranges::copy(laid.cards.before, std::back_inserter(pasted.edit.cards.before));
        std::ranges::copy(laid.cards.after, std::back_inserter(pasted.edit.cards.after));
        std::ranges::copy(added, std::back_inserter(pasted.cards));
    }
    return pasted;
}

} // namespace core
