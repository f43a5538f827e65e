#include "ui/board/week_cards.h"

#include <algorithm>

namespace ui {

CardCounts WeekCards::counts() const
{
    CardCounts counts{};
    for (size_t day = 0; day < core::kWeekDays; ++day)
        counts[day] = int(days[day].size());
    return counts;
}

core::CardId WeekCards::at(BoardPlace place) const
{
    const std::vector<core::CardId> &cards = days[size_t(place.day)];
    return place.position < int(cards.size()) ? cards[size_t(place.position)] : core::CardId{};
}

std::optional<BoardPlace> WeekCards::placeOf(core::CardId card) const
{
    for (int day = 0; day < core::kWeekDays; ++day) {
        const std::vector<core::CardId> &cards = days[size_t(day)];
        const auto found = std::find(cards.begin(), cards.end(), card);
        if (found != cards.end())
            return BoardPlace{day, int(found - cards.begin())};
    }
    return std::nullopt;
}

BoardPlace WeekCards::nearest(BoardPlace place) const
{
    place.day = std::clamp(place.day, 0, core::kWeekDays - 1);
    place.position = std::clamp(place.position, 0, int(days[size_t(place.day)].size()));
    return place;
}

} // namespace ui
