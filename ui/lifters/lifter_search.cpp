#include "ui/lifters/lifter_search.h"

#include "ui/look/form_parts.h"
#include "ui/look/touch_mark.h"

#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <algorithm>

namespace ui {

LifterSearch::LifterSearch(QWidget *parent)
    : QWidget(parent)
    , m_words(named("search", searchField(tr("Find a lifter"))))
    , m_groups(named("groups", new QComboBox))
    , m_styles(named("styles", new QComboBox))
{
    m_words->setPlaceholderText(tr("Find a lifter (Ctrl+F)"));
    m_words->setToolTip(tr("Looks in names, groups and notes; accents and case do not matter"));
    m_words->installEventFilter(this);

    m_groups->setAccessibleName(tr("Show the lifters of a group"));
    setGroups({});
    m_styles->setAccessibleName(tr("Show the lifters of a touch style"));
    m_styles->addItem(tr("any touch style"));
    for (const core::TouchStyle style :
        {core::TouchStyle::soft, core::TouchStyle::sinking, core::TouchStyle::undecided})
        m_styles->addItem(core::words(style), int(style));
    showMarks();

    fill(this, columnLayout({m_words, rowLayout({{m_groups, 1}, {m_styles, 1}})}));

    const auto tell = [this] { Q_EMIT queryChanged(query()); };
    connect(m_words, &QLineEdit::textChanged, this, tell);
    connect(m_groups, &QComboBox::currentIndexChanged, this, tell);
    connect(m_styles, &QComboBox::currentIndexChanged, this, tell);
}

LifterQuery LifterSearch::query() const
{
    LifterQuery query{m_words->text(), m_groups->currentData().toString(), {}};
    if (const QVariant style = m_styles->currentData(); style.isValid())
        query.style = core::TouchStyle(style.toInt());
    return query;
}

void LifterSearch::clear()
{
    m_words->clear();
    m_groups->setCurrentIndex(0);
    m_styles->setCurrentIndex(0);
}

void LifterSearch::setGroups(const QStringList &groups)
{
    QStringList shown;
    for (int i = 1; i < m_groups->count(); ++i)
        shown << m_groups->itemData(i).toString();
    if (m_groups->count() > 0 && shown == groups)
        return;
    const LifterQuery before = query();
    {
        const QSignalBlocker quiet(m_groups);
        m_groups->clear();
        m_groups->addItem(tr("any group"), QString());
        for (const QString &group : groups)
            m_groups->addItem(group, group);
        m_groups->setCurrentIndex(std::max(0, m_groups->findData(before.group)));
    }
    m_groups->setVisible(!groups.isEmpty());
    if (query() != before)
        Q_EMIT queryChanged(query());
}

void LifterSearch::setUsable(bool usable)
{
    m_words->setEnabled(usable);
    m_styles->setVisible(usable);
}

void LifterSearch::focusWords()
{
    m_words->setFocus(Qt::ShortcutFocusReason);
    m_words->selectAll();
}

void LifterSearch::showMarks()
{
    for (int i = 0; i < m_styles->count(); ++i)
        if (const QVariant style = m_styles->itemData(i); style.isValid())
            m_styles->setItemIcon(i, touchMarkIcon(core::TouchStyle(style.toInt()), palette()));
}

void LifterSearch::changeEvent(QEvent *event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        showMarks();
}

bool LifterSearch::eventFilter(QObject *watched, QEvent *event)
{
    if (watched != m_words || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    switch (static_cast<QKeyEvent *>(event)->key()) {
    case Qt::Key_Down:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT left();
        return true;
    case Qt::Key_Escape:
        if (m_words->text().isEmpty())
            return false;
        m_words->clear();
        return true;
    default:
        return false;
    }
}

} // namespace ui
