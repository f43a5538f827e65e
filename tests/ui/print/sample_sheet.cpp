#include "tests/ui/print/sample_sheet.h"

namespace sample {

core::WeekSheet sheet(int days, int cards, int sets)
{
    core::WeekSheet sheet;
    sheet.lifter = QStringLiteral("Ada Example");
    sheet.week = QStringLiteral("4 May to 10 May 2026");
    sheet.facts = {QStringLiteral("soft touch"), QStringLiteral("bar 20 kg")};
    sheet.unit = QStringLiteral("kg");
    sheet.scales = {QStringLiteral("RPE: 10 = no rep left."), QStringLiteral("Touch: 1 to 5.")};
    sheet.cautions = {QStringLiteral("Use a spotter, or safeties set just below the chest."),
        QStringLiteral("Stop at sharp pain.")};
    for (int d = 0; d < days; ++d) {
        core::SheetDay day{QStringLiteral("Wednesday %1 September").arg(20 + d), {}, {}};
        for (int c = 0; c < cards; ++c) {
            core::SheetCard card;
            card.variation = QStringLiteral("Off-chest pause bench");
            card.setLine = QStringLiteral("%1x3 @8").arg(sets);
            card.tempo = QStringLiteral("2-count pause");
            card.purpose =
                QStringLiteral("Pause with the bar as near the chest as possible without touching");
            for (int s = 0; s < sets; ++s)
                card.sets.push_back({QStringLiteral("3"), QStringLiteral("@8"),
                    QStringLiteral("122.5"), QStringLiteral("2 x 25 + 1.25"), QStringLiteral("8")});
            day.cards.push_back(card);
        }
        sheet.days.push_back(day);
    }
    return sheet;
}

} // namespace sample
