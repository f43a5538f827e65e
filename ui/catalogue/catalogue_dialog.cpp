#include "ui/catalogue/catalogue_dialog.h"

#include "core/domain/catalogue_edits.h"
#include "ui/catalogue/variation_form.h"
#include "ui/look/colours.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"
#include "ui/look/touch_mark.h"
#include "ui/roster/open_roster.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QTreeWidget>
#include <algorithm>

namespace ui {

namespace {

constexpr int kIdRole = Qt::UserRole; ///< VariationId::value; none on a heading

core::VariationId idOf(const QTreeWidgetItem *item)
{
    return {item ? item->data(0, kIdRole).toLongLong() : 0};
}

} // namespace

CatalogueDialog::CatalogueDialog(OpenRoster &roster, QWidget *parent)
    : FormDialog(parent)
    , m_roster(roster)
    , m_before(roster.variations())
    , m_after(m_before)
    , m_tree(named("variations", new QTreeWidget))
    , m_form(new VariationForm)
    , m_retire(named("retire", new QPushButton))
    , m_elsewhere(new FieldNote(FieldNote::Kind::problem))
    , m_buttons(new QDialogButtonBox(QDialogButtonBox::Save | QDialogButtonBox::Cancel))
{
    setWindowTitle(tr("Variation catalogue"));
    m_tree->setAccessibleName(tr("Variations by lift"));
    m_tree->setHeaderHidden(true);
    m_tree->setRootIsDecorated(false);
    m_tree->setIndentation(space::group);
    auto *add = named("add", new QPushButton(tr("&Add a variation")));
    for (QPushButton *button : {add, m_retire})
        button->setAutoDefault(false);

    QLayout *left = columnLayout({{m_tree, 1}, rowLayout({add, m_retire})});
    layOut(columnLayout({{rowLayout({{left, 2}, {m_form, 3}}), 1}, m_elsewhere}), m_buttons,
        {960, 660});
    keepBy([this] {
        return m_roster.perform(tr("Edit the catalogue"), core::changeCatalogue(m_before, m_after));
    });

    connect(m_tree, &QTreeWidget::currentItemChanged, this, &CatalogueDialog::showChosen);
    connect(m_form, &VariationForm::edited, this, &CatalogueDialog::take);
    connect(add, &QPushButton::clicked, this, &CatalogueDialog::addVariation);
    connect(m_retire, &QPushButton::clicked, this, &CatalogueDialog::retireOrRestore);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    fillTree();
    choose(m_after.empty() ? core::VariationId{} : m_after.front().id);
    check();
}

void CatalogueDialog::fillTree()
{
    const QSignalBlocker quiet(m_tree);
    m_tree->clear();
    for (const core::Lift lift : {core::Lift::bench, core::Lift::squat, core::Lift::deadlift}) {
        auto *heading = new QTreeWidgetItem(m_tree, {core::words(lift)});
        heading->setFlags(Qt::ItemIsEnabled);
        heading->setFont(0, ui::font(Type::strong, m_tree->font()));
        for (const core::Variation &v : m_after)
            if (v.lift == lift) {
                auto *item = new QTreeWidgetItem(heading);
                item->setData(0, kIdRole, v.id.value);
                dressItem(item, v);
            }
    }
    m_tree->expandAll();
}

void CatalogueDialog::dressItem(QTreeWidgetItem *item, const core::Variation &variation)
{
    const QString name = variation.name.trimmed().isEmpty() ? tr("(no name)") : variation.name;
    item->setText(0, variation.retired ? tr("%1 (retired)").arg(name) : name);
    item->setIcon(0, touchMarkIcon(variation.serves, palette()));
    item->setToolTip(0, core::words(variation.serves));
    const Colours &c = colours(palette());
    item->setForeground(0, variation.retired ? c.mutedText : c.text);
}

core::Variation *CatalogueDialog::chosen()
{
    const core::VariationId id = idOf(m_tree->currentItem());
    const auto it = std::find_if(
        m_after.begin(), m_after.end(), [id](const core::Variation &v) { return v.id == id; });
    return it == m_after.end() ? nullptr : &*it;
}

QTreeWidgetItem *CatalogueDialog::itemOf(core::VariationId id) const
{
    for (int i = 0; i < m_tree->topLevelItemCount(); ++i)
        for (int j = 0; j < m_tree->topLevelItem(i)->childCount(); ++j)
            if (QTreeWidgetItem *item = m_tree->topLevelItem(i)->child(j); idOf(item) == id)
                return item;
    return nullptr;
}

void CatalogueDialog::choose(core::VariationId id)
{
    if (QTreeWidgetItem *item = itemOf(id)) {
        m_tree->setCurrentItem(item);
        m_tree->scrollToItem(item);
    }
}

void CatalogueDialog::showChosen()
{
    const core::Variation *v = chosen();
    m_form->setEnabled(v);
    m_retire->setEnabled(v && !v->competition);
    m_retire->setText(!v || !v->retired ? tr("&Retire") : tr("&Restore"));
    if (!v)
        return;
    const bool added = m_added.contains(v->id);
    if (added)
        m_retire->setText(tr("&Remove"));
    m_form->setVariation(*v, added);
    check();
}

void CatalogueDialog::take(core::Variation variation)
{
    core::Variation *kept = chosen();
    if (!kept)
        return;
    const bool added = m_added.contains(variation.id);
    if (added && variation.code != kept->code)
        m_ownCode.insert(variation.id);
    if (added && variation.name != kept->name && !m_ownCode.contains(variation.id)) {
        QStringList taken;
        for (const core::Variation &other : m_after)
            if (other.id != variation.id)
                taken << other.code;
        variation.code = core::codeFromName(variation.name, taken);
    }
    const bool moved = variation.lift != kept->lift;
    if (moved && variation.work == core::usualWork(kept->lift))
        variation.work = core::usualWork(variation.lift);
    *kept = variation;
    m_form->setVariation(variation, added);
    if (moved) {
        fillTree();
        choose(variation.id);
    } else {
        dressItem(m_tree->currentItem(), variation);
    }
    check();
}

void CatalogueDialog::addVariation()
{
    const core::Variation *near = chosen();
    core::Variation fresh;
    fresh.id = m_roster.newId<core::Variation>();
    fresh.lift = near ? near->lift : core::Lift::bench;
    fresh.name = tr("New variation");
    fresh.work = core::usualWork(fresh.lift);
    fresh.ratio = 0.95;
    fresh.ratioSource = tr("common practice, no source");
    QStringList taken;
    for (const core::Variation &other : m_after)
        taken << other.code;
    fresh.code = core::codeFromName(fresh.name, taken);
    m_after.push_back(fresh);
    m_added.insert(fresh.id);
    fillTree();
    choose(fresh.id);
    showChosen();
    m_form->focusName();
}

void CatalogueDialog::retireOrRestore()
{
    core::Variation *v = chosen();
    if (!v || v->competition)
        return;
    if (m_added.contains(v->id)) {
        const core::Lift lift = v->lift;
        m_added.remove(v->id);
        m_after.erase(m_after.begin() + (v - m_after.data()));
        fillTree();
        const auto near = std::find_if(m_after.begin(), m_after.end(),
            [lift](const core::Variation &other) { return other.lift == lift; });
        choose(near == m_after.end() ? core::VariationId{} : near->id);
    } else {
        v->retired = !v->retired;
        dressItem(m_tree->currentItem(), *v);
    }
    showChosen();
}

void CatalogueDialog::check()
{
    const core::Variation *shown = chosen();
    QString elsewhere;
    bool sound = true;
    for (const core::Variation &v : m_after) {
        const core::VariationProblems problems = core::variationProblems(v, m_after);
        if (shown && v.id == shown->id)
            m_form->setProblems(problems);
        else if (!problems.isEmpty())
            elsewhere = tr("%1: %2").arg(v.name, problems.first());
        sound = sound && problems.isEmpty();
    }
    m_elsewhere->say(elsewhere);
    m_buttons->button(QDialogButtonBox::Save)
        ->setEnabled(sound && !core::changeCatalogue(m_before, m_after).isEmpty());
}

bool CatalogueDialog::isTouched() const
{
    return !core::changeCatalogue(m_before, m_after).isEmpty();
}

} // namespace ui
