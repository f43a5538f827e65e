#include "ui/lifters/lifter_list_panel.h"

#include "core/domain/lifter_edits.h"
#include "ui/lifters/lifter_delegate.h"
#include "ui/lifters/lifter_editor.h"
#include "ui/lifters/lifter_list_filter.h"
#include "ui/lifters/lifter_list_model.h"
#include "ui/lifters/lifter_search.h"
#include "ui/look/form_parts.h"
#include "ui/look/page_help.h"
#include "ui/roster/estimates.h"
#include "ui/roster/open_roster.h"
#include "ui/roster/selection.h"
#include "ui/roster/today.h"

#include <QCheckBox>
#include <QKeyEvent>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
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
    new HelpSection(
        tr("Lifter list"),
        [] {
            return HelpRows{
                keyRow({Qt::Key_Down, Qt::Key_Return}, tr("from the search into the list")),
                keyRow({Qt::Key_Return}, tr("edit the lifter chosen")),
                keyRow({Qt::Key_Escape}, tr("clear the search"))};
        },
        this);
    followLifters();
    showChosen();
}

void LifterListPanel::buildControls()
{
    m_search = new LifterSearch;

    m_list = named("lifters", new QListView);
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

    m_nothingWords = centredWords();
    m_clear = new QPushButton(tr("Show &all lifters"));
    m_nothing = new QWidget;
    m_nothing->setLayout(
        columnLayout({Stretch{}, m_nothingWords, {m_clear, 0, Qt::AlignHCenter}, Stretch{}}));

    m_stack = new QStackedWidget;
    m_stack->addWidget(m_list);
    m_stack->addWidget(m_nothing);

    m_showArchived = named("showArchived", new QCheckBox);
    m_add = named("add", new QPushButton(tr("&Add…")));
    m_edit = named("edit", new QPushButton(tr("E&dit…")));
    m_archive = named("archive", new QPushButton);
    fill(this,
        columnLayout(
            {m_search, {m_stack, 1}, m_showArchived, rowLayout({m_add, m_edit, m_archive})}),
        {space::gap, space::gap, space::tight, space::gap});
    setMinimumWidth(280);
}

template <class Change> void LifterListPanel::narrow(Change change)
{
    m_narrowing = true;
    change();
    m_narrowing = false;
    showChosen();
}

void LifterListPanel::connectControls()
{
    connect(m_search, &LifterSearch::queryChanged, this,
        [this](const LifterQuery &query) { narrow([&] { m_filter->setQuery(query); }); });
    connect(m_search, &LifterSearch::left, this, &LifterListPanel::enterList);
    connect(m_showArchived, &QCheckBox::toggled, this,
        [this](bool show) { narrow([&] { m_filter->setShowArchived(show); }); });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
        &LifterListPanel::chooseCurrent);
    connect(m_list, &QListView::activated, this, &LifterListPanel::editLifter);
    connect(m_list, &QListView::customContextMenuRequested, this, &LifterListPanel::contextMenu);
    connect(m_clear, &QPushButton::clicked, this, [this] {
        m_search->clear();
        m_list->setFocus();
    });
    connect(m_add, &QPushButton::clicked, this, &LifterListPanel::addLifter);
    connect(m_edit, &QPushButton::clicked, this, &LifterListPanel::editLifter);
    connect(m_archive, &QPushButton::clicked, this, &LifterListPanel::toggleArchived);
}

void LifterListPanel::followLifters()
{
    m_search->setGroups(groupsOf(m_roster.lifters()));
    chooseFirstIfNone();
    refreshFooter();
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
    // Without a letter of its own: the key of a slip would take a lifter away.
    m_archive->setText(chosen && chosen->archived ? tr("Restore") : tr("Archive"));

    m_search->setUsable(!lifters.empty());
    const bool nothing = m_filter->rowCount() == 0;
    m_stack->setCurrentWidget(nothing ? m_nothing : static_cast<QWidget *>(m_list));
    m_clear->setVisible(m_filter->isNarrowed());
    m_nothingWords->setText(m_filter->isNarrowed()
            ? tr("No lifter fits the search and the filters.")
            : archived > 0 ? tr("All lifters are archived.")
                           : tr("No lifters yet."));
}

void LifterListPanel::enterList()
{
    if (m_filter->rowCount() == 0)
        return;
    if (!m_list->currentIndex().isValid())
        m_list->setCurrentIndex(m_filter->index(0, 0));
    m_list->setFocus(Qt::TabFocusReason);
}

void LifterListPanel::chooseCurrent()
{
    if (m_narrowing)
        return;
    if (const QModelIndex current = m_list->currentIndex(); current.isValid())
        m_selection.setLifter(idOf(current));
    // Where something half typed keeps the lifter, the list goes back once the view has finished.
    QMetaObject::invokeMethod(this, &LifterListPanel::showChosen, Qt::QueuedConnection);
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
    m_search->focusWords();
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
    LifterEditor editor(fresh, names, groupsOf(m_roster.lifters()), m_roster.today().date(), this);
    const core::LifterId id = m_roster.newId<core::Lifter>();
    editor.keepBy([&] {
        core::Lifter added = editor.lifter();
        added.id = id;
        return m_roster.perform(tr("Add %1").arg(added.name), core::addLifter(added));
    });
    if (editor.exec() == QDialog::Accepted)
        m_selection.setLifter(id);
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
    LifterEditor editor(
        before, otherNames, groupsOf(m_roster.lifters()), m_roster.today().date(), this);
    editor.keepBy([&] {
        return m_roster.perform(
            tr("Edit %1").arg(before.name), core::changeLifter(before, editor.lifter()));
    });
    editor.exec();
}

void LifterListPanel::toggleArchived()
{
    const core::Lifter *chosen = m_roster.lifter(m_selection.lifter());
    if (!chosen)
        return;
    if (!m_roster.settle()) // the list goes on to another lifter
        return;
    const core::Lifter before = *chosen;
    const QString name =
        before.archived ? tr("Restore %1").arg(before.name) : tr("Archive %1").arg(before.name);
    if (m_roster.perform(name, core::setArchived(before, !before.archived)))
        Q_EMIT told(
            (before.archived ? tr("%1 is back from the archive. %2 takes that back.")
                             : tr("%1 is archived, with all that was planned and logged. %2 "
                                  "brings the lifter back."))
                .arg(before.name,
                    QKeySequence(QKeySequence::Undo).toString(QKeySequence::NativeText)));
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

bool LifterListPanel::eventFilter(QObject *watched, QEvent *event)
{
    if (watched != m_list || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent *>(event)->key();
    if (key != Qt::Key_Return && key != Qt::Key_Enter)
        return false;
    editLifter(); // not every platform's list activates on Enter
    return true;
}

} // namespace ui
