#pragma once

#include "core/plan/paste_cards.h"
#include "ui/planning/copied_day.h"

#include <QDialog>
#include <vector>

class QComboBox;
class QListWidget;
class QPlainTextEdit;
class QPushButton;

namespace ui {

class DateField;

class OpenRoster;

/// Pastes a copied day onto a day of many lifters at once: for whom, on which day, and what becomes
/// of the cards there. Says before it is done who does not get all of it, and why.
class PasteDayDialog : public QDialog
{
    Q_OBJECT

public:
    /// @param day       has rows
    /// @param onto      the day to begin with
    /// @param selected  ticked to begin with, unless the day is that lifter's own
    PasteDayDialog(OpenRoster &roster, CopiedDay day, QDate onto, core::LifterId selected,
        QWidget *parent = nullptr);

    void accept() override; ///< performs it as one step; stays open where that fails

private:
    void readDay();
    void tickGroup(int answer);
    void showWhatComes();
    [[nodiscard]] core::PastedCards pasted();

    OpenRoster &m_roster;
    CopiedDay m_day;
    std::vector<core::Card> m_cards; ///< of all lifters on the days concerned
    std::vector<core::CheckIn> m_checkIns;
    QComboBox *m_who;
    QListWidget *m_lifters;
    DateField *m_onto;
    QComboBox *m_occupied;
    QPlainTextEdit *m_remarks;
    QPushButton *m_paste;
};

} // namespace ui
