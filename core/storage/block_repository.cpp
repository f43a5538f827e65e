#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"
#include "core/storage/number_words.h"

namespace core {

namespace {

const QString kSelect = QStringLiteral(
    "SELECT id, lifter_id, name, purpose, start, weeks, deload_weeks, template_id FROM block"
    " WHERE ");

std::vector<Block> read(Rows rows)
{
    std::vector<Block> blocks;
    while (rows.next()) {
        Block &block = blocks.emplace_back();
        block.id = {rows.id()};
        block.lifter = {rows.id()};
        block.name = rows.text();
        block.purpose = rows.text();
        block.start = rows.date();
        block.weeks = rows.integer();
        block.deloadWeeks = numbersOf(rows.text());
        block.templateId = {rows.id()}; // NULL reads as 0, which is no id
    }
    return blocks;
}

} // namespace

std::vector<Block> BlockRepository::of(LifterId lifter)
{
    return read(
        m_db.select(kSelect + QStringLiteral("lifter_id = ? ORDER BY start"), {lifter.value}));
}

std::vector<Block> BlockRepository::all()
{
    return read(m_db.select(kSelect + QStringLiteral("true ORDER BY lifter_id, start")));
}

std::optional<Block> BlockRepository::find(BlockId id)
{
    const std::vector<Block> found =
        read(m_db.select(kSelect + QStringLiteral("id = ?"), {id.value}));
    return found.empty() ? std::nullopt : std::optional(found.front());
}

void BlockRepository::insert(const Block &block)
{
    for (const Block &other : of(block.lifter))
        if (other.start <= block.end() && block.start <= other.end())
            throw StorageError(Text::tr("It overlaps %1, %2 to %3. Choose other weeks.")
                                   .arg(other.name, other.start.toString(Qt::ISODate),
                                       other.end().toString(Qt::ISODate)));
    m_db.run(QStringLiteral("INSERT INTO block (id, lifter_id, name, purpose, start, weeks,"
                            " deload_weeks, template_id) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"),
        {block.id.value, block.lifter.value, block.name, toVariant(block.purpose),
            toVariant(block.start), block.weeks, toVariant(wordsOf(block.deloadWeeks)),
            block.templateId.isValid() ? QVariant(block.templateId.value) : QVariant()});
}

void BlockRepository::remove(BlockId id)
{
    m_db.run(QStringLiteral("DELETE FROM block WHERE id = ?"), {id.value});
}

QString BlockRepository::describe(const Block &block)
{
    const std::optional<Lifter> lifter = LifterRepository(m_db).find(block.lifter);
    return Text::tr("Block %1 of %2").arg(block.name, lifter ? lifter->name : QStringLiteral("?"));
}

} // namespace core
