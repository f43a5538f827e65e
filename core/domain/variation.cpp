#include "core/domain/variation.h"

#include "core/domain/text.h"

#include <QRegularExpression>
#include <algorithm>

namespace core {

bool countsFor(const Variation &v, Lift lift)
{
    return v.lift == lift && !v.assistance;
}

bool works(const Variation &v, BodyArea area)
{
    return v.work[area] != Work::none;
}

AreaWork usualWork(Lift lift)
{
    AreaWork work;
    if (lift == Lift::bench) {
        work[BodyArea::back] = work[BodyArea::legs] = work[BodyArea::wrists] = Work::some;
    } else {
        work[BodyArea::chest] = Work::none;
        work[BodyArea::shoulders] = work[BodyArea::elbows] = work[BodyArea::wrists] = Work::some;
    }
    return work;
}

QStringList problems(const Variation &v)
{
    static const QRegularExpression kCode(QStringLiteral("^[a-z0-9][a-z0-9_]*$"));
    QStringList wrong;
    if (!kCode.match(v.code).hasMatch())
        wrong << Text::tr("The code is lower-case letters, digits and _ only, such as feet_up.");
    if (v.name.trimmed().isEmpty())
        wrong << Text::tr("A variation needs a name.");
    if (v.repsLow < 1 || v.repsHigh < v.repsLow || v.repsHigh > 50)
        wrong << Text::tr("The rep range runs from at least 1 up to at most 50.");
    if (!(v.ratio >= 0.2 && v.ratio <= 2.0))
        wrong << Text::tr("The ratio to the competition lift lies between 0.2 and 2.");
    if (!(v.ratioSpread >= 0.0 && v.ratioSpread <= 0.5))
        wrong << Text::tr("The spread of the ratio lies between 0 and 0.5.");
    if (!(v.repCost >= 0.25 && v.repCost <= 4.0))
        wrong << Text::tr("The cost of a rep lies between 0.25 and 4.");
    for (const int count : {v.tempo.lowering, v.tempo.pause, v.tempo.lifting})
        if (count < 0 || count > 20) {
            wrong << Text::tr("Tempo and pause are 0 to 20 counts.");
            break;
        }
    if (v.competition && v.ratio != 1.0)
        wrong << Text::tr("The competition lift has the ratio 1.");
    if (v.competition && v.assistance)
        wrong << Text::tr("The competition lift is no assistance work.");
    if (v.usualPercent && !(*v.usualPercent >= 1.0 && *v.usualPercent <= 100.0))
        wrong << Text::tr("The usual share of the max lies between 1 and 100 percent.");
    return wrong;
}

namespace {

template <class Fits> const Variation *firstThat(std::span<const Variation> catalogue, Fits fits)
{
    const auto found = std::ranges::find_if(catalogue, fits);
    return found == catalogue.end() ? nullptr : &*found;
}

} // namespace

const Variation *find(std::span<const Variation> catalogue, VariationId id)
{
    return firstThat(catalogue, [id](const Variation &v) { return v.id == id; });
}

const Variation *withCode(std::span<const Variation> catalogue, const QString &code)
{
    return firstThat(catalogue, [&code](const Variation &v) { return v.code == code; });
}

QString nameOf(std::span<const Variation> catalogue, const QString &code)
{
    const Variation *variation = withCode(catalogue, code);
    return variation ? variation->name : code;
}

const Variation *competitionOf(std::span<const Variation> catalogue, Lift lift)
{
    return firstThat(
        catalogue, [lift](const Variation &v) { return v.lift == lift && v.competition; });
}

} // namespace core
