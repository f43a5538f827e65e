#include "core/domain/visible_text.h"

#include <gtest/gtest.h>

using namespace core;
using namespace Qt::StringLiterals;

TEST(VisibleText, SignsThatPartOrTurnANameAreHidden)
{
    for (const QString &name : {u"Ada\u200B"_s, u"\u202EAda"_s, u"A\u2060da"_s, u"A\u00ADda"_s})
        EXPECT_TRUE(hasHiddenSigns(name)) << name.toStdString();
    for (const QString &name :
        {u"Ada Öst"_s, u"-"_s, u"\u0645\u06CC\u200C\u062E"_s, u"は"_s, QString()})
        EXPECT_FALSE(hasHiddenSigns(name)) << name.toStdString();
}

TEST(VisibleText, IsALetterOrADigitThatIsSeen)
{
    for (const QString &note :
        {u"cleared"_s, u"7"_s, u" \u200Bé "_s, u"は"_s, QString::fromUcs4(U"\U00010400")})
        EXPECT_TRUE(hasVisibleText(note)) << note.toStdString();
    for (const QString &note : {QString(), u"  "_s, u"\u200B"_s, u"\u2060\uFEFF\u00AD"_s, u"...!"_s,
             u"\u2800"_s, u"\u3164\u115F"_s, u"\u202E"_s})
        EXPECT_FALSE(hasVisibleText(note)) << note.toStdString();
}
