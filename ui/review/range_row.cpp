#include "ui/review/range_row.h"

#include "ui/charts/time_window.h"

namespace ui {

namespace {
constexpr double kRanges[] = {56.0, 183.0, 366.0}; ///< days: 8 weeks, 6 months, 1 year
constexpr int kAll = int(std::size(kRanges));
} // namespace

RangeRow::RangeRow(TimeWindow &window, QWidget *parent)
    : ChoiceRow(tr("Range"), {tr("8 weeks"), tr("6 months"), tr("1 year"), tr("All")}, parent)
    , m_window(window)
    , m_range(kAll)
{
    setChosen(m_range);
    connect(this, &ChoiceRow::chosen, this, &RangeRow::choose);
    connect(&window, &TimeWindow::spanChanged, this, &RangeRow::follow);
}

TimeSpan RangeRow::spanOf(int range) const
{
    return range < kAll ? lastDays(kRanges[range], m_window.bounds()) : m_window.bounds();
}

void RangeRow::choose(int range)
{
    m_range = range;
    m_window.show(spanOf(range));
    follow();
}

void RangeRow::setBounds(const TimeSpan &bounds)
{
    const std::optional<int> range = m_range;
    m_window.setBounds(bounds); // which may show another span, and so let the button up
    if (range)
        choose(*range);
    else
        follow();
}

void RangeRow::follow()
{
    if (m_range && m_window.span() != spanOf(*m_range))
        m_range.reset();
    setChosen(m_range);
}

} // namespace ui
