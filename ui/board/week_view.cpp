#include "ui/board/week_view.h"

#include "core/domain/language.h"
#include "core/loads/effort_words.h"
#include "core/loads/estimate_words.h"
#include "core/loads/given_words.h"
#include "core/loads/limited_lines.h"
#include "ui/look/text.h"

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

QString liftsText(int lifts)
{
    if (lifts == 0)
        return {};
    return lifts == 1 ? Text::tr("1 lift") : Text::tr("%1 lifts").arg(lifts);
}

QString tonnageText(double kg, core::Unit unit)
{
    return kg > 0.0 ? core::formatLoad(kg, unit, 0) : QString();
}

/// Short enough for a card: the advice on the estimate shrinks to its badge, and the tooltip says
/// it in full.
QString shortCaution(const core::ResolvedCard &card, const core::Variation *variation,
    const core::LiftEstimate *estimate)
{
    if (card.parsed.error)
        return card.parsed.error->words;
    const QString badge =
        estimate ? core::words(estimate->estimate.standing) : Text::tr("working out the load");
    for (const core::ResolvedLine &line : card.lines) {
        const bool isByEffort = std::holds_alternative<core::RpeTarget>(line.line.target)
            || std::holds_alternative<core::ReserveTarget>(line.line.target);
        if (!line.load && isByEffort && variation && variation->assistance)
            continue; // the effort is all that is asked
        const bool lacksLoad =
            !line.load && !std::holds_alternative<std::monostate>(line.line.target);
        // Where the estimate would carry a load, something else stands in its way.
        if (lacksLoad && estimate && core::carriesLoads(estimate->estimate.standing))
            return line.why;
        if (lacksLoad)
            return estimate ? Text::tr("no load: %1").arg(badge) : badge;
        if (line.caution.isEmpty())
            continue;
        const QString advice = estimate ? core::advice(estimate->estimate) : QString();
        return advice.isEmpty() ? line.caution : QString(line.caution).replace(advice, badge);
    }
    return {};
}

/// "given", "given; now 105 kg"
QString givenText(const core::ResolvedCard &card, core::Unit unit)
{
    QStringList parts;
    if (const QString badge = core::givenBadge(card); !badge.isEmpty())
        parts << badge;
    for (const core::ResolvedLine &line : card.lines)
        if (line.now)
            parts << Text::tr("now %1").arg(core::formatLoad(line.now->loadKg, unit));
    return parts.join(QStringLiteral("; "));
}

QString lineToolTip(const core::ResolvedLine &line, core::Unit unit)
{
    if (!line.load)
        return Text::tr("%1: %2").arg(core::setLineText(line.line), line.why);
    QStringList parts{Text::tr("%1: %2").arg(
        core::setLineText(line.line), core::formatLoad(line.load->loadKg, unit))};
    if (line.target && line.target->high90 > line.target->low90)
        parts << Text::tr("before rounding %1 (90 %: %2 to %3)")
                     .arg(core::formatLoad(line.target->kg, unit, 1),
                         core::formatLoadNumber(line.target->low90, unit, 1),
                         core::formatLoad(line.target->high90, unit, 1));
    parts << Text::tr("a side: %1").arg(core::platesWords(line.load->plates, unit));
    if (const QString effort = core::effortWords(line); !effort.isEmpty())
        parts << effort;
    if (line.allMade)
        parts << Text::tr("chance that all reps are made: %1 %")
                     .arg(QLocale().toString(int(std::lround(*line.allMade * 100.0))));
    QString text = parts.join(u'\n');
    if (!line.caution.isEmpty())
        text += u'\n' + line.caution;
    return text;
}

/// What became of a card, beside what it asked for.
void tellOutcome(CardView &view, const core::DayOutcome &day)
{
    const auto found = std::ranges::find(day.cards, view.id, &core::CardOutcome::card);
    if (found == day.cards.end())
        return;
    const QString sets = Text::tr("%1 of %2 sets").arg(found->done).arg(found->sets);
    switch (found->outcome) {
    case core::Outcome::open:
        return;
    case core::Outcome::done:
        view.done = Text::tr("done");
        break;
    case core::Outcome::partly:
        view.done = Text::tr("done: %1").arg(sets);
        break;
    case core::Outcome::missed:
        view.done = Text::tr("a rep missed; done: %1").arg(sets);
        break;
    case core::Outcome::leftOut:
        view.done = Text::tr("left out");
        break;
    }
    view.spoken += QStringLiteral(", ") + view.done;
}

/// Days added up.
class DoneSum
{
public:
    void add(const core::DayOutcome &day, bool isOver)
    {
        for (const core::CardOutcome &card : day.cards) {
            m_planned += card.sets;
            m_done += card.done;
            m_isBegun = m_isBegun || isOver || card.outcome != core::Outcome::open;
        }
        m_missed += day.missed;
        m_extra += day.extra;
        m_hasPain = m_hasPain || day.hasPain;
    }

