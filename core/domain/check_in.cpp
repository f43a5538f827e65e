#include "core/domain/check_in.h"

#include "core/domain/text.h"

#include <algorithm>

namespace core {

namespace {

constexpr int kMostSoreCount = 2; ///< up to this answer an area counts as sore

bool onScale(int answer)
{
    return answer >= 1 && answer <= 5;
}

std::optional<int> sorest(const CheckIn &checkIn)
{
    std::optional<int> least;
    for (const auto &[area, answer] : checkIn.soreness)
        least = std::min(least.value_or(answer), answer);
    return least;
}

} // namespace

bool isSore(const CheckIn &checkIn, BodyArea area)
{
    const auto answer = checkIn.soreness.find(area);
    return answer != checkIn.soreness.end() && answer->second <= kMostSoreCount;
}

std::vector<BodyArea> soreAreas(const CheckIn &checkIn)
{
    std::vector<BodyArea> sore;
    for (const BodyArea area : kBodyAreas)
        if (isSore(checkIn, area))
            sore.push_back(area);
    return sore;
}

std::optional<double> readiness(const CheckIn &checkIn)
{
    double sum = 0.0;
    int answers = 0;
    for (const std::optional<int> &item :
        {checkIn.sleep, checkIn.stress, checkIn.motivation, sorest(checkIn)})
        if (item) {
            sum += *item;
            ++answers;
        }
    return answers == 0 ? std::nullopt : std::optional(sum / answers);
}

QStringList sleepSteps()
{
    return {Text::tr("very poor"), Text::tr("poor"), Text::tr("fair"), Text::tr("good"),
        Text::tr("very good")};
}

QStringList stressSteps()
{
    return {Text::tr("very stressed"), Text::tr("stressed"), Text::tr("as usual"),
        Text::tr("relaxed"), Text::tr("very relaxed")};
}

QStringList motivationSteps()
{
    return {Text::tr("none"), Text::tr("little"), Text::tr("as usual"), Text::tr("keen"),
        Text::tr("very keen")};
}

QStringList sorenessSteps()
{
    return {Text::tr("very sore"), Text::tr("sore"), Text::tr("somewhat sore"),
        Text::tr("hardly sore"), Text::tr("not sore")};
}

QString words(const PainFlag &pain)
{
    const QString said = pain.words.trimmed();
    if (!pain.area)
        return said.isEmpty() ? Text::tr("elsewhere") : said;
    return words(*pain.area);
}

QStringList problems(const CheckIn &checkIn)
{
    QStringList wrong;
    if (!checkIn.lifter.isValid())
        wrong << Text::tr("A check-in belongs to a lifter.");
    if (!checkIn.day.isValid())
        wrong << Text::tr("A check-in belongs to a day.");
    for (const std::optional<int> &item : {checkIn.sleep, checkIn.stress, checkIn.motivation})
        if (item && !onScale(*item)) {
            wrong << Text::tr("Sleep, stress and motivation run from 1 (worst) to 5 (best).");
            break;
        }
    if (std::ranges::any_of(
            checkIn.soreness, [](const auto &answer) { return !onScale(answer.second); }))
        wrong << Text::tr("Soreness runs from 1 (very sore) to 5 (not sore).");
    if (checkIn.pain && !checkIn.pain->area && checkIn.pain->words.trimmed().isEmpty())
        wrong << Text::tr("Name the area of the pain, or say in words where it is.");
    if (checkIn.pain && checkIn.isPainFree)
        wrong << Text::tr("There is pain or there is none.");
    return wrong;
}

} // namespace core
