#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/storage/database.h"
#include "core/storage/number_words.h"

#include <unordered_map>

namespace core {

std::vector<BlockTemplate> TemplateRepository::all()
{
    std::vector<BlockTemplate> templates;
    std::unordered_map<qint64, size_t> index;
    Rows rows = m_db.select(
        QStringLiteral("SELECT id, name, version, purpose, weeks, deload_weeks FROM block_template"
                       " ORDER BY name, version"));
    while (rows.next()) {
        BlockTemplate &block = templates.emplace_back();
        block.id = {rows.id()};
        block.name = rows.text();
        block.version = rows.integer();
        block.purpose = rows.text();
        block.weeks = rows.integer();
        block.deloadWeeks = numbersOf(rows.text());
        index.emplace(block.id.value, templates.size() - 1);
    }
    Rows swaps = m_db.select(QStringLiteral(
        "SELECT template_id, soft, sinking FROM template_swap ORDER BY template_id, position"));
    while (swaps.next()) {
        BlockTemplate &block = templates[index.at(swaps.id())];
        TouchSwap &swap = block.swaps.emplace_back();
        swap.soft = swaps.text();
        swap.sinking = swaps.text();
    }
    Rows cards = m_db.select(
        QStringLiteral("SELECT template_id, key, day_offset, day_position, code, set_line, note"
                       " FROM template_card ORDER BY template_id, position"));
    while (cards.next()) {
        BlockTemplate &block = templates[index.at(cards.id())];
        TemplateCard &card = block.cards.emplace_back();
        card.key = cards.integer();
        card.dayOffset = cards.integer();
        card.position = cards.integer();
        card.code = cards.text();
        card.setLine = cards.text();
        card.note = cards.text();
    }
    return templates;
}

std::optional<BlockTemplate> TemplateRepository::find(TemplateId id)
{
    for (BlockTemplate &block : all()) // a few dozen, and rarely changed
        if (block.id == id)
            return std::move(block);
    return std::nullopt;
}

void TemplateRepository::insert(const BlockTemplate &block)
{
    m_db.run(QStringLiteral("INSERT INTO block_template (id, name, version, purpose, weeks,"
                            " deload_weeks) VALUES (?, ?, ?, ?, ?, ?)"),
        {block.id.value, block.name, block.version, toVariant(block.purpose), block.weeks,
            toVariant(wordsOf(block.deloadWeeks))});
    for (int position = 0; const TouchSwap &swap : block.swaps)
        m_db.run(QStringLiteral("INSERT INTO template_swap (template_id, position, soft, sinking)"
                                " VALUES (?, ?, ?, ?)"),
            {block.id.value, position++, swap.soft, swap.sinking});
    for (int position = 0; const TemplateCard &card : block.cards)
        m_db.run(QStringLiteral("INSERT INTO template_card (template_id, position, key, day_offset,"
                                " day_position, code, set_line, note)"
                                " VALUES (?, ?, ?, ?, ?, ?, ?, ?)"),
            {block.id.value, position++, card.key, card.dayOffset, card.position, card.code,
                toVariant(card.setLine), toVariant(card.note)});
}

void TemplateRepository::remove(TemplateId id)
{
    m_db.run(QStringLiteral("DELETE FROM block_template WHERE id = ?"), {id.value});
}

QString TemplateRepository::describe(const BlockTemplate &block)
{
    return Text::tr("Template %1").arg(block.name);
}

} // namespace core
