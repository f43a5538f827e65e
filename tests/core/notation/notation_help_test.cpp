#include "core/notation/notation_help.h"

#include "core/notation/set_entry_text.h"
#include "core/notation/set_line.h"

#include <gtest/gtest.h>
#include <set>

using namespace core;

TEST(NotationHelp, EverySetLineOfTheHelpCanBeRead)
{
    for (const NotationForm &form : setLineForms()) {
        const ParsedSetLines read = parseSetLines(form.example);
        EXPECT_FALSE(read.error) << qPrintable(form.example);
        EXPECT_EQ(qsizetype(read.lines.size()), form.example.count(u'\n') + 1)
            << qPrintable(form.example);
        EXPECT_FALSE(form.words.isEmpty());
    }
}

TEST(NotationHelp, SetLinesOfTheHelpShowEveryKindOfTargetAndOfReps)
{
    std::set<size_t> targets;
    bool range = false, asMany = false, cap = false, lead = false, named = false, tempo = false,
         pause = false, rest = false, note = false;
    for (const NotationForm &form : setLineForms())
        for (const SetLine &line : parseSetLines(form.example).lines) {
            targets.insert(line.target.index());
            range |= line.mostReps && !line.asManyAsPossible;
            asMany |= line.asManyAsPossible;
            cap |= line.asManyAsPossible && line.mostReps;
            lead |= line.leadReps > 0 && line.restCode.isEmpty();
            named |= line.leadReps > 0 && !line.restCode.isEmpty();
            tempo |= std::holds_alternative<Tempo>(line.manner);
            pause |= std::holds_alternative<Pause>(line.manner);
            rest |= line.restSeconds.has_value();
            note |= !line.note.isEmpty();
        }
    for (size_t kind = 1; kind < std::variant_size_v<Target>; ++kind)
        EXPECT_TRUE(targets.contains(kind)) << kind;
    EXPECT_TRUE(range && asMany && cap && lead && named && tempo && pause && rest && note);
}

TEST(NotationHelp, EveryEntryOfTheHelpCanBeReadAndSaysSomething)
{
    SetEntry start;
    start.variation = {1};
    start.loadKg = 100.0;
    start.repsDone = 5;
    SetEntry missed = start;
    missed.repsDone = 4;
    missed.repsPlanned = 5;
    missed.failed = true;
    for (const NotationForm &form : setEntryForms()) {
        const bool takesBack = form.example == QStringLiteral("made");
        const EntryReading read =
            readEntry(form.example, takesBack ? missed : start, Unit::kilogram, 100.0);
        EXPECT_FALSE(read.error) << qPrintable(form.example)
                                 << (read.error ? qPrintable(read.error->words) : "");
        EXPECT_FALSE(form.words.isEmpty());
        if (form.example != QStringLiteral("100x5")) { // as planned, in words
            EXPECT_NE(read.entry, takesBack ? missed : start) << qPrintable(form.example);
        }
    }
}
