#include "ui/look/form_parts.h"

#include "ui/look/words_label.h"

#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QScrollArea>
#include <QShortcut>
#include <QTableView>
#include <QToolButton>
#include <QUrl>

namespace ui {

namespace {

template <class Box> Box *boxOf(std::initializer_list<Part> parts, int spacing)
{
    auto *box = new Box;
    box->setSpacing(spacing);
    for (const Part &part : parts)
        part.addTo(*box);
    return box;
}

} // namespace

Part::Part(QWidget *widget, int share, Qt::Alignment align)
    : m_add([=](QBoxLayout &box) { box.addWidget(widget, share, align); })
{
}

Part::Part(QLayout *layout, int share)
    : m_add([=](QBoxLayout &box) { box.addLayout(layout, share); })
{
}

Part::Part(int pixels)
    : m_add([=](QBoxLayout &box) { box.addSpacing(pixels); })
{
}

Part::Part(Stretch stretch)
    : m_add([=](QBoxLayout &box) { box.addStretch(stretch.share); })
{
}

QHBoxLayout *rowLayout(std::initializer_list<Part> parts, int spacing)
{
    return boxOf<QHBoxLayout>(parts, spacing);
}

QVBoxLayout *columnLayout(std::initializer_list<Part> parts, int spacing)
{
    return boxOf<QVBoxLayout>(parts, spacing);
}

void fill(QWidget *widget, QLayout *layout, const QMargins &margins)
{
    layout->setContentsMargins(margins);
    widget->setLayout(layout);
}

QWidget *boxed(QLayout *layout, const QMargins &margins)
{
    auto *box = new QWidget;
    fill(box, layout, margins);
    return box;
}

QWidget *withNotes(QWidget *field, std::initializer_list<QWidget *> notes)
{
    QVBoxLayout *column = columnLayout({field}, space::hair);
    for (QWidget *note : notes)
        column->addWidget(note);
    return boxed(column);
}

QWidget *inRow(std::initializer_list<QWidget *> widgets)
{
    auto *row = new QHBoxLayout;
    for (QWidget *widget : widgets)
        row->addWidget(widget);
    row->addStretch();
    return boxed(row);
}

void addRow(QFormLayout *form, const QString &text, QWidget *buddy, QWidget *field)
{
    auto *name = new QLabel(text);
    name->setBuddy(buddy);
    name->setMinimumHeight(space::field);
    // An underlined mnemonic breaks the kerning that the size hint counts on.
    name->setMinimumWidth(name->sizeHint().width() + space::tight);
    form->addRow(name, field);
}

QLabel *label(Type type, const QString &text)
{
    auto *words = new QLabel(text);
    words->setFont(font(type, words->font()));
    return words;
}

QLabel *heading(const QString &text)
{
    return label(Type::strong, text);
}

QLabel *plainWords(const QString &text)
{
    return new WrappedLabel(text);
}

QLabel *centredWords(const QString &text)
{
    QLabel *words = plainWords(text);
    words->setAlignment(Qt::AlignCenter);
    return words;
}

QLabel *paragraph(const QString &text)
{
    auto *words = new QLabel(text);
    words->setWordWrap(true);
    words->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return words;
}

QLineEdit *searchField(const QString &prompt)
{
    auto *field = new QLineEdit;
    field->setPlaceholderText(prompt);
    field->setAccessibleName(prompt);
    field->setClearButtonEnabled(true);
    return field;
}

void setUpForReading(QTableView &table)
{
    table.setEditTriggers(QTableView::NoEditTriggers);
    table.setSelectionBehavior(QTableView::SelectRows);
    table.setSelectionMode(QTableView::SingleSelection);
    table.setTabKeyNavigation(false);
    table.verticalHeader()->hide();
}

void setUpForScrolling(QScrollArea &area, QWidget *page)
{
    area.setFrameShape(QScrollArea::NoFrame);
    area.setWidgetResizable(true);
    area.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area.setWidget(page);
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
    shortcut->setWhatsThis(name);
    QObject::connect(shortcut, &QShortcut::activated, header, turn);
    return button;
}

} // namespace ui
