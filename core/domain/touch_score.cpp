#include "core/domain/touch_score.h"

#include "core/domain/text.h"

#include <array>
#include <cassert>

namespace core {

namespace {

constexpr std::array<const char *, kHardestTouch> kWords{{
    // The lifter carries the bar all the way: it hovers at the chest or hardly touches the shirt.
    QT_TRANSLATE_NOOP("core", "held off or feather-light"),
    // The bar touches and stays carried; the chest gives nothing.
    QT_TRANSLATE_NOOP("core", "light"),
    // Part of the weight lies on the chest, and the bar keeps its height.
    QT_TRANSLATE_NOOP("core", "rests"),
    // The bar presses into the chest or the belly before it turns, and still leaves it at once.
    QT_TRANSLATE_NOOP("core", "sinks"),
    // The bar presses in and dies there: it has to be heaved off from a dead stop.
    QT_TRANSLATE_NOOP("core", "sinks and stops"),
}};

} // namespace

QString touchWord(int score)
{
    assert(isTouchScore(score));
    return Text::tr(kWords[size_t(score - kSoftestTouch)]);
}

QStringList touchSteps()
{
    QStringList words;
    for (int score = kSoftestTouch; score <= kHardestTouch; ++score)
        words << touchWord(score);
    return words;
}

QString touchScale()
{
    QStringList steps;
    for (int score = kSoftestTouch; score <= kHardestTouch; ++score)
        steps << Text::tr("%1 = %2").arg(QString::number(score), touchWord(score));
    return steps.join(QStringLiteral(", "));
}

int wantedTouch(TouchStyle style)
{
    return style == TouchStyle::soft ? 2 : style == TouchStyle::sinking ? 4 : 3;
}

} // namespace core
