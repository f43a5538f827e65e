#include "ui/lifters/lifter_list_panel.h"

#include "core/domain/lifter_edits.h"
#include "ui/lifters/lifter_delegate.h"
#include "ui/lifters/lifter_editor.h"
#include "ui/lifters/lifter_list_filter.h"
#include "ui/lifters/lifter_list_model.h"
#include "ui/look/metrics.h"
#include "ui/look/touch_mark.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"

#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace ui {

namespace {

core::LifterId idOf(const QModelIndex &index)
{
    return {index.data(LifterListModel::IdRole).toLongLong()};
}

} // namespace

LifterListPanel::LifterListPanel(
    OpenRoster &roster, Estimates &estimates, Selection &selection, QWidget *parent)
    : QWidget(parent)
    , m_roster(roster)
    , m_selection(selection)
    , m_model(new LifterListModel(this))
    , m_filter(new LifterListFilter(this))
{
    m_model->follow(roster, estimates);
    m_filter->setSourceModel(m_model);
    buildControls();
    connectControls();
    connect(&roster, &OpenRoster::changed, this, [this](const core::RosterChange &change) {
        if (change.has<core::Lifter>())
            followLifters();
    });
    connect(&selection, &Selection::lifterChanged, this, &LifterListPanel::showChosen);
    followLifters();
}

void LifterListPanel::buildControls()
{
    m_search = new QLineEdit;
    m_search->setObjectName(QStringLiteral("search"));
    m_search->setPlaceholderText(tr("Find a lifter (Ctrl+F)"));
    m_search->setToolTip(tr("Looks in names, groups and notes; accents and case do not matter"));
    m_search->setAccessibleName(tr("Find a lifter"));
    m_search->setClearButtonEnabled(true);
    m_search->installEventFilter(this);

    m_groups = new QComboBox;
    m_groups->setObjectName(QStringLiteral("groups"));
    m_groups->setAccessibleName(tr("Show the lifters of a group"));
    m_styles = new QComboBox;
    m_styles->setObjectName(QStringLiteral("styles"));
    m_styles->setAccessibleName(tr("Show the lifters of a touch style"));
    m_styles->addItem(tr("any touch style"));
    for (const core::TouchStyle style :
        {core::TouchStyle::soft, core::TouchStyle::sinking, core::TouchStyle::undecided})
        m_styles->addItem(core::words(style), int(style));
    showMarks();
    auto *filters = new QHBoxLayout;
    filters->addWidget(m_groups, 1);
    filters->addWidget(m_styles, 1);

    m_list = new QListView;
    m_list->setObjectName(QStringLiteral("lifters"));
    m_list->setAccessibleName(tr("Lifters"));
    m_list->setModel(m_filter);
    m_list->setItemDelegate(new LifterDelegate(m_list));
    m_list->setUniformItemSizes(true);
    m_list->setMouseTracking(true);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->installEventFilter(this);

    m_nothingWords = new QLabel;
    m_nothingWords->setWordWrap(true);
    m_nothingWords->setAlignment(Qt::AlignCenter);
    m_clear = new QPushButton(tr("Show &all lifters"));
    m_nothing = new QWidget;
    auto *nothing = new QVBoxLayout(m_nothing);
    nothing->addStretch();
    nothing->addWidget(m_nothingWords);
    nothing->addWidget(m_clear, 0, Qt::AlignHCenter);
    nothing->addStretch();

    m_stack = new QStackedWidget;
    m_stack->addWidget(m_list);
    m_stack->addWidget(m_nothing);

    m_showArchived = new QCheckBox;
    m_showArchived->setObjectName(QStringLiteral("showArchived"));
    m_add = new QPushButton(tr("&Add…"));
    m_add->setObjectName(QStringLiteral("add"));
    m_edit = new QPushButton(tr("E&dit…"));
    m_edit->setObjectName(QStringLiteral("edit"));
    m_archive = new QPushButton;
    m_archive->setObjectName(QStringLiteral("archive"));
    auto *buttons = new QHBoxLayout;
    for (QPushButton *button : {m_add, m_edit, m_archive})
        buttons->addWidget(button);

    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(space::gap, space::gap, space::tight, space::gap);
    layout->addWidget(m_search);
    layout->addLayout(filters);
    layout->addWidget(m_stack, 1);
    layout->addWidget(m_showArchived);
    layout->addLayout(buttons);
    setMinimumWidth(280);
}

