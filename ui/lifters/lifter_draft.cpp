#include "ui/lifters/lifter_draft.h"

#include "core/safety/unknown_age.h"
#include "ui/look/text.h"

#include <QLocale>
#include <algorithm>

namespace ui {

namespace {

constexpr int kDecimals = 3; ///< enough for 1.25 lb plates and for kg plates shown in lb

QString weightText(double kg, core::Unit unit)
{
    return core::formatLoadNumber(kg, unit, kDecimals);
}

/// A number as the locale writes it, or with a point, or with a comma: nobody groups the digits of
/// a bodyweight.
std::optional<double> number(const QString &text)
{
    bool ok = false;
    const double value =
        QLocale::c().toDouble(text.trimmed().replace(u',', u'.').remove(u' '), &ok);
    if (ok)
        return value;
    const double local = QLocale().toDouble(text.trimmed(), &ok);
    return ok ? std::optional(local) : std::nullopt;
}

/// `beforeKg` where the text still says it, so that rounding for the screen changes nothing.
std::optional<double> weightKg(
    const QString &text, core::Unit unit, const std::optional<double> &beforeKg)
{
    if (beforeKg && text.trimmed() == weightText(*beforeKg, unit))
        return beforeKg;
    const std::optional<double> amount = number(text);
    return amount ? std::optional(core::toKg(*amount, unit)) : std::nullopt;
}

QStringList groupList(const QString &text)
{
    QStringList groups;
    for (const QString &part : text.split(u',', Qt::SkipEmptyParts))
        if (const QString group = part.simplified(); !group.isEmpty())
            groups << group;
    groups.sort();
    groups.removeDuplicates();
    return groups;
}

/// The first problem that core has with a lifter who is sound but for one field.
QString coreProblem(const core::Lifter &lifter)
{
    return core::problems(lifter).value(0);
}

void readPlates(const GearDraft &draft, const core::Lifter &before, LifterReading &reading)
{
    core::Gear &gear = reading.lifter.gear;
    gear.plates.clear();
    const core::Unit unit = reading.lifter.unit;
    for (const PlateDraft &row : draft.plates) {
        if (row.plate.trimmed().isEmpty() && row.pairs.trimmed().isEmpty())
            continue;
        std::optional<double> kg;
        for (const core::PlatePairs &old : before.gear.plates)
            if (row.plate.trimmed() == weightText(old.plateKg, unit))
                kg = old.plateKg;
        if (!kg)
            kg = weightKg(row.plate, unit, std::nullopt);
        bool isCount = false;
        const int pairs = row.pairs.trimmed().toInt(&isCount);
        if (!kg || *kg <= 0.0) {
            reading.problems[LifterField::plates] =
                Text::tr("“%1” is no plate. Write its weight in %2, such as 20.")
                    .arg(row.plate.trimmed(), core::symbol(unit));
            return;
        }
        if (!isCount || pairs < 1) {
            reading.problems[LifterField::plates] =
                Text::tr("Write how many pairs of the %1 %2 plate there are, 1 or more, or take "
                         "its row out.")
                    .arg(row.plate.trimmed(), core::symbol(unit));
            return;
        }
        const auto same = std::find_if(gear.plates.begin(), gear.plates.end(),
            [&kg](const core::PlatePairs &p) { return p.plateKg == *kg; });
        if (same != gear.plates.end()) {
            reading.problems[LifterField::plates] =
                Text::tr("The %1 %2 plate stands there twice. Put its pairs into one row.")
                    .arg(row.plate.trimmed(), core::symbol(unit));
            return;
        }
        gear.plates.push_back({*kg, pairs});
    }
    std::sort(gear.plates.begin(), gear.plates.end(),
        [](const core::PlatePairs &a, const core::PlatePairs &b) { return a.plateKg > b.plateKg; });
    core::Lifter probe;
    probe.name = QStringLiteral("-");
    probe.gear.plates = gear.plates;
    if (const QString wrong = coreProblem(probe); !wrong.isEmpty())
        reading.problems[LifterField::plates] = wrong;
}

} // namespace

GearDraft gearDraft(const core::Gear &gear, core::Unit unit)
{
    GearDraft draft{weightText(gear.barKg, unit), weightText(gear.collarsKg, unit), {}};
    for (const core::PlatePairs &p : gear.plates)
        draft.plates.push_back({weightText(p.plateKg, unit), QString::number(p.pairs)});
    return draft;
}

LifterDraft draftOf(const core::Lifter &lifter)
{
    LifterDraft draft;
    draft.name = lifter.name;
    draft.sex = lifter.sex;
    if (lifter.birthYear)
        draft.birthYear = QString::number(*lifter.birthYear);
    draft.isAdult = lifter.isAdult;
    draft.trainingSince = lifter.trainingSince;
    if (lifter.bodyweightKg)
        draft.bodyweight = weightText(*lifter.bodyweightKg, lifter.unit);
    draft.unit = lifter.unit;
    draft.touchStyle = lifter.touchStyle;
    draft.gripNote = lifter.gripNote;
    draft.gear = gearDraft(lifter.gear, lifter.unit);
    draft.groups = lifter.groups.join(QStringLiteral(", "));
    draft.meetDate = lifter.meetDate;
    draft.notes = lifter.notes;
    return draft;
}

LifterReading read(const LifterDraft &draft, const core::Lifter &before,
    const QStringList &otherNames, QDate today)
{
    LifterReading reading{before, {}};
    core::Lifter &lifter = reading.lifter;
    QMap<LifterField, QString> &problems = reading.problems;
    lifter.sex = draft.sex;
    lifter.isAdult = draft.isAdult;
    lifter.trainingSince = draft.trainingSince;
    lifter.unit = draft.unit;
    lifter.touchStyle = draft.touchStyle;
    lifter.gripNote = draft.gripNote.trimmed();
    lifter.groups = groupList(draft.groups);
    lifter.meetDate = draft.meetDate;
    lifter.notes = draft.notes.trimmed();

    // A lifter of which only the field in question is filled in, for the rules of core.
    const auto probe = [&draft] {
        core::Lifter p;
        p.name = QStringLiteral("-");
        p.unit = draft.unit;
        p.gear = core::usualGear(draft.unit);
        return p;
    };

    lifter.name = draft.name.simplified();
    if (lifter.name.isEmpty())
        problems[LifterField::name] = Text::tr("A lifter needs a name.");
    else if (otherNames.contains(lifter.name, Qt::CaseInsensitive))
        problems[LifterField::name] =
            Text::tr("Another lifter is called %1, perhaps an archived one. Add a letter or a "
                     "nickname to tell them apart.")
                .arg(lifter.name);

    lifter.birthYear.reset();
    if (const QString text = draft.birthYear.trimmed(); !text.isEmpty()) {
        bool isYear = false;
        core::Lifter p = probe();
        p.birthYear = text.toInt(&isYear);
        const QString wrong = core::problems(p, today).value(0);
        if (!isYear)
            problems[LifterField::birthYear] =
                Text::tr("Write the year in four digits, or leave it empty.");
        else if (!wrong.isEmpty())
            problems[LifterField::birthYear] = wrong;
        else
            lifter.birthYear = p.birthYear;
    }

    lifter.bodyweightKg.reset();
    if (!draft.bodyweight.trimmed().isEmpty()) {
        core::Lifter p = probe();
        p.bodyweightKg = weightKg(draft.bodyweight, draft.unit, before.bodyweightKg);
        const QString wrong = coreProblem(p);
        if (!p.bodyweightKg)
            problems[LifterField::bodyweight] =
                Text::tr("Write a weight in %1, or leave it empty.").arg(core::symbol(draft.unit));
        else if (!wrong.isEmpty())
            problems[LifterField::bodyweight] = wrong;
        else
            lifter.bodyweightKg = p.bodyweightKg;
    }

    core::Lifter bar = probe();
    const std::optional<double> barKg = weightKg(draft.gear.bar, draft.unit, before.gear.barKg);
    bar.gear.barKg = barKg.value_or(0.0);
    lifter.gear.barKg = bar.gear.barKg;
    if (const QString wrong = coreProblem(bar); !wrong.isEmpty())
        problems[LifterField::bar] = wrong;

    core::Lifter collars = probe();
    const bool noCollars = draft.gear.collars.trimmed().isEmpty();
    collars.gear.collarsKg = noCollars
        ? 0.0
        : weightKg(draft.gear.collars, draft.unit, before.gear.collarsKg).value_or(-1.0);
    lifter.gear.collarsKg = collars.gear.collarsKg;
    if (const QString wrong = coreProblem(collars); !wrong.isEmpty())
        problems[LifterField::collars] = wrong;

    readPlates(draft.gear, before, reading);
    return reading;
}

core::Lifter inUnit(core::Lifter lifter, core::Unit unit)
{
    if (lifter.unit != unit && lifter.gear == core::usualGear(lifter.unit))
        lifter.gear = core::usualGear(unit);
    lifter.unit = unit;
    return lifter;
}

QString ageCaution(const core::Lifter &lifter, QDate today)
{
    if (core::isAgeUnknown(lifter))
        return core::whyNoMaximalYet(core::limitsOn(lifter, today, {}));
    if (core::mayBeMinor(lifter, today))
        return Text::tr("Under 18, or only just of age: no maximal work is suggested, and none "
                        "without qualified supervision. Local rules and the federation's rule book "
                        "come first.");
    if (core::isNovice(lifter, today))
        return Text::tr("In training for less than a year: no maximal work is suggested.");
    return {};
}

} // namespace ui
