#include "app/demo/scenario.h"

namespace demo {

namespace {

using core::Sex;
using core::TouchStyle;
using core::Unit;

core::Lifter lifter(const QString &name, Sex sex, int birthYear, double bodyweightKg, Unit unit,
    TouchStyle style, const QString &group)
{
    core::Lifter l;
    l.name = name;
    l.sex = sex;
    l.birthYear = birthYear;
    l.bodyweightKg = bodyweightKg;
    l.unit = unit;
    l.touchStyle = style;
    l.gear = core::usualGear(unit);
    l.groups = {group};
    return l;
}

/// Said on the morning of the demo's day.
core::CheckIn said(
    int sleep, int stress, int motivation, const std::map<core::BodyArea, int> &soreness = {})
{
    core::CheckIn checkIn;
    checkIn.sleep = sleep;
    checkIn.stress = stress;
    checkIn.motivation = motivation;
    checkIn.soreness = soreness;
    return checkIn;
}

} // namespace

std::vector<Person> people(QDate comingMonday)
{
    const QString morning = QStringLiteral("Morning");
    const QString evening = QStringLiteral("Evening");
    const QString youth = QStringLiteral("Youth");
    const auto f = Sex::female;
    const auto m = Sex::male;
    const auto kg = Unit::kilogram;
    const auto lb = Unit::pound;
    const auto soft = TouchStyle::soft;
    const auto sinking = TouchStyle::sinking;
    const int year = comingMonday.year();

    std::vector<Person> all;
    const auto add = [&all](core::Lifter who, Truth truth, Story story = {}) {
        all.push_back({std::move(who), truth, story, {}});
        return &all.back().lifter;
    };
    all.reserve(12);

    core::Lifter *l =
        add(lifter(QStringLiteral("Marit Oskedal"), f, year - 29, 62.4, kg, soft, morning),
            {82, 0.0022, 0.030, 0.2, 0.6, 0.93, 1.55, 1.85});
    l->gripNote = QStringLiteral("Ring fingers on the 81 cm marks");
    l->meetDate = comingMonday.addDays(5 * 7 + 5);
    l->notes = QStringLiteral("Keeps the bar off the chest well; loses tightness above an opener.");
    all.back().today = said(4, 3, 5);

    l = add(lifter(QStringLiteral("Dario Pellenk"), m, year - 34, 92.1, kg, sinking, evening),
        {155, 0.0012, 0.036, 0.8, 0.8, 0.78, 1.35, 1.6});
    l->gripNote = QStringLiteral("Index fingers on the 81 cm marks");
    l->notes = QStringLiteral("Rates too easy. Bar sinks from about 120 kg up.");

    l = add(lifter(QStringLiteral("Noor Vantassel"), f, year - 24, 71.0, kg, sinking, evening),
        {68, 0.0040, 0.028, 0.0, 0.9, 0.82, 1.6, 1.9}, {-1, 0, -1, 14});
    l->notes = QStringLiteral("Joined this season.");

    l = add(lifter(QStringLiteral("Tomas Brackwell"), m, year - 41, 104.8, lb, sinking, morning),
        {172, 0.0006, 0.034, -0.5, 0.6, 0.84, 1.3, 1.5}, {12, 4, -1, 0});
    l->notes = QStringLiteral("Four weeks away for work in summer.");
    all.back().today = said(1, 2, 2, {{core::BodyArea::legs, 3}});
    all.back().today->note = QStringLiteral("Night shift");

    l = add(lifter(QStringLiteral("Ewa Lindqvarn"), f, year - 38, 56.2, kg, soft, morning),
        {61, 0.0014, 0.031, 0.1, 0.5, 0.95, 1.5, 1.8}, {-1, 0, kWeeks - 1, 0});
    l->meetDate = comingMonday.addDays(9 * 7 + 5);
    l->notes = QStringLiteral("Back is sore after last week's deadlifts.");
    all.back().today = said(4, 4, 4, {{core::BodyArea::back, 2}, {core::BodyArea::legs, 3}});

    add(lifter(QStringLiteral("Kofi Asantero"), m, year - 27, 82.3, kg, soft, evening),
        {138, 0.0018, 0.033, -0.2, 0.7, 0.9, 1.5, 1.8});

    l = add(lifter(QStringLiteral("Hana Mizuwara"), f, year - 31, 51.7, kg, soft, evening),
        {58, 0.0020, 0.027, 0.3, 0.6, 0.97, 1.6, 1.9}, {-1, 0, 20, 0});
    l->gripNote = QStringLiteral("Narrow: small hands, thumbs at the smooth ring");

    l = add(lifter(QStringLiteral("Jonah Creswick"), m, year - 17, 74.5, lb, sinking, youth),
        {92, 0.0045, 0.030, 0.9, 1.1, 0.7, 1.3, 1.6}, {-1, 0, -1, 0, true, true});
    l->notes = QStringLiteral("Technique first; no maximal singles without supervision.");

    l = add(lifter(QStringLiteral("Priya Talwandi"), f, year - 26, 66.0, kg, TouchStyle::undecided,
                evening),
        {55, 0.0030, 0.029, 0.4, 0.8, 0.85, 1.55, 1.85}, {-1, 0, -1, 22});

    l = add(lifter(QStringLiteral("Luis Carmenza"), m, year - 45, 118.6, kg, sinking, morning),
        {190, 0.0004, 0.038, -0.3, 0.5, 0.8, 1.25, 1.4});
    l->meetDate = comingMonday.addDays(2 * 7 + 5);
    l->gripNote = QStringLiteral("Widest legal grip");
    all.back().today = said(4, 4, 5, {{core::BodyArea::chest, 3}});

    l = add(lifter(QStringLiteral("Greta Holmsund"), f, year - 52, 78.9, kg, soft, morning),
        {72, 0.0003, 0.032, 0.0, 0.6, 0.9, 1.4, 1.75}, {18, 3, -1, 0, false, false, true});
    l->notes =
        QStringLiteral("Knee: at the physiotherapist's. Feet up, and no squat until it is quiet.");
    all.back().today = said(3, 4, 4);
    all.back().today->pain = core::PainFlag{
        core::BodyArea::legs, QStringLiteral("Left knee, sharp when the feet drive")};

    add(lifter(QStringLiteral("Sefa Tuilomani"), m, year - 30, 131.2, lb, soft, evening),
        {205, 0.0010, 0.035, 0.5, 0.7, 0.88, 1.35, 1.5});
    return all;
}

} // namespace demo
