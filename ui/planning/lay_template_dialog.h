#pragma once

#include "core/domain/block_template.h"
#include "core/domain/edit.h"
#include "core/domain/lifter.h"
#include "ui/look/form_dialog.h"
#include "ui/planning/plan_source.h"

#include <set>
#include <vector>

class QComboBox;
class QLabel;
class QListWidget;
class QPlainTextEdit;
class QPushButton;

namespace ui {

class DateField;
class OpenRoster;
class WhatIfView;

/// Lays a template on one lifter or many at once, and says beforehand what it comes to for each:
/// swaps by touch style, differences that are kept, and who it cannot be laid on.
class LayTemplateDialog : public FormDialog
{
    Q_OBJECT

public:
    /// @param source  of the lifter who is marked to begin with, and for whom it says what the plan
    /// may bring
    LayTemplateDialog(
        OpenRoster &roster, PlanSource source, QDate monday, QWidget *parent = nullptr);

    /// For all lifters marked that it can be laid on: one step.
    [[nodiscard]] const core::Edit &edit() const { return m_edit; }
    [[nodiscard]] int lifterCount() const { return m_laid; }
    [[nodiscard]] QString templateName() const;
    [[nodiscard]] QDate firstDay() const;

    void mark(const std::set<core::LifterId> &lifters);

private:
    void markGroup(const QString &group);
    void preview();
    [[nodiscard]] const core::BlockTemplate *chosen() const;
    [[nodiscard]] std::set<core::LifterId> marked() const;

    OpenRoster &m_roster;
    PlanSource m_source;
    std::vector<core::BlockTemplate> m_latest;
    QComboBox *m_template;
    QLabel *m_about;
    DateField *m_firstDay;
    QComboBox *m_group;
    QListWidget *m_lifters;
    QPlainTextEdit *m_words;
    WhatIfView *m_whatIf;
    QPushButton *m_take;
    core::Edit m_edit;
    int m_laid = 0;
};

} // namespace ui
