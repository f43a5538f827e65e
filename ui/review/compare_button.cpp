#include "ui/review/compare_button.h"

#include "core/domain/search_text.h"
#include "ui/look/field_note.h"
#include "ui/look/form_parts.h"

#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QSignalBlocker>
#include <QWidgetAction>
#include <algorithm>

namespace ui {

namespace {
constexpr int kListHeight = 280;
constexpr int kIdRole = Qt::UserRole;
} // namespace

CompareButton::CompareButton(int most, QWidget *parent)
    : QPushButton(parent)
    , m_most(most)
    , m_query(searchField(tr("Find a lifter")))
    , m_list(new QListWidget)
    , m_full(named("compareFull", new FieldNote(FieldNote::Kind::caution)))
{
    m_list->setFixedHeight(kListHeight);
    m_list->setAccessibleName(tr("Lifters to compare with"));
    auto *panel = new QWidget;
    panel->setLayout(columnLayout({m_query, m_list, m_full}));
    auto *menu = new QMenu(this);
    auto *action = new QWidgetAction(menu);
    action->setDefaultWidget(panel);
    menu->addAction(action);
    setMenu(menu);
    connect(menu, &QMenu::aboutToShow, m_query, [this] { m_query->setFocus(); });
    connect(m_query, &QLineEdit::textChanged, this, &CompareButton::narrow);
    connect(m_list, &QListWidget::itemChanged, this, &CompareButton::take);
    showState();
}

void CompareButton::setLifters(const std::vector<core::Lifter> &lifters)
{
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    std::vector<core::LifterId> still;
    for (const core::Lifter &lifter : lifters) {
        if (lifter.archived)
            continue;
        auto *item = new QListWidgetItem(lifter.name, m_list);
        item->setData(kIdRole, lifter.id.value);
        const bool chosen =
            std::find(m_chosen.begin(), m_chosen.end(), lifter.id) != m_chosen.end();
        item->setCheckState(chosen ? Qt::Checked : Qt::Unchecked);
        if (chosen)
            still.push_back(lifter.id);
    }
    m_chosen = still;
    m_list->sortItems();
    narrow(m_query->text());
    showState();
}

void CompareButton::narrow(const QString &query)
{
    const QString words = core::folded(query);
    for (int i = 0; i < m_list->count(); ++i)
        m_list->item(i)->setHidden(
            !core::matchesWords(core::folded(m_list->item(i)->text()), words));
}

void CompareButton::take(QListWidgetItem *item)
{
    const core::LifterId lifter{item->data(kIdRole).toLongLong()};
    std::erase(m_chosen, lifter);
    m_full->say({});
    if (item->checkState() == Qt::Checked) {
        if (int(m_chosen.size()) >= m_most) {
            const QSignalBlocker quiet(m_list);
            item->setCheckState(Qt::Unchecked);
            m_full->say(fullWords());
        } else {
            m_chosen.push_back(lifter);
        }
    }
    showState();
    Q_EMIT chosenChanged();
}

void CompareButton::showState()
{
    setText(m_chosen.empty() ? tr("Compare") : tr("Compare with %1").arg(m_chosen.size()));
    setToolTip(int(m_chosen.size()) < m_most
            ? tr("Draws the estimated max of up to %1 other lifters in the lower chart").arg(m_most)
            : fullWords());
}

QString CompareButton::fullWords() const
{
    return tr("%1 are the most that can be told apart: take one out to add another").arg(m_most);
}

} // namespace ui
