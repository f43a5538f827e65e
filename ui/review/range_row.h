#pragma once

#include "ui/charts/time_span.h"
#include "ui/review/choice_row.h"

namespace ui {

class TimeWindow;

/// Buttons for the last weeks, months or year of a window and for all of it. A button stays down
/// only while its range is what the window shows.
class RangeRow final : public ChoiceRow
{
    Q_OBJECT

public:
    explicit RangeRow(TimeWindow &window, QWidget *parent = nullptr);

    /// Gives the window its bounds; the range chosen is then shown of these.
    void setBounds(const TimeSpan &bounds);

private:
    void choose(int range);
    /// What a button shows.
    [[nodiscard]] TimeSpan spanOf(int range) const;
    void follow();

    TimeWindow &m_window;
    std::optional<int> m_range; ///< button that is down; none while another span is shown
};

} // namespace ui
