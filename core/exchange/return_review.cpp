#include "core/exchange/return_review.h"

#include "core/domain/text.h"
#include "core/domain/week.h"
#include "core/exchange/plan_mark.h"
#include "core/exchange/return_match.h"
#include "core/exchange/return_words.h"

#include <algorithm>
#include <set>

namespace core {

namespace {

/// The roster as it becomes while one sheet after the other is booked.
class Booking
{
public:
    explicit Booking(const ReturnBasis &basis)
        : m_basis(basis)
        , m_sessions(basis.sessions)
        , m_checkIns(basis.checkIns)
    {
        for (const Variation &variation : basis.variations)
            m_idOf.emplace(variation.code, variation.id);
    }

    /// Problems that only the catalogue can tell: codes it does not have.
    [[nodiscard]] ProblemList unknownCodes(const ReturnSheet &sheet) const
    {
        ProblemList problems;
        for (const ReturnedSet &set : sheet.sets)
            if (set.state == ReturnedSet::State::done)
                for (const QString &code : {set.variation, set.leadVariation})
                    if (!code.isEmpty() && !m_idOf.contains(code))
                        problems.add({sheet.file, set.line, QStringLiteral("variation"),
                            Text::tr("The catalogue has no variation \"%1\".").arg(code.left(40)),
                            Text::tr("Add it to the catalogue, or ask the lifter what was done.")});
        return problems;
    }

    /// Books a sheet of this lifter. Counts go into `review`.
    void book(const ReturnSheet &sheet, LifterId lifter, const ReturnIds &ids, SheetReview &review)
    {
        std::map<QDate, std::vector<SetEntry>> told;
        for (const ReturnedSet &set : sheet.sets)
            if (set.state == ReturnedSet::State::done)
                told[set.day].push_back(entryOf(set, m_idOf));
        for (const auto &[day, sets] : told) {
            LoggedSession &session = sessionFor(lifter, day, sets, ids);
            SetsBooked booked = bookSets(session.sets, sets);
            review.newSets += booked.added;
            review.correctedSets += booked.corrected;
            review.knownSets += booked.known;
            session.sets = std::move(booked.sets);
        }
        for (const CheckIn &said : sheet.checkIns)
            book(said, lifter, ids);
    }

    /// Everything that was booked.
    [[nodiscard]] Edit edit() const
    {
        Edit edit;
        addChanges(m_basis.sessions, m_sessions, edit.sessions);
        addChanges(m_basis.checkIns, m_checkIns, edit.checkIns);
        return edit;
    }

private:
    /// The session of the day that has most of the sets, or a new one.
    LoggedSession &sessionFor(
        LifterId lifter, QDate day, const std::vector<SetEntry> &sets, const ReturnIds &ids)
    {
        LoggedSession *best = nullptr;
        int most = -1;
        for (LoggedSession &session : m_sessions) {
            if (session.lifter != lifter || session.day != day)
                continue;
            const SetsBooked tried = bookSets(session.sets, sets);
            if (tried.known > most) {
                most = tried.known;
                best = &session;
            }
        }
        if (best)
            return *best;
        return m_sessions.emplace_back(LoggedSession{ids.session(), lifter, day, 1, {}, {}});
    }

    void book(CheckIn said, LifterId lifter, const ReturnIds &ids)
    {
        for (CheckIn &known : m_checkIns)
            if (known.lifter == lifter && known.day == said.day) {
                known = merged(known, said);
                return;
            }
        said.id = ids.checkIn();
        said.lifter = lifter;
        m_checkIns.push_back(std::move(said));
    }

    /// Rows are only changed in place or appended.
    template <class Row> static void addChanges(
        const std::vector<Row> &before, const std::vector<Row> &after, RowChange<Row> &change)
    {
        for (size_t i = 0; i < after.size(); ++i) {
            if (i < before.size() && before[i] == after[i])
                continue;
            if (i < before.size())
                change.before.push_back(before[i]);
            change.after.push_back(after[i]);
        }
    }

    const ReturnBasis &m_basis;
    std::vector<LoggedSession> m_sessions;
    std::vector<CheckIn> m_checkIns;
    std::map<QString, VariationId> m_idOf;
};

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
    if (planMark(lifter.id, sheet.monday, basis.cards, basis.variations) == sheet.mark)
        return {};
    const bool isPlanned =
        std::any_of(basis.cards.begin(), basis.cards.end(), [&](const Card &card) {
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
    review.standing = review.notices.isEmpty() ? SheetStanding::ready : SheetStanding::byChoice;
    review.days = dayReviews(sheet, *owner.lifter, basis.variations);
}

SheetReview reviewOf(const ReturnSheet &sheet, const ReturnBasis &basis)
{
    SheetReview review;
    review.file = sheet.file;
    review.name = sheet.lifter;
    review.monday = sheet.monday;
    review.problems = sheet.problems;
    review.hasPain = std::any_of(sheet.checkIns.begin(), sheet.checkIns.end(),
        [](const CheckIn &said) { return said.pain.has_value(); });
    Booking booking(basis);
    review.problems.add(booking.unknownCodes(sheet));
    if (!review.problems.isEmpty()) {
        review.standing = SheetStanding::refused;
        return review;
    }
    judge(review, sheet, basis);
    if (review.standing == SheetStanding::refused)
        return review;
    booking.book(sheet, review.lifter, noIds(), review);
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

std::vector<QDate> weeksOf(std::span<const ReturnSheet> sheets)
{
    std::set<QDate> weeks;
    for (const ReturnSheet &sheet : sheets)
        if (sheet.monday.isValid())
            weeks.insert(sheet.monday);
    return {weeks.begin(), weeks.end()};
}

std::vector<SheetReview> reviewReturns(
    std::span<const ReturnSheet> sheets, const ReturnBasis &basis)
{
    std::vector<SheetReview> reviews;
    for (size_t i = 0; i < sheets.size(); ++i) {
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

Edit acceptReturns(
    std::span<const ReturnSheet> sheets, const ReturnBasis &basis, const ReturnIds &ids)
{
    Booking booking(basis);
    const std::vector<SheetReview> reviews = reviewReturns(sheets, basis);
    for (size_t i = 0; i < sheets.size(); ++i)
        if (SheetReview counted = reviews[i]; counted.isAcceptable())
            booking.book(sheets[i], counted.lifter, ids, counted);
    return booking.edit();
}

} // namespace core
