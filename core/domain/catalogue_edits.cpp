#include "core/domain/catalogue_edits.h"

#include "core/domain/search_text.h"
#include "core/domain/text.h"

#include <QRegularExpression>
#include <algorithm>

namespace core {

namespace {

/// A variation that breaks no rule, to try one field of another in.
Variation soundVariation()
{
    Variation v;
    v.code = QStringLiteral("a");
    v.name = QStringLiteral("a");
    return v;
}

bool codeIsSound(const QString &code)
{
    Variation probe = soundVariation();
    probe.code = code;
    return problems(probe).isEmpty();
}

} // namespace

VariationProblems variationProblems(const Variation &variation, const std::vector<Variation> &all)
{
    VariationProblems problems;
    const auto takenByAnother = [&](auto &&same) {
        return std::ranges::any_of(
            all, [&](const Variation &other) { return other.id != variation.id && same(other); });
    };

    Variation probe = soundVariation();
    probe.name = variation.name;
    if (const QStringList wrong = core::problems(probe); !wrong.isEmpty())
        problems[VariationField::name] = wrong.front();
    else if (takenByAnother([&](const Variation &other) {
                 return other.lift == variation.lift
                     && other.name.compare(variation.name.trimmed(), Qt::CaseInsensitive) == 0;
             }))
        problems[VariationField::name] =
            Text::tr("Another variation of this lift has that name. Say what is different.");

    probe = soundVariation();
    probe.code = variation.code;
    if (const QStringList wrong = core::problems(probe); !wrong.isEmpty())
        problems[VariationField::code] = wrong.front();
    else if (takenByAnother([&](const Variation &other) { return other.code == variation.code; }))
        problems[VariationField::code] =
            Text::tr("Another variation has that code. Choose one of its own.");

    probe = soundVariation();
    probe.repsLow = variation.repsLow;
    probe.repsHigh = variation.repsHigh;
    if (const QStringList wrong = core::problems(probe); !wrong.isEmpty())
        problems[VariationField::reps] = wrong.front();

    // The form keeps every other field in bounds; a rule that it does not know still holds.
    const Variation sound = soundVariation();
    probe = variation;
    probe.code = sound.code;
    probe.name = sound.name;
    probe.repsLow = sound.repsLow;
    probe.repsHigh = sound.repsHigh;
    if (const QStringList wrong = core::problems(probe); !wrong.isEmpty())
        problems[VariationField::other] = wrong.front();
    return problems;
}

QString codeFromName(const QString &name, const QStringList &taken)
{
    static const QRegularExpression kOther(QStringLiteral("[^a-z0-9]+"));
    QString stem = folded(name).replace(kOther, QStringLiteral("_"));
    while (stem.startsWith(u'_'))
        stem.remove(0, 1);
    while (stem.endsWith(u'_'))
        stem.chop(1);
    if (!codeIsSound(stem))
        stem = QStringLiteral("variation");
    QString code = stem;
    for (int number = 2; taken.contains(code); ++number)
        code = stem + u'_' + QString::number(number);
    return code;
}

Edit changeCatalogue(const std::vector<Variation> &before, const std::vector<Variation> &after)
{
    Edit edit;
    for (const Variation &v : after) {
        const Variation *old = find(before, v.id);
        if (old && *old == v)
            continue;
        if (old)
            edit.variations.before.push_back(*old);
        edit.variations.after.push_back(v);
    }
    return edit;
}

} // namespace core
