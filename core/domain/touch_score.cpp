#include "core/domain/touch_score.h"

#include "core/domain/text.h"

#include <QStringList>
#include <array>
#include <cassert>

namespace core {

namespace {

struct Step
{
    const char *word;
    const char *sentence;
    const char *fileWord;
};

constexpr std::array<Step, kHardestTouch> kSteps{{
    {QT_TRANSLATE_NOOP("core", "held off or feather-light"),
        QT_TRANSLATE_NOOP("core",
            "The lifter carries the bar all the way: it hovers at the chest or hardly touches the "
            "shirt."),
        "held_off"},
    {QT_TRANSLATE_NOOP("core", "light"),
        QT_TRANSLATE_NOOP("core", "The bar touches and stays carried; the chest gives nothing."),
        "light"},
    {QT_TRANSLATE_NOOP("core", "rests"),
        QT_TRANSLATE_NOOP(
            "core", "Part of the weight lies on the chest, and the bar keeps its height."),
        "rests"},
    {QT_TRANSLATE_NOOP("core", "sinks"),
        QT_TRANSLATE_NOOP("core",
            "The bar presses into the chest or the belly before it turns, and still leaves it at "
            "once."),
        "sinks"},
    {QT_TRANSLATE_NOOP("core", "sinks and stops"),
        QT_TRANSLATE_NOOP(
            "core", "The bar presses in and dies there: it has to be heaved off from a dead stop."),
        "stops"},
}};

const Step &step(int score)
{
    assert(isTouchScore(score));
    return kSteps[size_t(score - kSoftestTouch)];
}

} // namespace

QString touchWord(int score)
{
    return Text::tr(step(score).word);
}

QString touchSentence(int score)
{
    return Text::tr(step(score).sentence);
}

QString touchScale()
{
    QStringList steps;
    for (int score = kSoftestTouch; score <= kHardestTouch; ++score)
        steps << Text::tr("%1 = %2").arg(QString::number(score), touchWord(score));
    return steps.join(QStringLiteral(", "));
}

QString touchFileWord(int score)
{
    return QString::fromLatin1(step(score).fileWord);
}

std::optional<int> touchFromFileWord(const QString &word)
{
    for (int score = kSoftestTouch; score <= kHardestTouch; ++score)
        if (word == touchFileWord(score))
            return score;
    return std::nullopt;
}

int wantedTouch(TouchStyle style)
{
    switch (style) {
    case TouchStyle::soft:
        return 2;
    case TouchStyle::sinking:
        return 4;
    case TouchStyle::undecided:
        break;
    }
    return 3;
}

} // namespace core
