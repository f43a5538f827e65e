#pragma once

#include "core/domain/variation.h"
#include "core/notation/set_entry_text.h"

#include <QWidget>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;

namespace ui {

class EntryField;
class FieldNote;
class KeepQuestion;
class LogDesk;

/// The set at hand: what it asks for, the field to type what was done, and what that would save.
class EntryPanel : public QWidget
{
    Q_OBJECT

public:
    explicit EntryPanel(LogDesk &desk, QWidget *parent = nullptr);

    /// @param whose  the lifter's name, where several are logged side by side
    void show(const std::vector<core::Variation> &catalogue, const QString &whose = {});
    using QWidget::show;

Q_SIGNALS:
    /// Left or Right in the empty field: to another lifter, where there are several.
    void sideways(int steps);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void fillVariations(const std::vector<core::Variation> &catalogue);
    [[nodiscard]] QString whatIsLeft() const;
    void preview();
    void refuse(const std::optional<core::EntryError> &error);

    LogDesk &m_desk;
    QLabel *m_title;
    QComboBox *m_variation;
    EntryField *m_field;
    FieldNote *m_preview;
    FieldNote *m_refusal;
    KeepQuestion *m_question;
    std::vector<core::VariationId> m_offered;
};

} // namespace ui
