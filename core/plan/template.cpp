#include "core/plan/template.h"

#include "core/domain/text.h"
#include "core/domain/variation.h"
#include "core/loads/effort.h"
#include "core/plan/plan_edits.h"
#include "core/plan/touch_swap.h"
#include "core/safety/day_limits.h"

#include <algorithm>
#include <map>
#include <set>

namespace core {

namespace {

/// Without maximal work where the lifter gets none whatever the day.
QString setLineFor(const DayLimits &limits, const QString &setLine)
{
    if (limits.mayWriteMaximal())
        return setLine;
    const ParsedSetLines parsed = parseSetLines(setLine);
    std::vector<SetLine> lines = parsed.lines;
    for (SetLine &line : lines)
        line = withoutMaximal(line);
    return parsed.error || lines == parsed.lines ? setLine : setLineText(lines);
}

/// A template's cards as one lifter gets them, by key. The ids are not set.
std::map<int, Card> rowsOf(const BlockTemplate &block, const TemplateUse &use, QStringList *remarks)
{
    std::map<int, Card> rows;
    for (const TemplateCard &card : block.cards) {
        const QString code = swapped(card.code, use.lifter.touchStyle, block.swaps);
        const Variation *variation = withCode(use.catalogue, code);
        if (!variation) {
            if (remarks)
                *remarks << Text::tr(
                    "There is no variation %1 in the catalogue; its cards are left "
                    "out.")
                                .arg(code);
            continue;
        }
        if (const Variation *written = withCode(use.catalogue, card.code);
            remarks && written && written != variation)
            *remarks << Text::tr("%1 in place of %2: %3.")
                            .arg(variation->name, written->name, words(use.lifter.touchStyle));
        else if (remarks && !suits(variation->serves, use.lifter.touchStyle))
            *remarks << Text::tr(
                "%1 is made for the other touch style, and no rule names what to take "
                "in its place.")
                            .arg(variation->name);
        const QDate day = use.start.addDays(card.dayOffset);
        const DayLimits limits = limitsOn(use.lifter, day, {});
        const QString setLine = setLineFor(limits, card.setLine);
        if (remarks && setLine != card.setLine)
            *remarks << withoutMaximalWords(
                limits, setLine.simplified(), card.setLine.simplified());
        rows.emplace(card.key,
            Card{{}, use.lifter.id, day, card.position, variation->id, setLine, card.note});
    }
    return rows;
}

bool isSameContent(const Card &a, const Card &b)
{
    return a.variation == b.variation && a.setLine == b.setLine && a.note == b.note;
}

/// Which of the lifter's cards is which card of the earlier version.
class Matching
{
public:
    Matching(const std::map<int, Card> &rows, const std::vector<Card> &cards)
    {
        for (const auto &[key, row] : rows)
            m_open.push_back({key, &row});
        std::ranges::stable_sort(
            m_open, [](const Open &a, const Open &b) { return isAbove(*a.row, *b.row); });
        std::vector<Card> ordered = cards;
        std::ranges::stable_sort(ordered, isAbove);
        const auto sameDay = [](const Card &a, const Card &b) { return a.day == b.day; };
        pair(ordered,
            [&](const Card &a, const Card &b) { return sameDay(a, b) && isSameContent(a, b); });
        pair(ordered, [&](const Card &a, const Card &b) {
            return sameDay(a, b) && a.variation == b.variation;
        });
        pair(ordered, isSameContent);
        pair(ordered,
            [&](const Card &a, const Card &b) { return sameDay(a, b) && a.setLine == b.setLine; });
    }

    [[nodiscard]] const std::map<int, CardId> &cardOf() const { return m_cardOf; }

private:
    struct Open
    {
        int key;
        const Card *row;
    };

    template <class Alike> void pair(const std::vector<Card> &cards, Alike alike)
    {
        std::erase_if(m_open, [&](const Open &open) {
            for (const Card &card : cards)
                if (!m_taken.contains(card.id) && alike(*open.row, card)) {
                    m_taken.insert(card.id);
                    m_cardOf.emplace(open.key, card.id);
                    return true;
                }
            return false;
        });
    }

