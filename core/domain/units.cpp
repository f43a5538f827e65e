#include "core/domain/units.h"

#include <QLocale>
#include <cmath>

namespace core {

QString formatLoadNumber(double kg, Unit unit, int decimals)
{
    const double scale = std::pow(10.0, decimals);
    const double amount = std::round(fromKg(kg, unit) * scale) / scale;
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    for (int places = 0; places < decimals; ++places) {
        const double step = std::pow(10.0, places);
        if (std::abs(std::round(amount * step) / step - amount) < 1e-9)
            return locale.toString(amount, 'f', places);
    }
    return locale.toString(amount, 'f', decimals);
}

QString formatLoad(double kg, Unit unit, int decimals)
{
    return formatLoadNumber(kg, unit, decimals) + u' ' + symbol(unit);
}

} // namespace core
