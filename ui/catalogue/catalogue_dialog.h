#pragma once

#include "core/domain/variation.h"
#include "ui/look/form_dialog.h"

#include <QSet>
#include <vector>

class QDialogButtonBox;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace ui {

class FieldNote;
class OpenRoster;
class VariationForm;

/// The variation catalogue of the roster: edit, add, retire and restore. All changes of one visit
/// are one undo step, made when the coach saves.
class CatalogueDialog final : public FormDialog
{
    Q_OBJECT

public:
    explicit CatalogueDialog(OpenRoster &roster, QWidget *parent = nullptr);

    void choose(core::VariationId id);
    void addVariation();
    /// Retires the variation chosen, restores a retired one, takes back one that was just added.
    void retireOrRestore();

private:
    [[nodiscard]] bool isTouched() const override;
    void fillTree();
    void dressItem(QTreeWidgetItem *item, const core::Variation &variation);
    [[nodiscard]] core::Variation *chosen();
    [[nodiscard]] QTreeWidgetItem *itemOf(core::VariationId id) const;
    void showChosen();
    void take(core::Variation variation);
    void check();

    OpenRoster &m_roster;
    std::vector<core::Variation> m_before;
    std::vector<core::Variation> m_after;
    QSet<core::VariationId> m_added;
    QSet<core::VariationId> m_ownCode; ///< added ones whose code the coach has written

    QTreeWidget *m_tree;
    VariationForm *m_form;
    QPushButton *m_retire;
    FieldNote *m_elsewhere; ///< names a variation with a mistake that is not on the screen
    QDialogButtonBox *m_buttons;
};

} // namespace ui
