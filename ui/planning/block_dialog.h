#pragma once

#include "core/domain/block.h"
#include "ui/look/form_dialog.h"

#include <functional>

class QCheckBox;
class QGridLayout;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace ui {

class DateField;
class FieldNote;

/// A block's name, purpose, first day, weeks and deloads.
class BlockDialog : public FormDialog
{
    Q_OBJECT

public:
    /// Why the block cannot be taken, in words; empty when it can.
    using Check = std::function<QString(const core::Block &)>;

    BlockDialog(
        const QString &title, const core::Block &block, Check check, QWidget *parent = nullptr);

    [[nodiscard]] core::Block block() const;

private:
    void layWeeks();
    void validate();

    core::Block m_start;
    Check m_check;
    QLineEdit *m_name;
    QLineEdit *m_purpose;
    DateField *m_firstDay;
    QSpinBox *m_weeks;
    QGridLayout *m_deloadGrid;
    std::vector<QCheckBox *> m_deloads;
    FieldNote *m_note;
    QPushButton *m_take;
};

} // namespace ui
