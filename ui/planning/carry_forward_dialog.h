#pragma once

#include "core/plan/lay_out.h"
#include "ui/look/form_dialog.h"
#include "ui/planning/plan_source.h"

#include <QString>
#include <functional>
#include <map>

class QComboBox;

class QPushButton;
class QSpinBox;
class QTableWidget;
class QTableWidgetItem;

namespace ui {

class FieldNote;
class RuleEditor;
class WhatIfView;

/// Carries a week forward by a rule: choose it, look at the weeks that come of it, change rows, and
/// only then lay them out.
class CarryForwardDialog : public FormDialog
{
    Q_OBJECT

public:
    CarryForwardDialog(PlanSource source, QDate monday, std::function<core::CardId()> newId,
        QWidget *parent = nullptr);

    [[nodiscard]] core::Edit edit() const;
    [[nodiscard]] const std::vector<core::Card> &rows() const { return m_rows; }

private:
    void preview();
    void fillRow(int row);
    void takeSets(QTableWidgetItem *item);
    void compare();

    PlanSource m_source;
    QDate m_monday;
    std::function<core::CardId()> m_newId;
    std::vector<core::Card> m_week;   ///< what is carried
    std::vector<core::Card> m_rows;   ///< what comes of it, as edited
    std::map<int, QString> m_refused; ///< edited rows that cannot be laid out, and why
    RuleEditor *m_rule;
    QSpinBox *m_weeks;
    QComboBox *m_occupied;
    FieldNote *m_remarks;
    QTableWidget *m_table;
    WhatIfView *m_whatIf;
    QPushButton *m_take;
};

} // namespace ui
