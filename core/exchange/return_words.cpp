#include "core/exchange/return_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <map>

namespace core {

namespace {

constexpr double kSameLoadKg = 0.005;
constexpr double kNotableRpe = 1.0; ///< less lies within the coarseness of a rating

struct Text
{
    Q_DECLARE_TR_FUNCTIONS(ReturnWords)
};

QString number(double value)
{
    return QLocale().toString(value, 'g', 4);
}

QString reps(int count)
{
    return count == 1 ? Text::tr("1 rep") : Text::tr("%1 reps").arg(count);
}

/// Words of one sheet's sets and days.
class Wording
{
public:
    Wording(const Lifter &lifter, std::span<const Variation> variations)
        : m_unit(lifter.unit)
    {
        for (const Variation &variation : variations)
            m_names.emplace(variation.code, variation.name);
    }

    [[nodiscard]] SetReview review(const ReturnedSet &set) const
    {
        SetReview review;
        const bool isDone = set.state == ReturnedSet::State::done;
        const bool isExtra = set.plannedVariation.isEmpty();
        review.variation = nameOf(isDone ? set.variation : set.plannedVariation);
        if (set.set.repsPlanned && !isExtra)
            review.planned = set.plannedKg
                ? work(*set.set.repsPlanned, *set.plannedKg)
                : Text::tr("%1, load open").arg(reps(*set.set.repsPlanned));
        if (!isDone) {
            review.outcome =
                set.state == ReturnedSet::State::skipped ? SetOutcome::skipped : SetOutcome::open;
            review.differences << (set.state == ReturnedSet::State::skipped ? Text::tr("left out")
                                                                            : Text::tr("no entry"));
            return review;
        }
        review.done = done(set);
        review.note = set.set.note;
        review.differences = isExtra ? QStringList{Text::tr("extra set")} : differences(set);
        if (set.set.failed)
            review.differences.prepend(Text::tr("missed a rep"));
        review.outcome = set.set.failed    ? SetOutcome::missed
            : isExtra                      ? SetOutcome::extra
            : review.differences.isEmpty() ? SetOutcome::asPlanned
                                           : SetOutcome::different;
        return review;
    }

private:
    [[nodiscard]] QString nameOf(const QString &code) const
    {
        const auto found = m_names.find(code);
        return found == m_names.end() ? code : found->second;
    }

    [[nodiscard]] QString work(int reps, double loadKg) const
    {
        return Text::tr("%1 x %2").arg(reps).arg(formatLoad(loadKg, m_unit));
    }

    [[nodiscard]] QString done(const ReturnedSet &set) const
    {
        QStringList said{work(set.set.repsDone, set.set.loadKg)};
        if (set.leadReps > 0)
            said << Text::tr("the first %1 as %2").arg(set.leadReps).arg(nameOf(set.leadVariation));
        if (set.set.rpe)
            said << Text::tr("RPE %1").arg(number(*set.set.rpe));
        if (set.set.touch)
            said << Text::tr("touch %1").arg(*set.set.touch);
        return said.join(QStringLiteral(", "));
    }

    [[nodiscard]] QStringList differences(const ReturnedSet &set) const
    {
        QStringList said;
        if (set.variation != set.plannedVariation)
            said << Text::tr("%1 in place of %2")
                        .arg(nameOf(set.variation), nameOf(set.plannedVariation));
        if (set.plannedKg) {
            const double more = set.set.loadKg - *set.plannedKg;
            const QString by = formatLoad(std::abs(more), m_unit);
            if (more > kSameLoadKg)
                said << Text::tr("%1 heavier").arg(by);
            else if (more < -kSameLoadKg)
                said << Text::tr("%1 lighter").arg(by);
        }
        if (set.set.repsPlanned) {
            const int more = set.set.repsDone - *set.set.repsPlanned;
            if (more > 0)
                said << Text::tr("%1 more").arg(reps(more));
            else if (more < 0)
                said << Text::tr("%1 fewer").arg(reps(-more));
        }
        if (set.plannedRpe && set.set.rpe) {
            const double harder = *set.set.rpe - *set.plannedRpe;
            const QString against =
                Text::tr("RPE %1 against %2").arg(number(*set.set.rpe), number(*set.plannedRpe));
            if (harder >= kNotableRpe)
                said << Text::tr("harder than expected (%1)").arg(against);
            else if (harder <= -kNotableRpe)
                said << Text::tr("easier than expected (%1)").arg(against);
        }
        return said;
    }

    Unit m_unit;
    std::map<QString, QString> m_names; ///< by code
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
    add(Text::tr("wish to train"), said.motivation);
    for (const BodyArea area : soreAreas(said))
        lines << Text::tr("sore %1").arg(words(area));
    if (!said.note.isEmpty())
        lines << said.note;
    return lines;
}

} // namespace

std::vector<DayReview> dayReviews(
    const ReturnSheet &sheet, const Lifter &lifter, std::span<const Variation> variations)
{
    const Wording wording(lifter, variations);
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
        auto day = std::find_if(reviews.begin(), reviews.end(), [&said](const DayReview &one) {
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
