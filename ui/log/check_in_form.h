#pragma once

#include "core/domain/check_in.h"

#include <QWidget>
#include <map>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;

namespace ui {

class FieldNote;
class ScaleField;

/// What the lifter says before training. Each answer is given on as it is made; words are given on
/// when their field is left, and before another day or lifter is shown.
class CheckInForm : public QWidget
{
    Q_OBJECT

public:
    explicit CheckInForm(QWidget *parent = nullptr);

    /// Shows what was said; a draft of the one before is given on first.
    void setCheckIn(const core::CheckIn &checkIn);
    /// What was said last could not be stored: it stays, and is given on again with the next
    /// answer.
    void keepUnsaved(const core::CheckIn &stored);

Q_SIGNALS:
    /// A sound one, with the lifter and the day it is about; it may be blank again.
    void said(const core::CheckIn &checkIn);

protected:
    void hideEvent(QHideEvent *event) override;

private:
    [[nodiscard]] core::CheckIn typed() const;
    void give();
    /// The same before the form turns to something else.
    void giveUntold();
    void showPain();

    core::CheckIn m_shown; ///< as set or given last
    ScaleField *m_sleep;
    ScaleField *m_stress;
    ScaleField *m_motivation;
    std::map<core::BodyArea, ScaleField *> m_soreness;
    QCheckBox *m_pain;
    QComboBox *m_area;
    QLineEdit *m_painWords;
    QLineEdit *m_note;
    FieldNote *m_stop;
    FieldNote *m_problem;
    QLabel *m_readiness;
};

} // namespace ui
