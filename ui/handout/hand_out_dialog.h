#pragma once

#include "ui/handout/hand_out_who.h"
#include "ui/print/hand_out_batch.h"
#include "ui/roster/roster_work.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;

namespace ui {

class Estimates;
class DateField;
class FieldNote;
class Insights;
class Selection;

/// Writes the hand-outs of a week: for whom, which week, which kinds, into which folder. The plan
/// is read and the files are written off the screen's thread, with progress, and this can be
/// stopped between two lifters. What the plan checks stop is to be accepted first.
class HandOutDialog : public QDialog
{
    Q_OBJECT

public:
    HandOutDialog(OpenRoster &roster, Estimates &estimates, const Insights &insights,
        const Selection &selection, QWidget *parent = nullptr);
    ~HandOutDialog() override;

    void chooseFolder(const QString &folder);
    [[nodiscard]] bool isBusy() const { return m_writing.isRunning(); }

public Q_SLOTS:
    void reject() override; ///< while files are written: stops, and stays open to tell

Q_SIGNALS:
    /// The work has ended and its summary is on the screen.
    void written(const ui::HandOutSummary &summary);

private:
    void askForFolder();
    void start();
    /// The week of those lifters.
    void write(std::vector<core::LifterId> lifters);
    void finish(const std::optional<HandOutSummary> &summary);
    /// Has the coach accept them, as one step, and writes the week of all but those whose stops
    /// stand; nothing where the coach goes back.
    void askAbout(const std::vector<core::OpenStop> &stops);
    void refresh();
    [[nodiscard]] HandOutKinds kinds() const;
    /// All but what the roster holds.
    [[nodiscard]] HandOutBatch order() const;
    [[nodiscard]] QDate monday() const;

    OpenRoster &m_roster;
    Estimates &m_estimates;
    const Insights &m_insights;
    std::vector<HandOutWho> m_answers;
    RosterWork<HandOutSummary> m_writing;
    std::vector<core::LifterId> m_lifters; ///< of whom it writes
    QStringList m_stopped;                 ///< names of those left out

    QComboBox *m_who;
    DateField *m_week;
    QLabel *m_weekWords;
    QCheckBox *m_page;
    QCheckBox *m_pdf;
    QCheckBox *m_calendar;
    QCheckBox *m_anew;
    QLineEdit *m_folder;
    FieldNote *m_note;
    QProgressBar *m_progress;
    QLabel *m_summary;
    QPushButton *m_write = nullptr;
    QPushButton *m_close = nullptr;
};

} // namespace ui
