#pragma once

#include "core/csv/catalogue_csv.h"
#include "core/exchange/hand_out.h"

/// A lifter with a planned week of the built-in catalogue, for the tests of hand-out and return.
/// Loads are written on the cards, so that no estimate is needed.
namespace tests {

inline const QDate kMonday(2024, 5, 6);

struct PlannedWeek
{
    PlannedWeek()
    {
        lifter.id = core::LifterId{7};
        lifter.name = QStringLiteral("Ada Example");
        lifter.gear = core::usualGear(lifter.unit);
        lifter.touchStyle = core::TouchStyle::soft;
        add(0, "comp", QStringLiteral("2x3 100kg"));
        add(0, "off_chest_pause", QStringLiteral("1x2 90kg"));
        add(2, "feet_up", QStringLiteral("1x5+ 80kg"));
    }

    void add(int day, const char *code, const QString &setLine)
    {
        core::Card card;
        card.id = core::CardId{qint64(cards.size()) + 1};
        card.lifter = lifter.id;
        card.day = kMonday.addDays(day);
        for (const core::Card &other : cards)
            card.position += other.day == card.day ? 1 : 0;
        for (const core::Variation &variation : catalogue)
            if (variation.code == QLatin1String(code))
                card.variation = variation.id;
        card.setLine = setLine;
        cards.push_back(card);
    }

    [[nodiscard]] core::WeekSheet sheet() const
    {
        return core::weekSheet(lifter, kMonday,
            core::resolveCards(
                cards, {lifter, catalogue, [](core::Lift) { return nullptr; }, checkIns, {}, {}}),
            catalogue, stops);
    }

    [[nodiscard]] QJsonObject data() const
    {
        return core::handOutData(lifter, sheet(), cards, catalogue);
    }

    core::Lifter lifter;
    std::vector<core::Variation> catalogue = core::builtInCatalogue();
    std::vector<core::Card> cards;
    std::vector<core::CheckIn> checkIns;
    std::vector<core::StopNote> stops;
};

} // namespace tests
