#pragma once

#include "core/domain/units.h"
#include "core/plan/progression.h"

#include <QWidget>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;

namespace ui {

/// Chooses a progression rule and its numbers.
class RuleEditor : public QWidget
{
    Q_OBJECT

public:
    /// @param unit  of the lifter, to begin with
    explicit RuleEditor(core::Unit unit, QWidget *parent = nullptr);

    [[nodiscard]] core::ProgressionRule rule() const;

Q_SIGNALS:
    void changed();

private:
    enum class Kind { addLoad, addReps, raiseRpe, dropSets, wave };

    [[nodiscard]] Kind kind() const;
    [[nodiscard]] core::LoadIn loadIn() const;
    void showFields();

    QComboBox *m_kind;
    QLabel *m_amountLabel;
    QDoubleSpinBox *m_amount;
    QComboBox *m_in;
    QLabel *m_boundLabel;
    QDoubleSpinBox *m_bound;
    QLabel *m_stepsLabel;
    QLineEdit *m_steps;
};

/// The numbers of "0, 2.5, 5" or "0; 2,5; 5"; empty when one cannot be read.
[[nodiscard]] std::vector<double> stepsOf(const QString &text);

} // namespace ui
