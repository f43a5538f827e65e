#include "core/exchange/returns.h"

#include "core/exchange/read_file.h"

#include <QBuffer>

namespace core {

JudgedReturns judgeReturns(
    std::vector<ReturnSheet> sheets, const RosterReader &roster, const Watch &watch)
{
    ReturnBasis basis = basisFor(sheets, roster, watch.part(0.0, 0.5));
    std::vector<SheetReview> reviews = reviewReturns(sheets, basis, watch.part(0.5, 1.0));
    return {std::move(sheets), std::move(reviews), std::move(basis)};
}

JudgedReturns readReturns(
    const QStringList &paths, QDate today, const RosterReader &roster, const Watch &watch)
{
    std::vector<ReturnSheet> sheets;
    QStringList seen;
    for (const QString &path : paths) {
        if (!watch.goesOn(0.5 * double(seen.size()) / double(paths.size())))
            return {};
        const QString whole = QFileInfo(path).absoluteFilePath();
        if (seen.contains(whole))
            continue;
        seen << whole;
        ReturnSheet sheet;
        if (auto contents = contentsOf(path, sheet)) {
            QBuffer device(&*contents);
            (void)device.open(QIODevice::ReadOnly);
            sheet = readReturnSheet(device, sheet.file, today);
        }
        sheets.push_back(std::move(sheet));
    }
    return judgeReturns(std::move(sheets), roster, watch.part(0.5, 1.0));
}

Edit acceptReturns(
    const JudgedReturns &returns, std::span<const size_t> accepted, const ReturnIds &ids)
{
    ReturnBooking booking(returns.basis);
    for (const size_t index : accepted)
        if (const SheetReview &review = returns.reviews[index]; review.isAcceptable())
            booking.book(returns.sheets[index], review.lifter, ids);
    return booking.edit();
}

} // namespace core
