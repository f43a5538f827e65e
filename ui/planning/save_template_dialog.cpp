#include "ui/planning/save_template_dialog.h"

#include "core/plan/touch_swap.h"
#include "ui/look/form_parts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QGroupBox>
#include <QPushButton>

namespace ui {

SaveTemplateDialog::SaveTemplateDialog(const QString &name, std::vector<core::BlockTemplate> latest,
    const std::vector<core::Variation> &catalogue, QWidget *parent)
    : FormDialog(parent)
    , m_latest(std::move(latest))
    , m_offered(core::usualTouchSwaps(catalogue))
    , m_name(new QComboBox)
    , m_words(plainWords())
{
    setWindowTitle(tr("Save the block as a template"));
    setMinimumWidth(460);
    m_name->setEditable(true);
    m_name->setAccessibleName(tr("Name of the template"));
    for (const core::BlockTemplate &each : m_latest)
        m_name->addItem(each.name);
    m_name->setEditText(name);

    auto *rules = new QGroupBox(tr("Swapped by touch style when it is laid out"));
    auto *list = new QVBoxLayout(rules);
    for (const core::TouchSwap &swap : m_offered) {
        auto *box = new QCheckBox(core::words(swap, catalogue));
        box->setChecked(true);
        list->addWidget(box);
        m_swaps.push_back(box);
    }
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Save | QDialogButtonBox::Cancel);
    m_take = buttons->button(QDialogButtonBox::Save);
    layOut(columnLayout({new QLabel(tr("Name")), m_name, m_words, rules, Stretch{1}}), buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_name, &QComboBox::editTextChanged, this, &SaveTemplateDialog::explain);
    explain();
}

QString SaveTemplateDialog::name() const
{
    return m_name->currentText().simplified();
}

const core::BlockTemplate *SaveTemplateDialog::earlier() const
{
    for (const core::BlockTemplate &each : m_latest)
        if (each.name == name())
            return &each;
    return nullptr;
}

std::vector<core::TouchSwap> SaveTemplateDialog::swaps() const
{
    std::vector<core::TouchSwap> chosen;
    for (size_t i = 0; i < m_offered.size(); ++i)
        if (m_swaps[i]->isChecked())
            chosen.push_back(m_offered[i]);
    return chosen;
}

void SaveTemplateDialog::explain()
{
    m_take->setEnabled(!name().isEmpty());
    if (const core::BlockTemplate *before = earlier())
        m_words->setText(tr("There is a template of this name: this becomes its version %1. Blocks "
                            "laid out by an earlier one stay as they are until it is laid on them "
                            "anew; what was changed for a lifter is kept then.")
                             .arg(before->version + 1));
    else
        m_words->setText(
            tr("A new template. It holds the cards of the block by day, not its loads: "
               "those come from each lifter's own estimate."));
}

} // namespace ui