    std::vector<Open> m_open; ///< not found yet
    std::set<CardId> m_taken;
    std::map<int, CardId> m_cardOf;
};

/// Takes over what the template changed, unless the coach changed it too.
template <class Value> bool follow(Value &mine, const Value &before, const Value &now)
{
    const bool isUntouched = mine == before;
    if (isUntouched)
        mine = now;
    return isUntouched || mine == now;
}

void addRemark(QStringList &remarks, int differences)
{
    if (differences > 0)
        remarks << Text::tr("Differences of this lifter that were kept: %1.").arg(differences);
}

} // namespace

BlockTemplate templateOf(const QString &name, const Block &block, std::span<const Card> cards,
    std::span<const Variation> catalogue, std::vector<TouchSwap> swaps)
{
    BlockTemplate none;
    none.name = name;
    none.version = 0;
    none.swaps = std::move(swaps);
    return nextVersion(none, block, cards, catalogue);
}

BlockTemplate nextVersion(const BlockTemplate &before, const Block &block,
    std::span<const Card> cards, std::span<const Variation> catalogue)
{
    std::vector<Card> ordered(cards.begin(), cards.end());
    std::ranges::stable_sort(ordered, isAbove);
    int lastKey = 0;
    for (const TemplateCard &card : before.cards)
        lastKey = std::max(lastKey, card.key);

    BlockTemplate next = before;
    next.id = {};
    ++next.version;
    next.purpose = block.purpose;
    next.weeks = block.weeks;
    next.deloadWeeks = block.deloadWeeks;
    next.cards.clear();
    std::set<int> taken;
    for (const Card &card : ordered) {
        const Variation *variation = find(catalogue, card.variation);
        if (!variation || !block.contains(card.day))
            continue;
        const int offset = int(block.start.daysTo(card.day));
        const auto earlier = std::ranges::find_if(before.cards, [&](const TemplateCard &c) {
            return c.dayOffset == offset && c.code == variation->code && !taken.contains(c.key);
        });
        const int key = earlier == before.cards.end() ? ++lastKey : earlier->key;
        taken.insert(key);
        next.cards.push_back(
            {key, offset, card.position, variation->code, card.setLine, card.note});
    }
    return next;
}

std::vector<BlockTemplate> latestVersions(std::vector<BlockTemplate> templates)
{
    std::map<QString, BlockTemplate> latest;
    for (BlockTemplate &each : templates) {
        BlockTemplate &kept = latest[each.name];
        if (!kept.id.isValid() || kept.version < each.version)
            kept = std::move(each);
    }
    std::vector<BlockTemplate> ordered;
    for (auto &[name, each] : latest)
        ordered.push_back(std::move(each));
    return ordered;
}

TemplateResult applyTemplate(
    const BlockTemplate &block, const TemplateUse &use, const std::function<CardId()> &newId)
{
    TemplateResult result;
    const std::map<int, Card> now = rowsOf(block, use, &result.remarks);
    const std::map<int, Card> before =
        use.before ? rowsOf(*use.before, use, nullptr) : std::map<int, Card>();
    result.remarks.removeDuplicates();

    const std::map<int, CardId> mine = Matching(before, use.cards).cardOf();
    std::vector<Card> merged = use.cards;
    int differences = 0;
    for (const auto &[key, was] : before) {
        const auto card = mine.find(key);
        const auto row = now.find(key);
        if (card == mine.end()) {
            differences += row == now.end() ? 0 : 1; // taken out by the coach, and stays out
            continue;
        }
        Card &kept = *std::ranges::find_if(
            merged, [id = card->second](const Card &c) { return c.id == id; });
        if (row == now.end()) {
            if (kept.day == was.day && isSameContent(kept, was))
                merged = withoutCard(std::move(merged), card->second);
            else
                ++differences;
            continue;
        }
        const bool follows = follow(kept.variation, was.variation, row->second.variation)
            & follow(kept.setLine, was.setLine, row->second.setLine)
            & follow(kept.note, was.note, row->second.note)
            & follow(kept.day, was.day, row->second.day);
        differences += follows ? 0 : 1;
    }
    std::set<QDate> days;
    for (const Card &card : merged)
        days.insert(card.day);
    for (const QDate day : days)
        renumber(merged, day);
    std::vector<Card> added;
    for (const auto &[key, row] : now)
        if (!before.contains(key))
            added.push_back(row);
    std::ranges::stable_sort(added, isAbove);
    for (Card &row : added) {
        row.id = newId();
        if (!use.before) // the first time: below what is there
            row.position = int(cardsOn(merged, row.day).size());
        merged = withCard(std::move(merged), row);
    }
    addRemark(result.remarks, differences);
    result.edit = difference(use.cards, merged);
    return result;
}

} // namespace core
