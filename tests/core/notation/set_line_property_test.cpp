#include "core/notation/set_line_completion.h"
#include "core/notation/set_line_reader.h"
#include "tests/core/plan/set_line_values.h"

#include <QStringList>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

using namespace core;
using namespace tests;

RC_GTEST_PROP(SetLineProperty, ParseIsTheInverseOfPrint, ())
{
    const auto lines = *rc::gen::container<std::vector<SetLine>>(anySetLine());
    const ParsedSetLines parsed = parseSetLines(setLineText(lines));
    RC_ASSERT(!parsed.error);
    RC_ASSERT(parsed.lines == lines);
}

RC_GTEST_PROP(SetLineProperty, LinesInOneRowReadAsInRowsOfTheirOwn, ())
{
    auto lines = *rc::gen::container<std::vector<SetLine>>(anySetLine());
    QStringList row;
    for (size_t i = 0; i < lines.size(); ++i) {
        if (i + 1 < lines.size())
            lines[i].note.clear(); // a note runs to the end of its row
        row << setLineText(lines[i]);
    }
    const ParsedSetLines parsed = parseSetLines(row.join(u" then "_qs));
    RC_ASSERT(!parsed.error);
    RC_ASSERT(parsed.lines == lines);
}

RC_GTEST_PROP(SetLineProperty, AnyTextIsReadOrRefusedAtAPlaceInside, ())
{
    const auto pieces = *rc::gen::container<std::vector<std::string>>(
        rc::gen::elementOf(std::vector<std::string>{"0", "1", "4", "12", "99", "x", "X", "@", "%",
            ".", ",", "kg", "lb", " ", "\n", "/", "then", ";", "-", "+", "(", ")", "max", "amrap",
            "tempo", "pause", "rest", "min", "s", ":", "rir", "feet_up", "\u00e4"}));
    QString text;
    for (const std::string &piece : pieces)
        text += QString::fromStdString(piece);
    const ParsedSetLines parsed = parseSetLines(text);
    if (parsed.error) {
        const QStringList rows = text.split(u'\n');
        RC_ASSERT(parsed.error->line >= 1 && parsed.error->line <= rows.size());
        RC_ASSERT(parsed.error->column >= 1);
        RC_ASSERT(parsed.error->column <= rows[parsed.error->line - 1].size() + 1);
        RC_ASSERT(!parsed.error->words.isEmpty());
    } else {
        RC_ASSERT(parseSetLines(setLineText(parsed.lines)).lines == parsed.lines);
    }
}

RC_GTEST_PROP(SetLineProperty, CutAnywhereALineIsWholeOrSaysWhatIsMissingAtTheCut, ())
{
    SetLine line = *anySetLine();
    line.note.clear();
    const QString text = setLineText(line);
    const QString cut = text.left(*rc::gen::inRange(0, int(text.size()) + 1));
    const LineReading reading = readSetLine(cut);
    if (reading.stop) // a cut word or number stands whole behind the place where it stopped
        RC_ASSERT(cut.mid(reading.stop->at).count(u' ') == 0);
}

RC_GTEST_PROP(SetLineCompletionProperty, WhateverIsChosenTheLineStaysGood, ())
{
    QString text;
    const int steps = *rc::gen::inRange(1, 12);
    for (int step = 0; step < steps; ++step) {
        const auto offers = completions(text, int(text.size()));
        RC_ASSERT(!offers.empty() || text.contains(u';'));
        if (offers.empty())
            break;
        const Completion chosen = *rc::gen::elementOf(offers);
        RC_ASSERT(!chosen.explanation.isEmpty());
        text = text.left(text.size() - chosen.replaces) + chosen.insert;
        const RowLine last = linesOf(text).back();
        const LineReading reading = readSetLine(last.text);
        RC_ASSERT((!reading.stop || reading.stop->at >= last.text.size()));
    }
}
