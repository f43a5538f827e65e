#pragma once

#include "core/domain/block_template.h"
#include "core/domain/variation.h"
#include "ui/look/form_dialog.h"

#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;

namespace ui {

/// Under which name a block becomes a template, and which variations are swapped by touch style
/// when it is laid out. A name that is there already gets a further version.
class SaveTemplateDialog : public FormDialog
{
    Q_OBJECT

public:
    /// @param latest  last versions of the templates there are
    SaveTemplateDialog(const QString &name, std::vector<core::BlockTemplate> latest,
        const std::vector<core::Variation> &catalogue, QWidget *parent = nullptr);

    [[nodiscard]] QString name() const;
    /// The template of that name; null for a new one.
    [[nodiscard]] const core::BlockTemplate *earlier() const;
    [[nodiscard]] std::vector<core::TouchSwap> swaps() const;

private:
    void explain();

    std::vector<core::BlockTemplate> m_latest;
    std::vector<core::TouchSwap> m_offered;
    QComboBox *m_name;
    QLabel *m_words;
    std::vector<QCheckBox *> m_swaps;
    QPushButton *m_take;
};

} // namespace ui
