#include "core/domain/catalogue_edits.h"

#include <gmock/gmock.h>

using namespace Qt::StringLiterals;
using namespace core;

namespace {

Variation variation(qint64 id, const QString &code, const QString &name)
{
    Variation v;
    v.id = {id};
    v.code = code;
    v.name = name;
    return v;
}

} // namespace

TEST(CatalogueEdits, MakesACodeFromAName)
{
    EXPECT_EQ(codeFromName(u"Bench to a board, 5 cm"_s, {}), u"bench_to_a_board_5_cm"_s);
    EXPECT_EQ(codeFromName(u"  Élan – paused! "_s, {}), u"elan_paused"_s);
    EXPECT_EQ(codeFromName(u"Feet up"_s, {u"feet_up"_s}), u"feet_up_2"_s);
    EXPECT_EQ(codeFromName(u"Feet up"_s, {u"feet_up"_s, u"feet_up_2"_s}), u"feet_up_3"_s);
    EXPECT_EQ(codeFromName(u"卧推"_s, {}), u"variation"_s);
}

TEST(CatalogueEdits, EveryCodeItMakesIsSound)
{
    for (const QString &name : {u""_s, u"_"_s, u"---"_s, u"A"_s, u"4-2-0"_s, u"ß"_s}) {
        const Variation v = variation(1, codeFromName(name, {}), u"x"_s);
        EXPECT_TRUE(variationProblems(v, {v}).isEmpty()) << qPrintable(v.code);
    }
}

TEST(CatalogueEdits, SaysTheFieldOfEachSlip)
{
    const Variation sound = variation(1, u"a"_s, u"Alpha"_s);
    const Variation other = variation(2, u"b"_s, u"Beta"_s);
    const auto fields = [&](Variation v) { return variationProblems(v, {v, other}).keys(); };
    using Field = VariationField;
    EXPECT_TRUE(fields(sound).isEmpty());
    Variation v = sound;
    v.name = u" "_s;
    EXPECT_EQ(fields(v), QList<Field>{Field::name});
    v.name = u"beta "_s;
    EXPECT_EQ(fields(v), QList<Field>{Field::name});
    v.lift = Lift::squat; // another lift may use the name
    EXPECT_TRUE(fields(v).isEmpty());
    v = sound;
    v.code = u"b"_s;
    EXPECT_EQ(fields(v), QList<Field>{Field::code});
    v.code = u"Big Code"_s;
    EXPECT_EQ(fields(v), QList<Field>{Field::code});
    v = sound;
    v.repsLow = 9;
    v.repsHigh = 3;
    EXPECT_EQ(fields(v), QList<Field>{Field::reps});
    v = sound;
    v.ratio = 3;
    EXPECT_EQ(fields(v), QList<Field>{Field::other});
}

TEST(CatalogueEdits, TakesChangedAndNewRowsAlone)
{
    const Variation a = variation(1, u"a"_s, u"Alpha"_s);
    const Variation b = variation(2, u"b"_s, u"Beta"_s);
    const Variation c = variation(3, u"c"_s, u"Gamma"_s);
    Variation retired = b;
    retired.retired = true;
    const Edit edit = changeCatalogue({a, b}, {a, retired, c});
    EXPECT_EQ(edit.variations.before, (std::vector{b}));
    EXPECT_EQ(edit.variations.after, (std::vector{retired, c}));
    EXPECT_TRUE(changeCatalogue({a, b}, {a, b}).isEmpty());
}
