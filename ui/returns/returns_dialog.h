#pragma once

#include "core/exchange/return_review.h"

#include <QDialog>
#include <QFutureWatcher>
#include <QStringList>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace ui {

class FieldNote;
class ReturnTree;
class OpenRoster;

/// What the lifters gave back: read off the screen's thread, shown beside the plan, accepted sheet
/// by sheet. All that is accepted is one undo step.
class ReturnsDialog : public QDialog
{
    Q_OBJECT

public:
    explicit ReturnsDialog(OpenRoster &roster, QWidget *parent = nullptr);
    ~ReturnsDialog() override;

    /// Adds sheets that were dropped or named to those that are shown.
    void offer(const QStringList &paths);

    [[nodiscard]] const std::vector<core::SheetReview> &reviews() const { return m_reviews; }

Q_SIGNALS:
    /// The sheets have been read and are on the screen.
    void reviewed();

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    void askForFiles();
    void review();
    void acceptTicked();
    void refreshButton();
    [[nodiscard]] std::vector<core::ReturnSheet> ticked() const;

    OpenRoster &m_roster;
    QFutureWatcher<std::vector<core::ReturnSheet>> m_reading;
    QStringList m_paths;
    std::vector<core::ReturnSheet> m_sheets;
    core::ReturnBasis m_basis;
    std::vector<core::SheetReview> m_reviews;

    QLabel *m_heading;
    FieldNote *m_pain;
    FieldNote *m_trouble;
    QStackedWidget *m_pages;
    ReturnTree *m_tree;
    QPushButton *m_accept = nullptr;
};

} // namespace ui
