#include "tests/ui/translation/foreign_roster.h"

#include "app/demo/demo_roster.h"
#include "core/plan/template.h"
#include "core/plan/touch_swap.h"

namespace tests {

namespace {

void translate(QString &text)
{
    text = foreign(text);
}

core::Edit foreignCatalogue(const std::vector<core::Variation> &catalogue)
{
    core::Edit edit;
    edit.variations = {catalogue, catalogue};
    for (core::Variation &variation : edit.variations.after) {
        if (!variation.code.contains(u'_'))
            variation.code += QStringLiteral("_1");
        for (QString core::Variation::*text : {&core::Variation::name, &core::Variation::stance,
                 &core::Variation::purpose, &core::Variation::ratioSource,
                 &core::Variation::whenToUse, &core::Variation::cautions})
            translate(variation.*text);
    }
    return edit;
}

void translateTexts(core::Edit &edit)
{
    for (core::Lifter &lifter : edit.lifters.after) {
        for (QString *text : {&lifter.name, &lifter.gripNote, &lifter.notes})
            translate(*text);
        for (QString &group : lifter.groups)
            translate(group);
    }
    for (core::Block &block : edit.blocks.after)
        for (QString *text : {&block.name, &block.purpose})
            translate(*text);
    for (core::Card &card : edit.cards.after)
        translate(card.note);
    for (core::LoggedSession &session : edit.sessions.after)
        for (core::SetEntry &set : session.sets)
            translate(set.note);
    for (core::CheckIn &checkIn : edit.checkIns.after) {
        translate(checkIn.note);
        if (checkIn.pain)
            translate(checkIn.pain->words);
    }
}

} // namespace

QString foreign(const QString &text)
{
    QString said = text.toLower();
    for (QChar &c : said)
        if (c >= u'a' && c <= u'z')
            c = QChar(u'α' + (c.unicode() - u'a'));
    return said;
}

core::RosterFile makeEmptyRoster(const QString &path)
{
    core::RosterFile file = core::RosterFile::create(path);
    file.apply(foreignCatalogue(file.variations()));
    return file;
}

void makeForeignRoster(const QString &path, QDate today)
{
    core::RosterFile file = core::RosterFile::create(path);
    const std::vector<core::Variation> catalogue = file.variations();
    core::Edit edit = demo::demoRoster(catalogue, today,
        {[&] { return file.newId<core::Lifter>(); },
            [&] { return file.newId<core::LoggedSession>(); },
            [&] { return file.newId<core::Card>(); }, [&] { return file.newId<core::Block>(); },
            [&] { return file.newId<core::CheckIn>(); }});
    translateTexts(edit);
    edit.variations = foreignCatalogue(catalogue).variations;
    const core::Block &block = edit.blocks.after.front();
    std::vector<core::Card> held;
    for (const core::Card &card : edit.cards.after)
        if (card.lifter == block.lifter && block.contains(card.day))
            held.push_back(card);
    core::BlockTemplate kept = core::templateOf(block.name, block, held, edit.variations.after,
        core::usualTouchSwaps(edit.variations.after));
    kept.id = file.newId<core::BlockTemplate>();
    edit.templates.after = {kept};
    file.apply(edit);
}

} // namespace tests
