#pragma once

#include "core/domain/area_work.h"
#include "core/domain/ids.h"
#include "core/domain/touch_style.h"

#include <QStringList>
#include <optional>
#include <span>
#include <vector>

namespace core {

enum class Lift { bench, squat, deadlift };

template <> inline constexpr auto kEnumWords<Lift> = std::to_array<EnumWord<Lift>>({
    {Lift::bench, "bench", QT_TRANSLATE_NOOP("core", "Bench press")},
    {Lift::squat, "squat", QT_TRANSLATE_NOOP("core", "Squat")},
    {Lift::deadlift, "deadlift", QT_TRANSLATE_NOOP("core", "Deadlift")},
});

/// Tempo in counts, written lowering-pause-lifting; 0 lifting means as fast as possible.
/// One count is about one second (common practice, no source).
struct Tempo
{
    int lowering = 0; ///< 0 = not prescribed
    int pause = 0;
    int lifting = 0;

    friend bool operator==(const Tempo &, const Tempo &) = default;
};

enum class Fatigue { low, moderate, high };

template <> inline constexpr auto kEnumWords<Fatigue> = std::to_array<EnumWord<Fatigue>>({
    {Fatigue::low, "low", QT_TRANSLATE_NOOP("core", "low fatigue")},
    {Fatigue::moderate, "moderate", QT_TRANSLATE_NOOP("core", "moderate fatigue")},
    {Fatigue::high, "high", QT_TRANSLATE_NOOP("core", "high fatigue")},
});

/// One way of doing a lift. Plain data; the rules are in problems() and in the schema.
struct Variation
{
    VariationId id;
    QString code; ///< stable, for files: lower case, digits and _, unique in the roster
    QString name;
    Lift lift = Lift::bench;
    bool competition = false; ///< the one variation of its lift that the ratios refer to
    /// Beside the lift, such as rows for the bench press: no sets of the lift, and no evidence of
    /// its max, so that the lifter's effort says how heavy it is.
    bool assistance = false;
    Serves serves = Serves::both;
    QString stance;  ///< squat and deadlift: "conventional", "sumo", "wide" ...; else empty
    QString purpose; ///< one line
    Tempo tempo;
    int repsLow = 1; ///< usual reps a set
    int repsHigh = 10;
    double ratio = 1.0;        ///< its max / competition max: mean between lifters
    double ratioSpread = 0.05; ///< one SD between lifters
    QString ratioSource;       ///< citation, or "common practice"
    /// Where speed is the aim: its usual load as a percentage of its max, 1 to 100. Empty = loads
    /// go by effort.
    std::optional<double> usualPercent;
    double repCost = 1.0; ///< what a rep costs against a competition rep, 1 = the same
    Fatigue fatigue = Fatigue::moderate;
    AreaWork work; ///< what it asks of each area
    QString whenToUse;
    QString cautions;
    bool retired = false; ///< kept for old logs, off the shelf

    friend bool operator==(const Variation &, const Variation &) = default;
};

/// Whether its sets are sets of the lift: they count with it and are evidence of its max.
[[nodiscard]] bool countsFor(const Variation &variation, Lift lift);

/// Whether the variation works the area, some or much.
[[nodiscard]] bool works(const Variation &variation, BodyArea area);

/// What a lift asks of the areas when it is done as in competition (common practice, no source):
/// the bench press chest, shoulders and elbows, and some of the wrists and, by arch and leg drive,
/// of back and legs; squat and deadlift back and legs, and some of the arms that hold the bar.
[[nodiscard]] AreaWork usualWork(Lift lift);

/// Null where the catalogue has none.
[[nodiscard]] const Variation *find(std::span<const Variation> catalogue, VariationId id);
[[nodiscard]] const Variation *withCode(std::span<const Variation> catalogue, const QString &code);
/// Name of the variation with the code; the code itself where there is none.
[[nodiscard]] QString nameOf(std::span<const Variation> catalogue, const QString &code);
/// The competition variation of a lift; null where the catalogue has none.
[[nodiscard]] const Variation *competitionOf(std::span<const Variation> catalogue, Lift lift);

/// What is wrong, in words a coach can act on; empty when sound.
[[nodiscard]] QStringList problems(const Variation &variation);

} // namespace core
