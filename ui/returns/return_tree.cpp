#include "ui/returns/return_tree.h"

#include "core/domain/language.h"
#include "core/exchange/return_words.h"
#include "ui/look/colours.h"
#include "ui/look/metrics.h"
#include "ui/look/roomy_delegate.h"
#include "ui/returns/return_files.h"

#include <QEvent>
#include <QHeaderView>
#include <algorithm>
#include <utility>

namespace ui {

namespace {

constexpr int kIndexRole = Qt::UserRole;
constexpr size_t kShownProblems = 20;

QString dayWords(QDate day)
{
    return core::dateWords(day, QStringLiteral("dddd d MMMM"));
}

} // namespace

ReturnTree::ReturnTree(QWidget *parent)
    : QTreeWidget(parent)
{
    setHeaderLabels({tr("Lifter, day and lift"), tr("Planned"), tr("Done"), tr("Differs")});
    setAccessibleName(tr("Return sheets"));
    setItemDelegate(new RoomyDelegate(this));
    setWordWrap(true);
    setUniformRowHeights(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    header()->setSectionsMovable(false);
    header()->setStretchLastSection(true);
    header()->resizeSection(whatColumn, 320);
    header()->resizeSection(plannedColumn, 130);
    header()->resizeSection(doneColumn, 230);
    connect(this, &QTreeWidget::itemChanged, this, &ReturnTree::acceptedChanged);
}

void ReturnTree::setReviews(const std::vector<core::SheetReview> &reviews)
{
    const QSignalBlocker quiet(this);
    const std::vector<size_t> ticked = accepted();
    const std::vector<core::SheetReview> before = std::exchange(m_reviews, reviews);
    clear();
    for (const size_t index : readingOrder(m_reviews)) {
        const core::SheetReview &review = m_reviews[index];
        const bool wasShown = index < before.size() && before[index].file == review.file
            && before[index].standing == review.standing;
        addSheet(review, index,
            wasShown ? std::binary_search(ticked.begin(), ticked.end(), index)
                     : review.standing == core::SheetStanding::ready);
    }
    fitWords();
    if (topLevelItemCount() > 0)
        setCurrentItem(topLevelItem(0));
}

std::vector<size_t> ReturnTree::accepted() const
{
    std::vector<size_t> indexes;
    for (int i = 0; i < topLevelItemCount(); ++i)
        if (topLevelItem(i)->data(whatColumn, Qt::CheckStateRole).toInt() == Qt::Checked)
            indexes.push_back(topLevelItem(i)->data(whatColumn, kIndexRole).toULongLong());
    std::sort(indexes.begin(), indexes.end());
    return indexes;
}

void ReturnTree::addSheet(const core::SheetReview &review, size_t index, bool isTicked)
{
    auto *sheet = new QTreeWidgetItem(this);
    QString title = review.name.isEmpty() ? review.file : review.name;
    if (review.monday.isValid())
        title = tr("%1, week of %2")
                    .arg(title, core::dateWords(review.monday, QStringLiteral("d MMMM")));
    sheet->setText(whatColumn, title);
    sheet->setToolTip(whatColumn, review.file);
    sheet->setData(whatColumn, kIndexRole, qulonglong(index));
    sheet->setFont(whatColumn, ui::font(Type::strong, font()));
    sheet->setText(plannedColumn, core::words(review.standing));
    if (review.isAcceptable()) {
        sheet->setFlags(sheet->flags() | Qt::ItemIsUserCheckable);
        sheet->setCheckState(whatColumn, isTicked ? Qt::Checked : Qt::Unchecked);
        sheet->setText(doneColumn, tr("new sets: %1").arg(review.newSets));
    }
    if (review.hasPain)
        sheet->setText(differenceColumn, tr("says pain"));
    for (const core::DayReview &day : review.days)
        if (!day.pain.isEmpty())
            markDanger(addWords(sheet,
                tr("PAIN on %1: %2. Stop what hurts and talk to the lifter before any load goes "
                   "up; pain that stays is for a doctor or physiotherapist.")
                    .arg(dayWords(day.plannedDay), day.pain)));
    for (const QString &notice : review.notices)
        markCaution(addWords(sheet, notice));
    size_t shown = 0;
    for (const core::Problem &problem : review.problems.items())
        if (shown++ < kShownProblems)
            markDanger(addWords(sheet, core::oneLine(problem)));
    for (const core::DayReview &day : review.days)
        addDay(sheet, day);
    sheet->setExpanded(review.standing != core::SheetStanding::nothingNew);
}

void ReturnTree::addDay(QTreeWidgetItem *sheet, const core::DayReview &day)
{
    auto *item = new QTreeWidgetItem(sheet);
    item->setText(whatColumn, dayWords(day.plannedDay));
    const bool isUntouched = std::all_of(day.sets.begin(), day.sets.end(),
        [](const core::SetReview &set) { return set.outcome == core::SetOutcome::open; });
    if (isUntouched && !day.sets.empty())
        item->setText(doneColumn, tr("no entry yet"));
    else if (day.day.isValid() && day.day != day.plannedDay)
        item->setText(doneColumn, tr("on %1").arg(dayWords(day.day)));
    item->setText(differenceColumn, day.checkIn.join(QStringLiteral(", ")));
    if (!isUntouched)
        for (const core::SetReview &set : day.sets)
            addSet(item, set);
    item->setExpanded(true);
}

void ReturnTree::addSet(QTreeWidgetItem *day, const core::SetReview &set)
{
    auto *item = new QTreeWidgetItem(day);
    item->setText(whatColumn, set.variation);
    item->setText(plannedColumn, set.planned);
    item->setText(doneColumn, set.done);
    QString differences = set.outcome == core::SetOutcome::asPlanned
        ? tr("as planned")
        : set.differences.join(QStringLiteral(", "));
    if (!set.note.isEmpty())
        differences += QStringLiteral("\n") + tr("Note: %1").arg(set.note);
    item->setText(differenceColumn, differences);
    if (set.outcome == core::SetOutcome::missed)
        markCaution(item);
    else if (set.outcome == core::SetOutcome::asPlanned)
        item->setForeground(differenceColumn, colours(palette()).goodText);
}

QTreeWidgetItem *ReturnTree::addWords(QTreeWidgetItem *parent, const QString &words)
{
    auto *item = new QTreeWidgetItem(parent);
    item->setText(whatColumn, words);
    item->setFirstColumnSpanned(true);
    return item;
}

void ReturnTree::markDanger(QTreeWidgetItem *item)
{
    for (int column = 0; column < columns; ++column) {
        item->setBackground(column, colours(palette()).dangerGround);
        item->setForeground(column, colours(palette()).dangerText);
    }
    item->setFont(whatColumn, ui::font(Type::strong, font()));
}

void ReturnTree::markCaution(QTreeWidgetItem *item)
{
    for (int column = 0; column < columns; ++column) {
        item->setBackground(column, colours(palette()).cautionGround);
        item->setForeground(column, colours(palette()).cautionText);
    }
}

void ReturnTree::fitWords()
{
    const int room = viewport()->width() - 2 * indentation() - 2 * space::gap;
    for (int i = 0; i < topLevelItemCount(); ++i)
        for (int j = 0; j < topLevelItem(i)->childCount(); ++j) {
            QTreeWidgetItem *item = topLevelItem(i)->child(j);
            if (!item->isFirstColumnSpanned())
                continue;
            const QVariant own = item->data(whatColumn, Qt::FontRole);
            const QFontMetrics metrics(own.isValid() ? own.value<QFont>() : font());
            const QRect words = metrics.boundingRect(
                QRect(0, 0, std::max(room, 1), 10'000), Qt::TextWordWrap, item->text(whatColumn));
            item->setSizeHint(whatColumn, QSize(0, words.height() + 2 * space::gap));
        }
}

void ReturnTree::resizeEvent(QResizeEvent *event)
{
    QTreeWidget::resizeEvent(event);
    const QSignalBlocker quiet(this);
    fitWords();
}

void ReturnTree::changeEvent(QEvent *event)
{
    QTreeWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && !m_reviews.empty())
        setReviews(std::vector(m_reviews));
}

} // namespace ui
