#include "core/exchange/return_words.h"

#include "core/domain/text.h"
#include "core/loads/far_above_max.h"
#include "core/notation/set_words.h"

#include <algorithm>
#include <map>

namespace core {

namespace {

/// Words of one sheet's sets and days.
class Wording
{
public:
    Wording(
        const Lifter &lifter, std::span<const Variation> variations, const LiftEstimates &estimates)
        : m_lifter(lifter)
        , m_catalogue(variations)
        , m_estimates(estimates)
    {
    }

    [[nodiscard]] SetReview review(const ReturnedSet &set) const
    {
        SetReview review;
        const bool isDone = set.state == ReturnedSet::State::done;
        const bool isExtra = set.plannedVariation.isEmpty();
        review.variation = nameOf(m_catalogue, isDone ? set.variation : set.plannedVariation);
        if (set.set.repsPlanned && !isExtra)
            review.planned = set.plannedKg
                ? workWords(*set.set.repsPlanned, *set.plannedKg, m_lifter.unit)
                : Text::tr("%1, load open").arg(repsWords(*set.set.repsPlanned));
        if (!isDone) {
            review.outcome =
                set.state == ReturnedSet::State::skipped ? SetOutcome::skipped : SetOutcome::open;
            review.differences << (set.state == ReturnedSet::State::skipped ? Text::tr("left out")
                                                                            : Text::tr("no entry"));
            return review;
        }
        review.done =
            doneWords(set.set, m_lifter.unit, nameOf(m_catalogue, set.leadVariation), set.leadReps);
        review.note = set.set.note;
        review.differences =
            differenceWords({isExtra ? QString() : nameOf(m_catalogue, set.plannedVariation),
                                set.plannedKg, set.set.repsPlanned, set.plannedRpe},
                review.variation, set.set, m_lifter.unit);
        if (const QString why = whyFarAbove(set); !why.isEmpty()) {
            review.differences << why;
            review.isFarAbove = true;
        }
        review.outcome = set.set.failed    ? SetOutcome::missed
            : isExtra                      ? SetOutcome::extra
            : review.differences.isEmpty() ? SetOutcome::asPlanned
                                           : SetOutcome::different;
        return review;
    }

private:
    [[nodiscard]] QString whyFarAbove(const ReturnedSet &set) const
    {
        const Variation *variation = withCode(m_catalogue, set.variation);
        if (!variation)
            return {};
        const auto estimate = m_estimates.find({m_lifter.id, variation->lift});
        return whyFarAboveMax(set.set, *variation, set.day,
            estimate == m_estimates.end() ? nullptr : &estimate->second, m_lifter);
    }

    const Lifter &m_lifter;
    std::span<const Variation> m_catalogue;
    const LiftEstimates &m_estimates;
};

QString painWords(const PainFlag &pain)
{
    if (!pain.area)
        return pain.words;
    return pain.words.isEmpty() ? words(*pain.area)
                                : Text::tr("%1: %2").arg(words(*pain.area), pain.words);
}

QStringList checkInWords(const CheckIn &said)
{
    QStringList lines;
    const auto add = [&lines](const QString &what, const std::optional<int> &answer) {
        if (answer)
            lines << Text::tr("%1 %2 of 5").arg(what).arg(*answer);
    };
    add(Text::tr("sleep"), said.sleep);
    add(Text::tr("calm"), said.stress);
    add(Text::tr("motivation"), said.motivation);
    if (said.isPainFree)
        lines << Text::tr("no pain");
    for (const BodyArea area : soreAreas(said))
        lines << Text::tr("sore %1").arg(words(area));
    if (!said.note.isEmpty())
        lines << said.note;
    return lines;
}

} // namespace

std::vector<DayReview> dayReviews(const ReturnSheet &sheet, const Lifter &lifter,
    std::span<const Variation> variations, const LiftEstimates &estimates)
{
    const Wording wording(lifter, variations, estimates);
    std::map<QDate, DayReview> days;
    for (const ReturnedSet &set : sheet.sets) {
        DayReview &day = days[set.plannedDay];
        day.plannedDay = set.plannedDay;
        if (set.day.isValid())
            day.day = set.day;
        day.sets.push_back(wording.review(set));
    }
    std::vector<DayReview> reviews;
    for (auto &[planned, day] : days)
        reviews.push_back(std::move(day));
    for (const CheckIn &said : sheet.checkIns) {
        auto day = std::ranges::find_if(reviews, [&said](const DayReview &one) {
            return (one.day.isValid() ? one.day : one.plannedDay) == said.day;
        });
        if (day == reviews.end())
            day = reviews.insert(reviews.end(), DayReview{said.day, {}, {}, {}, {}});
        day->checkIn = checkInWords(said);
        if (said.pain)
            day->pain = painWords(*said.pain);
    }
    return reviews;
}

QString words(SheetStanding standing)
{
    switch (standing) {
    case SheetStanding::ready:
        return Text::tr("ready");
    case SheetStanding::byChoice:
        return Text::tr("for you to judge");
    case SheetStanding::nothingNew:
        return Text::tr("nothing new");
    case SheetStanding::refused:
        break;
    }
    return Text::tr("cannot be used");
}

QStringList reviewLines(const SheetReview &review)
{
    QStringList lines{Text::tr("%1: %2, week of %3: %4")
                          .arg(review.file, review.name, review.monday.toString(Qt::ISODate),
                              words(review.standing))};
    const auto add = [&lines](const QString &line) { lines << QStringLiteral("  ") + line; };
    for (const DayReview &day : review.days)
        if (!day.pain.isEmpty())
            add(Text::tr("PAIN on %1: %2. Stop what hurts; pain that stays is for a doctor or "
                         "physiotherapist.")
                    .arg(day.plannedDay.toString(Qt::ISODate), day.pain));
    for (const QString &notice : review.notices)
        add(notice);
    for (const DayReview &day : review.days)
        for (const SetReview &set : day.sets)
            if (set.outcome != SetOutcome::asPlanned && set.outcome != SetOutcome::open)
                add(QStringLiteral("%1 %2: %3%4")
                        .arg(day.plannedDay.toString(Qt::ISODate), set.variation,
                            set.done.isEmpty() ? QString() : set.done + QStringLiteral("; "),
                            set.differences.join(QStringLiteral(", "))));
    return lines;
}

} // namespace core
