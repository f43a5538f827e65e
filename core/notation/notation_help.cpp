#include "core/notation/notation_help.h"

#include "core/domain/text.h"
#include "core/domain/touch_score.h"

namespace core {

std::vector<NotationForm> setLineForms()
{
    return {
        {QStringLiteral("4x3 @8"), Text::tr("four sets of three reps; the last one at RPE 8")},
        {QStringLiteral("4x3 @7-8"), Text::tr("a range of RPE")},
        {QStringLiteral("4x3 2RIR"), Text::tr("two reps left in reserve")},
        {QStringLiteral("5x5 75%"),
            Text::tr("share of the estimated max of the day, of the card's variation")},
        {QStringLiteral("3x5 102.5kg"), Text::tr("a load on the bar; also in lb")},
        {QStringLiteral("1x1 @8\n3x3 -10%"),
            Text::tr("a top set, and in a row below sets 10 % lighter; also -5kg")},
        {QStringLiteral("3x4-6 @8"), Text::tr("four to six reps, as the day goes")},
        {QStringLiteral("1x5+ 75%"), Text::tr("at least five, then as many as possible")},
        {QStringLiteral("1xAMRAP max 12 70%"), Text::tr("as many as possible, at most twelve")},
        {QStringLiteral("3x1+2 @8"),
            Text::tr("lead-rep set: the first rep in the card's variation, the rest in the "
                     "competition lift")},
        {QStringLiteral("3x1+2(feet_up) @8"),
            Text::tr("the rest in the variation with this code of the catalogue")},
        {QStringLiteral("3x3 @8 tempo 4-2-0 rest 3min; slow"),
            Text::tr("tempo (down, pause, up), rest and a note, in any order behind the reps")},
        {QStringLiteral("3x3 @8 pause 3"), Text::tr("a pause of three counts")},
    };
}

std::vector<NotationForm> setEntryForms()
{
    return {
        {QStringLiteral("100x5"), Text::tr("load and reps, in either order")},
        {QStringLiteral("102.5"), Text::tr("another load, in the lifter's unit; also 225lb")},
        {QStringLiteral("-2.5"), Text::tr("so much lighter than planned; +5 heavier")},
        {QStringLiteral("x4"), Text::tr("another number of reps")},
        {QStringLiteral("8.5"), Text::tr("the RPE; also @8.5")},
        {QStringLiteral("2RIR"), Text::tr("reps left in reserve, kept as the RPE")},
        {QStringLiteral("t3"), Text::tr("the touch: %1").arg(touchScale())},
        {QStringLiteral("x3 miss"), Text::tr("three reps completed, the next one missed")},
        {QStringLiteral("x4 9 t2; grip slipped"), Text::tr("several at once, the note last")},
        {QStringLiteral("made"), Text::tr("takes back a miss; @- a rating, t- a touch")},
    };
}

} // namespace core
