#include "core/domain/text.h"
#include "core/storage/repositories.h"

#include "core/domain/storage_error.h"
#include "core/storage/database.h"
#include "core/storage/number_words.h"

namespace core {

namespace {

const QString kColumns =
    QStringLiteral("id, lifter_id, name, purpose, start, weeks, deload_weeks, template_id");

} // namespace

std::vector<Block> Repository<Block>::select(Database &db, const Where &where)
{
    std::vector<Block> blocks;
    Rows rows = db.select(QStringLiteral("SELECT %1 FROM block %2 ORDER BY lifter_id, start")
                              .arg(kColumns, where.condition),
        where.values);
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

void Repository<Block>::insert(Database &db, const Block &block)
{
    for (const Block &other : rowsOf<Block>(block.lifter, db))
        if (other.start <= block.end() && block.start <= other.end())
            throw StorageError(Text::tr("It overlaps %1, %2 to %3. Choose other weeks.")
                                   .arg(other.name, other.start.toString(Qt::ISODate),
                                       other.end().toString(Qt::ISODate)));
    db.insert("block", kColumns,
        {block.id.value, block.lifter.value, block.name, toVariant(block.purpose),
            toVariant(block.start), block.weeks, toVariant(wordsOf(block.deloadWeeks)),
            block.templateId.isValid() ? QVariant(block.templateId.value) : QVariant()});
}

QString Repository<Block>::describe(Database &db, const Block &block)
{
    return Text::tr("Block %1 of %2").arg(block.name, nameOf(block.lifter, db));
}

} // namespace core
