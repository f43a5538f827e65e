#pragma once

#include "core/domain/check_in.h"

#include <QWidget>
#include <map>

class QComboBox;
class QLabel;
class QLineEdit;

namespace ui {

class FieldNote;
class ScaleField;

/// What the lifter says before training. Each answer is given on as it is made; words are given on
/// when their field is left, or when they are asked for.
class CheckInForm : public QWidget
{
    Q_OBJECT

public:
    explicit CheckInForm(QWidget *parent = nullptr);

    /// Shows what was said. What is half told about another day or lifter is dropped: giveUntold()
    /// comes first.
    void setCheckIn(const core::CheckIn &checkIn);
    /// What was said last could not be stored: it stays, and is given on again with the next
    /// answer.
    void keepUnsaved(const core::CheckIn &stored);
    /// Gives on what is half told, since the form is about to turn to something else. False where
    /// it could not be stored, and stays.
    bool giveUntold();

Q_SIGNALS:
    /// A sound one, with the lifter and the day it is about; it may be blank again.
    void said(const core::CheckIn &checkIn);

private:
    [[nodiscard]] core::CheckIn typed() const;
    void give();
    void showPain();
    [[nodiscard]] bool hurts() const;
    /// Stands for what is not told yet of a pain.
    [[nodiscard]] static QString untold();

    core::CheckIn m_shown; ///< as set or given last; without its id, which is the roster's
    ScaleField *m_sleep;
    ScaleField *m_stress;
    ScaleField *m_motivation;
    std::map<core::BodyArea, ScaleField *> m_soreness;
    QComboBox *m_pain; ///< not asked, no, yes
    QComboBox *m_area;
    QLineEdit *m_painWords;
    QLineEdit *m_note;
    FieldNote *m_stop;
    FieldNote *m_problem;
    QLabel *m_readiness;
};

} // namespace ui
