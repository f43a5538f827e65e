#include "core/exchange/hand_out_words.h"

#include <QCoreApplication>

namespace core {

namespace {
struct Text
{
    Q_DECLARE_TR_FUNCTIONS(HandOut)
};
} // namespace

QJsonObject handOutWords()
{
    const auto t = [](const char *text) { return Text::tr(text); };
    return {
        // check-in
        {QStringLiteral("checkIn"), t("How are you today?")},
        {QStringLiteral("sleep"), t("Sleep last night")},
        {QStringLiteral("stress"), t("Stress")},
        {QStringLiteral("motivation"), t("Wish to train")},
        {QStringLiteral("soreness"), t("Soreness")},
        {QStringLiteral("nothingSore"), t("Nothing is sore")},
        {QStringLiteral("somethingSore"), t("Something is sore")},
        {QStringLiteral("pain"), t("Pain (not soreness)")},
        {QStringLiteral("noPain"), t("None")},
        {QStringLiteral("elsewhere"), t("Elsewhere")},
        {QStringLiteral("painWords"), t("Where exactly, and what is it like?")},
        {QStringLiteral("painStop"),
            t("Pain: do not lift through it. Stop what hurts and tell the coach before you go on. "
              "Sharp pain, numbness, or pain that stays is for a doctor or physiotherapist.")},
        // day
        {QStringLiteral("days"), t("Days of the week")},
        {QStringLiteral("trainedOn"), t("Trained on")},
        {QStringLiteral("dayNote"), t("Anything the coach should know about this day?")},
        {QStringLiteral("safety"),
            t("Use a spotter or safeties. Alone: no collars. Sharp pain: stop and tell the "
              "coach.")},
        {QStringLiteral("coachSays"), t("From the coach: %1")},
        {QStringLiteral("ofSets"), t("%1 of %2")},
        {QStringLiteral("allDone"), t("done")},
        {QStringLiteral("progress"), t("%1 of %2 sets done")},
        // a set
        {QStringLiteral("setNumber"), t("Set %1")},
        {QStringLiteral("extraSet"), t("Extra set")},
        {QStringLiteral("addSet"), t("Add a set")},
        {QStringLiteral("loadOpen"), t("load to be agreed")},
        {QStringLiteral("eachSide"), t("each side %1")},
        {QStringLiteral("feelsLike"), t("about RPE %1")},
        {QStringLiteral("plannedWas"), t("Planned: %1")},
        {QStringLiteral("asPlanned"), t("Done as planned")},
        {QStringLiteral("enter"), t("Enter what you did")},
        {QStringLiteral("change"), t("Change")},
        {QStringLiteral("skip"), t("Leave out")},
        {QStringLiteral("skipped"), t("left out")},
        {QStringLiteral("takeBack"), t("Take back")},
        {QStringLiteral("missedOne"), t("then missed one")},
        {QStringLiteral("touchSaid"), t("touch %1")},
        {QStringLiteral("howHard"), t("How hard was it? (RPE)")},
        {QStringLiteral("rpeLow"), t("5 or more reps left")},
        {QStringLiteral("rpeHigh"), t("10 = none left")},
        {QStringLiteral("howTouched"), t("How did the bar meet the chest?")},
        {QStringLiteral("doneRating"), t("Next set")},
        {QStringLiteral("load"), t("Load in %1")},
        {QStringLiteral("reps"), t("Reps that went up")},
        {QStringLiteral("missed"), t("Tried one more rep and missed it")},
        {QStringLiteral("variation"), t("What you did")},
        {QStringLiteral("note"), t("Note")},
        {QStringLiteral("save"), t("Save the set")},
        {QStringLiteral("cancel"), t("Cancel")},
        {QStringLiteral("less"), t("Less: %1")},
        {QStringLiteral("more"), t("More: %1")},
        {QStringLiteral("badLoad"), t("Write the weight on the bar in %1, the bar included.")},
        {QStringLiteral("badReps"), t("Write the reps as a whole number up to 100.")},
        {QStringLiteral("noReps"),
            t("No rep went up: tick the missed rep, or cancel and leave the set out.")},
        // giving back
        {QStringLiteral("giveBack"), t("Give back")},
        {QStringLiteral("backToPlan"), t("Back to the plan")},
        {QStringLiteral("giveHow"),
            t("Save the return sheet and send it to the coach. You can go on logging and give back "
              "again: what the coach has already is not counted twice.")},
        {QStringLiteral("stillOpen"), t("Sets without an entry: %1. They go back as open.")},
        {QStringLiteral("share"), t("Share the return sheet")},
        {QStringLiteral("saveFile"), t("Save the return sheet")},
        {QStringLiteral("copy"), t("Copy as text")},
        {QStringLiteral("saved"), t("Saved as %1 among the downloads.")},
        {QStringLiteral("copied"), t("Copied. Paste it into a message to the coach.")},
        {QStringLiteral("notCopied"), t("This browser does not let the page copy: save the file.")},
        {QStringLiteral("notShared"), t("Nothing was shared. The file can be saved instead.")},
        {QStringLiteral("notKept"),
            t("This browser does not keep entries once the page is closed: give back before you "
              "close it.")},
    };
}

QStringList touchSteps()
{
    return {Text::tr("held off or feather-light"), Text::tr("light"),
        Text::tr("rests on the chest"), Text::tr("sinks in"), Text::tr("sinks and stops")};
}

QStringList sleepSteps()
{
    return {Text::tr("very poor"), Text::tr("poor"), Text::tr("fair"), Text::tr("good"),
        Text::tr("very good")};
}

QStringList stressSteps()
{
    return {Text::tr("very stressed"), Text::tr("stressed"), Text::tr("as usual"),
        Text::tr("relaxed"), Text::tr("very relaxed")};
}

QStringList motivationSteps()
{
    return {Text::tr("none"), Text::tr("little"), Text::tr("as usual"), Text::tr("keen"),
        Text::tr("very keen")};
}

QStringList sorenessSteps()
{
    return {Text::tr("very sore"), Text::tr("sore"), Text::tr("somewhat sore"),
        Text::tr("hardly sore"), Text::tr("not sore")};
}

} // namespace core
