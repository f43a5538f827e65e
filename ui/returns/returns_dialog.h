#pragma once

#include "core/exchange/returns.h"
#include "ui/roster/roster_work.h"

#include <QDialog>
#include <QStringList>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace ui {

class FieldNote;
class ReturnTree;

/// What the lifters gave back: read and judged off the screen's thread, anew when the roster
/// changes meanwhile, shown beside the plan, accepted sheet by sheet. All that is accepted is one
/// undo step.
class ReturnsDialog : public QDialog
{
    Q_OBJECT

public:
    explicit ReturnsDialog(OpenRoster &roster, QWidget *parent = nullptr);
    ~ReturnsDialog() override;

    /// Adds sheets that were dropped or named to those that are shown.
    void offer(const QStringList &paths);

    [[nodiscard]] const std::vector<core::SheetReview> &reviews() const
    {
        return m_returns.reviews;
    }

public Q_SLOTS:
    void done(int result) override; ///< stops what runs

Q_SIGNALS:
    /// The sheets have been read and are on the screen.
    void reviewed();

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    [[nodiscard]] QWidget *makeBusyPage();
    void askForFiles();
    void read();
    void take(std::optional<core::JudgedReturns> returns);
    void acceptTicked();
    void refreshButton();

    OpenRoster &m_roster;
    RosterWork<core::JudgedReturns> m_reading;
    QStringList m_paths;
    core::JudgedReturns m_returns;

    QLabel *m_heading;
    FieldNote *m_pain;
    FieldNote *m_trouble;
    QStackedWidget *m_pages;
    ReturnTree *m_tree;
    QPushButton *m_accept = nullptr;
    bool m_performing = false; ///< the change that is told is its own
};

} // namespace ui
