#include "tests/ui/fit/hostile_roster.h"

#include "app/demo/demo_roster.h"
#include "core/plan/template.h"
#include "core/plan/touch_swap.h"
#include "core/storage/roster_file.h"

namespace tests {

namespace {

constexpr int kLong = 300;
constexpr int kLongName = 120;

/// Goes on behind the text up to `size`, for every second one without a space.
QString prolonged(const QString &text, int number, int size = kLong)
{
    const QString more = number % 2 == 0 ? QStringLiteral(" and on it goes")
                                         : QStringLiteral("AndOnItGoesWithoutABreak");
    QString said = text;
    while (said.size() < size)
        said += more;
    return said.left(size).trimmed();
}

void prolong(core::Edit &edit)
{
    for (int number = 0; core::Lifter & lifter : edit.lifters.after) {
        lifter.gripNote = prolonged(lifter.gripNote, number);
        lifter.notes = prolonged(lifter.notes, number);
        if (number % 2 == 0)
            lifter.name = prolonged(lifter.name, number / 2, kLongName);
        if (number == 0)
            lifter.groups = {prolonged(QStringLiteral("juniors"), number, kLongName)};
        ++number;
    }
    for (int number = 0; core::Block & block : edit.blocks.after) {
        block.name = prolonged(block.name, number, kLongName);
        block.purpose = prolonged(block.purpose, number++);
    }
    for (int number = 0; core::Card & card : edit.cards.after)
        if (number++ % 3 == 0)
            card.note = prolonged(card.note, number);
    for (int number = 0; core::LoggedSession & session : edit.sessions.after)
        for (core::SetEntry &set : session.sets)
            if (number++ % 3 == 0)
                set.note = prolonged(set.note, number);
    for (int number = 0; core::CheckIn & checkIn : edit.checkIns.after) {
        checkIn.note = prolonged(checkIn.note, number++);
        if (checkIn.pain)
            checkIn.pain->words = prolonged(checkIn.pain->words, number);
    }
}

} // namespace

void makeHostileRoster(const QString &path, QDate today)
{
    core::RosterFile file = core::RosterFile::create(path);
    std::vector<core::Variation> catalogue = file.variations();
    core::Edit edit = demo::demoRoster(catalogue, today,
        {[&] { return file.newId<core::Lifter>(); },
            [&] { return file.newId<core::LoggedSession>(); },
            [&] { return file.newId<core::Card>(); }, [&] { return file.newId<core::Block>(); },
            [&] { return file.newId<core::CheckIn>(); }});
    const core::Block &block = edit.blocks.after.front();
    std::vector<core::Card> held;
    for (const core::Card &card : edit.cards.after)
        if (card.lifter == block.lifter && block.contains(card.day))
            held.push_back(card);
    prolong(edit);
    for (core::Variation &variation : catalogue)
        if (variation.code == QStringLiteral("feet_up")) {
            edit.variations.before = {variation};
            variation.name = prolonged(variation.name, 0, kLongName);
            variation.cautions = prolonged(variation.cautions, 0);
            edit.variations.after = {variation};
        }
    core::BlockTemplate kept = core::templateOf(prolonged(QStringLiteral("Kept"), 0, kLongName),
        block, held, catalogue, core::usualTouchSwaps(catalogue));
    kept.id = file.newId<core::BlockTemplate>();
    edit.templates.after = {kept};
    file.apply(edit);
}

} // namespace tests
