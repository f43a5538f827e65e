#include "core/strength/meet_points.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace strength {

namespace {

using Sex = LifterLog::Sex;

struct GlCoefficients
{
    double a, b, c;
};

constexpr GlCoefficients kMenClassic{320.98041, 281.40258, 0.01008};
constexpr GlCoefficients kMenEquipped{381.22073, 733.79378, 0.02398};
constexpr GlCoefficients kWomenClassic{142.40398, 442.52671, 0.04724};
constexpr GlCoefficients kWomenEquipped{221.82209, 357.00377, 0.02937};

const GlCoefficients &coefficients(Sex sex, Equipment equipment)
{
    if (sex == Sex::female)
        return equipment == Equipment::classic ? kWomenClassic : kWomenEquipped;
    return equipment == Equipment::classic ? kMenClassic : kMenEquipped;
}

void check(double bodyweightKg, double resultKg)
{
    if (!(bodyweightKg > 0.0) || !(resultKg >= 0.0))
        throw std::invalid_argument(
            "meet points: the bodyweight must be above 0, the result not below");
}

} // namespace

std::optional<double> benchGlPoints(
    Sex sex, Equipment equipment, double bodyweightKg, double resultKg)
{
    check(bodyweightKg, resultKg);
    if (sex == Sex::unstated)
        return std::nullopt;
    const GlCoefficients &k = coefficients(sex, equipment);
    const double usual = k.a - k.b * std::exp(-k.c * bodyweightKg);
    if (!(usual > 0.0))
        return std::nullopt;
    return 100.0 * resultKg / usual;
}

std::optional<double> dots(Sex sex, double bodyweightKg, double resultKg)
{
    check(bodyweightKg, resultKg);
    if (sex == Sex::unstated)
        return std::nullopt;
    const bool female = sex == Sex::female;
    const double w = std::clamp(bodyweightKg, 40.0, female ? 150.0 : 210.0);
    const double usual = female
        ? (((-1.0706e-6 * w + 5.158568e-4) * w - 0.1126655495) * w + 13.6175032) * w - 57.96288
        : (((-1.0930e-6 * w + 7.391293e-4) * w - 0.1918759221) * w + 24.0900756) * w - 307.75076;
    return 500.0 * resultKg / usual;
}

} // namespace strength
