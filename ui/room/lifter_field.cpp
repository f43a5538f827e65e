#include "ui/room/lifter_field.h"

#include "core/domain/search_text.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QStringListModel>
#include <algorithm>

namespace ui {

LifterField::LifterField(std::function<Names()> offered, QWidget *parent)
    : QLineEdit(parent)
    , m_offered(std::move(offered))
    , m_names(new QStringListModel(this))
{
    auto *completer = new QCompleter(m_names, this);
    // What fits is found here, since a completer knows nothing of accents.
    completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    setCompleter(completer);
    connect(this, &QLineEdit::textEdited, this, [this](const QString &typed) {
        QStringList names;
        for (const auto &[id, name] : found(typed))
            names << name;
        m_names->setStringList(names);
    });
    // The completer writes the name into the field after it has told.
    connect(
        completer, qOverload<const QString &>(&QCompleter::activated), this,
        [this](const QString &name) { take(name); }, Qt::QueuedConnection);
}

LifterField::Names LifterField::found(const QString &typed) const
{
    Names found;
    const QString query = core::folded(typed);
    for (auto &lifter : m_offered())
        if (core::matchesWords(core::folded(lifter.second), query))
            found.push_back(std::move(lifter));
    return found;
}

void LifterField::take(const QString &typed)
{
    if (typed.trimmed().isEmpty())
        return; // taken already
    const Names fits = found(typed);
    if (fits.empty()) {
        Q_EMIT notFound(typed);
        return;
    }
    const auto same = std::ranges::find(fits, typed, &Names::value_type::second);
    const core::LifterId lifter = same == fits.end() ? fits.front().first : same->first;
    clear();
    m_names->setStringList({});
    Q_EMIT taken(lifter);
}

void LifterField::keyPressEvent(QKeyEvent *event)
{
    QAbstractItemView *offers = completer()->popup();
    // The list has a current row as soon as it has the focus, which nobody has chosen.
    const bool isChosen = offers->isVisible() && offers->selectionModel()->hasSelection();
    switch (event->key()) {
    case Qt::Key_Escape:
        offers->hide();
        if (text().isEmpty())
            Q_EMIT left();
        clear();
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (isChosen) {
            QLineEdit::keyPressEvent(event); // the completer takes it
            break;
        }
        offers->hide();
        take(text());
        break;
    default:
        QLineEdit::keyPressEvent(event);
    }
}

} // namespace ui
