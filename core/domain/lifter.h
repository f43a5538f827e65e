#pragma once

#include "core/domain/gear.h"
#include "core/domain/ids.h"
#include "core/domain/touch_style.h"
#include "core/domain/units.h"

#include <QDate>
#include <QStringList>
#include <optional>

namespace core {

enum class Sex { unstated, female, male };

template <> inline constexpr auto kEnumWords<Sex> = std::to_array<EnumWord<Sex>>({
    {Sex::unstated, "", QT_TRANSLATE_NOOP("core", "not stated")},
    {Sex::female, "f", QT_TRANSLATE_NOOP("core", "female")},
    {Sex::male, "m", QT_TRANSLATE_NOOP("core", "male")},
});

/// One lifter of the roster. Plain data; the rules are in problems() and in the schema.
struct Lifter
{
    LifterId id;
    QString name; ///< unique in the roster, compared without case
    Sex sex = Sex::unstated;
    std::optional<int> birthYear;
    bool isAdult = false; ///< said to be 18 or older; asked where the birth year is not known
    std::optional<QDate> trainingSince; ///< began to train with the barbell; empty = not said
    std::optional<double> bodyweightKg;
    Unit unit = Unit::kilogram; ///< for the screen and the hand-out; the file keeps kg
    TouchStyle touchStyle = TouchStyle::undecided;
    QString gripNote;
    Gear gear;
    QStringList groups; ///< sorted, without duplicates
    std::optional<QDate> meetDate;
    QString notes;
    bool archived = false;

    friend bool operator==(const Lifter &, const Lifter &) = default;
};

/// Whether the lifter may be under 18 on `day`, below which most laws speak of minors (common
/// practice, no source). Only the birth year is known, so the whole year of the 18th birthday
/// counts; without a birth year false.
[[nodiscard]] bool mayBeMinor(const Lifter &lifter, QDate day);

/// Neither the birth year is known nor was it said that the lifter is an adult. Such a lifter
/// counts as an adult; whoever is about to suggest maximal work asks first.
[[nodiscard]] bool isAgeUnknown(const Lifter &lifter);

/// Whether the lifter is known to train for less than a year on `day` (common practice, no source).
/// A lifter who is new to the roster is no novice unless it is said.
[[nodiscard]] bool isNovice(const Lifter &lifter, QDate day);

/// What is wrong with the lifter alone, in words a coach can act on; empty when sound.
/// Uniqueness of the name is the roster's to judge.
[[nodiscard]] QStringList problems(const Lifter &lifter);
/// The same of a lifter who is entered today: nobody is born in a year that has not come yet.
[[nodiscard]] QStringList problems(const Lifter &lifter, QDate today);

} // namespace core
