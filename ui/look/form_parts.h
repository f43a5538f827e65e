#pragma once

#include "ui/look/metrics.h"

#include <QBoxLayout>
#include <QMargins>
#include <QStringList>
#include <functional>
#include <initializer_list>

class QFormLayout;
class QKeySequence;
class QLabel;
class QLineEdit;
class QMimeData;
class QScrollArea;
class QTableView;
class QToolButton;

/// Pieces that pages and forms are built from.
namespace ui {

/// Room in a row or a column that takes what the parts leave over.
struct Stretch
{
    int share = 0;
};

/// What stands in a row or a column: a widget or a layout with its share of what is left over, room
/// of so many pixels, or a stretch.
class Part
{
public:
    Part(QWidget *widget, int share = 0, Qt::Alignment align = {});
    Part(QLayout *layout, int share = 0);
    Part(int pixels);
    Part(Stretch stretch);
    void addTo(QBoxLayout &box) const { m_add(box); }

private:
    std::function<void(QBoxLayout &)> m_add;
};

/// @param spacing  between the parts; -1 = as in the box around it, else as the style has it
[[nodiscard]] QHBoxLayout *rowLayout(std::initializer_list<Part> parts, int spacing = -1);
[[nodiscard]] QVBoxLayout *columnLayout(std::initializer_list<Part> parts, int spacing = -1);

/// Lays out the widget up to its edges, or up to `margins`.
void fill(QWidget *widget, QLayout *layout, const QMargins &margins = {});
/// A new widget, so filled.
[[nodiscard]] QWidget *boxed(QLayout *layout, const QMargins &margins = {});

/// The widget with the name that it is found by.
template <class Widget> [[nodiscard]] Widget *named(const char *name, Widget *widget)
{
    widget->setObjectName(QLatin1String(name));
    return widget;
}

/// The field with notes below it; notes take no room while they are empty.
[[nodiscard]] QWidget *withNotes(QWidget *field, std::initializer_list<QWidget *> notes);

/// Widgets side by side at their own width.
[[nodiscard]] QWidget *inRow(std::initializer_list<QWidget *> widgets);

/// A row whose label's mnemonic goes to `buddy`, also where that is only part of `field`.
void addRow(QFormLayout *form, const QString &text, QWidget *buddy, QWidget *field);

[[nodiscard]] QLabel *label(Type type, const QString &text = {});

/// A line in semi-bold over what belongs to it.
[[nodiscard]] QLabel *heading(const QString &text);

/// Plain text that wraps, for words that may come from the roster.
[[nodiscard]] QLabel *plainWords(const QString &text = {});

/// Such words in the middle of what would else be empty.
[[nodiscard]] QLabel *centredWords(const QString &text = {});

/// Text over several lines, from the top left.
[[nodiscard]] QLabel *paragraph(const QString &text);

/// A field to search in, with `prompt` in it while it is empty.
[[nodiscard]] QLineEdit *searchField(const QString &prompt);

/// A table to be read and chosen from row by row, which Tab leaves.
void setUpForReading(QTableView &table);

/// Lets the page be scrolled up and down, as wide as the area.
void setUpForScrolling(QScrollArea &area, QWidget *page);

/// The files that are dragged or pasted.
[[nodiscard]] QStringList localPaths(const QMimeData &mime);

/// A button of `header` that turns what is shown; the keys do so wherever the focus is within the
/// page that the header stands in.
[[nodiscard]] QToolButton *turnButton(const QString &text, const QString &name,
    const QKeySequence &keys, QWidget *header, const std::function<void()> &turn);

} // namespace ui
