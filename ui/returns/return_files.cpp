#include "ui/returns/return_files.h"

#include "core/exchange/file_kind.h"

#include <QFile>
#include <algorithm>
#include <numeric>
#include <tuple>

namespace ui {

QStringList returnSheetsAmong(const QStringList &paths)
{
    QStringList found;
    for (const QString &path : paths)
        if (QFile file(path);
            file.open(QIODevice::ReadOnly) && core::fileKind(file) == core::FileKind::returnSheet)
            found << path;
    return found;
}

std::vector<size_t> readingOrder(const std::vector<core::SheetReview> &reviews)
{
    std::vector<size_t> order(reviews.size());
    std::iota(order.begin(), order.end(), size_t(0));
    const auto rank = [&reviews](size_t i) {
        const core::SheetReview &review = reviews[i];
        return std::tuple(!review.hasPain, !review.isAcceptable(), review.name.toCaseFolded());
    };
    std::stable_sort(
        order.begin(), order.end(), [&rank](size_t a, size_t b) { return rank(a) < rank(b); });
    return order;
}

} // namespace ui
