#pragma once

#include "ui/lifters/lifter_draft.h"
#include "ui/look/form_dialog.h"

class QCheckBox;
class QComboBox;
class QDialogButtonBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace ui {

class DateField;
class FieldNote;
class GearEditor;

/// Adds or edits one lifter. It changes nothing itself: keepBy() says what becomes of lifter().
class LifterEditor final : public FormDialog
{
    Q_OBJECT

public:
    /// @param before      the lifter to edit; one without a valid id is new
    /// @param otherNames  names that are taken
    LifterEditor(const core::Lifter &before, const QStringList &otherNames,
        const QStringList &groupsInUse, QDate today, QWidget *parent = nullptr);

    /// The lifter as typed; sound whenever the dialog was accepted.
    [[nodiscard]] const core::Lifter &lifter() const { return m_reading.lifter; }

    void accept() override;

private:
    [[nodiscard]] QWidget *personPage(const QStringList &groupsInUse);
    [[nodiscard]] QWidget *gearPage();
    void fill(const LifterDraft &draft);
    [[nodiscard]] LifterDraft draft() const;
    void check();
    [[nodiscard]] bool areDatesSound() const;
    void changeUnit();
    void takeUsual(core::Unit unit);

    core::Lifter m_before;
    QStringList m_otherNames;
    QDate m_today;
    LifterReading m_reading;
    core::Unit m_unit;    ///< that the weights on the screen are in
    bool m_hadBodyweight; ///< before anything was typed

    QLineEdit *m_name = nullptr;
    QComboBox *m_sex = nullptr;
    QLineEdit *m_birthYear = nullptr;
    QCheckBox *m_isAdult = nullptr;
    QCheckBox *m_knowsTraining = nullptr;
    DateField *m_trainingSince = nullptr;
    QLineEdit *m_bodyweight = nullptr;
    QComboBox *m_unitChoice = nullptr;
    QComboBox *m_touchStyle = nullptr;
    QLineEdit *m_gripNote = nullptr;
    QLineEdit *m_groups = nullptr;
    QCheckBox *m_hasMeet = nullptr;
    DateField *m_meetDate = nullptr;
    QPlainTextEdit *m_notes = nullptr;
    GearEditor *m_gear = nullptr;

    QLabel *m_bodyweightUnit = nullptr;
    FieldNote *m_nameProblem = nullptr;
    FieldNote *m_birthYearProblem = nullptr;
    FieldNote *m_ageCaution = nullptr;
    FieldNote *m_bodyweightProblem = nullptr;
    QDialogButtonBox *m_buttons = nullptr;
};

} // namespace ui
