#pragma once

#include "core/exchange/return_review.h"

#include <QTreeWidget>
#include <vector>

namespace ui {

/// Return sheets by lifter and day, what was planned beside what was done. A sheet that can be
/// accepted has a box to tick; pain stands first and is marked.
class ReturnTree : public QTreeWidget
{
    Q_OBJECT

public:
    enum Column { whatColumn, plannedColumn, doneColumn, differenceColumn, columns };

    explicit ReturnTree(QWidget *parent = nullptr);

    /// What is ready gets a tick; a sheet that was shown and stands as it stood keeps its own.
    void setReviews(const std::vector<core::SheetReview> &reviews);
    /// Indexes of the reviews whose box is ticked, in their order.
    [[nodiscard]] std::vector<size_t> accepted() const;

Q_SIGNALS:
    void acceptedChanged();

protected:
    void changeEvent(QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void addSheet(const core::SheetReview &review, size_t index, bool isTicked);
    void addDay(QTreeWidgetItem *sheet, const core::DayReview &day);
    void addSet(QTreeWidgetItem *day, const core::SetReview &set);
    QTreeWidgetItem *addWords(QTreeWidgetItem *parent, const QString &words);
    void markDanger(QTreeWidgetItem *item);
    void markCaution(QTreeWidgetItem *item);
    /// Gives rows that run across all columns the height that their words need.
    void fitWords();

    std::vector<core::SheetReview> m_reviews;
};

} // namespace ui
