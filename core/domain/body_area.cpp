#include "core/domain/body_area.h"

#include "core/domain/text.h"

#include <QStringList>

namespace core {

QString words(BodyArea area)
{
    switch (area) {
    case BodyArea::back:
        return Text::tr("back");
    case BodyArea::legs:
        return Text::tr("legs");
    case BodyArea::chest:
        return Text::tr("chest");
    case BodyArea::shoulders:
        return Text::tr("shoulders");
    case BodyArea::elbows:
        break;
    }
    return Text::tr("elbows");
}

QString fileWord(BodyArea area)
{
    switch (area) {
    case BodyArea::back:
        return QStringLiteral("back");
    case BodyArea::legs:
        return QStringLiteral("legs");
    case BodyArea::chest:
        return QStringLiteral("chest");
    case BodyArea::shoulders:
        return QStringLiteral("shoulders");
    case BodyArea::elbows:
        break;
    }
    return QStringLiteral("elbows");
}

std::optional<BodyArea> bodyAreaFromFileWord(const QString &word)
{
    for (const BodyArea area : kBodyAreas)
        if (word == fileWord(area))
            return area;
    return std::nullopt;
}

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
        const std::optional<BodyArea> area = bodyAreaFromFileWord(word);
        if (!area)
            return std::nullopt;
        areas.push_back(*area);
    }
    return areas;
}

} // namespace core
