#include "core/exchange/hand_out_words.h"

#include "core/domain/text.h"

namespace core {

QJsonObject handOutWords()
{
    return {
        // check-in
        {QStringLiteral("checkIn"), Text::tr("How are you today?")},
        {QStringLiteral("sleep"), Text::tr("Sleep last night")},
        {QStringLiteral("stress"), Text::tr("Stress")},
        {QStringLiteral("motivation"), Text::tr("Motivation")},
        {QStringLiteral("soreness"), Text::tr("Soreness")},
        {QStringLiteral("nothingSore"), Text::tr("Nothing is sore")},
        {QStringLiteral("somethingSore"), Text::tr("Something is sore")},
        {QStringLiteral("pain"), Text::tr("Pain (not soreness)")},
        {QStringLiteral("noPain"), Text::tr("None")},
        {QStringLiteral("elsewhere"), Text::tr("Elsewhere")},
        {QStringLiteral("painWords"), Text::tr("Where exactly, and what is it like?")},
        {QStringLiteral("painStop"),
            Text::tr(
                "Pain: do not lift through it. Stop what hurts and tell the coach before you go "
                "on. "
                "Sharp pain, numbness, or pain that stays is for a doctor or physiotherapist.")},
        // day
        {QStringLiteral("days"), Text::tr("Days of the week")},
        {QStringLiteral("trainedOn"), Text::tr("Trained on")},
        {QStringLiteral("dayNote"), Text::tr("Anything the coach should know about this day?")},
        {QStringLiteral("safety"),
            Text::tr("Use a spotter or safeties, thumbs around the bar. Alone without safeties: no "
                     "collars. Sharp pain: stop and tell the coach.")},
        {QStringLiteral("coachSays"), Text::tr("From the coach: %1")},
        {QStringLiteral("ofSets"), Text::tr("%1 of %2")},
        {QStringLiteral("allDone"), Text::tr("done")},
        {QStringLiteral("progress"), Text::tr("%1 of %2 sets done")},
        // a set
        {QStringLiteral("setNumber"), Text::tr("Set %1")},
        {QStringLiteral("extraSet"), Text::tr("Extra set")},
        {QStringLiteral("addSet"), Text::tr("Add a set")},
        {QStringLiteral("loadOpen"), Text::tr("load to be agreed")},
        {QStringLiteral("eachSide"), Text::tr("each side %1")},
        {QStringLiteral("heldBack"), Text::tr("Held back: do not do this set as planned.")},
        {QStringLiteral("painHere"), Text::tr("Not in pain: leave it out and tell the coach.")},
        {QStringLiteral("painWhere"),
            Text::tr("Where does it hurt? Choose the nearest area in the check-in.")},
        {QStringLiteral("plannedWas"), Text::tr("Planned: %1")},
        {QStringLiteral("asPlanned"), Text::tr("Done as planned")},
        {QStringLiteral("enter"), Text::tr("Enter what you did")},
        {QStringLiteral("change"), Text::tr("Change")},
        {QStringLiteral("skip"), Text::tr("Leave out")},
        {QStringLiteral("skipped"), Text::tr("left out")},
        {QStringLiteral("takeBack"), Text::tr("Take back")},
        {QStringLiteral("missedOne"), Text::tr("then missed one")},
        {QStringLiteral("touchSaid"), Text::tr("touch %1")},
        {QStringLiteral("howHard"), Text::tr("How hard was it? (RPE)")},
        {QStringLiteral("rpeLow"), Text::tr("5 or more reps left")},
        {QStringLiteral("rpeHigh"), Text::tr("10 = none left")},
        {QStringLiteral("howTouched"), Text::tr("How did the bar meet the chest?")},
        {QStringLiteral("doneRating"), Text::tr("Next set")},
        {QStringLiteral("load"), Text::tr("Load in %1")},
        {QStringLiteral("reps"), Text::tr("Reps completed")},
        {QStringLiteral("missed"), Text::tr("Tried one more rep and missed it")},
        {QStringLiteral("variation"), Text::tr("What you did")},
        {QStringLiteral("note"), Text::tr("Note")},
        {QStringLiteral("save"), Text::tr("Save the set")},
        {QStringLiteral("cancel"), Text::tr("Cancel")},
        {QStringLiteral("less"), Text::tr("Less: %1")},
        {QStringLiteral("more"), Text::tr("More: %1")},
        {QStringLiteral("badLoad"),
            Text::tr("Write the weight on the bar in %1, the bar included.")},
        {QStringLiteral("badReps"), Text::tr("Write the reps as a whole number up to 100.")},
        {QStringLiteral("noReps"),
            Text::tr("No rep went up: tick the missed rep, or cancel and leave the set out.")},
        // giving back
        {QStringLiteral("giveBack"), Text::tr("Send to coach")},
        {QStringLiteral("backToPlan"), Text::tr("Back to the plan")},
        {QStringLiteral("giveHow"),
            Text::tr("Save the return sheet and send it to the coach. You can go on logging and "
                     "send it "
                     "again: what the coach has already is not counted twice.")},
        {QStringLiteral("stillOpen"), Text::tr("Sets without an entry: %1. They go back as open.")},
        {QStringLiteral("share"), Text::tr("Share the return sheet")},
        {QStringLiteral("saveFile"), Text::tr("Save the return sheet")},
        {QStringLiteral("copy"), Text::tr("Copy as text")},
        {QStringLiteral("saved"), Text::tr("Saved as %1 among the downloads.")},
        {QStringLiteral("copied"), Text::tr("Copied. Paste it into a message to the coach.")},
        {QStringLiteral("notCopied"),
            Text::tr("This browser does not let the page copy: save the file.")},
        {QStringLiteral("notShared"),
            Text::tr("Nothing was shared. The file can be saved instead.")},
        {QStringLiteral("notKept"),
            Text::tr(
                "This browser does not keep entries once the page is closed: send them before you "
                "close it.")},
    };
}

} // namespace core
