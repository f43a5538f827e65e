#include "core/domain/body_area.h"

#include <QStringList>

namespace core {

QString fileWords(const std::vector<BodyArea> &areas)
{
    QStringList all;
    for (const BodyArea area : areas)
        all << fileWord(area);
    return all.join(u' ');
}

std::optional<std::vector<BodyArea>> bodyAreasFromFileWords(const QString &words)
{
    std::vector<BodyArea> areas;
    for (const QString &word : words.split(u' ', Qt::SkipEmptyParts)) {
        const std::optional<BodyArea> area = fromFileWord<BodyArea>(word);
        if (!area)
            return std::nullopt;
        areas.push_back(*area);
    }
    return areas;
}

} // namespace core