template <class Change> void LifterListPanel::narrow(Change change)
{
    m_narrowing = true;
    change();
    m_narrowing = false;
    showChosen();
    refreshFooter();
}

void LifterListPanel::connectControls()
{
    connect(m_search, &QLineEdit::textChanged, this,
        [this](const QString &text) { narrow([&] { m_filter->setQuery(text); }); });
    connect(m_groups, &QComboBox::currentIndexChanged, this,
        [this] { narrow([this] { m_filter->setGroup(m_groups->currentData().toString()); }); });
    connect(m_styles, &QComboBox::currentIndexChanged, this, [this] {
        const QVariant style = m_styles->currentData();
        narrow([&] {
            m_filter->setTouchStyle(style.isValid()
                    ? std::optional(static_cast<core::TouchStyle>(style.toInt()))
                    : std::nullopt);
        });
    });
    connect(m_showArchived, &QCheckBox::toggled, this,
        [this](bool show) { narrow([&] { m_filter->setShowArchived(show); }); });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
        &LifterListPanel::chooseCurrent);
    connect(m_list, &QListView::activated, this, &LifterListPanel::editLifter);
    connect(m_list, &QListView::customContextMenuRequested, this, &LifterListPanel::contextMenu);
    connect(m_clear, &QPushButton::clicked, this, &LifterListPanel::clearFilters);
    connect(m_add, &QPushButton::clicked, this, &LifterListPanel::addLifter);
    connect(m_edit, &QPushButton::clicked, this, &LifterListPanel::editLifter);
    connect(m_archive, &QPushButton::clicked, this, &LifterListPanel::toggleArchived);
}

void LifterListPanel::followLifters()
{
    refreshGroups();
    chooseFirstIfNone();
    refreshFooter();
}

void LifterListPanel::refreshGroups()
{
    QStringList groups = groupsOf(m_roster.lifters());
    groups.prepend(QString());
    QStringList shown;
    for (int i = 0; i < m_groups->count(); ++i)
        shown << m_groups->itemData(i).toString();
    if (shown == groups)
        return;
    const QString chosen = m_groups->currentData().toString();
    {
        const QSignalBlocker quiet(m_groups);
        m_groups->clear();
        for (const QString &group : groups)
            m_groups->addItem(group.isEmpty() ? tr("any group") : group, group);
    }
    m_groups->setCurrentIndex(std::max(0, m_groups->findData(chosen)));
    narrow([this] { m_filter->setGroup(m_groups->currentData().toString()); });
    m_groups->setVisible(groups.size() > 1);
}

void LifterListPanel::refreshFooter()
{
    const auto &lifters = m_roster.lifters();
    const auto archived = std::count_if(
        lifters.begin(), lifters.end(), [](const core::Lifter &l) { return l.archived; });
    m_showArchived->setText(tr("Show archi&ved (%1)").arg(archived));
    m_showArchived->setVisible(archived > 0);

    const core::Lifter *chosen = m_roster.lifter(m_selection.lifter());
    m_edit->setEnabled(chosen);
    m_archive->setEnabled(chosen);
    m_archive->setText(chosen && chosen->archived ? tr("&Restore") : tr("Ar&chive"));

    m_search->setEnabled(!lifters.empty());
    m_styles->setVisible(!lifters.empty());
    const bool nothing = m_filter->rowCount() == 0;
    m_stack->setCurrentWidget(nothing ? m_nothing : static_cast<QWidget *>(m_list));
    m_clear->setVisible(m_filter->isNarrowed());
    m_nothingWords->setText(m_filter->isNarrowed()
            ? tr("No lifter fits the search and the filters.")
            : archived > 0 ? tr("All lifters are archived.")
                           : tr("No lifters yet."));
}

void LifterListPanel::clearFilters()
{
    m_search->clear();
    m_groups->setCurrentIndex(0);
    m_styles->setCurrentIndex(0);
    m_list->setFocus();
}

void LifterListPanel::chooseCurrent()
{
    if (m_narrowing)
        return;
    if (const QModelIndex current = m_list->currentIndex(); current.isValid())
        m_selection.setLifter(idOf(current));
}

