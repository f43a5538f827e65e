#include "ui/returns/return_files.h"

#include "core/domain/storage_error.h"
#include "core/exchange/file_kind.h"
#include "ui/look/text.h"

#include <QFileInfo>
#include <algorithm>
#include <numeric>
#include <tuple>

namespace ui {

namespace {

using core::ReturnSheet;

ReturnSheet unreadable(const QString &name, const QString &why)
{
    core::ReturnSheet sheet;
    sheet.file = name;
    sheet.problems.add({name, 0, {}, Text::tr("The file cannot be read: %1.").arg(why),
        Text::tr("See that it is where it was and that you may read it.")});
    return sheet;
}

core::ReturnSheet readSheet(const QString &path, QDate today)
{
    const QString name = QFileInfo(path).fileName();
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return unreadable(name, file.errorString());
    try {
        return core::readReturnSheet(file, name, today);
    } catch (const core::StorageError &error) {
        return unreadable(name, error.detail());
    }
}

} // namespace

std::vector<core::ReturnSheet> readReturnSheets(const QStringList &paths, QDate today)
{
    std::vector<core::ReturnSheet> sheets;
    QStringList seen;
    for (const QString &path : paths) {
        const QString whole = QFileInfo(path).absoluteFilePath();
        if (seen.contains(whole))
            continue;
        seen << whole;
        sheets.push_back(readSheet(path, today));
    }
    return sheets;
}

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
