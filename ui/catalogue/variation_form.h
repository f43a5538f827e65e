#pragma once

#include "core/domain/catalogue_edits.h"

#include <QScrollArea>

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;
class QSpinBox;

namespace ui {

class FieldNote;

/// Every field of one variation, with what it means.
class VariationForm final : public QScrollArea
{
    Q_OBJECT

public:
    explicit VariationForm(QWidget *parent = nullptr);

    /// @param isNew  whether the roster does not have it yet: then lift and code are open
    void setVariation(const core::Variation &variation, bool isNew);
    void setProblems(const core::VariationProblems &problems);
    void focusName();

Q_SIGNALS:
    void edited(const core::Variation &variation);

private:
    void buildIdentity(QFormLayout *form);
    void buildSets(QFormLayout *form);
    void buildLoad(QFormLayout *form);
    void buildUse(QFormLayout *form);
    void showOpenFields();
    void read();

    core::Variation m_variation;
    bool m_isNew = false;
    bool m_filling = false; ///< setVariation() is at work, not the coach

    QLineEdit *m_name = nullptr;
    QLineEdit *m_code = nullptr;
    QComboBox *m_lift = nullptr;
    QComboBox *m_serves = nullptr;
    QLineEdit *m_stance = nullptr;
    QLineEdit *m_purpose = nullptr;
    QSpinBox *m_lowering = nullptr;
    QSpinBox *m_pause = nullptr;
    QSpinBox *m_lifting = nullptr;
    QSpinBox *m_repsLow = nullptr;
    QSpinBox *m_repsHigh = nullptr;
    QDoubleSpinBox *m_ratio = nullptr;
    QDoubleSpinBox *m_spread = nullptr;
    QLineEdit *m_source = nullptr;
    QDoubleSpinBox *m_repCost = nullptr;
    QDoubleSpinBox *m_percent = nullptr; ///< at its least: loads go by effort
    QComboBox *m_fatigue = nullptr;
    QCheckBox *m_assistance = nullptr;
    std::vector<QComboBox *> m_work; ///< one a body area, in their order
    QPlainTextEdit *m_whenToUse = nullptr;
    QPlainTextEdit *m_cautions = nullptr;
    FieldNote *m_competition = nullptr;
    FieldNote *m_nameProblem = nullptr;
    FieldNote *m_codeProblem = nullptr;
    FieldNote *m_repsProblem = nullptr;
    FieldNote *m_otherProblem = nullptr;
};

} // namespace ui
