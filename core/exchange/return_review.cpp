#include "core/exchange/return_review.h"

#include "core/domain/text.h"
#include "core/domain/week.h"
#include "core/exchange/plan_mark.h"
#include "core/exchange/return_booking.h"
#include "core/exchange/return_owner.h"
#include "core/exchange/return_words.h"

#include <algorithm>

namespace core {

namespace {

/// Ids for a dry run.
ReturnIds noIds()
{
    return {[] { return SessionId{}; }, [] { return CheckInId{}; }};
}

bool isSame(const ReturnSheet &a, const ReturnSheet &b)
{
    return a.lifterId == b.lifterId && a.lifter == b.lifter && a.monday == b.monday
        && a.mark == b.mark && a.sets == b.sets && a.checkIns == b.checkIns;
}

QString planNotice(const ReturnSheet &sheet, const Lifter &lifter, const ReturnBasis &basis)
{
    if (isMarkOf(sheet.mark, lifter.id, sheet.monday, basis.cards, basis.variations))
        return {};
    const bool isPlanned = std::ranges::any_of(basis.cards, [&](const Card &card) {
        return card.lifter == lifter.id && card.day >= sheet.monday
            && card.day < sheet.monday.addDays(kWeekDays);
    });
    return isPlanned
        ? Text::tr("The plan was changed after this hand-out was written: the lifter trained by an "
                   "earlier one.")
        : Text::tr("Nothing is planned for that week any more: the lifter trained by an earlier "
                   "plan.");
}

void judge(SheetReview &review, const ReturnSheet &sheet, const ReturnBasis &basis)
{
    const SheetOwner owner = ownerOf(sheet, basis);
    if (!owner.words.isEmpty())
        review.notices << owner.words;
    if (!owner.lifter) {
        review.standing = SheetStanding::refused;
        return;
    }
    review.lifter = owner.lifter->id;
    review.name = owner.lifter->name;
    if (owner.isCertain)
        if (const QString notice = planNotice(sheet, *owner.lifter, basis); !notice.isEmpty())
            review.notices << notice;
    review.days = dayReviews(sheet, *owner.lifter, basis.variations, basis.estimates);
    const bool isAnyFar = std::ranges::any_of(review.days,
        [](const DayReview &day) { return std::ranges::any_of(day.sets, &SetReview::isFarAbove); });
    if (isAnyFar)
        review.notices << Text::tr("A load is far above what the log speaks for: see that it is "
                                   "right before it goes into the log.");
    review.standing = review.notices.isEmpty() ? SheetStanding::ready : SheetStanding::byChoice;
}

SheetReview reviewOf(const ReturnSheet &sheet, const ReturnBasis &basis)
{
    SheetReview review;
    review.file = sheet.file;
    review.name = sheet.lifter;
    review.monday = sheet.monday;
    review.problems = sheet.problems;
    review.hasPain = std::ranges::any_of(
        sheet.checkIns, [](const CheckIn &said) { return said.pain.has_value(); });
    ReturnBooking booking(basis);
    review.problems.add(booking.unknownCodes(sheet));
    if (!review.problems.isEmpty()) {
        review.standing = SheetStanding::refused;
        return review;
    }
    judge(review, sheet, basis);
    if (review.standing == SheetStanding::refused)
        return review;
    const ReturnBooking::Counts counts = booking.book(sheet, review.lifter, noIds());
    review.newSets = counts.added;
    review.correctedSets = counts.corrected;
    review.knownSets = counts.known;
    if (booking.edit().isEmpty()) {
        review.standing = SheetStanding::nothingNew;
        review.notices.prepend(sheet.checkIns.empty() && review.knownSets == 0
                ? Text::tr("The sheet has no entry yet.")
                : Text::tr("All of this sheet is in the log already."));
    } else if (review.correctedSets > 0) {
        review.standing = SheetStanding::byChoice;
        review.notices << (review.correctedSets == 1
                ? Text::tr("The log has other values for one of these sets: the sheet corrects it.")
                : Text::tr(
                    "The log has other values for %1 of these sets: the sheet corrects them.")
                      .arg(review.correctedSets));
    }
    return review;
}

} // namespace

std::vector<SheetReview> reviewReturns(
    std::span<const ReturnSheet> sheets, const ReturnBasis &basis, const Watch &watch)
{
    std::vector<SheetReview> reviews;
    for (size_t i = 0; i < sheets.size(); ++i) {
        if (!watch.goesOn(double(i) / double(sheets.size())))
            break;
        SheetReview review = reviewOf(sheets[i], basis);
        for (size_t j = 0; j < i && review.isAcceptable(); ++j)
            if (reviews[j].isAcceptable() && isSame(sheets[j], sheets[i])) {
                review.standing = SheetStanding::nothingNew;
                review.notices = {Text::tr("It is the same sheet as %1.").arg(sheets[j].file)};
            }
        reviews.push_back(std::move(review));
    }
    return reviews;
}

} // namespace core
