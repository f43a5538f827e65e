#include "core/exchange/name_cell.h"

#include "core/domain/text.h"
#include "core/domain/visible_text.h"

namespace core {

QString comparableName(const QString &name)
{
    return name.normalized(QString::NormalizationForm_C).simplified();
}

QString readName(CsvTable &table, size_t column)
{
    const QString name = comparableName(table.text(column));
    if (hasHiddenSigns(name))
        table.complain(column, Text::tr("The name has signs that cannot be seen."),
            Text::tr("Type the name anew."));
    return name;
}

} // namespace core