void LifterListPanel::showChosen()
{
    const QModelIndex row = m_filter->mapFromSource(m_model->indexOf(m_selection.lifter()));
    m_narrowing = true;
    if (row.isValid()) {
        m_list->setCurrentIndex(row);
        m_list->scrollTo(row);
    } else {
        m_list->clearSelection();
        m_list->selectionModel()->clearCurrentIndex();
    }
    m_narrowing = false;
    refreshFooter();
}

void LifterListPanel::chooseFirstIfNone()
{
    const core::Lifter *chosen = m_roster.lifter(m_selection.lifter());
    if (chosen && (!chosen->archived || m_showArchived->isChecked()))
        return;
    const QModelIndex next =
        m_list->currentIndex().isValid() ? m_list->currentIndex() : m_filter->index(0, 0);
    m_selection.setLifter(next.isValid() ? idOf(next) : core::LifterId{});
    showChosen();
}

void LifterListPanel::focusSearch()
{
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
}

void LifterListPanel::stepLifter(int step)
{
    const int rows = m_filter->rowCount();
    if (rows == 0)
        return;
    const QModelIndex current = m_list->currentIndex();
    const int row = current.isValid() ? std::clamp(current.row() + step, 0, rows - 1) : 0;
    m_list->setCurrentIndex(m_filter->index(row, 0));
}

void LifterListPanel::addLifter()
{
    core::Lifter fresh;
    fresh.gear = core::usualGear(fresh.unit);
    QStringList names;
    for (const core::Lifter &lifter : m_roster.lifters())
        names << lifter.name;
    LifterEditor editor(fresh, names, groupsOf(m_roster.lifters()), this);
    if (editor.exec() != QDialog::Accepted)
        return;
    core::Lifter added = editor.lifter();
    added.id = m_roster.newId<core::Lifter>();
    if (m_roster.perform(tr("Add %1").arg(added.name), core::addLifter(added)))
        m_selection.setLifter(added.id);
}

void LifterListPanel::editLifter()
{
    const core::Lifter *chosen = m_roster.lifter(m_selection.lifter());
    if (!chosen)
        return;
    const core::Lifter before = *chosen;
    QStringList otherNames;
    for (const core::Lifter &lifter : m_roster.lifters())
        if (lifter.id != before.id)
            otherNames << lifter.name;
    LifterEditor editor(before, otherNames, groupsOf(m_roster.lifters()), this);
    if (editor.exec() == QDialog::Accepted)
        m_roster.perform(
            tr("Edit %1").arg(before.name), core::changeLifter(before, editor.lifter()));
}

void LifterListPanel::toggleArchived()
{
    const core::Lifter *chosen = m_roster.lifter(m_selection.lifter());
    if (!chosen)
        return;
    m_roster.settle(); // the list goes on to another lifter
    const core::Lifter before = *chosen;
    const QString name =
        before.archived ? tr("Restore %1").arg(before.name) : tr("Archive %1").arg(before.name);
    m_roster.perform(name, core::setArchived(before, !before.archived));
}

void LifterListPanel::contextMenu(const QPoint &at)
{
    QMenu menu(this);
    menu.addAction(tr("&Add a lifter…"), this, &LifterListPanel::addLifter);
    if (m_list->indexAt(at).isValid()) {
        menu.addAction(m_edit->text(), this, &LifterListPanel::editLifter);
        menu.addAction(m_archive->text(), this, &LifterListPanel::toggleArchived);
    }
    menu.exec(m_list->viewport()->mapToGlobal(at));
}

void LifterListPanel::showMarks()
{
    for (int i = 0; i < m_styles->count(); ++i)
        if (const QVariant style = m_styles->itemData(i); style.isValid())
            m_styles->setItemIcon(
                i, touchMarkIcon(static_cast<core::TouchStyle>(style.toInt()), palette()));
}

void LifterListPanel::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && m_styles)
        showMarks();
}

bool LifterListPanel::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent *>(event)->key();
    if (watched == m_search
        && (key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter)
        && m_filter->rowCount() > 0) {
        if (!m_list->currentIndex().isValid())
            m_list->setCurrentIndex(m_filter->index(0, 0));
        m_list->setFocus(Qt::TabFocusReason);
        return true;
    }
    if (watched == m_search && key == Qt::Key_Escape && !m_search->text().isEmpty()) {
        m_search->clear();
        return true;
    }
    if (watched == m_list && (key == Qt::Key_Return || key == Qt::Key_Enter)) {
        editLifter(); // not every platform's list activates on Enter
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ui
