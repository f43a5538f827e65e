#pragma once

#include "core/domain/enum_words.h"
#include "core/domain/gear.h"
#include "core/domain/ids.h"

#include <QDate>
#include <QDateTime>
#include <QStringList>
#include <optional>
#include <span>
#include <vector>

/// What a lifter was given is a fact: it is stored as it was, and no later set, estimate, plate or
/// change of the plan alters it.
namespace core {

/// What made the loads of a day a fact.
enum class GivenBy { handOut, print, word, firstSet, dayPassed, reconstructed };

/// On the screen they end a sentence: "Given on 3 May with a hand-out".
template <> inline constexpr auto kEnumWords<GivenBy> = std::to_array<EnumWord<GivenBy>>({
    {GivenBy::handOut, "hand_out", QT_TRANSLATE_NOOP("core", "with a hand-out")},
    {GivenBy::print, "print", QT_TRANSLATE_NOOP("core", "on paper")},
    {GivenBy::word, "word", QT_TRANSLATE_NOOP("core", "by the coach's word")},
    {GivenBy::firstSet, "first_set", QT_TRANSLATE_NOOP("core", "with the first set logged")},
    {GivenBy::dayPassed, "day_passed", QT_TRANSLATE_NOOP("core", "as the day passed")},
    {GivenBy::reconstructed, "reconstructed",
        QT_TRANSLATE_NOOP("core", "worked out afterwards, by what was known on the day")},
});

/// A number with its 90 % interval; for reps in reserve low90 may be below 0.
struct Figure
{
    double value = 0.0;
    double low90 = 0.0;
    double high90 = 0.0;

    friend bool operator==(const Figure &, const Figure &) = default;
};

/// One line of a card's sets as it was given. What the numbers are: core/loads/resolve.h.
struct GivenLine
{
    std::optional<double> loadKg;   ///< > 0; empty where the coach has to say
    std::vector<PlatePairs> plates; ///< on each side, heaviest first
    std::optional<Figure> targetKg; ///< before rounding to plates
    std::optional<Figure> firstReserve;
    std::optional<Figure> lastReserve;
    std::optional<double> allMade;   ///< chance that all sets are completed, 0..1
    std::optional<double> firstMade; ///< chance that the first set is
    double hardSetsAfter = 0.0;
    QString why; ///< without a load: why
    QString caution;

    friend bool operator==(const GivenLine &, const GivenLine &) = default;
};

/// The estimate that the loads came from.
struct GivenEstimate
{
    Figure maxKg;  ///< competition max of the lift on the day
    QDate lastSet; ///< the newest set behind it

    friend bool operator==(const GivenEstimate &, const GivenEstimate &) = default;
};

/// A card as it was given. The card itself may have changed since, or be gone.
struct GivenCard
{
    CardId card;
    VariationId variation;
    QString setLine;
    std::optional<GivenEstimate> from; ///< empty where no set spoke for one
    std::vector<GivenLine> lines;      ///< one a line of the sets; none where they cannot be read

    friend bool operator==(const GivenCard &, const GivenCard &) = default;
};

/// What a lifter was given for a day. A day that is given anew has several, and the last holds.
struct GivenDay
{
    GivenDayId id;
    LifterId lifter;
    QDate day;
    int number = 1; ///< 1, 2 ... in the order given
    GivenBy by = GivenBy::handOut;
    QDateTime at; ///< UTC, to the second
    std::vector<GivenCard> cards;

    friend bool operator==(const GivenDay &, const GivenDay &) = default;
};

/// A moment as GivenDay::at has it.
[[nodiscard]] QDateTime toSeconds(const QDateTime &moment);

/// What is wrong, in words a coach can act on; empty when sound.
[[nodiscard]] QStringList problems(const GivenDay &given);

/// What holds of the lifter's day; null where nothing was given.
[[nodiscard]] const GivenDay *givenOn(std::span<const GivenDay> given, LifterId lifter, QDate day);

} // namespace core
