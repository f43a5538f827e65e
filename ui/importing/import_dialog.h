#pragma once

#include "core/exchange/import_files.h"
#include "ui/roster/roster_work.h"

#include <QDialog>

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace ui {

class FieldNote;
class FileField;
class ProblemModel;

/// Imports a training log, people or both: shows what an import would add, or every line that
/// stands in its way. All or nothing, and one undo step. Files are read and judged off the screen's
/// thread, anew when the roster changes meanwhile.
class ImportDialog : public QDialog
{
    Q_OBJECT

public:
    explicit ImportDialog(OpenRoster &roster, QWidget *parent = nullptr);
    ~ImportDialog() override;

    /// Takes files that were dropped or named, each in the place that its header asks for.
    void offer(const QStringList &paths);

    [[nodiscard]] core::ImportFiles files() const;
    /// The dry run, once it has ended.
    [[nodiscard]] bool isBusy() const { return m_reading.isRunning(); }
    [[nodiscard]] const core::ImportPlan &plan() const { return m_plan; }

public Q_SLOTS:
    void done(int result) override; ///< stops what runs

Q_SIGNALS:
    /// A dry run has ended and is on the screen.
    void planned();

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    [[nodiscard]] QWidget *makeInvitation();
    [[nodiscard]] QWidget *makeBusyPage();
    [[nodiscard]] QWidget *makeProblemPage();
    [[nodiscard]] QWidget *makeSummaryPage();
    void read();
    void readAgain();
    void take(std::optional<core::ImportPlan> plan);
    void present(const core::ImportPlan &plan);
    void performImport();
    void copyProblems();

    OpenRoster &m_roster;
    RosterWork<core::ImportPlan> m_reading;
    core::ImportPlan m_plan;

    FileField *m_log;
    FileField *m_people;
    FieldNote *m_note; ///< files that were offered and are no use
    QStackedWidget *m_pages;
    QLabel *m_problemHeading = nullptr;
    ProblemModel *m_problems = nullptr;
    QTableView *m_problemTable = nullptr;
    QLabel *m_summaryHeading = nullptr;
    QLabel *m_summary = nullptr;
    QPushButton *m_import = nullptr;
    bool m_performing = false; ///< the change that is told is its own
};

} // namespace ui
