#include "ui/look/form_parts.h"

#include "ui/look/metrics.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QShortcut>
#include <QToolButton>
#include <QUrl>

namespace ui {

QWidget *withNotes(QWidget *field, std::initializer_list<QWidget *> notes)
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::hair);
    column->addWidget(field);
    for (QWidget *note : notes)
        column->addWidget(note);
    return box;
}

QWidget *inRow(std::initializer_list<QWidget *> widgets)
{
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    for (QWidget *widget : widgets)
        row->addWidget(widget);
    row->addStretch();
    return box;
}

void addRow(QFormLayout *form, const QString &text, QWidget *buddy, QWidget *field)
{
    auto *label = new QLabel(text);
    label->setBuddy(buddy);
    label->setMinimumHeight(space::field);
    // An underlined mnemonic breaks the kerning that the size hint counts on.
    label->setMinimumWidth(label->sizeHint().width() + space::tight);
    form->addRow(label, field);
}

QLabel *heading(const QString &text)
{
    auto *label = new QLabel(text);
    label->setFont(font(Type::strong, label->font()));
    return label;
}

QLabel *plainWords(const QString &text)
{
    auto *label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QLabel *paragraph(const QString &text)
{
    auto *label = new QLabel(text);
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

QStringList localPaths(const QMimeData &mime)
{
    QStringList paths;
    for (const QUrl &url : mime.urls())
        if (url.isLocalFile())
            paths << url.toLocalFile();
    return paths;
}

QToolButton *turnButton(const QString &text, const QString &name, const QKeySequence &keys,
    QWidget *header, const std::function<void()> &turn)
{
    auto *button = new QToolButton(header);
    button->setText(text);
    button->setAccessibleName(name);
    button->setToolTip(
        QStringLiteral("%1 (%2)").arg(name, keys.toString(QKeySequence::NativeText)));
    QObject::connect(button, &QToolButton::clicked, header, turn);
    auto *shortcut = new QShortcut(keys, header->parentWidget());
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    QObject::connect(shortcut, &QShortcut::activated, header, turn);
    return button;
}

} // namespace ui
