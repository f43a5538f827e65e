#include "ui/charts/thin.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace ui {

namespace {

/// The lowest and the highest of [first, last), in their order; one where they are the same.
template <class It> void appendExtremes(It first, It last, QList<QPointF> &out)
{
    if (last - first <= 2) {
        std::copy(first, last, std::back_inserter(out));
        return;
    }
    auto [low, high] = std::minmax_element(
        first, last, [](const QPointF &a, const QPointF &b) { return a.y() < b.y(); });
    if (high < low)
        std::swap(low, high);
    out.append(*low);
    if (high != low)
        out.append(*high);
}

} // namespace

QList<QPointF> thinLine(const QList<QPointF> &points, const TimeSpan &span, int columns)
{
    const auto before = [](const QPointF &p, double x) { return p.x() < x; };
    const auto after = [](double x, const QPointF &p) { return x < p.x(); };
    auto first = std::lower_bound(points.begin(), points.end(), span.from, before);
    auto last = std::upper_bound(first, points.end(), span.to, after);

    QList<QPointF> out;
    if (first != points.begin())
        out.append(*(first - 1));
    const double perColumn = span.days() / columns;
    const auto columnOf = [&](const QPointF &p) {
        return std::floor((p.x() - span.from) / perColumn);
    };
    for (auto column = first; column != last;) {
        const double number = columnOf(*column);
        const auto end =
            std::find_if(column, last, [&](const QPointF &p) { return columnOf(p) != number; });
        appendExtremes(column, end, out);
        column = end;
    }
    if (last != points.end())
        out.append(*last);
    return out;
}

std::vector<int> thinMarks(
    const std::vector<QPointF> &pixels, double width, double height, double cell)
{
    const qint64 across = qint64(width / cell) + 1;
    std::unordered_map<qint64, int> lastOf;
    for (int i = 0; i < int(pixels.size()); ++i) {
        const QPointF &p = pixels[size_t(i)];
        if (p.x() < 0.0 || p.y() < 0.0 || p.x() > width || p.y() > height)
            continue;
        lastOf[qint64(p.y() / cell) * across + qint64(p.x() / cell)] = i;
    }
    std::vector<int> kept;
    kept.reserve(lastOf.size());
    for (const auto &[place, index] : lastOf)
        kept.push_back(index);
    std::sort(kept.begin(), kept.end());
    return kept;
}

std::optional<int> nearestPoint(const std::vector<QPointF> &points, const QPointF &at, double reach)
{
    std::optional<int> best;
    double least = reach * reach;
    for (int i = 0; i < int(points.size()); ++i) {
        const QPointF away = points[size_t(i)] - at;
        if (const double d = QPointF::dotProduct(away, away); d <= least) {
            least = d;
            best = i;
        }
    }
    return best;
}

std::optional<int> nearestInTime(const std::vector<QPointF> &points, double x)
{
    if (points.empty())
        return std::nullopt;
    const auto best =
        std::min_element(points.begin(), points.end(), [x](const QPointF &a, const QPointF &b) {
            return std::abs(a.x() - x) < std::abs(b.x() - x);
        });
    return int(best - points.begin());
}

} // namespace ui
