#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/storage/database.h"
#include "core/storage/number_words.h"

namespace core {

namespace {

const QString kColumns = QStringLiteral("id, name, version, purpose, weeks, deload_weeks");
const QString kCardColumns =
    QStringLiteral("template_id, position, key, day_offset, day_position, code, set_line, note");

} // namespace

std::vector<BlockTemplate> Repository<BlockTemplate>::select(Database &db, const Where &where)
{
    std::vector<BlockTemplate> templates;
    Rows rows = db.select(QStringLiteral("SELECT %1 FROM block_template %2 ORDER BY name, version")
                              .arg(kColumns, where.condition),
        where.values);
    while (rows.next()) {
        BlockTemplate &block = templates.emplace_back();
        block.id = {rows.id()};
        block.name = rows.text();
        block.version = rows.integer();
        block.purpose = rows.text();
        block.weeks = rows.integer();
        block.deloadWeeks = numbersOf(rows.text());
    }
    const auto owners = byId(templates);
    const Where parts = partsOf<BlockTemplate>(where, "template_id");
    Rows swaps = db.select(QStringLiteral("SELECT template_id, soft, sinking FROM template_swap %1"
                                          " ORDER BY template_id, position")
                               .arg(parts.condition),
        parts.values);
    while (swaps.next()) {
        TouchSwap &swap = owners.at(swaps.id())->swaps.emplace_back();
        swap.soft = swaps.text();
        swap.sinking = swaps.text();
    }
    Rows cards =
        db.select(QStringLiteral("SELECT %1 FROM template_card %2 ORDER BY template_id, position")
                      .arg(kCardColumns, parts.condition),
            parts.values);
    while (cards.next()) {
        TemplateCard &card = owners.at(cards.id())->cards.emplace_back();
        cards.skip(1); // its place among them
        card.key = cards.integer();
        card.dayOffset = cards.integer();
        card.position = cards.integer();
        card.code = cards.text();
        card.setLine = cards.text();
        card.note = cards.text();
    }
    return templates;
}

void Repository<BlockTemplate>::insert(Database &db, const BlockTemplate &block)
{
    db.insert("block_template", kColumns,
        {block.id.value, block.name, block.version, toVariant(block.purpose), block.weeks,
            toVariant(wordsOf(block.deloadWeeks))});
    for (int position = 0; const TouchSwap &swap : block.swaps)
        db.insert("template_swap", QStringLiteral("template_id, position, soft, sinking"),
            {block.id.value, position++, swap.soft, swap.sinking});
    for (int position = 0; const TemplateCard &card : block.cards)
        db.insert("template_card", kCardColumns,
            {block.id.value, position++, card.key, card.dayOffset, card.position, card.code,
                toVariant(card.setLine), toVariant(card.note)});
}

QString Repository<BlockTemplate>::describe(Database &, const BlockTemplate &block)
{
    return Text::tr("Template %1").arg(block.name);
}

} // namespace core