    /// Empty while nothing has been done of it and its time is not over.
    [[nodiscard]] QString words() const
    {
        QStringList parts;
        if (m_hasPain) // first, since the end is cut off where there is no room
            parts << Text::tr("pain");
        if (m_isBegun)
            parts << Text::tr("%1/%2 sets").arg(m_done).arg(m_planned);
        if (m_missed > 0)
            parts << Text::tr("%1 missed").arg(m_missed);
        if (m_extra > 0)
            parts << Text::tr("%1 extra").arg(m_extra);
        return parts.join(QStringLiteral(", "));
    }

private:
    int m_planned = 0;
    int m_done = 0;
    int m_missed = 0;
    int m_extra = 0;
    bool m_hasPain = false;
    bool m_isBegun = false;
};

} // namespace

bool WeekView::isEmpty() const
{
    return std::all_of(days.begin(), days.end(), [](const DayView &d) { return d.cards.empty(); });
}

CardView cardView(const core::ResolvedCard &card, const core::PlanSources &sources)
{
    const core::Variation *variation = core::find(sources.variations, card.card.variation);
    const core::Unit unit = sources.lifter.unit;

    CardView view;
    view.id = card.card.id;
    view.name = variation ? variation->name : Text::tr("variation not in the catalogue");
    view.lift = variation ? variation->lift : core::Lift::bench;
    view.serves = variation ? variation->serves : core::Serves::both;
    view.setLine = card.card.setLine;
    view.note = card.card.note;
    view.given = givenText(card, unit);
    const QStringList withheld = core::withheldWords(card, unit);
    const QStringList eased = core::easedWords(card, unit);
    view.isWithheld = !withheld.isEmpty();
    view.caution = view.isWithheld ? Text::tr("Held back. %1").arg((withheld + eased).join(u' '))
        : !eased.isEmpty()
        ? eased.join(u' ')
        : shortCaution(card, variation, variation ? sources.estimateOf(variation->lift) : nullptr);
    QStringList toolTip{view.name};
    QStringList spoken{view.name};
    for (const core::ResolvedLine &line : card.lines) {
        LineView shown{core::setLineText(line.line), {}, core::effortWords(line)};
        if (line.load)
            shown.load = core::formatLoad(line.load->loadKg, unit);
        toolTip << lineToolTip(line, unit);
        for (const QString &part : {shown.sets, shown.load, core::effortWords(line)})
            if (!part.isEmpty())
                spoken << part;
        view.lines.push_back(shown);
    }
    if (card.parsed.error) {
        view.lines.push_back({card.card.setLine.simplified(), {}, {}});
        spoken << card.card.setLine;
    }
    if (view.lines.empty())
        spoken << Text::tr("no sets yet");
    if (card.given)
        toolTip << core::givenWords(*card.given, unit);
    if (card.given && card.given->by == core::GivenBy::reconstructed)
        spoken << core::givenWords(*card.given, unit); // nobody can hear a sign
    else if (!view.given.isEmpty())
        spoken << view.given;
    for (const QString &part : {view.note, view.caution})
        if (!part.isEmpty()) {
            toolTip << part;
            spoken << part;
        }
    view.toolTip = toolTip.join(QStringLiteral("\n"));
    view.spoken = spoken.join(QStringLiteral(", "));
    return view;
}

WeekView weekView(std::span<const core::ResolvedCard> cards, const core::PlanSources &sources,
    QDate monday, const std::map<QDate, core::DayOutcome> &outcomes)
{
    WeekView week;
    std::array<int, core::kWeekDays> lifts{};
    std::array<double, core::kWeekDays> tonnage{};
    for (size_t day = 0; day < core::kWeekDays; ++day) {
        DayView &view = week.days[day];
        view.day = monday.addDays(int(day));
        view.name = core::language().standaloneDayName(int(day) + 1, QLocale::ShortFormat);
        view.date = core::dateWords(view.day, QStringLiteral("d MMM"));
    }
    for (const core::ResolvedCard &card : cards) {
        const qint64 day = monday.daysTo(card.card.day);
        if (day < 0 || day >= core::kWeekDays)
            continue;
        CardView &view = week.days[size_t(day)].cards.emplace_back(cardView(card, sources));
        if (const auto outcome = outcomes.find(card.card.day); outcome != outcomes.end())
            tellOutcome(view, outcome->second);
        lifts[size_t(day)] += core::liftCount(card.lines);
        tonnage[size_t(day)] += core::tonnageKg(card.lines);
    }
    int allLifts = 0;
    double allTonnage = 0.0;
    for (size_t day = 0; day < core::kWeekDays; ++day) {
        week.days[day].lifts = liftsText(lifts[day]);
        week.days[day].tonnage = tonnageText(tonnage[day], sources.lifter.unit);
        allLifts += lifts[day];
        allTonnage += tonnage[day];
    }
    DoneSum all;
    for (DayView &day : week.days)
        if (const auto outcome = outcomes.find(day.day); outcome != outcomes.end()) {
            DoneSum ofDay;
            ofDay.add(outcome->second, day.day < sources.today);
            day.done = ofDay.words();
            all.add(outcome->second, day.day < sources.today);
        }
    week.done = all.words();
    week.lifts = liftsText(allLifts);
    week.tonnage = tonnageText(allTonnage, sources.lifter.unit);
    return week;
}

} // namespace ui
