#include "core/domain/area_work.h"

#include <QStringList>
#include <set>

namespace core {

QString fileWords(const AreaWork &work)
{
    QStringList all;
    for (const BodyArea area : kBodyAreas)
        all << fileWord(area) + u':' + fileWord(work[area]);
    return all.join(u' ');
}

std::optional<AreaWork> areaWorkFromFileWords(const QString &words)
{
    AreaWork work;
    std::set<BodyArea> named;
    for (const QString &part : words.split(u' ', Qt::SkipEmptyParts)) {
        const std::optional<BodyArea> area = fromFileWord<BodyArea>(part.section(u':', 0, 0));
        const std::optional<Work> grade = fromFileWord<Work>(part.section(u':', 1));
        if (!area || !grade || !named.insert(*area).second)
            return std::nullopt;
        work[*area] = *grade;
    }
    return named.size() == std::size(kBodyAreas) ? std::optional(work) : std::nullopt;
}

} // namespace core
